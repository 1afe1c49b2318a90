"""The tutorial in specs/README.md: every file, change and command on its page is run, in order, in an empty folder."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest
from furbelow.verbs.command import run

from tests.test_faults import changed

ROOT = Path(__file__).parents[1]
PAGE = ROOT / "specs" / "README.md"

_BLOCK = re.compile(
    r"(?:<!-- (?P<does>file|change): (?P<name>[\w.-]+) -->\n)?^```(?P<kind>\w+)\n(?P<text>.*?)^```$",
    re.DOTALL | re.MULTILINE,
)


def _calls(text: str) -> list[tuple[str, list[str]]]:
    """Each command of a console block with the lines it shall print."""
    calls: list[tuple[str, list[str]]] = []
    for line in text.splitlines():
        if line.startswith("$ "):
            calls.append((line[2:], []))
        else:
            calls[-1][1].append(line)
    return calls


def _prints(shown: list[str], printed: list[str]) -> bool:
    """Whether the printed lines are those shown, where `...` stands for any."""
    if not shown:
        return not printed
    if shown[0] == "...":
        return any(_prints(shown[1:], printed[at:]) for at in range(len(printed) + 1))
    return bool(printed) and shown[0] == printed[0] and _prints(shown[1:], printed[1:])


def test_every_block_of_the_tutorial_runs(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    done = []
    for block in _BLOCK.finditer(PAGE.read_text(encoding="utf-8")):
        kind, text, name = block["kind"], block["text"], block["name"]
        if block["does"] == "file":
            Path(name).write_text(text, encoding="utf-8")
        elif block["does"] == "change":
            lines = changed(Path(name).read_text(encoding="utf-8").splitlines(), text.splitlines(), name)
            Path(name).write_text("\n".join(lines) + "\n", encoding="utf-8")
        else:
            assert kind == "console", f"nothing runs this block: {text}"
            for call, shown in _calls(text):
                word, *arguments = shlex.split(call)
                assert word == "furbelow"
                run(arguments)
                told = capsys.readouterr()
                printed = (told.err + told.out).splitlines()
                assert _prints(shown, printed), f"{call} prints\n" + "\n".join(printed)
        done.append(kind)
    assert done.count("console") >= 5
    assert (tmp_path / "guide" / "guide.html").is_file()


def test_the_gallery_shows_every_demo() -> None:
    page = PAGE.read_text(encoding="utf-8")
    for path in (ROOT / "specs").glob("*.yaml"):
        assert f"({path.name})" in page, path.name


def test_every_link_leads_somewhere() -> None:
    for target in re.findall(r"\]\(([^)#]+)\)", PAGE.read_text(encoding="utf-8")):
        assert (PAGE.parent / target).exists(), target
