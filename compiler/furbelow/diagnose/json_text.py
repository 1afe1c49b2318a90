"""Values as JSON that is safe to print."""

from __future__ import annotations

import json
from collections.abc import Mapping

from furbelow.diagnose.unseen import marked_unseen


def json_text(told: Mapping[str, object]) -> str:
    """The text, a line for each field; a sign that could steer a terminal is written as its number."""
    text = json.dumps(told, indent=2, ensure_ascii=False)
    return marked_unseen(text, lambda sign: json.dumps(sign).strip('"'))
