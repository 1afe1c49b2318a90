"""The key of what stands on a page, by which a reader knows one print from another."""

from __future__ import annotations

import json
from hashlib import sha256


def content_key(page: object) -> str:
    """Changes when anything that is read on the page changes. page: dataclasses of texts and numbers."""
    told = json.dumps(page, default=vars, sort_keys=True, ensure_ascii=False)
    return sha256(told.encode("utf-8", "surrogatepass")).hexdigest()[:16]
