"""Neaten raw edges or seam margins so that they cannot ravel.

What it does: overlocks, zigzags or pinks the raw cloth edge, as the workroom can.
Edges before and after: raw before, neatened after; a margin stays inside its seam.
Allowance: none; an overlocker set to trim takes only the fray.
Example: `- neaten: {seam: flounce.top}` or `- neaten: {edge: panel.start}`
Source: ISO 4915 names the stitches: 504 three-thread overlock, 304 zigzag lockstitch.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Seam, State
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    CautionKind,
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
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.measure_text import show_decimal
from furbelow.techniques.shared.preconditions import edge_not_ready

STITCH = {"overlocker": StitchType.OVERLOCK, "zigzag": StitchType.ZIGZAG, "pinking shears": None}
SETUP = {"overlocker": SetUp.OVERLOCKER, "zigzag": SetUp.ZIGZAG, "pinking shears": SetUp.TABLE}
TAIL = Fraction(50)
PAST = Fraction(20)  # where a ring is closed, the row runs over its start by so much
ZIGZAG = Fraction(3)  # wide; 3-4 mm wide and 2 mm long is common practice, no source
KNIVES = (
    CautionKind.BLADE,
    "Overlocker knives cut fingers as well as cloth: keep hands beside the foot, never before it.",
)
BLADES = (CautionKind.BLADE, "Shears cut fingers as well as cloth: keep your other hand well away from the blades.")
CAUTIONS = {
    "overlocker": KNIVES,
    "zigzag": (CautionKind.NEEDLE, "Keep your fingers beside the foot, never before the needle."),
    "pinking shears": BLADES,
}


class Neaten:
    name = "neaten"
    about = "Overlock, zigzag or pink raw edges or seam margins."
    pictures = (Picture.NEATENED_MARGIN, Picture.OVERLOCK_TAIL)
    parameters = {
        "seam": Parameter("The seam or seams whose margins are neatened.", Kind.EDGES, ""),
        "edge": Parameter("The raw edge or edges that are neatened before they are sewn.", Kind.EDGES, ""),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        seams, edges = edges_of(written, "seam"), edges_of(written, "edge")
        if not seams and not edges:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    None,
                    "FB313",
                    "neaten needs a `seam` or an `edge`",
                    help="name the seam, such as `seam: flounce.top`",
                ),
            )
        faults: list[Fault] = []
        touches: list[str] = []
        sewn: list[Sewn] = []
        after, kind = bench, STITCH[room.neaten_with]
        for name in seams:
            seam = bench.seam_at(name)
            if seam is None or seam.state is not State.RAW:
                faults.append(_no_raw_margin(step, name, seam is not None))
                continue
            touches += [ply.piece for ply in seam.plies]
            after = after.with_seams(seam._replace(state=State.NEATENED))
            if kind:
                joins = name.partition(".")[0] if name.endswith(".joins") else ""
                sewn.append(
                    Sewn(kind, seam.length, 1 if joins else seam.copies, room.seam_stitch, f"neatening {name}", joins)
                )
        for name in edges:
            if fault := edge_not_ready(bench, written, "edge", name):
                faults.append(fault)
                continue
            edge = bench.edge(name)
            touches += edge.pieces
            after = after.with_edges(edge._replace(state=State.NEATENED))
            if kind:
                sewn.append(Sewn(kind, edge.set_length, edge.copies, room.seam_stitch, f"neatening {name}"))
        pieces = tuple(dict.fromkeys(touches))
        if faults:
            return refused(bench, step, pieces, *faults)
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=tuple(sewn),
            setup=SETUP[room.neaten_with],
            facts={
                "seams": tuple(bench.seam_at(name) for name in seams),
                "edges": tuple(bench.edge(name) for name in edges),
            },
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        actions: list[OwnAction] = []
        places = []
        for seam in done.facts["seams"]:
            if seam.name.endswith(".joins"):
                joins = say.joins.get(seam.plies[0].piece, 0)
                if not joins:
                    continue
                where = f"the margins of the joins in the {say.piece(seam.plies[0].piece)}"
                long, chain = f"{say.length(seam.length)} each", say.count(joins, "join")
            elif seam.name.endswith(".ends"):
                pieces = say.the([ply.piece for ply in seam.plies])
                several = done.before.strips_round(seam.plies[0].piece) > 1
                where = f"the margin{'s' * several} of the side seam{'s' * several} of {pieces}"
                long, chain = f"{say.length(seam.length)}{' each' * several}", say.chain(seam.copies)
            else:
                where = f"the margin between {say.the([ply.piece for ply in seam.plies])}"
                long, chain = say.length(seam.length), say.chain(seam.copies)
            places.append(where)
            actions.append(self._action(say, f"{where}, all layers together, {long}", chain, self._closed(done, seam)))
        for edge in done.facts["edges"]:
            where = say.edge(edge.pieces[0], edge.name.rpartition(".")[2])
            places.append(where)
            actions.append(
                self._action(
                    say, f"{where}, {say.length(edge.set_length)}", say.chain(edge.copies), done.before.ring(edge)
                )
            )
        if actions and say.room.neaten_with == "overlocker":
            actions.append(
                OwnAction(
                    f"Leave a thread chain of {say.about(TAIL)} at every start and end. Thread each on a blunt needle, draw it"
                    " under the stitches and cut off the rest.",
                    check="No loose chain hangs out.",
                )
            )
        if actions and say.room.neaten_with == "zigzag":
            actions.insert(0, _tried_at_an_edge(say.room.seam_stitch))
        worked = [ply.piece for seam in done.facts["seams"] for ply in seam.plies]
        worked += [piece for edge in done.facts["edges"] for piece in edge.pieces]
        cloths = [say.solved.materials[say.solved.pieces[piece].piece.cloth.text].material for piece in worked]
        ravels = any(cloth.ravels for cloth in cloths)
        aim = "The cut edges cannot ravel." if ravels else "The cut edges lie together and cannot scratch."
        if len(places) > 1:
            joins = all(seam.name.endswith(".joins") for seam in done.facts["seams"]) and not done.facts["edges"]
            where = "the margins of all joins" if joins else f"{len(places)} edges and margins"
        else:
            where = listed(places)
        return OwnInstructions(f"Neaten {where}", aim, tuple(actions), (CAUTIONS[say.room.neaten_with],))

    def _closed(self, done: Performed, seam: Seam) -> bool:
        """The seam runs round a ring."""
        return not seam.name.endswith((".ends", ".joins")) and all(
            done.before.cloths[ply.piece].ring for ply in seam.plies
        )

    def _action(self, say: Phrasing, what: str, chain: str, closed: bool) -> OwnAction:
        """One seam from its beginning to its last thread, so that the next may follow in a chain.

        A row round a ring ends on its own start; only a flat one can run off the edge.
        """
        start, past = ("Begin at a side seam. ", say.about(PAST)) if closed else ("", "")
        how = {
            "overlocker": f"{start}Overlock {what}. "
            + (f"Sew {past} over the start, then run off the edge." if closed else "Run off the edge at both ends."),
            "zigzag": f"{start}Zigzag over {what}. "
            + (
                f"Sew {past} over the start and a few stitches back."
                if closed
                else "Sew a few stitches back at both ends."
            )
            + " Cut the threads short.",
            "pinking shears": f"Pink {what}. Take off no more than the points.",
        }[say.room.neaten_with]
        return OwnAction(
            how,
            check={
                "overlocker": "Every layer is caught, and the knife took fray but no cloth.",
                "zigzag": "Every layer is caught.",
                "pinking shears": "The points are even.",
            }[say.room.neaten_with],
            remedy="Go over the stretch that was missed once more.",
            chain=chain,
        )


def zigzag_set(length: Fraction) -> str:
    """Setting the machine for zigzag of this stitch length, in mm as machines are marked."""
    return f"Set the machine to zigzag, {show_decimal(ZIGZAG, 1)} mm wide and {show_decimal(length, 1)} mm long."


def _tried_at_an_edge(length: Fraction) -> OwnAction:
    return OwnAction(
        f"{zigzag_set(length)} Try it on the edge of an offcut.",
        check="The needle goes into the cloth and past its edge by turns, and the edge lies flat.",
        remedy="If the edge rolls in, make the stitch narrower.",
    )


def _no_raw_margin(step: SolvedStep, name: str, sewn: bool) -> Fault:
    headline = f"the margin of `{name}` is finished already" if sewn else f"there is no seam at `{name}` yet"
    mend = "leave it out" if sewn else "move this step after the one that sews the seam"
    return fault_at(step.written, "seam", "FB318", headline, help=mend)


TECHNIQUE = Neaten()
