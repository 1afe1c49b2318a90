"""What buying tells besides its list: thread that nobody wrote down, work and cloth in two currencies."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Staged
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import Planned, planned

from tests.small_guide import small_order

SKIRT = "skirt: {from: lawn, length: 120 cm, depth: 50 cm}"
STEPS = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 60 cm}
- close gap: {of: skirt.top}"""
THREAD = "  thread: {kind: thread, reel: 100 m, price: 2 EUR}\n"
PAID = Workroom(hourly_rate=Fraction(14), currency="GBP")


def _planned(materials: str, room: Workroom | None = None) -> Staged[Planned]:
    return planned(small_order(SKIRT, STEPS, room=room, materials=materials))


def _codes(found: Staged[Planned]) -> set[str]:
    return {fault.code for fault in found.faults if fault.code.startswith("FB6")}


def test_seams_without_a_thread_on_the_list_are_told() -> None:
    assert _codes(_planned("")) == {"FB601"}
    assert _codes(_planned(THREAD)) == set()


def test_labour_in_another_currency_gives_no_price_to_ask() -> None:
    found = _planned(THREAD, PAID)
    assert _codes(found) == {"FB602"}
    assert found.value is not None
    assert found.value.shopping.costs is None


def test_labour_in_the_currency_of_the_materials_gives_one() -> None:
    found = _planned(THREAD, PAID._replace(currency="EUR"))
    assert _codes(found) == set()
    assert found.value is not None
    assert found.value.shopping.costs is not None
    assert found.value.shopping.costs.price > found.value.shopping.costs.materials


def test_a_cone_sold_by_weight_is_counted_by_its_length() -> None:
    cone = "  thread: {kind: thread, reel: 2 g, count: 25, price: 1 EUR}\n"
    found = _planned(cone).value
    assert found is not None
    (line,) = (line for line in found.shopping.lines if line.name == "thread")
    # 25 x 840 yd to the pound: 2 g hold 84.668 m.
    assert round(line.reel) == 84_668
    assert line.bought == -(-line.need // line.reel)
    assert line.cost == line.bought


def test_a_reel_by_weight_needs_its_count() -> None:
    found = _planned("  thread: {kind: thread, reel: 95 g}\n")
    assert [fault.code for fault in found.faults] == ["FB207"]
