"""Memory that is free again, given back."""

from __future__ import annotations

import gc
from contextlib import suppress


def give_back() -> None:
    """What goes round in circles is let go, and what is free goes back to the system, where its C library can be asked to.

    A call of ours hardly looks for circles (`verbs/command.py`), and the library keeps what is free for long.
    """
    from ctypes import CDLL

    gc.collect()
    gc.freeze()  # what is left is what all guides share, and need not be looked through again
    with suppress(OSError, AttributeError, TypeError):
        CDLL(None).malloc_trim(0)
