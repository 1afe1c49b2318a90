"""A teacher's own messages: said in the place of the shipped ones, and refused where they leave out what must be told."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.s6_write.words.check_own import check_own
from furbelow.verbs.command import run

from tests.demos.demos import SPECS

LARKSPUR = str(SPECS / "larkspur.yaml")
Room = Callable[..., Path]


@pytest.fixture
def room(tmp_path: Path) -> Room:
    """A workroom with own messages: by the name of their file, or as `en/mine.ftl`."""

    def made(text: str = "", **files: str) -> Path:
        for name, content in ({"en/mine": text} | files).items():
            file = tmp_path / "my-words" / f"{name}.ftl"
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(content, encoding="utf-8")
        workroom = tmp_path / "room.yaml"
        workroom.write_text("workroom: 1\nwords: my-words\n", encoding="utf-8")
        return workroom

    return made


def _faults(room: Path) -> list[Fault]:
    return list(check_own(str(room.parent / "my-words")))


def _made(room: Path) -> str:
    out = room.parent / "out"
    assert run(["make", LARKSPUR, "--size", "M", "--workroom", str(room), "--no-pdf", "--out", str(out)]) == 0
    return (out / "guide.md").read_text("utf-8") + (out / "guide.html").read_text("utf-8")


def test_a_message_of_her_own_is_said_and_its_check_stays(room: Room) -> None:
    own = "gather-second-row = Now row two: { $second-row } from the edge, { $apart } below row one."
    guide = _made(room(own))
    assert "Now row two: 8 mm from the edge, 5 mm below row one." in guide
    assert "Sew a second row the same way" not in guide
    assert "The rows do not cross." in guide


def test_a_fixed_word_of_the_page_and_one_attribute_alone_can_be_said_her_way(room: Room) -> None:
    guide = _made(room("page-cutting = At the table\ngather-second-row =\n    .check = Side by side they run."))
    assert "## At the table" in guide
    assert ">At the table<" in guide
    assert "Side by side they run." in guide
    assert "Sew a second row the same way" in guide


def test_words_of_another_language_are_left_alone(room: Room) -> None:
    assert _faults(room(**{"en/mine": "page-cutting = At the table"})) == []
    (fault,) = _faults(room(**{"nl/mine": "page-cutting = Knippen"}))
    assert fault.code == "FB160"


@pytest.mark.parametrize(
    ("own", "code", "said"),
    [
        ("gather-spred = Spread.", "FB163", "no message is called `gather-spred`"),
        ("gather-second-row = Sew again.", "FB164", "`gather-second-row` does not always say `$apart`"),
        ("gather-second-row = { $apart }, { $second-rwo }", "FB163", "`gather-second-row` is given no value called"),
        ("gather-second-row =\n    .chek = Good.", "FB163", "`gather-second-row` has no attribute called `chek`"),
        ("gather-first-row = { $in-runs }", "FB163", "`$in-runs` chooses among sentences, and `gather-first-row` says"),
        (
            "gather-spread = { $parts ->\n    [eight] Spread.\n   *[4] Spread.\n }",
            "FB163",
            "`gather-spread` chooses by a word that parts is never, `eight`",
        ),
        ("gather-set-back = { gather-aim }", "FB163", "`gather-set-back` refers to `gather-aim`"),
        ("gather-set-back = { gather-set-back }", "FB163", "`gather-set-back` refers to `gather-set-back`"),
        ("gather-aim = { EDGE($cloth) } { $short } { $ratio }", "FB163", "`gather-aim` asks EDGE what it can't tell"),
        ("gather-set-back = { NUMBER(5) }", "FB163", "`gather-set-back` asks NUMBER what it can't tell"),
        ('gather-set-back = { "" }', "FB164", "`gather-set-back` says nothing"),
        ("caution-pins = Mind the pins.", "FB164", "`caution-pins` does not say the whole of the caution"),
        (
            "gather-set-back = Set { 1 }" + "{ 1 }" * 500,
            "FB163",
            "`gather-set-back` is made of 502 parts, more than 500",
        ),
        ("gather-set-back Set it back.", "FB162", "mine.ftl, line 1: "),
        ("gather-set-back = Back.\ngather-set-back = Back.", "FB162", "mine.ftl: `gather-set-back` stands there twice"),
        ("gather-set-back = " + "{" * 5000, "FB162", "mine.ftl: a message is nested too deep"),
    ],
)
def test_what_can_not_be_said_is_refused_where_it_stands(own: str, code: str, said: str, room: Room) -> None:
    found = [fault for fault in _faults(room(own)) if fault.code == code and fault.headline.startswith(said)]
    assert len(found) == 1
    assert found[0].primary is not None
    assert found[0].primary.span.file.endswith("mine.ftl")


def test_a_caution_may_be_added_to_but_not_within_a_choice(room: Room) -> None:
    whole = "Take each pin out before it reaches the needle, and count them back into the box."
    assert _faults(room(f"caution-pins = {whole} In our room a second person counts.")) == []
    chosen = f"caution-pins = {{ 1 ->\n    [1] {whole}\n   *[other] Go on.\n }}"
    assert "FB164" in [fault.code for fault in _faults(room(chosen))]


def test_a_value_may_be_counted_in_as_many_ways_as_she_likes(room: Room) -> None:
    own = "all-of-it = { $copies ->\n    [2] both\n    [3] all three\n   *[other] all { $copies }\n }"
    assert _faults(room(own)) == []


def test_check_and_make_refuse_them_with_file_and_line(room: Room, capsys: pytest.CaptureFixture[str]) -> None:
    workroom = room("page-tools = What you need\n\ngather-second-row = Sew again.")
    assert run(["check", LARKSPUR, "--workroom", str(workroom)]) == 1
    told = capsys.readouterr().err
    assert "mine.ftl:3:1" in told
    assert "gather-second-row = Sew again." in told
    assert "note: shipped: Sew a second row the same way" in told
    assert run(["make", LARKSPUR, "--size", "M", "--workroom", str(workroom), "--out", str(workroom.parent / "o")]) == 1


@pytest.mark.parametrize("words", ["..", "../elsewhere", "/etc", "nowhere", "room.yaml"])
def test_a_folder_elsewhere_or_none_is_refused(words: str, room: Room, capsys: pytest.CaptureFixture[str]) -> None:
    workroom = room("page-tools = What you need")
    workroom.write_text(f"workroom: 1\nwords: {words}\n", encoding="utf-8")
    assert run(["check", LARKSPUR, "--workroom", str(workroom)]) == 1
    assert "error FB165" in capsys.readouterr().err


def test_a_link_out_of_the_folder_is_refused(room: Room, tmp_path_factory: pytest.TempPathFactory) -> None:
    workroom = room("page-tools = What you need")
    elsewhere = tmp_path_factory.mktemp("elsewhere") / "theirs.ftl"
    elsewhere.write_text("page-tools = Theirs", encoding="utf-8")
    (workroom.parent / "my-words" / "en" / "theirs.ftl").symlink_to(elsewhere)
    assert [fault.code for fault in _faults(workroom)] == ["FB165"]
