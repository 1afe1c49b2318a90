"""The heading above the plan of sittings: with the cutting, or of what is left of work that was begun."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.s6_write.guide.guide import Sitting
from furbelow.s6_write.words.messages import Messages


def plan_title(plan: Sequence[Sitting], words: Messages) -> str:
    cut = any(not sitting.number for sitting in plan)
    return words.text("page-plan" if cut else "page-plan-left", {"sittings": sum(1 for each in plan if each.number)})
