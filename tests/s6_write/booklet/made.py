"""Booklets of the demo garments, made once."""

from __future__ import annotations

from functools import cache

from furbelow.garment.phrasing import Phrasing
from furbelow.order.chain import guide_of, plan, prove
from furbelow.order.make_booklet import Sound, booklet_of
from furbelow.order.order import Order
from furbelow.order.whose import whose
from furbelow.s1_read.read_spec import read_spec
from furbelow.s6_write.booklet.booklet import Booklet
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.words.words import Words

from tests.s6_write.figures.drawn import ROOMS, SPECS, demos

DEMOS = demos()


@cache
def sound(demo: str, language: str = "en", room: str = "home") -> tuple[Sound, ...]:
    spec = read_spec(SPECS / f"{demo}.yaml", language=language).value
    assert spec is not None
    found = []
    for size, body in spec.sizes.items():
        order = Order(spec, f"size {size}", body, {}, ROOMS[room], size)
        proved = prove(order).value
        assert proved is not None
        planned = plan(proved).value
        assert planned is not None
        found.append(Sound(order, planned, Words(spec.language, Phrasing(planned.rehearsal.solved, order.room))))
    return tuple(found)


@cache
def booklet(demo: str, language: str = "en", room: str = "home") -> Booklet:
    return booklet_of(sound(demo, language, room))


@cache
def guides(demo: str, language: str = "en", room: str = "home") -> tuple[Guide, ...]:
    """The guide of each size, made alone."""
    return tuple(guide_of(each.planned, whose(each.order)) for each in sound(demo, language, room))
