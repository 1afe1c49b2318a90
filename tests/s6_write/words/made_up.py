"""A made-up language: every English message with longer words in accented letters, so that what is no message shows.

It goes under the code of a real language, Esperanto, whose decimal comma and list word CLDR knows.
"""

from __future__ import annotations

import shutil
from pathlib import Path

from fluent.syntax import FluentParser, FluentSerializer, ast
from fluent.syntax.visitor import Transformer

CODE = "eo"
# Every letter that the test must tell from English, each with one that all shipped fonts have.
_ACCENTED = str.maketrans("aceginosuyzACEGINOSUYZ", "âčęğîñöšúÿžÂČĘĞÎÑÖŠÚŸŽ")


def made_up(english: str) -> str:
    """The text in the made-up language: accented, and every word of four letters and more a third longer."""
    words = english.translate(_ACCENTED).split(" ")
    return " ".join(word + word[-len(word) // 3 :].strip(".,:;*") if len(word) > 3 else word for word in words)


class _MadeUp(Transformer):
    def visit_TextElement(self, node: ast.TextElement) -> ast.TextElement:
        return ast.TextElement(made_up(node.value))


def templates_with_made_up(folder: Path, templates: Path) -> Path:
    """The shipped templates in a folder of their own, with the made-up language beside English."""
    whole = folder / "templates"
    shutil.copytree(templates, whole)
    own = whole / "words" / CODE
    own.mkdir()
    for file in sorted((whole / "words" / "en").glob("*.ftl")):
        resource = FluentParser().parse(file.read_text("utf-8"))
        text = FluentSerializer().serialize(_MadeUp().visit(resource))
        (own / file.name).write_text(text, "utf-8")
    return whole
