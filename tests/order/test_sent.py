"""What is sent to whoever makes a guide: the spec with all that it names, so that no file of it has to lie there."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import TypeVar

from furbelow.order.crew import Alone
from furbelow.order.make_class import Making, Together
from furbelow.order.pupil import HowMade, Sent, ToPlan, plan_pupil, sent
from furbelow.order.read_order import Asked, OrderReader
from furbelow.order.shelf import Shelf
from furbelow.s6_write.folder import SetKind

_Job = TypeVar("_Job")
_Done = TypeVar("_Done")

SPECS = Path(__file__).parents[2] / "specs"
ROSTER = (
    "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)\nBo;70;98;104;46\nCleo;74;101;105;46\n"
)
SPEC = """\
furbelow: 1
based on: base/larkspur.yaml
title: Larkspur, changed
"""


def test_a_spec_goes_with_the_files_that_it_is_built_on(tmp_path: Path) -> None:
    (tmp_path / "base").mkdir()
    shutil.copy(SPECS / "larkspur.yaml", tmp_path / "base")
    (tmp_path / "changed.yaml").write_text(SPEC, encoding="utf-8")
    (tmp_path / "class.csv").write_text(ROSTER, encoding="utf-8")
    order = OrderReader().orders(Asked(str(tmp_path / "changed.yaml"), wearer=str(tmp_path / "class.csv")))[0]
    told = sent(order)
    alone = plan_pupil(ToPlan(told, b""))
    assert alone.garment is not None
    # As on a machine that has none of it.
    shutil.rmtree(tmp_path / "base")
    (tmp_path / "changed.yaml").unlink()
    assert plan_pupil(ToPlan(Sent(*told), b"")) == alone


def test_whoever_has_other_files_of_the_workroom_makes_nothing(tmp_path: Path) -> None:
    (tmp_path / "my-words" / "en").mkdir(parents=True)
    own = tmp_path / "my-words" / "en" / "own.ftl"
    own.write_text("page-tools = What is needed\n", encoding="utf-8")
    (tmp_path / "hall.yaml").write_text("workroom: 1\nwords: my-words\n", encoding="utf-8")
    (tmp_path / "class.csv").write_text(ROSTER, encoding="utf-8")
    asked = Asked(
        str(SPECS / "larkspur.yaml"), wearer=str(tmp_path / "class.csv"), workroom=str(tmp_path / "hall.yaml")
    )
    orders = OrderReader().orders(asked)
    out = tmp_path / "out"

    class Elsewhere(Alone):
        """As a machine whose file of this path says otherwise."""

        def each(self, do: Callable[[_Job], _Done], jobs: Iterable[_Job]) -> Iterator[_Done]:
            for job in jobs:
                own.write_text("page-tools = What we need\n", encoding="utf-8")
                yield do(job)
                own.write_text("page-tools = What is needed\n", encoding="utf-8")

    making = Making(orders, Shelf(out), SetKind.CLASS, crew=Elsewhere(), how=Together(HowMade(with_pdf=False)))
    finished = list(making)
    assert [fault.code for one in finished for fault in one.faults] == ["FB660"]
    assert str(tmp_path / "my-words") in finished[0].faults[0].headline
    assert not out.exists()
