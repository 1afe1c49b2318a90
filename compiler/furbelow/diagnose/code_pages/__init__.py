"""One page for each fault code: what it means, why it matters for the garment, an example and a mend.

A page is Markdown. The comment at its end says in which demo spec its example stands, so that the tests can run it.
"""

from __future__ import annotations

import re
from importlib.resources import files

_COMMENT = re.compile(r"\n*<!--.*?-->\n*", re.DOTALL)


def page(code: str) -> str | None:
    """The page of a code as a person reads it, or nothing where there is none."""
    text = source(code)
    return None if text is None else _COMMENT.sub("\n", text)


def source(code: str) -> str | None:
    """The page as it stands in its file, with the comment for the tests."""
    if not re.fullmatch(r"FB[0-9]{3}", code):
        return None
    file = files(__name__).joinpath(f"{code}.md")
    return file.read_text(encoding="utf-8") if file.is_file() else None
