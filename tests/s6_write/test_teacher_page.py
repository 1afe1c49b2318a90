"""The sheets for whoever leads a class: what is done in a lesson, where each stops, what lies in a pile."""

from __future__ import annotations

import html
import re
from fractions import Fraction
from pathlib import Path

import pytest
from furbelow.s6_write.guide.stops import sittings
from furbelow.verbs.command import run
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

SPECS = Path(__file__).parents[2] / "specs"


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return made(tmp_path_factory.mktemp("class"))


def made(place: Path, *more: str) -> Path:
    """The folder of a class of two."""
    roster = place / "class.csv"
    heading = "wearer;notes;layers;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)"
    roster.write_text(
        f"{heading}\nAda;left-handed;1;71.3;97.1;101.7;45.3\nBo;;2;83.9;109.3;104.9;46.7\n", encoding="utf-8"
    )
    room = str(SPECS / "workrooms" / "theatre.yaml")
    call = ["make", str(SPECS / "larkspur.yaml"), "--class", str(roster), "--workroom", room, "--no-pdf", "--data"]
    assert run([*call, *more, "--out", str(place / "out")]) == 0
    return place / "out"


def told(page: Path) -> str:
    text = re.sub(r"<(style|script|svg)\b.*?</\1>", " ", page.read_text(encoding="utf-8"), flags=re.DOTALL)
    return html.unescape(re.sub(r"<[^>]*>", " ", text)).replace("\u00a0", " ")


def test_the_sheets_have_names_notes_and_no_measure_and_no_page_leads_to_them(folder: Path) -> None:
    text = told(folder / "teacher.html")
    assert "Ada" in text
    assert "left-handed" in text
    assert not re.search(r"71\.3|97\.1|101\.7|45\.3", text)
    assert '<meta name="robots" content="noindex">' in (folder / "teacher.html").read_text(encoding="utf-8")
    others = [page for page in folder.rglob("*.html") if page.name != "teacher.html"]
    assert len(others) == 5
    for page in others:
        assert "teacher.html" not in page.read_text(encoding="utf-8")
        assert "left-handed" not in page.read_text(encoding="utf-8")


def test_a_label_tells_the_tags_of_the_pile_that_the_guide_takes(folder: Path) -> None:
    text = (folder / "teacher.html").read_text(encoding="utf-8")
    for number, who in ((1, "ada"), (2, "bo")):
        label = re.search(rf"<li><b>{number}</b><span class=\"small\">(.*?)</span>", text)
        assert label
        tags = [
            html.unescape(tag).replace("\u00a0", " ").split(" ")[0].split(",")[0]
            for tag in re.findall(r"<i>(.*?)</i>", label[1])
        ]
        guide = told(folder / who / "guide.html")
        pile = re.search(r"(\d+) pieces lie in it", guide)
        assert pile
        assert len(tags) == int(pile[1])
        assert all(re.search(rf"\b{tag}\b", guide) for tag in tags)
        assert all(tag.startswith(str(number)) for tag in tags)


def test_a_class_that_cuts_apart_has_lessons_that_begin_with_the_cutting_and_no_piles(tmp_path: Path) -> None:
    folder = made(tmp_path, "--apart")
    page = told(folder / "teacher.html")
    assert re.search(r"Lesson 1\b.*?\bA\s+Cut the soft nylon dress net", page, re.DOTALL)
    assert "pile" not in page
    guide = (folder / "bo" / "guide.md").read_text(encoding="utf-8")
    slips = re.findall(
        r"<strong>Bo, Lesson \d+</strong>(.*?)</ul>", (folder / "handouts.html").read_text("utf-8"), re.DOTALL
    )
    letters = [letter for work in slips for letter in re.findall(r"<b>([A-Z]+)</b>", work)]
    assert letters == re.findall(r"^### ([A-Z]+)\b", guide, re.MULTILINE)


