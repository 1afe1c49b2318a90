"""Memory that is free again, given back."""

from __future__ import annotations

from contextlib import suppress


def give_back() -> None:
    """What is free goes back to the system, where its C library can be asked to: it keeps that for long by itself.

    Nothing is looked for: what a guide was made of does not go round in circles, so it is free when the guide is written.
    """
    from ctypes import CDLL

    with suppress(OSError, AttributeError, TypeError):
        CDLL(None).malloc_trim(0)
