"""The first page of every guide is one sheet, whatever the work is and in whatever language."""

from __future__ import annotations

import io

import pikepdf
import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import guide_of, planned
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s6_write.pages.pdf import pdf

from tests.demos.demos import NAMES, SPECS

LANGUAGES = ("en", "de", "fr", "es")


@pytest.mark.parametrize(
    ("name", "language"),
    [
        *((name, LANGUAGES[at % 4]) for at, name in enumerate(NAMES)),
        *(("larkspur", language) for language in LANGUAGES[1:]),
    ],
)
def test_all_that_is_asked_stands_on_the_first_sheet(name: str, language: str) -> None:
    spec = read_spec(SPECS / f"{name}.yaml", language=language).value
    assert spec is not None
    size, body = next(iter(spec.sizes.items()))
    found = planned(Order(spec, size, body, {}, Workroom()))
    assert found.value is not None
    document = pikepdf.open(io.BytesIO(pdf(guide_of(found.value, size))))
    numbers = {each.obj.objgen: number for number, each in enumerate(document.pages, 1)}
    with document.open_outline() as outline:
        second = outline.root[0].children[0]
    place = second.destination or (second.action and second.action.D)
    assert isinstance(place, pikepdf.Array)
    assert numbers[place[0].objgen] == 2
