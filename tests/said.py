"""What the guide says of a step, in English, for tests that read it."""

from __future__ import annotations

from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed
from furbelow.s6_write.words.said_step import SaidStep, said_step
from furbelow.s6_write.words.words import Words


def said(done: Performed, say: Phrasing) -> SaidStep:
    return said_step(done, Words("en", say))
