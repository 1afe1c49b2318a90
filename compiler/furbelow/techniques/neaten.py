"""Neaten raw edges or seam margins so that they cannot ravel.

What it does: overlocks, zigzags or pinks the raw cloth edge, as the workroom can.
Edges before and after: raw before, neatened after; a margin stays inside its seam.
Allowance: none; an overlocker set to trim takes only the fray.
Example: `- neaten: {seam: flounce.top}` or `- neaten: {edge: panel.start}`
Source: ISO 4915 names the stitches: 504 three-thread overlock, 304 zigzag lockstitch.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Part, Pieces, Value, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
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
    Tool,
    edges_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import FINGERS, KNIVES, SHEARS
from furbelow.techniques.shared.iron import iron_hot, iron_tools, long_seam
from furbelow.techniques.shared.preconditions import edge_not_ready
from furbelow.techniques.shared.zigzag import zigzag_set

STITCH = {"overlocker": StitchType.OVERLOCK, "zigzag": StitchType.ZIGZAG, "pinking shears": None}
SETUP = {"overlocker": SetUp.OVERLOCKER, "zigzag": SetUp.ZIGZAG, "pinking shears": SetUp.TABLE}
THREADED, TURNED_BACK = "drawn under the stitches", "turned back and caught"
CATCH_STITCH = Fraction(1)
CATCH = Fraction(15)  # of a chain turned back that the zigzag catches
TAIL = Fraction(50)
PAST = Fraction(20)  # where a ring is closed, the row runs over its start by so much
CAUTIONS = {"overlocker": KNIVES, "zigzag": FINGERS, "pinking shears": SHEARS}
AIMS = {"overlocker": "neaten-aim", "zigzag": "neaten-aim", "pinking shears": "neaten-aim-pinked"}
# The messages of one place: a flat margin or edge, and one round a ring.
MESSAGES = {
    "overlocker": ("neaten-overlock-flat", "neaten-overlock-ring"),
    "zigzag": ("neaten-zigzag-flat", "neaten-zigzag-ring"),
    "pinking shears": ("neaten-pink", "neaten-pink"),
}


class Neatened(NamedTuple):
    """The seams and the edges that were neatened, as they were before."""

    seams: tuple[Seam, ...]
    edges: tuple[Edge, ...]


class Neaten:
    name = "neaten"
    about = "Overlock, zigzag or pink raw edges or seam margins."
    pictures = (Picture.NEATENED_MARGIN, Picture.OVERLOCK_TAIL)
    parameters = {
        "seam": Parameter("The seam or seams whose margins are neatened.", Kind.EDGES, ""),
        "edge": Parameter("The raw edge or edges that are neatened before they are sewn.", Kind.EDGES, ""),
        "tails": Parameter("What becomes of the thread chains of an overlocker.", (THREADED, TURNED_BACK), THREADED),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

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
            if seam is None or seam.state is not State.RAW or seam.topstitched:
                faults.append(_no_raw_margin(step, name, seam is not None))
                continue
            touches += [ply.piece for ply in seam.plies]
            after = after.with_seams(seam._replace(state=State.NEATENED, together=True))
            joins = name.partition(".")[0] if name.endswith(".joins") else ""
            sewn.append(Sewn(kind, seam.length, 1 if joins else seam.copies, room.seam_stitch, joins_of=joins))
        for name in edges:
            if fault := edge_not_ready(bench, written, "edge", name):
                faults.append(fault)
                continue
            edge = bench.edge(name)
            touches += edge.pieces
            after = after.with_edges(edge._replace(state=State.NEATENED))
            sewn.append(Sewn(kind, bench.measured(edge), edge.copies, room.seam_stitch))
        pieces = tuple(dict.fromkeys(touches))
        if faults:
            return refused(bench, step, pieces, *faults)
        if room.neaten_with == "overlocker" and word_of(written, "tails") == TURNED_BACK:
            # Both ends of every row; where a ring is closed the row has one end.
            sewn += [Sewn(StitchType.ZIGZAG, 2 * CATCH, row.copies, CATCH_STITCH, row.joins_of) for row in tuple(sewn)]
        closed = tuple(seam for name in seams if (seam := bench.seam_at(name)))
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=tuple(sewn),
            setup=SETUP[room.neaten_with],
            handled=sum((seam.length * seam.copies for seam in _to_press(closed, solved)), Fraction(0)),
            facts=Neatened(
                closed,
                tuple(bench.edge(name) for name in edges),
            ),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, by = facts_of(done, Neatened), say.room.neaten_with
        places = [place for seam in facts.seams if (place := _seam_place(done, seam, say))]
        places += [_edge_place(done, edge) for edge in facts.edges]
        actions = [action for place in places for action in (*_found(done, place), _action(by, place))]
        if places and by == "overlocker":
            turned_back = word_of(done.step.written, "tails") == TURNED_BACK
            actions.append(Action("neaten-chain-back" if turned_back else "neaten-chain"))
        if places and by == "zigzag":
            actions.insert(0, zigzag_set(say.room.seam_stitch)._replace(message="neaten-try-zigzag"))
        pressed = _to_press(facts.seams, say.solved)
        actions += [
            Action("neaten-press", seam.copies, values={"pieces": Pieces(tuple(ply.piece for ply in seam.plies))})
            for seam in pressed
        ]
        title = places[0].title if len(places) == 1 else _title(facts)
        ravels = _ravels(facts, say)
        aim = AIMS[by] if ravels else "neaten-aim-firm"
        values: Values = {
            **(places[0].values if len(places) == 1 else _several(places, done)),
            "ravels": flag(ravels),
            "tail": Length(TAIL, "about"),
            "past": Length(PAST, "about"),
            "catch": Length(CATCH, "about"),
        }
        ironed = tuple(dict.fromkeys(ply.piece for seam in pressed for ply in seam.plies))
        return Instructions(
            title,
            aim,
            tuple(actions),
            values,
            (CAUTIONS[by], *((iron_hot(done, say),) if pressed else ())),
            (
                *((Tool.NEATENING,) if by == "zigzag" else ()),
                *(iron_tools(done, say, *ironed) if pressed else ()),
            ),
            ironed,
            ironed=("neaten-press",),
        )


def _to_press(seams: Iterable[Seam], solved: Solved) -> list[Seam]:
    """The long upright seams whose margins, neatened as one, are pressed to one side."""
    return [seam for seam in seams if seam.name.endswith((".ends", ".panels")) and long_seam(solved, seam)]


def _several(places: Sequence[_Place], done: Performed) -> Values:
    return {"places": sum(place.copies for place in places), "pieces": Pieces(done.touches)}


def _title(facts: Neatened) -> str:
    """The heading of a step that works on several places."""
    if not facts.seams:
        return "neaten-title-edges"
    if facts.edges:
        return "neaten-title-several"
    joins = all(seam.name.endswith(".joins") for seam in facts.seams)
    return "neaten-title-all-joins" if joins else "neaten-title-margins"


class _Place(NamedTuple):
    """A margin or edge to neaten: the message that heads a step with it, the one inside an action, and their values."""

    title: str
    place: str
    values: Values
    copies: int = 1
    chain: Part | None = None
    ring: bool = False  # a row round a ring ends on its own start; only a flat one can run off the edge


def _seam_place(done: Performed, seam: Seam, say: Phrasing) -> _Place | None:
    """The margin of a seam; None for the joins of a piece that the cutting plan gives none."""
    pieces = tuple(ply.piece for ply in seam.plies)
    values: dict[str, Value] = {"pieces": Pieces(pieces), "length": Length(seam.length)}
    values |= _which_margin(seam)
    if seam.name.endswith(".joins"):
        joins = say.joins.get(pieces[0], 0)
        chain = Part("chain-joins", {"joins": joins})
        return _Place("neaten-title-joins", "neaten-place-joins", values, chain=chain) if joins else None
    if seam.name.endswith(".ends"):
        values["several"] = flag(done.before.strips_round(pieces[0]) > 1)
        return _Place("neaten-title-ends", "neaten-place-ends", values, seam.copies)
    ring = all(done.before.cloths[piece].ring for piece in pieces)
    return _Place("neaten-title-between", "neaten-place-between", values, seam.copies, ring=ring)


def _which_margin(seam: Seam) -> dict[str, Value]:
    """Where a margin lies: between two pieces, or at one edge of a single one; round it, where two layers of one are closed."""
    alone = len({ply.piece for ply in seam.plies}) == 1
    round_it = alone and seam.on is not None and seam.plies[0].copies > seam.copies
    name = (seam.edges or (f"{seam.plies[0].piece}.top",))[0]
    piece, _, side = name.partition(".")
    where = "round" if round_it else "edge" if alone else "between"
    return {"where": One(where, ("between", "edge", "round")), "beside": Pieces((piece,), side)}


def _edge_place(done: Performed, edge: Edge) -> _Place:
    values: dict[str, Value] = {
        "edge": edge_said(edge),
        "length": Length(done.before.measured(edge)),
        "layers": sum(ply.copies for ply in edge.plies) // edge.copies,
    }
    gore = done.before.cloths[edge.pieces[0]].piece.gore if edge.name.endswith((".start", ".end")) else None
    if gore and gore.unlike:
        least, most = gore.slants
        values["longest"] = Length(done.before.measured(edge) * most / least)
        return _Place("neaten-title-edge", "neaten-place-sides", values, edge.copies)
    return _Place("neaten-title-edge", "neaten-place-edge", values, edge.copies, ring=done.before.ring(edge))


def _found(done: Performed, place: _Place) -> tuple[Action, ...]:
    """Which of its sides the start of a piece is, before it is sewn to anything that would tell."""
    edge = place.values.get("edge")
    if not isinstance(edge, Pieces) or edge.side not in ("start", "end"):
        return ()
    many = place.copies > 1
    gored = many and done.before.cloths[edge.names[0]].piece.gore is not None
    each = "gore" if gored else "panel" if many else "piece"
    values: Values = {
        "piece": Pieces(edge.names),
        "side": One(edge.side, ("start", "end")),
        "each": One(each, ("gore", "panel", "piece")),
    }
    return (Action("neaten-side", place.copies, values=values),)


def _action(by: str, place: _Place) -> Action:
    """One place from its beginning to its last thread, so that the next may follow in a chain."""
    flat, ring = MESSAGES[by]
    values: Values = {"place": Part(place.place, place.values)}
    return Action(ring if place.ring else flat, place.copies, values=values, chain=place.chain)


def _ravels(facts: Neatened, say: Phrasing) -> bool:
    worked = [ply.piece for seam in facts.seams for ply in seam.plies]
    worked += [piece for edge in facts.edges for piece in edge.pieces]
    return any(say.solved.materials[say.solved.pieces[piece].piece.cloth.text].material.ravels for piece in worked)


def _no_raw_margin(step: SolvedStep, name: str, sewn: bool) -> Fault:
    headline = f"the margin of `{name}` is finished already" if sewn else f"there is no seam at `{name}` yet"
    mend = "leave it out" if sewn else "move this step after the one that sews the seam"
    return fault_at(step.written, "seam", "FB318", headline, help=mend)


TECHNIQUE = Neaten()
