"""The stitch types that furbelow knows, by their ISO 4915 numbers."""

from __future__ import annotations

from enum import StrEnum


class StitchType(StrEnum):
    """ISO 4915: class 100 chain stitches, 200 hand stitches, 300 lockstitches, 400 and 500 multi-thread and overedge.

    209 is the hand stitch met most (imtiazomar.wordpress.com, stitch type 209); the class stands for all others.
    """

    CHAIN = "101"
    BLIND = "103"
    HAND = "200"
    RUNNING = "209"
    LOCK = "301"
    ZIGZAG = "304"
    TWO_THREAD_CHAIN = "401"
    COVER = "406"
    TWO_THREAD_OVEREDGE = "503"
    OVERLOCK = "504"
    FOUR_THREAD_MOCK_SAFETY = "512"
    FOUR_THREAD_OVERLOCK = "514"
    SAFETY = "516"
