"""One drawing stands for several only where all of them would say the same, and it names what its sentences name."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import combinations

import pytest
from furbelow.garment.message import Length
from furbelow.garment.phrasing import Phrasing
from furbelow.s6_write.figures import figures_for
from furbelow.s6_write.figures.joined_strips import _strip
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

from .drawn import demos, planned, sizes, words

_CALLOUT = re.compile(r"\d+")


def _said(figure: Figure) -> list[str]:
    """What is written in it, callouts aside, which are numbers alone."""
    return [line.text for line in words(figure) if not _CALLOUT.fullmatch(line.text)]


@pytest.mark.parametrize("demo", demos())
def test_drawings_that_stand_for_each_other_say_the_same(demo: str) -> None:
    for size in sizes(demo):
        found = planned(demo, size)
        run = found.rehearsal.run
        told = Words("en", Phrasing(run.solved, run.room, found.cutting.joins, found.cutting.lengths))
        first: dict[str, Figure] = {}
        for done in run.performed:
            for figure in figures_for(done, run, told, 1):
                if figure.like:
                    assert _said(first.setdefault(figure.like, figure)) == _said(figure), (size, figure.key)


@pytest.mark.parametrize("demo", demos())
def test_a_seam_of_joins_names_a_piece_that_is_cut_in_segments(demo: str) -> None:
    for size in sizes(demo):
        found = planned(demo, size)
        run = found.rehearsal.run
        say = Phrasing(run.solved, run.room, found.cutting.joins, found.cutting.lengths)
        told = Words("en", say)
        for done in run.performed:
            if done.step.written.technique != "join strips":
                continue
            pieced = [say.piece(piece) for piece in done.touches if say.joins.get(piece)]
            seams = [figure for figure in figures_for(done, run, told, 1) if figure.key.endswith("-seam")]
            assert len(seams) == (1 if pieced else 0)
            for figure in seams:
                named = " ".join(_said(figure))
                assert pieced[0].split()[0] in named
                assert figure.alt.count(pieced[0]) == 2, (size, figure.alt)


def _cut(demo: str, size: str) -> tuple[Phrasing, Words, list[tuple[tuple[str, ...], Figure]]]:
    """The drawings of joined strips, with the pieces of their steps."""
    found = planned(demo, size)
    run = found.rehearsal.run
    say = Phrasing(run.solved, run.room, found.cutting.joins, found.cutting.lengths)
    told = Words("en", say)
    drawn = [(done.touches, figure) for done in run.performed for figure in figures_for(done, run, told, 1)]
    return say, told, [(pieces, figure) for pieces, figure in drawn if figure.key.endswith("-strips")]


@pytest.mark.parametrize("demo", ["larkspur", "lupin", "marigold"])
def test_every_segment_has_its_tag_and_its_length(demo: str) -> None:
    for size in sizes(demo):
        say, told, drawings = _cut(demo, size)
        for pieces, figure in drawings:
            assert figure.shows  # the sentence that lays them out
            expected = [cut for piece in pieces for cut in dict.fromkeys(say.lengths.get(piece, ())) if len(cut) > 1]
            written = _said(figure)
            tags = [line for line in written if "·" in line]
            lengths = [written[written.index(name) + 1] for name in tags]
            assert lengths == [told.said(Length(each, "cut")) for cut in expected for each in cut], (size, figure.key)


@pytest.mark.parametrize("many", [2, 5, 9, 14])
def test_labels_of_many_narrow_segments_lie_apart(many: int) -> None:
    say, told, _ = _cut("marigold", sizes("marigold")[0])
    sheet = Sheet()
    _strip(sheet, 0, "3", 1, (Fraction(1000), *[Fraction(255)] * many), told, 320 / (1000 + 255 * many))
    figure = sheet.figure("strips", "", "")
    lines = words(figure)
    assert len(lines) == 2 * (many + 1)
    assert not any(one.meets(other) for one, other in combinations(lines, 2))