def test_the_progress_of_who_has_no_such_work_is_a_dash(folder: Path) -> None:
    """Ada has one layer of net, so nothing to stack of it."""
    text = (folder / "teacher.html").read_text(encoding="utf-8")
    progress = text[text.index('<section id="progress"') : text.index('<section id="marks"')]
    letters = re.findall(r"<th scope=\"col\">([A-Z]+)</th>", progress)
    rows = [re.findall(r"<td>(.*?)</td>", row) for row in re.findall(r"<tr><td class=\"letter\">.*?</tr>", progress)]
    assert len(rows) == 2
    for who, row in zip(("ada", "bo"), rows, strict=True):
        guide = (folder / who / "guide.md").read_text(encoding="utf-8")
        for letter, box in zip(letters, row, strict=True):
            assert bool(re.search(rf"^#+ {letter}\b", guide, re.MULTILINE)) == (box == ""), (who, letter)
    assert any(box for box in rows[0])


def test_lessons_end_where_the_work_can_be_put_away(folder: Path) -> None:
    text = told(folder / "teacher.html")
    assert "Lessons of 2 h" in text
    last = max(int(number) for number in re.findall(r"Lesson (\d+)", text))
    stop = re.search(r"Look the garment over", text[text.index(f"Lesson {last}") :])
    assert stop
    assert len(re.findall(r"Who misses this lesson", text)) == last


def test_the_slips_of_a_pupil_are_her_whole_guide_in_its_order(folder: Path) -> None:
    page = (folder / "handouts.html").read_text(encoding="utf-8")
    for who, name in (("Ada", "ada"), ("Bo", "bo")):
        slips = re.findall(rf"<strong>{who}, Lesson \d+</strong>(.*?)</ul>\s*<p>(.*?)</p>", page, re.DOTALL)
        lessons = [re.findall(r"<b>([A-Z]+)</b>", work) for work, _ in slips]
        guide = (folder / name / "guide.md").read_text(encoding="utf-8")
        assert [letter for lesson in lessons for letter in lesson] == re.findall(
            r"^### ([A-Z]+)\b", guide, re.MULTILINE
        )
        for letters, (_, stop) in zip(lessons, slips, strict=True):
            assert f"Stop after {letters[-1]}." in stop
            aim = html.unescape(stop.split("Then: ")[1])
            assert aim.replace("\u00a0", " ") in told(folder / name / "guide.html")


def test_each_way_of_working_is_shown_once_and_in_the_lesson_that_it_is_first_met_in(folder: Path) -> None:
    page = told(folder / "teacher.html")
    lessons = page[page.index("Lesson 1") : page.index("Tick a letter")]
    skills = page[page.index("Way of working") :]
    first = re.findall(r"^\s*([A-Z]+) [A-Z]", skills, re.MULTILINE)
    shown = re.findall(r"show it first: (.*?)\.\s", lessons)
    assert shown
    letters = [letter for told in shown for letter in re.findall(r"\b([A-Z]{1,2}) [A-Z]", told)]
    assert len(letters) == len(set(letters)) > 5
    assert set(letters) <= set(first) | set(letters)


# The first draw of a run looks through all modules for numbers, which a busy machine takes long for.
@settings(suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(st.tuples(st.integers(1, 90), st.booleans()), min_size=1, max_size=30), st.integers(30, 180).map(Fraction)
)
def test_every_sitting_is_in_time_or_ends_at_the_first_safe_place(
    work: list[tuple[int, bool]], longest: Fraction
) -> None:
    minutes, safe = [Fraction(each) for each, _ in work], [is_safe for _, is_safe in work]
    ends = sittings(minutes, safe, longest)
    assert ends == sorted(set(ends))
    start = 0
    for end in [*ends, len(work) - 1]:
        spent = sum(minutes[start : end + 1])
        assert end == len(work) - 1 or safe[end]
        assert spent <= longest or not any(safe[start:end])
        start = end + 1


def test_a_lesson_ends_where_the_guide_ends_a_sitting(folder: Path) -> None:
    """But for the last: what was wetted dries before the last look, which the guide has in one sitting with it."""
    slips = told(folder / "handouts.html")
    for who in ("Ada", "Bo"):
        parts = re.split(r"(?m)^### ([A-Z]+) ", (folder / who.lower() / "guide.md").read_text(encoding="utf-8"))
        ends = [letter for letter, text in zip(parts[1::2], parts[2::2], strict=True) if "End of sitting" in text]
        lessons = re.findall(rf"{who}, Lesson \d+.*?Stop after ([A-Z]+)", slips, re.DOTALL)
        assert ends
        assert lessons[: len(ends)] == ends
        assert len(lessons) - len(ends) in (1, 2)
