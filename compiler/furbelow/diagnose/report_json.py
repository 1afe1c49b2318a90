"""Faults as JSON, for other programs."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Label, in_reading_order
from furbelow.diagnose.json_text import json_text


def render_json(faults: Iterable[Fault], more: Mapping[str, object] | None = None) -> str:
    """One object: `{"furbelow": 1, "lengths": "mm", "faults": [...]}`, faults in reading order, lines and columns from 1.

    lengths: the unit of every length that stands as a bare number.

    more: further keys of the object.
    """
    told = [_fault(fault) for fault in in_reading_order(faults)]
    return json_text({"furbelow": 1, "lengths": "mm", "faults": told, **(more or {})}) + "\n"


def _fault(fault: Fault) -> dict[str, object]:
    return {
        "code": fault.code,
        "severity": fault.severity.value,
        "meaning": CODES.get(fault.code, ""),
        "headline": fault.headline,
        "place": _place(fault.primary) if fault.primary else None,
        "others": [_place(label) for label in fault.others],
        "notes": list(fault.notes),
        "help": fault.help,
    }


def _place(label: Label) -> dict[str, object]:
    span = label.span
    return {
        "file": span.file,
        "start": {"line": span.start_line, "column": span.start_column},
        "end": {"line": span.end_line, "column": span.end_column},
        "label": label.text,
    }
