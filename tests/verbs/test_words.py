"""`furbelow words`: what can be said differently, what is still to be said, what can't be said."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.s6_write.words.check_own import check_own
from furbelow.verbs.command import run


def test_the_languages_and_files_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["words"]) == 0
    languages, files = capsys.readouterr().out.splitlines()
    assert "en" in languages
    assert "gather" in files


def test_a_list_says_what_must_be_told_and_can_be_copied_as_it_is(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["words", "--list", "join ends"]) == 0
    told = capsys.readouterr().out
    assert "join-ends-title = " in told
    assert run(["words", "--list", "gather"]) == 0
    told = capsys.readouterr().out
    assert "# always says $apart, $second-row\ngather-second-row = " in told
    (tmp_path / "en").mkdir()
    (tmp_path / "en" / "gather.ftl").write_text(told, encoding="utf-8")
    assert check_own(str(tmp_path)) == ()


def test_a_file_that_is_not_there_is_told_with_the_nearest(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["words", "--list", "gahter"]) == 2
    assert "did you mean gather?" in capsys.readouterr().err


def test_what_a_new_language_lacks_is_all_of_english(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["words", "--missing", "nl"]) == 1
    told = capsys.readouterr().out
    assert "### gather.ftl" in told
    assert "gather-second-row = Sew a second row" in told
    assert run(["words", "--missing", "en"]) == 0
    assert capsys.readouterr().out == "en: nothing is missing\n"


@pytest.mark.usefixtures("made_up_language")
def test_what_a_language_lacks_is_listed_with_what_it_says_otherwise(capsys: pytest.CaptureFixture[str]) -> None:
    from furbelow.resources import template

    file = template("words/eo/gather.ftl")
    whole = file.read_text("utf-8")
    lines = [line for line in whole.splitlines() if not line.startswith(("gather-spread", "gather-old-marks"))]
    assert run(["words", "--missing", "eo"]) == 0
    try:
        from furbelow.s6_write.words.kept_words import shipped

        shipped.cache_clear()
        file.write_text("\n".join(lines).replace("{ $apart }", "five") + "\n", "utf-8")
        capsys.readouterr()
        assert run(["words", "--missing", "eo"]) == 1
    finally:
        file.write_text(whole, "utf-8")
        shipped.cache_clear()
    told = capsys.readouterr().out
    assert "gather-old-marks = Rub out" in told
    assert "# gather-second-row does not always say `$apart`" in told
    assert "gather-first-row =" not in told


def test_a_folder_is_checked(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["words", "--check", str(tmp_path / "none")]) == 2
    (tmp_path / "en").mkdir()
    own = tmp_path / "en" / "mine.ftl"
    own.write_text("page-tools = What you need\n", encoding="utf-8")
    assert run(["words", "--check", str(tmp_path)]) == 0
    own.write_text("page-tuls = What you need\n", encoding="utf-8")
    assert run(["words", "--check", str(tmp_path)]) == 1
    assert "did you mean `page-tools`?" in capsys.readouterr().err
