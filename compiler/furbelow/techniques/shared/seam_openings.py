"""A seam that closes a ring and is left open for a stretch: at its top for a way in, at its foot for a slit, or between."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, Opening, Seam, SeamGap, State
from furbelow.garment.levels import levels_of
from furbelow.garment.lying import Window
from furbelow.garment.message import Length, Value, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import Action, Kind, Parameter, Performed, fault_at, new_seam, refused, words_of
from furbelow.techniques.shared.closed_ends import seam_named
from furbelow.techniques.shared.laying import ravels

LEAST_SEWN = Fraction(30)  # of a seam that holds between its openings; house rule, maker to confirm
USUAL_GAP, LEAST_GAP = Fraction(40), Fraction(10)  # of a seam; house rules, maker to confirm
WIDEST_VENT = Fraction(60)  # a wider one is bulk; house rule, maker to confirm
JOIN_ENDS = "join ends"  # the seam that may stay open for a stretch
CLOSES = (JOIN_ENDS, "french seam", "flat felled seam", "lapped seam")
OPEN = {
    "open": Parameter("How far it stays open below the finished top edge, for a zip or a placket.", Kind.LENGTH, ""),
    "open at hem": Parameter("How far it stays open above the finished bottom edge, for a slit.", Kind.LENGTH, ""),
    "gap": Parameter("A stretch between that stays open, for a pocket.", Kind.LENGTH, ""),
    "gap below top": Parameter("With `gap`: from the finished top edge down to it.", Kind.LENGTH, ""),
}


def closing_step(solved: Solved, piece: str) -> Step | None:
    """The step of the spec that closes the ends of a piece to a ring; None where none does."""
    closing = (step.written for step in solved.steps if step.written.technique in CLOSES)
    return next((step for step in closing if piece in words_of(step, "of")), None)


def to_leave_open(step: SolvedStep, solved: Solved, seam: str, words: str) -> mends.Mend:
    """What to write, and where, so that the named seam stays open: in the step that closes it, which comes before this one."""
    piece = seam.partition(".")[0]
    closing = closing_step(solved, piece)
    if closing is None:
        return mends.Mend(f"put `- join ends: {{of: {piece}, {words}}}` before this step", None)
    if closing.technique != JOIN_ENDS:
        row = f"join ends: {{of: {piece}, {words}}}"
        return mends.Mend(f"write `- {row}` for the `{closing.technique}` of `{piece}`, before this step", None)
    moved = ", and move it before this step" if closing.index > step.written.index else ", before this step"
    return mends.Mend(f"write `{words}` in the `{closing.technique}` of `{piece}`{moved}", None)


def left_open(done: Performed, say: Phrasing) -> Performed:
    """The seam that was closed all along, with what the step leaves open of it; or refused.

    Fails: FB305, FB312, FB313, FB335.
    """
    step = done.step
    asked = [key for key in OPEN if key in step.amounts]
    if done.refused or not asked:
        return done
    pieces, seam = words_of(step.written, "of"), new_seam(done)
    if fault := _not_to_leave_open(done, say, seam):
        return refused(done.before, step, pieces, fault)
    first, last = pieces[0], pieces[-1]
    top, hem, gap = (step.mm(key) if key in step.amounts else Fraction(0) for key in ("open", "open at hem", "gap"))
    after = done.after
    from_cut = top + to_come(done.before, say, f"{first}.top")
    if top:
        edge = after.edge(f"{first}.top")
        round_it = round_foot(after, edge, from_cut)
        after = after.with_edges(edge._replace(slit=True, stands_out=2 * seam.width)).with_opening(
            Opening(edge.name, first, from_cut, Fraction(0), round_it, seam=seam.name)
        )
    if hem:
        deep = hem + to_come(done.before, say, f"{last}.bottom")
        after = after.with_edges(
            *(each._replace(slit=True, stands_out=2 * seam.width) for each in _within(after, pieces, deep))
        )
    hole = None
    if gap:
        down = step.mm("gap below top") + to_come(done.before, say, f"{first}.top")
        hole = SeamGap(down, gap)
    shorter = _sewn(done, say)
    after = after.with_seams(seam._replace(length=shorter, gap=hole, slit=hem))
    # Of several seams round one ring one is left open; of several rings the seam of each.
    open_seams = done.after.cloths[first].copies
    (whole,) = done.sewn
    sewn = (whole._replace(copies=seam.copies - open_seams), whole._replace(length=shorter, copies=open_seams))
    return done._replace(after=after, sewn=tuple(each for each in sewn if each.copies))


def marks_of_openings(done: Performed) -> tuple[Action, ...]:
    """Marking where the seam stops and begins again; nothing where it is sewn all along."""
    amounts, copies = done.step.amounts, done.after.cloths[words_of(done.step.written, "of")[0]].copies
    messages = {"open": "seam-open-top", "open at hem": "seam-open-hem", "gap": "seam-open-gap"}
    return tuple(
        Action(message, copies, values=seam_named(done)) for key, message in messages.items() if key in amounts
    )


def open_said(done: Performed, say: Phrasing) -> dict[str, Value]:
    """The values that messages of openings are given, measured from the edges as they are cut or sewn now."""
    step, pieces = done.step, words_of(done.step.written, "of")
    given = {key: step.mm(key) if key in step.amounts else Fraction(0) for key in OPEN}
    above, below = (to_come(done.before, say, name) for name in (f"{pieces[0]}.top", f"{pieces[-1]}.bottom"))
    begins = given["gap below top"] + above
    return {
        "open": Length(given["open"] + above),
        "open-at-hem": Length(given["open at hem"] + below),
        "gap-from": Length(begins),
        "gap-to": Length(begins + given["gap"]),
        "sewn": Length(_sewn(done, say)),
        "opens-above": flag("open" in step.amounts),
        "opens-between": flag("gap" in step.amounts),
        "opens-below": flag("open at hem" in step.amounts),
    }


def _sewn(done: Performed, say: Phrasing) -> Fraction:
    """How much of the seam is sewn: through all tiers, less its openings."""
    step, pieces, before = done.step, words_of(done.step.written, "of"), done.before
    length = sum((before.beside(piece, before.depth(piece)) for piece in pieces), Fraction(0))
    if "open" in step.amounts:
        length -= step.mm("open") + to_come(done.before, say, f"{pieces[0]}.top")
    if "open at hem" in step.amounts:
        length -= step.mm("open at hem") + to_come(done.before, say, f"{pieces[-1]}.bottom")
    return length - (step.mm("gap") if "gap" in step.amounts else 0)


def to_come(bench: Bench, say: Phrasing, name: str) -> Fraction:
    """What later steps still take at a piece edge, in mm: places are given from the finished edge."""
    taken = f"{name}_takes"
    whole = say.solved.length(taken) if taken in say.solved.values else Fraction(0)
    return max(whole - bench.edge(name).used, Fraction(0))


def _within(bench: Bench, pieces: tuple[str, ...], deep: Fraction) -> Iterator[Edge]:
    """The edges round the garment that an opening of the seam from below runs through."""
    left = deep
    for piece in reversed(pieces):
        yield bench.edge(f"{piece}.bottom")
        left -= bench.depth(piece)
        if left <= 0:
            return
        yield bench.edge(f"{piece}.top")


def _not_to_leave_open(done: Performed, say: Phrasing, seam: Seam) -> Fault | None:
    step, written, before = done.step, done.step.written, done.before
    pieces = words_of(written, "of")
    if ("gap" in step.amounts) != ("gap below top" in step.amounts):
        there, lacks = ("gap", "gap below top") if "gap" in step.amounts else ("gap below top", "gap")
        return fault_at(
            written,
            there,
            "FB313",
            f"`{there}` is given and `{lacks}` is not, and a gap has a length and a place",
            help=f"write `{lacks}` too, such as 12 cm",
        )
    if "open" in step.amounts and seam.copies > 1 and done.after.cloths[pieces[0]].copies > 1:
        return fault_at(
            written,
            "open",
            "FB305",
            f"there are {done.after.cloths[pieces[0]].copies} rings of `{pieces[0]}` and 1 way in",
            help=f"give each layer its own piece, or cut `{pieces[0]}` once",
        )
    raw = [f"{piece}.{side}" for piece in pieces for side in ("start", "end")]
    raw = [name for name in raw if before.edge(name).state is State.RAW]
    if raw and ravels(say.solved, pieces):
        return fault_at(
            written,
            None,
            "FB335",
            f"the edges of the opening, `{raw[0]}` and `{raw[-1]}`, are raw and their cloth ravels",
            notes=("beside an opening the two margins lie apart, so each is neatened by itself",),
            help="put " + " and ".join(f"`- neaten: {{edge: {name}}}`" for name in raw) + " before this step",
        )
    if "gap" in step.amounts and (fault := _gap_beyond(done, say)):
        return fault
    left = _sewn(done, say)
    if left < LEAST_SEWN:
        given = next(key for key in OPEN if key in step.amounts)
        return fault_at(
            written,
            given,
            "FB312",
            f"the openings leave {say.length(max(left, Fraction(0)))} of a seam of {say.length(seam.length)} to sew,"
            f" {say.length(LEAST_SEWN - left)} too little to hold",
            help="make the opening shorter: it must end inside the cloth",
        )
    return None


def gap_windows(step: SolvedStep) -> tuple[Window, ...]:
    """What a gap in a seam may be, and how far below the top: something goes through, and the seam above it holds."""
    if "gap" not in step.amounts:
        return ()
    gap, below = step.mm("gap"), step.mm("gap below top")
    return (
        Window("gap", "a gap", gap, least=USUAL_GAP, sewable_least=LEAST_GAP, why="something goes through"),
        Window(
            "gap below top", "the seam above a gap", below, least=LEAST_SEWN, sewable_least=LEAST_GAP, why="it holds"
        ),
    )


def _gap_beyond(done: Performed, say: Phrasing) -> Fault | None:
    """The fault of a gap that ends below the finished seam, or below what stays open at the hem."""
    step, pieces, before = done.step, words_of(done.step.written, "of"), done.before
    whole = sum((before.depth(piece) for piece in pieces), Fraction(0))
    whole -= to_come(before, say, f"{pieces[0]}.top") + to_come(before, say, f"{pieces[-1]}.bottom")
    whole -= step.mm("open at hem") if "open at hem" in step.amounts else 0
    over = step.mm("gap below top") + step.mm("gap") - whole
    if over <= 0:
        return None
    return fault_at(
        step.written,
        "gap below top",
        "FB312",
        f"the gap ends {say.length(whole + over)} below the top and the seam {say.length(whole)}, {say.length(over)} too low",
        help="place the gap higher, or make it shorter",
    )


def hung_below(bench: Bench, piece: str) -> tuple[str, ...]:
    """The pieces that hang from this one by a seam right below it."""
    levels = levels_of(bench)
    return tuple(other for other, over in levels.over.items() if over[:1] == (piece,))


def round_foot(bench: Bench, edge: Edge, slit: Fraction) -> Fraction:
    """How much cloth lies round the foot of an opening: of the layer that has least, flare and gathers counted."""
    found = []
    for piece in edge.pieces:
        deep = bench.depth(piece)
        if slit >= deep and (hung := hung_below(bench, piece)):
            found += [bench.edge(f"{below}.top").cloth_length for below in hung]
        else:
            found.append(bench.cloth_at(piece, slit))
    return min(found)
