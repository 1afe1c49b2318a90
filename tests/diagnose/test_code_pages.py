"""Every fault code is registered, used, and has a page whose example tells it and whose mend is sound."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from furbelow.diagnose.code_pages import page, source
from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault
from furbelow.verbs.command import run

from tests.test_faults import GARMENTS, Case, changed, faults_of

ROOT = Path(__file__).parents[2]
PAGES = ROOT / "compiler" / "furbelow" / "diagnose" / "code_pages"
HEADINGS = ["Why it matters", "Example", "A mend"]

_BLOCK = re.compile(r"^```(?P<kind>\w+)\n(?P<text>.*?)^```$", re.DOTALL | re.MULTILINE)
_IN = re.compile(r"<!-- in (?P<base>\w+)(?:, where this stands:\n(?P<text>.*?))?\s*-->", re.DOTALL)
_NOT_RUN = re.compile(r"<!-- not run: .+ -->")


def _used() -> set[str]:
    written = (path for path in (ROOT / "compiler").rglob("*.py") if path.name != "codes.py")
    return {code for path in written for code in re.findall(r'"(FB\d{3})"', path.read_text(encoding="utf-8"))}


def test_every_code_in_the_source_is_registered_and_every_registered_one_is_used() -> None:
    assert _used() == set(CODES)


def test_every_code_has_a_page_and_every_page_a_code() -> None:
    assert {path.stem for path in PAGES.glob("*.md")} == set(CODES)


@pytest.mark.parametrize("code", sorted(CODES))
def test_a_page_has_its_title_and_all_its_parts(code: str) -> None:
    text = source(code)
    assert text is not None
    assert text.startswith(f"# {code}: {CODES[code]}\n\n")
    assert re.findall(r"^## (.*)$", text, re.MULTILINE) == HEADINGS
    shown = page(code)
    assert shown is not None
    assert "<!--" not in shown
    parts = re.split(r"^#.*$", shown, flags=re.MULTILINE)
    assert all(part.strip() for part in parts[1:])


def _example(code: str) -> tuple[str, str] | None:
    """The demo with the example of a page, and with its mend; nothing where the page says that it can't be run."""
    text = source(code)
    assert text is not None
    if not (at := _IN.search(text)):
        assert _NOT_RUN.search(text), f"{code} does not say where its example stands"
        return None
    example, mend = (block["text"] for block in _BLOCK.finditer(text))
    stands = (at["text"] or mend).splitlines()
    base = (GARMENTS / f"{at['base']}.yaml").read_text(encoding="utf-8").splitlines()

    def put(new: str) -> str:
        block = []
        for old_part, new_part in zip(_parts(stands), _parts(new.splitlines()), strict=True):
            block += [*("-" + line for line in old_part), *("+" + line for line in new_part), "..."]
        return "\n".join(changed(base, block, code)) + "\n"

    return put(example), put(mend)


def _parts(lines: list[str]) -> list[list[str]]:
    parts: list[list[str]] = [[]]
    for line in lines:
        if line == "...":
            parts.append([])
        else:
            parts[-1].append(line)
    return parts


RUN = [code for code in sorted(CODES) if source(code) is None or not _NOT_RUN.search(source(code) or "")]


@pytest.mark.parametrize("code", RUN)
def test_the_example_tells_the_code_and_the_mend_is_sound(code: str) -> None:
    example = _example(code)
    assert example is not None
    faulty, mended = example
    assert code in {fault.code for fault in _faults(code, faulty)}
    assert [fault.headline for fault in _faults(code, mended) if fault.is_error or fault.code == code] == []


def _faults(code: str, spec: str) -> tuple[Fault, ...]:
    return (*faults_of(Case(code, spec)), *(_cut_faults(spec) if code.startswith("FB5") else ()))


def _cut_faults(spec: str) -> tuple[Fault, ...]:
    from furbelow.garment.workroom import Workroom
    from furbelow.order.chain import prove
    from furbelow.order.order import Order
    from furbelow.s1_read.read_spec import read_spec
    from furbelow.s4_cut.cut import cut

    read = read_spec(("case.yaml", spec.encode())).value
    assert read is not None
    order = Order(read, "size", next(iter(read.sizes.values())), {}, Workroom())
    proved = prove(order).value
    assert proved is not None
    return cut(proved.solved, order.room).faults


def test_four_pages_in_five_of_the_spec_itself_are_run() -> None:
    of_the_spec = [code for code in CODES if code[2] in "1234"]
    assert len(RUN) >= len(of_the_spec) * 0.8


def test_the_command_shows_a_page_in_either_case_and_the_list(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["explain-code", "fb304"]) == 0
    assert capsys.readouterr().out == page("FB304")
    assert run(["explain-code"]) == 0
    assert len(capsys.readouterr().out.splitlines()) == len(CODES)


@pytest.mark.parametrize("asked", ["FB999", "304", "../codes", "FB304.md", ""])
def test_the_command_knows_no_other_page(asked: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["explain-code", asked]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert "no fault has the code" in told.err
