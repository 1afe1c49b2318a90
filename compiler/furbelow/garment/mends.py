"""Advice that can be followed to the letter: what a fault says, and the same as a change of the spec."""

from __future__ import annotations

from furbelow.diagnose.fault import Change, Put
from furbelow.garment.spec import Step
from furbelow.named import NamedTuple


class Mend(NamedTuple):
    """help: one change, said to the maker; change: the same, where it is one of text."""

    help: str
    change: Change | None


def write(step: Step, key: str, value: str, more: str = "") -> Mend:
    """`key: value` in the row of a step. more: what else would do, " or more"."""
    text = f"{key}: {value}"
    arg = step.args.get(key)
    if arg and arg.given:
        return Mend(f"write `{text}`{more}", Change(Put.OVER, arg.span, value))
    given = [each.span for each in step.args.values() if each.given]
    last = max(given, key=lambda span: (span.end_line, span.end_column), default=None)
    return Mend(f"write `{text}`{more}", Change(Put.INTO, last, text) if last else None)


def before(step: Step, row: str, said: str = "") -> Mend:
    return Mend(said or f"put `- {row}` before this step", Change(Put.BEFORE, step.span, row))


def after(step: Step, row: str, said: str = "") -> Mend:
    return Mend(said or f"add `- {row}` after it", Change(Put.AFTER, step.span, row))


def leave_out(step: Step, said: str = "leave this step out") -> Mend:
    return Mend(said, Change(Put.AWAY, step.span))
