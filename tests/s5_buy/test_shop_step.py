"""What is bought by its length is bought as shops cut it, whether the spec says how it is sold or not.

That cloth and trims are cut to the tenth of a metre, or to the eighth of a yard: common practice, no source.
"""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import Planned, planned
from furbelow.resources import languages
from furbelow.s1_read.read_workroom import read_workroom
from furbelow.s5_buy.reasons import reasons_of_buying
from furbelow.s6_write.pages.shopping_page import shopping_markdown
from furbelow.s6_write.words.words import Words

from tests.small_guide import small_order

PIECES = "skirt: {from: lawn, length: 120 cm, depth: 50 cm}"
STEPS = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}
- insert elastic: {elastic: soft, into: skirt.top, length: 63 cm}
- close gap: {of: skirt.top}"""
SOFT = "  soft: {kind: elastic, width: 20 mm, stretch: 100%, price: 2 EUR/m}\n"


def made(room: Workroom | None = None, soft: str = SOFT) -> Planned:
    found = planned(small_order(PIECES, STEPS, room=room, materials=soft))
    assert found.value is not None, [str(fault) for fault in found.faults]
    return found.value


def bought(found: Planned, name: str = "soft") -> tuple[Fraction, Fraction, Fraction | None]:
    (line,) = (line for line in found.shopping.lines if line.name == name)
    return line.need, line.bought, line.cost


def listed(found: Planned, language: str = "en") -> str:
    words = Words(language, Phrasing(found.rehearsal.solved, found.rehearsal.run.room))
    return shopping_markdown(found.shopping, "Small", "size M", words)


@pytest.mark.parametrize(
    ("room", "step"),
    [
        (Workroom(), Fraction(100)),
        (Workroom(units="inches"), Fraction("914.4") / 8),  # an eighth of the international yard
        (Workroom(sold_by=Fraction(250)), Fraction(250)),
    ],
)
def test_a_length_without_a_step_of_its_own_is_rounded_up_as_shops_cut(room: Workroom, step: Fraction) -> None:
    need, amount, cost = bought(made(room))
    assert amount % step == 0
    assert 0 <= amount - need < step
    assert cost == amount * Fraction(2, 1000)


def test_a_step_of_nothing_buys_the_need() -> None:
    need, amount, _ = bought(made(Workroom(sold_by=Fraction(0))))
    assert amount == need


def test_what_the_spec_says_goes_before_and_needs_no_remark() -> None:
    found = made(soft=SOFT.replace("price", "sold by: 1 m, price"))
    assert bought(found)[1] == 1000
    assert "soft" not in listed(found).partition("The spec does not say")[2]


@pytest.mark.parametrize("language", languages())
def test_the_list_says_for_what_it_was_rounded_and_to_what(language: str) -> None:
    told = listed(made(), language).splitlines()
    (line,) = (line for line in told if re.search(r"\b10\scm\b", line) and not line.startswith(("-", " ")))
    assert "soft" in line


def test_the_reason_names_the_step_and_whose_it_is() -> None:
    for room, message in ((Workroom(), "reason-usual-step"), (Workroom(sold_by=Fraction(200)), "reason-workroom")):
        found = made(room)
        told = reasons_of_buying(found.rehearsal.solved, found.cutting, found.shopping)
        assert told["soft"].formula == "round_up(soft.need, soft.sold_by)"
        because = found.rehearsal.solved.values["soft.sold_by"].because
        assert because is not None
        assert because.message == message


def test_a_workroom_says_what_its_shops_cut_to() -> None:
    read = read_workroom(("room.yaml", b"workroom: 1\ntitle: Here\nsold by: 25 cm\n"))
    assert read.value is not None
    assert read.value.sold_by == 250
