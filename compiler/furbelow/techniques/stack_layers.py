"""Lay edges on each other and hold them together, to be worked as one edge.

What it does: puts layers inside one another, edges level, and bastes them within the seam that follows.
Edges before and after: each raw or neatened and of one length before; one edge of several plies after.
Allowance: none.
Example: `- stack layers: {layers: [net_top, {edge: lining.top, right side: in}], as: skirt_top, traps: [flounce.top]}`
Source: underskirt "1 in shorter than outer" and matched by halves and quarters: Ingalls, Text-Book on Domestic Art, 1911.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, Ply, State
from furbelow.garment.matching import divisions
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import LayerName, Step, each_of
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    edges_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.attach import tails_off
from furbelow.techniques.gather import knots_of
from furbelow.techniques.join_ends import PINS
from furbelow.techniques.shared.marks import tagged
from furbelow.techniques.shared.preconditions import edge_not_ready, forms_differ

BASTE = Fraction(2)  # from the edge: gathering rows lie further in


def layers_of(step: Step) -> tuple[LayerName, ...]:
    """The layers of a stack as written, outermost first."""
    value = step.args["layers"].value
    return tuple(layer for layer in each_of(value) if isinstance(layer, LayerName))


class StackLayers:
    name = "stack layers"
    about = "Lay edges inside one another, outermost first, and hold them as one edge."
    pictures = (Picture.PIECES, Picture.LAYERS)
    parameters = {
        "layers": Parameter("The edges from the outermost to the one nearest the body.", Kind.LAYERS),
        "as": Parameter("A name for the stacked edge, used by later steps.", Kind.NAME),
        "traps": Parameter(
            "Seams whose margins must end up between layers, so that they can't scratch.", Kind.EDGES, ""
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        layers = layers_of(written)
        for layer in layers:
            if fault := edge_not_ready(bench, written, "layers", str(layer.edge)):
                return refused(bench, step, (), fault)
        names = [str(layer.edge) for layer in layers]
        if twice := next((name for name in names if names.count(name) > 1), None):
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "layers",
                    "FB302",
                    f"`{twice}` already lies in this stack",
                    help="list each layer once; like copies of a piece are stacked together",
                ),
            )
        edges = [bench.edge(name) for name in names]
        touches = tuple(dict.fromkeys(piece for edge in edges for piece in edge.pieces))
        first = edges[0]
        for edge in edges[1:]:
            if fault := forms_differ(bench, written, "layers", first, edge):
                return refused(bench, step, touches, fault)
            gap = edge.set_length - first.set_length
            if abs(gap) > solved.rounding:
                return refused(
                    bench,
                    step,
                    touches,
                    fault_at(
                        written,
                        "layers",
                        "FB401",
                        f"`{edge.name}` is {say.length(edge.set_length)} and `{first.name}` is {say.length(first.set_length)},"
                        f" {say.length(abs(gap))} {'too long' if gap > 0 else 'too short'} to lie on each other",
                        help=f"gather `{edge.name if gap > 0 else first.name}` before it is stacked",
                    ),
                )
        name = word_of(written, "as")
        plies = tuple(
            Ply(ply.piece, ply.copies * edge.copies, layer.right_side)
            for layer, edge in zip(layers, edges, strict=True)
            for ply in edge.plies
        )
        raw = any(edge.state is State.RAW for edge in edges)
        cloth_length = max(edge.cloth_length for edge in edges) if len(edges) == 1 else first.set_length
        stack = Edge(
            name,
            plies,
            1,
            cloth_length,
            first.set_length,
            State.RAW if raw else State.NEATENED,
            gathered=next((edge.gathered for edge in edges if edge.gathered), ""),
            held=all(edge.held for edge in edges),
            slit=first.slit,
        )
        after = bench.with_edges(stack).joined(touches)
        after = after._replace(layered={**after.layered, **{edge.name: name for edge in edges}})
        for trapped in edges_of(written, "traps"):
            seam = bench.seam_at(trapped)
            if seam is None:
                return refused(
                    bench,
                    step,
                    touches,
                    fault_at(
                        written,
                        "traps",
                        "FB318",
                        f"there is no seam at `{trapped}` yet",
                        help="stack the layers after that seam is sewn",
                    ),
                )
            if fault := self._not_trapped(solved, bench, step, trapped, plies):
                return refused(bench, step, touches, fault)
            after = after.with_seams(seam._replace(trapped=True))
        plied = sum(ply.copies for ply in plies)
        sewn = (
            (Sewn(StitchType.LOCK, first.set_length, 1, room.gathering_stitch, "holding the layers together"),)
            if plied > 1
            else ()
        )
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=sewn,
            setup=SetUp.STRAIGHT if sewn else SetUp.TABLE,
            pinned=first.set_length if plied > 1 else Fraction(0),
            thread_ends=sum(knots_of(edge) for edge in edges if not edge.held) if plied > 1 else 0,
            facts={"layers": layers, "plies": plies},
        )

    def _not_trapped(
        self, solved: Solved, bench: Bench, step: SolvedStep, trapped: str, plies: tuple[Ply, ...]
    ) -> Fault | None:
        """A margin lies on the wrong side of its layer: it is trapped when that side faces another layer."""
        pieces = bench.unit(trapped.partition(".")[0])
        at = next((number for number, ply in enumerate(plies) if ply.piece in pieces), None)
        if at is None:
            return fault_at(
                step.written,
                "traps",
                "FB320",
                f"the layer with the seam at `{trapped}` is not in this stack",
                help="stack the layer too, or take the seam out of `traps`",
            )
        ply = plies[at]
        margin_inside = ply.right_side == "out"
        covered = at < len(plies) - 1 if margin_inside else at > 0
        if covered or (ply.copies > 1 and len(plies) == 1):
            return None
        side = "inside" if margin_inside else "outside"
        return fault_at(
            step.written,
            "traps",
            "FB320",
            f"the margin at `{trapped}` lies on the {side} of the stack, where nothing covers it",
            notes=(
                f"the right side of `{ply.piece}` faces {ply.right_side}, so its margins face {'in' if margin_inside else 'out'}",
            ),
            help="list a lining after it, or turn the layer with `right side: " + ("in`" if margin_inside else "out`"),
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        plies, edge = done.facts["plies"], done.after.edge(word_of(done.step.written, "as"))
        count = sum(ply.copies for ply in plies)
        length = say.length(edge.set_length)
        if count == 1:
            return OwnInstructions(f"Set {say.the(edge.pieces)} ready", "The layer is ready.", ())
        parts = divisions(edge.set_length)
        named = "eighth" if parts == 8 else "quarter"
        actions = [
            OwnAction(self._place(done, say, layer, number)) for number, layer in enumerate(done.facts["layers"])
        ]
        actions += [
            OwnAction(
                f"Mark the top edge of every layer in {named}s, every {say.length(edge.set_length / parts)}, the first at"
                f" its side seam{', with the bright thread where it has one' if tagged(done.before, edge.pieces, say) else ''}."
            ),
            OwnAction(
                f"Bring the top edges level, match the side seams and the marks, and"
                f" {'clip' if say.room.hold_with == 'clips' else 'pin'} there.",
                check="No layer sags between the marks.",
                remedy=f"Take out the pins of that {named} and share the looseness out again.",
            ),
            *self._tails(done, say),
            OwnAction(
                f"Sew all {count} layers together {say.about(BASTE)} from the edge, {length}, with the longest stitch. This"
                " row stays in.",
            ),
        ]
        aim = f"{count} layers are one edge of {length}."
        return OwnInstructions(f"Lay the {count} layers together", aim, tuple(actions), (PINS,))

    def _tails(self, done: Performed, say: Phrasing) -> list[OwnAction]:
        """Gathers that lie in the stack are held by its pins from here on, so their own pins come out before the sewing."""
        edges = [done.before.edge(str(layer.edge)) for layer in done.facts["layers"]]
        if not any(edge.gathered and not edge.held for edge in edges):
            return []
        return [OwnAction(tails_off(next(edge for edge in edges if edge.gathered and not edge.held), say))]

    def _place(self, done: Performed, say: Phrasing, layer: LayerName, number: int) -> str:
        """How this layer is laid: which it is, and which of its faces looks where."""
        edge = done.before.edge(str(layer.edge))
        piece = edge.pieces[0]
        if not say.solved.materials[say.solved.pieces[piece].piece.cloth.text].material.has_right_side:
            way = "seam margins towards the legs"
        elif layer.right_side == "out":
            way = "right side out"
        else:
            way = "right side towards the legs, wrong side to the layer before"
        if layer.edge.side is None:
            which = f"the {sum(ply.copies for ply in edge.plies)} layers that are sewn together"
        else:
            which = (
                f"the {edge.copies} rings of the {say.piece(piece)}" if edge.copies > 1 else f"the {say.piece(piece)}"
            )
        if number:
            return f"Put {which} inside, {way}."
        if edge.copies > 1:
            return f"Put {which} inside one another, {way}."
        return f"Hold {which} as worn, {way}."


TECHNIQUE = StackLayers()
