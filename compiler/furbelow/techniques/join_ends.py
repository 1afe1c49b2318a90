"""Join the two ends of a strip to a ring, or several panels to one ring.

What it does: sews start to end, right sides together, through every tier of the unit.
Edges before and after: start and end raw or neatened before, sewn after; top and bottom become rings.
Allowance: the seam, at start and at end of every piece it passes through.
Example: `- join ends: {of: flounce, seam: 1 cm}`
Source: bearing seams of 1 cm with a 1-2 mm stitch are common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    new_seam,
    words_of,
)
from furbelow.garment.tolerance import CUT_OFF, SEAM_OFF, round_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.closed_ends import (
    EACH,
    ONE,
    RUN_OUT,
    close_ends,
    ends_laid,
    ends_said,
    panels,
    takes_at_ends,
)
from furbelow.techniques.shared.iron import iron_hot, iron_tools, long_seam
from furbelow.techniques.shared.laying import end_margins, seam_window
from furbelow.techniques.shared.marks import tag
from furbelow.techniques.shared.seam_openings import (
    OPEN,
    WIDEST_VENT,
    gap_windows,
    left_open,
    marks_of_openings,
    open_said,
)


class JoinEnds:
    name = "join ends"
    about = "Close a strip to a ring, or sew panels side by side to one ring."
    pictures = (Picture.PIECES, Picture.PANELS, Picture.SEWN_SEAM)
    parameters = {
        "of": Parameter("The piece, or every tier of the unit, that the seam passes through.", Kind.PIECES),
        "seam": Parameter("Seam allowance at each end.", Kind.LENGTH, "1 cm"),
        **OPEN,
        "into": Parameter("A ring of each copy, or one ring of all copies.", (EACH, ONE), EACH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return takes_at_ends(step, "seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        pieces, seam = words_of(done.step.written, "of"), done.step.mm("seam")
        window = seam_window(solved, "seam", seam, pieces, min(solved.pieces[each].length for each in pieces) / 2)
        # A vent lies under itself by the whole margin.
        window = window._replace(most=WIDEST_VENT) if "open at hem" in done.step.amounts else window
        windows = (window, *gap_windows(done.step))
        return OnCloth(end_margins(ledger, pieces, seam, "seam"), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        done = left_open(close_ends(bench, step, solved, room), Phrasing(solved, room))
        if done.refused or not _pressed_open(done, solved):
            return done
        return done._replace(handled=new_seam(done).length * new_seam(done).copies)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        pieces, copies = done.touches, done.after.cloths[done.touches[0]].copies
        lowest, side_by_side = done.after.edge(f"{pieces[-1]}.bottom"), panels(done)
        pieced = any(say.joins.get(piece, 0) for piece in pieces)
        if side_by_side:
            sew = "join-ends-sew-panels-pieced" if pieced else "join-ends-sew-panels"
        else:
            sew = "join-ends-sew-pieced" if pieced else "join-ends-sew"
        marks = marks_of_openings(done)
        if marks:
            sew = "join-ends-sew-open-panels" if side_by_side else "join-ends-sew-open"
        singly, opened = _singly(done), _pressed_open(done, say.solved)
        top = done.after.edge(f"{pieces[0]}.top")
        foot = done.after.edge(f"{pieces[0]}.bottom")
        flares = abs(top.cloth_length - foot.cloth_length) > say.solved.slack
        actions = (
            *ends_laid(done),
            *marks,
            *((Action("join-ends-sew-closed", copies),) if marks and side_by_side else ()),
            Action(sew, copies),
            *((Action("join-ends-press", copies),) if opened else ()),
            Action("join-ends-measure", copies),
            *((Action("join-ends-measure-top", copies),) if flares else ()),
            *tag(done, pieces, say),
        )
        values: Values = {
            **ends_said(done, "right", say),
            "lowest": Pieces(pieces[-1:]),
            "panels": flag(side_by_side),
            "others": done.before.cloths[pieces[0]].copies - 1,
            **open_said(done, say),
            "seam-width": Length(done.step.mm("seam")),
            "stitch": Stitch(done.sewn[0].stitch),
            "margins": One("ironed" if opened else "apart" if singly else "aside", ("ironed", "apart", "aside")),
            "highest": Pieces(pieces[:1]),
            "open-top": flag(top.stands_out),
            "round-top": Length(done.after.measured(top)),
            "off-top": Length(done.after.strips_round(pieces[0]) * SEAM_OFF + CUT_OFF, "off"),
            "run-out": Length(RUN_OUT, "about"),
            "open-ends": flag(lowest.stands_out),
            "round": Length(done.after.measured(lowest)),
            "off": Length(round_off(done.after, lowest, say), "off"),
        }
        title = "join-ends-title-panels" if side_by_side else "join-ends-title"
        cautions = (held_out(say.room), *((iron_hot(done, say),) if opened else ()))
        tools = iron_tools(done, say) if opened else ()
        return Instructions(title, "join-ends-aim", actions, values, cautions, tools, ironed=("join-ends-press",))


def _singly(done: Performed) -> bool:
    """Whether each end was neatened by itself, so that the margins lie apart."""
    return done.before.edge(f"{done.touches[0]}.start").state is State.NEATENED


def _pressed_open(done: Performed, solved: Solved) -> bool:
    return _singly(done) and long_seam(solved, new_seam(done))


TECHNIQUE = JoinEnds()
