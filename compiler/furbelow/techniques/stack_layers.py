"""Lay edges on each other and hold them together, to be worked as one edge.

What it does: puts layers inside one another, edges level, and bastes them within the seam that follows.
Edges before and after: each raw or neatened and of one length before; one edge of several plies after.
Allowance: none.
Example: `- stack layers: {layers: [net_top, {edge: lining.top, right side: in}], as: skirt_top, traps: [flounce.top]}`
Source: underskirt "1 in shorter than outer" and matched by halves and quarters: Ingalls, Text-Book on Domestic Art, 1911.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import LINED, Bench, Edge, Ply, State
from furbelow.garment.lying import Covered, Ledger, OnCloth, Window
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, One, Own, Part, Pieces, Stitch, Things, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import EdgeName, LayerName, Step, each_of
from furbelow.garment.stitch import StitchType
from furbelow.garment.tags import copy_letter
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    edges_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import knots_of, tails_hang, tails_off, tails_said
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.marks import marked_in, marked_said, parts_apart, tagged
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import edge_not_ready, ends_turned, forms_differ
from furbelow.techniques.shared.stacks import HOLDING_ROW, ends_beside, hangs_below

LONG_ROW, SHORT_ROW = "long stitch", "short stitch"
SHORT = Fraction(2)  # length of a short stitch; common practice, no source
CLOSEST_PINS = Fraction(10)  # nearer to each other they only bend the edge; house rule, maker to confirm


def layers_of(step: Step) -> tuple[LayerName, ...]:
    """The layers of a stack as written, outermost first."""
    value = step.args["layers"].value
    return tuple(layer for layer in each_of(value) if isinstance(layer, LayerName))


NEAR_PINS, FAR_PINS = Fraction(5), Fraction(200)  # house rule, maker to confirm


class Stacked(NamedTuple):
    """A stack as written and the plies it has, both outermost first; from pin to pin in mm.

    own: how long each copy is in mm, where they came out otherwise; the stack is as long as the shortest.
    """

    layers: tuple[LayerName, ...]
    plies: tuple[Ply, ...]
    apart: Fraction
    own: tuple[Fraction, ...] = ()

    def edges(self, done: Performed) -> tuple[Edge, ...]:
        """The edges of the layers as they were before they were stacked."""
        return tuple(done.before.edge(str(layer.edge)) for layer in self.layers)


class StackLayers:
    name = "stack layers"
    about = "Lay edges inside one another, outermost first, and hold them as one edge."
    pictures = (Picture.PIECES, Picture.LAYERS)
    parameters = {
        "layers": Parameter("The edges from the outermost to the one nearest the body.", Kind.LAYERS),
        "as": Parameter("A name for the stacked edge, used by later steps.", Kind.NAME),
        "row": Parameter(
            "The stitch of the row that holds them: long, to be gathered, or short, to hold gathers for good.",
            (LONG_ROW, SHORT_ROW),
            LONG_ROW,
        ),
        "pins": Parameter("From pin to pin, where it is closer than the cloth asks.", Kind.LENGTH, ""),
        "traps": Parameter(
            "Seams whose margins must end up between layers, so that they can't scratch.", Kind.EDGES, ""
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        band = _folded_in_half([layer.edge for layer in layers_of(step)])
        return (Allowance(band, "bottom", (), doubles=True),) if band else ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        windows: tuple[Window, ...] = ()
        if "pins" in done.step.amounts:
            apart, why = done.step.mm("pins"), "the layers must not shift between them"
            windows = (Window("pins", "the space between pins", apart, least=NEAR_PINS, most=FAR_PINS, why=why),)
        return OnCloth(windows=windows, covered=tuple(_covered(done)))

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
            if solved.apart(edge.set_length, first.set_length):
                long, wanted, too, _ = say.missed(edge.set_length, first.set_length)
                return refused(
                    bench,
                    step,
                    touches,
                    fault_at(
                        written,
                        "layers",
                        "FB401",
                        f"`{edge.name}` is {long} and `{first.name}` is {wanted}, {too} to lie on each other",
                        notes=ends_turned(bench, edge, first, say),
                        help=f"gather `{edge.name if gap > 0 else first.name}` before it is stacked",
                    ),
                )
        name, lined = word_of(written, "as"), _hanging_behind(bench, layers)
        # Pieces of one number, stacked copy with copy, are so many stacks; a single edge is piled up with its copies.
        pairs = first.copies if len(edges) > 1 and all(edge.copies == first.copies for edge in edges) else 1
        plies = tuple(
            Ply(ply.piece, ply.copies * edge.copies // pairs, "in" if layer in lined else layer.right_side)
            for layer, edge in zip(layers, edges, strict=True)
            for ply in edge.plies
        )
        raw = any(edge.state is State.RAW for edge in edges)
        cloth_length = max(edge.cloth_length for edge in edges) if len(edges) == 1 else first.set_length
        plied = sum(ply.copies for ply in plies)
        stack = Edge(
            name,
            plies,
            pairs,
            cloth_length,
            first.set_length,
            State.RAW if raw else State.NEATENED,
            gathered=next((edge.gathered for edge in edges if edge.gathered), ""),
            held=plied > 1 or first.held,  # the row through all layers holds their gathers; rows sewn later do not
            slit=first.slit,
            stands_out=first.stands_out,
            # A layer by itself stays as it is; several are marked to meet.
            marks=parts_in(edges) if plied > 1 else first.marks,
        )
        after = bench.with_edges(stack).joined(touches)
        if band := _folded_in_half([layer.edge for layer in layers]):
            after = after.with_cloths(bench.cloths[band]._replace(folded=True))
        after = after._replace(layered={**after.layered, **{edge.name: name for edge in edges}})
        if openings := [after.openings[each] for each in names if each in after.openings]:
            # One band closes them all: what the narrowest and shortest of them lets through.
            way_in = openings[0]._replace(
                name=name,
                length=min(each.length for each in openings),
                round_it=min(each.round_it for each in openings),
            )
            left = {each: opening for each, opening in after.openings.items() if each not in names}
            after = after._replace(openings=left).with_opening(way_in)
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
        stitch = SHORT if word_of(written, "row") == SHORT_ROW else room.gathering_stitch
        sewn = (Sewn(StitchType.LOCK, first.set_length, pairs, stitch),) if plied > 1 else ()
        apart = pins_apart(solved, room, *edges)
        if "pins" in written.args:
            apart = min(apart, max(step.mm("pins"), CLOSEST_PINS))
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=sewn,
            setup=SetUp.STRAIGHT if sewn else SetUp.TABLE,
            pinned=first.set_length * pairs * room.pin_spacing / apart if plied > 1 else Fraction(0),
            thread_ends=sum(knots_of(edge) for edge in edges if tails_hang(edge)) if plied > 1 else 0,
            facts=Stacked(layers, plies, apart),
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

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        stacked, edge = facts_of(done, Stacked), done.after.edge(word_of(done.step.written, "as"))
        count, parts = sum(ply.copies for ply in stacked.plies), edge.marks
        if count == 1:
            pieces: Values = {"pieces": Pieces(edge.pieces)}
            return Instructions("stack-layers-title-single", "stack-layers-aim-single", (), pieces)
        if band := _folded_in_half([layer.edge for layer in stacked.layers]):
            fold = (Action("stack-layers-fold", edge.copies), Action("stack-layers-sew", edge.copies))
            return Instructions(
                "stack-layers-title-fold",
                "stack-layers-aim",
                fold,
                {
                    "stack": edge_said(edge),
                    "band": Pieces((band,)),
                    "count": count,
                    "length": Length(edge.set_length),
                    "from-edge": Length(HOLDING_ROW, "about"),
                    "deep": Length(say.solved.pieces[band].depth),
                },
                (iron_hot(done, say),),
                iron_tools(done, say, band),
                pressed=(band,),
                ironed=("stack-layers-fold",),
            )
        layers, ring = stacked.edges(done), done.before.ring(edge)
        loose = next((layer for layer in layers if tails_hang(layer)), None)
        unmarked = [layer for layer in layers if not marked_in(layer, parts)]
        threads = [tagged(done.before, layer.pieces, say) for layer in unmarked]
        seam = "ends" if not ring else "bright" if all(threads) else "some" if any(threads) else "plain"
        actions = []
        if unmarked:
            apart = parts_apart(done.before, unmarked[0], parts)
            own: Values = {"part": _each_own([length / parts for length in stacked.own])} if stacked.own else {}
            actions.append(Action("stack-layers-mark", values={**apart, **own}))
        hung = [hangs_below(done.before, str(layer.edge)) for layer in stacked.layers]
        lower = [now - before for now, before in zip(hung, (hung[0], *hung), strict=False)]
        laid = zip(stacked.layers, lower, strict=True)
        actions += [_laid(done, say, layer, by, number, edge.copies) for number, (layer, by) in enumerate(laid)]
        if stacked.own:
            gap = max(stacked.own) - min(stacked.own)
            actions.append(Action("stack-layers-share", values={"lengths": _each_own(stacked.own), "gap": Length(gap)}))
        times = len(layers) - 1 + (layers[0].copies > edge.copies)  # layers were pinned on
        actions.append(Action("stack-layers-pin" if times == 1 else "stack-layers-pin-through"))
        if loose:
            # Gathers that lie in the stack are held by its pins from here on: their own come out before the sewing.
            actions.append(Action(tails_off(loose), values=tails_said(loose)))
        actions.append(Action("stack-layers-sew-short" if done.sewn[0].stitch == SHORT else "stack-layers-sew"))
        values: Values = {
            "stack": edge_said(edge),
            "count": count,
            "parts": parts,
            "part": Length(edge.set_length / parts),
            "length": Length(edge.set_length),
            "from-edge": Length(HOLDING_ROW, "about"),
            "stitch": Stitch(done.sewn[0].stitch),
            "marked": marked_said(unmarked),
            "ring": flag(ring),
            "seam": One(seam, ("bright", "some", "ends", "plain")),
            "several": flag(sum(layer.copies for layer in unmarked) > edge.copies),
            "spacing": Length(stacked.apart, "about"),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        each = tuple(action._replace(copies=edge.copies) for action in actions)
        return Instructions("stack-layers-title", "stack-layers-aim", each, values, (PINS_OUT,))


def _each_own(lengths: Sequence[Fraction]) -> Things:
    return Things(
        tuple(
            Part("stack-layers-own", {"part": Length(length), "letter": Own(copy_letter(copy))})
            for copy, length in enumerate(lengths, 1)
        )
    )


def _hanging_behind(bench: Bench, layers: Sequence[LayerName]) -> tuple[LayerName, ...]:
    """The layers that are bagged out with one before them: they hang behind it, right side towards the legs, already."""
    before: set[str] = set()
    behind = []
    for layer in layers:
        if any(
            seam.name.endswith(LINED)
            and layer.edge.piece in (own := {ply.piece for ply in seam.plies})
            and own & before
            for seam in bench.seams.values()
        ):
            behind.append(layer)
        before.add(layer.edge.piece)
    return tuple(behind)


def _covered(done: Performed) -> Iterator[Covered]:
    """The margins that this stack is to cover, each with the layers on the side that it lies on."""
    plies = facts_of(done, Stacked).plies
    for edge in edges_of(done.step.written, "traps"):
        own = done.before.unit(edge.partition(".")[0])
        at = next(number for number, ply in enumerate(plies) if ply.piece in own)
        beside = plies[at + 1 :] if plies[at].right_side == "out" else plies[:at]
        yield Covered("traps", edge, tuple(ply.piece for ply in beside) or (plies[at].piece,))


def _folded_in_half(edges: Sequence[EdgeName]) -> str | None:
    """The piece whose own top and bottom edges are laid on each other: a band folded in half along its length."""
    named = {(edge.piece, edge.side) for edge in edges}
    if len(edges) == 2 and len({piece for piece, _ in named}) == 1 and {side for _, side in named} == {"top", "bottom"}:
        return edges[0].piece
    return None


def parts_in(edges: Sequence[Edge]) -> int:
    """In how many parts a stack is marked: as the finest of its layers, or by its length where none is marked."""
    return max(divisions(edges[0].set_length), *(edge.marks for edge in edges))


def _laid(done: Performed, say: Phrasing, layer: LayerName, lower: Fraction, number: int, stacks: int) -> Action:
    """How this layer of each of so many stacks is laid: which it is, which of its faces looks where, and by how much it
    ends lower than the one before, in mm."""
    edge = done.before.edge(str(layer.edge))
    cloth = say.solved.pieces[edge.pieces[0]].piece.cloth.text
    sided = say.solved.materials[cloth].material.has_right_side
    face = "either" if not sided else layer.right_side
    alike = edge.copies // stacks
    if layer in _hanging_behind(done.before, facts_of(done, Stacked).layers):
        message = "stack-layers-lined"
    elif alike > 1:
        message = "stack-layers-put-in-alike" if number else "stack-layers-nest"
    else:
        message = "stack-layers-put-in" if number else "stack-layers-hold"
    return Action(
        message,
        values={
            "layer": edge_said(edge),
            "copies": alike,
            "face": One(face, ("either", "out", "in")),
            **ends_beside(lower),
        },
    )


TECHNIQUE = StackLayers()
