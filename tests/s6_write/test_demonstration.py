"""The plan for who shows the work: each piece lies ready as the work before left it, and nothing is waited for."""

from __future__ import annotations

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import guide_of, planned
from furbelow.order.order import Order
from furbelow.s6_write.guide.demonstration import Demonstration, demonstration
from furbelow.s6_write.guide.guide import Guide
from furbelow.verbs.command import run

from tests.demos.demos import SPECS, spec

NAMES = ("larkspur", "foxglove", "marigold")


def shown(name: str) -> tuple[Demonstration, Guide, list[tuple[str, ...]]]:
    """The plan, its guide, and the pieces that each operation of it works on."""
    size, body = next(iter(spec(name).sizes.items()))
    found = planned(Order(spec(name), f"size {size}", body, {}, Workroom(), size)).value
    assert found is not None
    guide = guide_of(found, f"size {size}", for_some=True)
    plan, _ = demonstration(*found, guide)
    keys = {operation.key for operation in guide.operations}
    touched = [done.touches for done in found.rehearsal.run.performed if f"step-{done.step.written.index + 1}" in keys]
    return plan, guide, touched


@pytest.mark.parametrize("name", NAMES)
def test_every_piece_is_ready_as_the_last_work_on_it_left_it(name: str) -> None:
    plan, _, touched = shown(name)
    last: dict[str, str] = {}
    assert len(plan.shown) == len(touched) > 8
    for part, pieces in zip(plan.shown, touched, strict=True):
        assert len(part.ready) == len(set(pieces))
        for ready, piece in zip(part.ready, dict.fromkeys(pieces), strict=True):
            if piece in last:
                assert ready.endswith((f"after {last[piece]}", f"shown in {last[piece]}"))
            else:
                assert ready.endswith(", cut")
        last |= dict.fromkeys(pieces, part.letter)


@pytest.mark.parametrize("name", NAMES)
def test_what_is_not_just_shown_is_prepared_and_nothing_else(name: str) -> None:
    plan, _, _ = shown(name)
    asked = {ready for part in plan.shown for ready in part.ready if "just shown" not in ready}
    assert set(plan.prepare) == asked
    assert len(plan.prepare) == len(asked)


@pytest.mark.parametrize("name", NAMES)
def test_a_part_says_its_cautions_and_its_captions_are_those_of_the_guide(name: str) -> None:
    plan, guide, _ = shown(name)
    operations = {operation.letter: operation for operation in guide.operations}
    for part in plan.shown:
        operation = operations[part.letter]
        assert part.cautions == operation.cautions
        assert part.captions[0] == f"{part.letter} {operation.title}"
        for step in operation.steps:
            if step.check:
                assert f"{part.letter}{step.number} {step.check}" in part.captions
    assert any(part.view.startswith("Seen from near by") for part in plan.shown)


def test_it_is_written_beside_one_guide_and_not_for_a_class(
    tmp_path: object, capsys: pytest.CaptureFixture[str]
) -> None:
    call = ["make", str(SPECS / "larkspur.yaml"), "--no-pdf", "--demonstration", "--out", f"{tmp_path}/out"]
    assert run([*call, "--size", "M"]) == 0
    with open(f"{tmp_path}/out/demonstration.html", encoding="utf-8") as page:
        assert "To have ready" in page.read()
    assert run([*call, "--every-size"]) == 2
    assert "--demonstration goes with one guide" in capsys.readouterr().err
