"""The last rows of a size chart: the garment as a whole."""

from __future__ import annotations

from furbelow.order.chain import prove
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s6_write.guide.size_chart import ChartGroup, size_chart

from tests.demos.demos import order, spec


def _whole(name: str) -> ChartGroup:
    rehearsals: list[Rehearsal] = []
    for size in spec(name).sizes:
        rehearsal = prove(order(name, size)).value
        assert rehearsal is not None
        rehearsals.append(rehearsal)
    return size_chart(rehearsals, list(spec(name).sizes))[0].groups[-1]


def test_each_size_says_its_hems_its_fullness_and_its_weight() -> None:
    rows = {row.label: row.values for row in _whole("larkspur").rows}
    assert rows["round the hem"] == ("600 cm",) * 5
    # Twice the flounce and once the lining, by hand for size M: 2 x 6 m + 1.56 m.
    assert rows["round all hems"][2] == "13.56 m"
    assert rows["fullness from waist to hem"] == ("4.84", "4.29", "3.85", "3.41", "3")
    assert rows["weight, about"][2] == "223 g"


def test_one_layer_has_no_row_for_all_hems() -> None:
    assert [row.label for row in _whole("marigold").rows] == [
        "round the hem",
        "fullness from waist to hem",
        "weight, about",
    ]
