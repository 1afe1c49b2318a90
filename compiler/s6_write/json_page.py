"""The guide as JSON, for programs."""

from __future__ import annotations

import json
from dataclasses import asdict

from compiler.s6_write.guide import Guide


def to_json(guide: Guide) -> str:
    """The file `guide.json`: the whole guide with its figures as SVG text, keys in alphabetical order.

    The same letters for the same guide. `furbelow_guide` is the number of the format.
    """
    return json.dumps({"furbelow_guide": 1, **asdict(guide)}, ensure_ascii=False, indent=1, sort_keys=True) + "\n"
