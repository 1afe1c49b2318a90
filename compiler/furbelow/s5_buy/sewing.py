"""What the steps sew, for the reels and the bobbins: every run with its stitch, its length and what lies under it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.garment.limits import thickness
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed, Sewn
from furbelow.s5_buy.bobbins import BobbinPlan, BobbinWork, Rows, plan_bobbins
from furbelow.s5_buy.thread import SeamRun, thread_for_seams

Joins = Mapping[str, int]  # how many joins the cutting plan gives each piece


def copies_of(sewn: Sewn, joins: Joins) -> int:
    return joins.get(sewn.joins_of, 0) if sewn.joins_of else sewn.copies


def runs_of(done: Performed, solved: Solved, joins: Joins) -> list[SeamRun]:
    """The stitching of one step; none for joins where nothing is joined."""
    thick = _under_the_needle(done, solved)
    return [
        SeamRun(sewn.kind, sewn.length, copies_of(sewn, joins), sewn.stitch, thick)
        for sewn in done.sewn
        if sewn.kind and copies_of(sewn, joins)
    ]


def bobbins_for(steps: Iterable[Sequence[SeamRun]], capacity: Fraction | None) -> BobbinPlan | None:
    """Before which rows of which step a fresh bobbin goes in; None where nobody knows what a bobbin holds."""
    return None if capacity is None else plan_bobbins(_bobbin_work(steps), capacity)


def _bobbin_work(steps: Iterable[Sequence[SeamRun]]) -> Iterator[BobbinWork]:
    for at, runs in enumerate(steps):
        rows, before = sum(run.passes for run in runs), 0
        for run in runs:
            one = thread_for_seams((run._replace(passes=1),), Fraction(0))
            yield BobbinWork(Rows(at, before, rows), one.bobbin, run.passes)
            before += run.passes


def _under_the_needle(done: Performed, solved: Solved) -> Fraction:
    """The thickness of all plies of the seam that the step sews, in mm; of one ply where it sews none."""

    def ply_of(piece: str) -> Fraction:
        return thickness(solved, solved.pieces[piece].piece.cloth.text)

    seams = [seam for name, seam in done.after.seams.items() if done.before.seams.get(name) != seam]
    sewn = [sum((ply_of(ply.piece) * ply.copies for ply in seam.plies), Fraction(0)) for seam in seams]
    return max(sewn or map(ply_of, done.touches), default=Fraction(0))
