"""Closing the ends of pieces to a ring, carried out: what every seam that does so has in common."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import WORKABLE, Bench, Casing, Edge, Ply, Seam, State
from furbelow.garment.gore import GORE_PLACES, Gore
from furbelow.garment.message import Length, One, Part, Pieces, Things, Value, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import Action, Performed, SetUp, Sewn, fault_at, refused, word_of, words_of
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import seam_too_narrow, strips_not_joined

RUN_OUT = Fraction(100)  # from a side to where what was trimmed at the hem has run out to nothing; house rule
EACH, ONE = "a ring each", "one ring"
Faces = Literal["right", "wrong"]  # the sides that lie together


def takes_at_ends(step: Step, *args: str) -> tuple[Allowance, ...]:
    """What the seam takes: at start and end of every piece that it passes through."""
    return tuple(Allowance(piece, side, args) for piece in words_of(step, "of") for side in ("start", "end"))


def close_ends(bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
    """A seam through the ends of every piece in `of`, which makes them a ring, or one ring of all copies; or refused.

    Fails: FB303, FB305, FB307, FB308, FB309, FB326, FB353.
    """
    pieces = words_of(step.written, "of")
    fault = _not_ready(bench, step, pieces) or seam_too_narrow(solved, Phrasing(solved, room), step, "seam", pieces)
    if fault:
        return refused(bench, step, pieces, fault)
    seam, first = step.mm("seam"), pieces[0]
    copies = bench.cloths[first].copies
    merged = copies if word_of(step.written, "into") == ONE else 1
    length = sum((_open_depth(bench, piece) for piece in pieces), Fraction(0))
    after = bench
    for piece in pieces:
        cloth = bench.cloths[piece]
        left = copies // merged
        darts = cloth.darts and cloth.darts._replace(taken=cloth.darts.taken * merged)
        after = after.with_cloths(cloth._replace(ring=True, copies=left, darts=darts))
        for side in ("top", "bottom"):
            edge = bench.edge(f"{piece}.{side}")
            after = after.with_edges(
                edge._replace(
                    copies=left,
                    cloth_length=(edge.cloth_length - 2 * seam) * merged,
                    set_length=(edge.set_length - 2 * seam) * merged,
                    marks=0,  # those of the flat edge are not even on the ring
                )
            )
        for side in ("start", "end"):
            edge = bench.edge(f"{piece}.{side}")
            after = after.with_edges(edge._replace(state=State.SEWN, used=edge.used + seam))
        for casing in bench.casings.values():
            if casing.piece == piece and casing.flat:
                after = after.with_casing(_closed(casing, seam, merged))
    closing = Seam(
        f"{first}.ends",
        tuple(f"{piece}.{side}" for piece in pieces for side in ("start", "end")),
        tuple(Ply(piece, 2) for piece in pieces),
        length,
        copies,
        seam,
        "301",
        State.NEATENED if _neat(bench, pieces) else State.RAW,
    )
    sewn = Sewn(StitchType.LOCK, length, copies, room.seam_stitch)
    return Performed(
        step,
        bench,
        after.with_seams(closing),
        pieces,
        sewn=(sewn,),
        setup=SetUp.STRAIGHT,
        pinned=length * copies,
        # Ring by ring, as wide apart as flat edges are held.
        pinned_at_once=length * merged * room.pin_spacing / pins_apart(solved, room, *_pairs(bench, first)),
    )


def ends_laid(done: Performed) -> tuple[Action, ...]:
    """Laying and pinning the ends that the step closes, of panels side by side or of each copy by itself; panels that have
    places of their own are laid out first, so that each seam can be named."""
    copies = done.after.cloths[done.touches[0]].copies
    if not panels(done):
        return (Action("close-fold", copies),)
    gore = row_of(done)
    if gore is None:
        return (Action("close-panels", copies),)
    after, at_side = gore.side_seam
    values: Values = {
        "order": Things(tuple(_numbered(at, place) for at, place in enumerate(gore.round, 1)), "row"),
        "at-side": flag(at_side),
        "after": after,
        "next": after % len(gore.round) + 1,
    }
    laid = (Action(name, copies, values=values) for name in ("close-row", "close-row-seam"))
    return *laid, Action("close-panels", copies), *_unlike(done, gore, copies)


def _unlike(done: Performed, gore: Gore, copies: int) -> tuple[Action, ...]:
    """What becomes of the longer side where two of unequal length meet: the tops are level, so it shows at the hem."""
    if not gore.unlike:
        return ()
    said = tuple(
        Part(
            "close-unlike-by",
            {"longer": One(longer, GORE_PLACES), "shorter": One(shorter, GORE_PLACES), "by": Length(by)},
        )
        for longer, shorter, by in gore.unlike
    )
    raw = all(done.before.edge(f"{piece}.bottom").state in WORKABLE for piece in done.touches[-1:])
    values: Values = {"unlike": Things(said, "clauses"), "run": Length(RUN_OUT, "about")}
    return (Action("close-unlike-trim" if raw else "close-unlike-ease", copies, values=values),)


def row_of(done: Performed) -> Gore | None:
    """The gores that become one ring, where each has its own place; None for panels that are all alike."""
    gore = done.before.cloths[done.touches[0]].piece.gore
    return gore if gore and gore.differ and panels(done) else None


def _numbered(at: int, place: str) -> Part:
    return Part("close-row-gore", {"number": at, **place_said(place).values})


def place_said(place: str) -> Part:
    """Where a gore hangs: "front", "side", "back"."""
    return Part("gore-place", {"place": One(place, GORE_PLACES)})


def seam_named(done: Performed) -> dict[str, Value]:
    """Which of the seams that close a ring is meant: by its number in the row, any of them, or the only one."""
    gore = row_of(done)
    after = gore.side_seam[0] if gore else 1
    which = "numbered" if gore else "any" if panels(done) else "only"
    return {
        "which": One(which, ("numbered", "any", "only")),
        "after": after,
        "next": after % len(gore.round) + 1 if gore else 2,
    }


def panels(done: Performed) -> bool:
    """Whether several panels become one ring."""
    return word_of(done.step.written, "into") == ONE and done.before.cloths[done.touches[0]].copies > 1


def ends_said(done: Performed, faces: Faces, say: Phrasing) -> dict[str, Value]:
    """The values that messages of ends are given: the pieces, how they face each other, and what holds them."""
    return {
        "pieces": Pieces(done.touches),
        "tiers": flag(len(done.touches) > 1),
        "copies": done.before.cloths[done.touches[0]].copies,
        "faces": One(faces, ("right", "wrong")),
        "hold": One(say.room.hold_with, ("pins", "clips")),
        "length": Length(sum((_open_depth(done.before, piece) for piece in done.touches), Fraction(0))),
    }


def _pairs(bench: Bench, piece: str) -> tuple[Edge, Edge]:
    return bench.edge(f"{piece}.start"), bench.edge(f"{piece}.end")


def _closed(casing: Casing, seam: Fraction, merged: int) -> Casing:
    """A flat casing once a seam runs through its ends, and through those of the elastic in it."""
    return casing._replace(
        flat=False,
        length=(casing.length - 2 * seam) * merged,
        elastic_length=max(casing.elastic_length - 2 * seam, Fraction(0)) * merged,
    )


def _not_ready(bench: Bench, step: SolvedStep, pieces: tuple[str, ...]) -> Fault | None:
    written = step.written
    if fault := strips_not_joined(bench, written, "of", pieces):
        return fault
    for piece in pieces:
        if bench.cloths[piece].ring:
            return fault_at(
                written,
                "of",
                "FB307",
                f"`{piece}` is a ring already",
                help=f"leave `{piece}` out, or take out the earlier step that closes it",
            )
        tiers = [other for other in bench.unit(piece) if not bench.inside(other)]
        left_out = [other for other in tiers if other not in pieces]
        if left_out:
            others = " and ".join(f"`{name}`" for name in left_out)
            return fault_at(
                written,
                "of",
                "FB308",
                f"the side seam of `{piece}` passes through {others} too, sewn to it",
                notes=("once tiers are sewn together flat, one seam closes them all",),
                mend=mends.write(written, "of", f"[{', '.join(tiers)}]"),
            )
        if bench.cloths[piece].copies != bench.cloths[pieces[0]].copies:
            return fault_at(
                written,
                "of",
                "FB305",
                f"there are {bench.cloths[piece].copies} of `{piece}` and {bench.cloths[pieces[0]].copies} of"
                f" `{pieces[0]}`",
                help="close pieces of different counts in steps of their own",
            )
    if len({bench.units[piece] for piece in pieces}) > 1:
        return fault_at(
            written,
            "of",
            "FB309",
            "these pieces are not sewn together, so one seam can't close them",
            help="give each of them its own `join ends` step",
        )
    return None


def _neat(bench: Bench, pieces: tuple[str, ...]) -> bool:
    return all(bench.edge(f"{piece}.{side}").state is not State.RAW for piece in pieces for side in ("start", "end"))


def _open_depth(bench: Bench, piece: str) -> Fraction:
    """How far a side seam runs along this piece: its sides less what turns and seams have taken."""
    left = bench.cloths[piece].piece.cut_depth - bench.edge(f"{piece}.top").used - bench.edge(f"{piece}.bottom").used
    return bench.beside(piece, left)
