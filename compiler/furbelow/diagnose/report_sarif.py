"""Faults as SARIF, for editors and code hosts.

Source: OASIS, "Static Analysis Results Interchange Format (SARIF) Version 2.1.0", 2020.
"""

from __future__ import annotations

from collections.abc import Iterable
from urllib.parse import quote

from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Label, in_reading_order
from furbelow.diagnose.json_text import json_text

_SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"


def render_sarif(faults: Iterable[Fault], version: str) -> str:
    """One SARIF log with one run. version: of furbelow.

    Columns count Unicode characters; the message holds the headline, the arithmetic and the mend.
    """
    told = in_reading_order(faults)
    codes = sorted({fault.code for fault in told})
    driver = {"name": "furbelow", "version": version, "rules": [_rule(code) for code in codes]}
    run = {
        "tool": {"driver": driver},
        "columnKind": "unicodeCodePoints",
        "results": [_result(fault, codes) for fault in told],
    }
    log = {"$schema": _SCHEMA, "version": "2.1.0", "runs": [run]}
    return json_text(log) + "\n"


def _rule(code: str) -> dict[str, object]:
    return {"id": code, "shortDescription": {"text": CODES.get(code, code)}}


def _result(fault: Fault, codes: list[str]) -> dict[str, object]:
    text = "\n".join([fault.headline, *fault.notes, *([fault.help] if fault.help else [])])
    result: dict[str, object] = {
        "ruleId": fault.code,
        "ruleIndex": codes.index(fault.code),
        "level": fault.severity.value,
        "message": {"text": text},
        "locations": [_location(fault.primary)] if fault.primary else [],
    }
    if fault.others:
        result["relatedLocations"] = [{"id": n, **_location(label)} for n, label in enumerate(fault.others, 1)]
    return result


def _location(label: Label) -> dict[str, object]:
    span = label.span
    region = {
        "startLine": span.start_line,
        "startColumn": span.start_column,
        "endLine": span.end_line,
        "endColumn": span.end_column,
    }
    address = {"uri": quote(span.file.replace("\\", "/"))}
    location: dict[str, object] = {"physicalLocation": {"artifactLocation": address, "region": region}}
    if label.text:
        location["message"] = {"text": label.text}
    return location
