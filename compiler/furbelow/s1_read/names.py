"""The names a maker invents: whether they can be used, and what else bears them."""

from __future__ import annotations

import re
from collections.abc import Iterable

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.diagnose.nearest import nearest
from furbelow.measure.formula import RESERVED_WORDS
from furbelow.measure.units import UNITS

LONGEST_NAME = 60
_NAME = re.compile(r"[a-z][a-z0-9_]*")


class Names:
    """Every name given in a spec, with what bears it and where it was given.

    A formula uses them side by side, so one name may stand for one thing only.
    """

    def __init__(self) -> None:
        self.faults: list[Fault] = []
        self._given: dict[str, tuple[str, Span]] = {}

    def taken(self, name: str) -> bool:
        return name in self._given

    def give(self, name: str, what: str, span: Span) -> None:
        """Note that something bears this name. Fails: FB140, FB141."""
        if (refusal := _refusal(name)) is not None:
            headline, help_ = refusal
            self.faults.append(Fault("FB140", headline, Label(span), help=help_))
            return
        if name in self._given:
            other, first = self._given[name]
            headline = f"`{name}` names {what} and {other} as well" if what != other else f"`{name}` names {what} twice"
            others = (Label(first, f"the name of {other}"),)
            self.faults.append(Fault("FB141", headline, Label(span), others, help="rename one of the two"))
            return
        self._given[name] = (what, span)


def _refusal(name: str) -> tuple[str, str | None] | None:
    if not _NAME.fullmatch(name):
        plain = re.sub(r"[^a-z0-9]+", "_", name.strip().lower()).strip("_")
        help_ = f"write it as `{plain}`" if _NAME.fullmatch(plain) and plain not in RESERVED_WORDS else None
        shown = name if len(name) <= LONGEST_NAME else name[: LONGEST_NAME - 1] + "…"
        return f"`{shown}` is no name for a formula: names have small letters a to z, digits and `_`", help_
    if len(name) > LONGEST_NAME:
        over = len(name) - LONGEST_NAME
        return f"the name has {len(name)} characters, {over} more than the {LONGEST_NAME} allowed", None
    if name in RESERVED_WORDS:
        return f"`{name}` is a word of the formulas and can't be a name", "choose another name"
    if name in UNITS:
        return f"`{name}` is a unit and can't be a name", "choose another name"
    return None


def unknown_name(name: str, wanted: str, known: Iterable[str], code: str, span: Span) -> Fault:
    """The fault of a name that nothing bears. wanted: what it should be, such as "piece"."""
    known = tuple(known)
    near = nearest(name, known)
    if near:
        help_ = f"did you mean {' or '.join(f'`{word}`' for word in near)}?"
    elif known:
        help_ = f"the {wanted}s are {', '.join(f'`{word}`' for word in known[:12])}" + ", …" * (len(known) > 12)
    else:
        help_ = None
    return Fault(code, f"no {wanted} is called `{name[:LONGEST_NAME]}`", Label(span), help=help_)
