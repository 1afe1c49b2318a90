"""A made-up language: every English message with longer words in accented letters, so that what is no message shows.

It goes under the code of a real language, Esperanto, whose decimal comma and list word CLDR knows.
"""

from __future__ import annotations

import re
import shutil
from pathlib import Path
from typing import Any

import yaml
from fluent.syntax import FluentParser, FluentSerializer, ast
from fluent.syntax.visitor import Transformer
from furbelow.garment.tags import place_sign

CODE = "eo"
_SIGNS = {place_sign(number) for number in range(1, 40)}
_TOLD = ("title", "about", "notes", "part", "tip", "message", "colour")
_NAMED = ("body", "choices", "measures", "materials", "pieces")
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


def english_left(text: str, *allowed: str) -> list[str]:
    """The words of three letters and more that no message and no text of the made-up language can have given."""
    words = re.findall(r"[^\W\d_]{3,}", text)
    return sorted({word for word in words if word.isascii()} - {"kaj", "EUR", *_SIGNS, *allowed})


def told_in_both(spec: str) -> str:
    """The spec with each of the maker's texts in English and in the made-up language; what has none gets its name."""
    read = yaml.load(in_english(spec), yaml.BaseLoader)
    for section in _NAMED:
        for name, named in read.get(section, {}).items():
            if not isinstance(named, dict):
                read[section][name] = named = {"value": named}
            named.setdefault("about", name.replace("_", " "))
    told = _told(read)
    for name, own in told.get("techniques", {}).items():
        own["called"] = _both(name)
        own["do"] = [{"say": _both(row)} for row in own["do"]]
    written: str = yaml.safe_dump({**told, "language": "en"}, sort_keys=False, allow_unicode=True)
    return written


def in_english(spec: str) -> str:
    """The spec with each text that is told in several languages in English alone."""
    written: str = yaml.safe_dump(_english(yaml.load(spec, yaml.BaseLoader)), sort_keys=False, allow_unicode=True)
    return written


def _english(node: Any) -> Any:
    if isinstance(node, dict):
        return _english(node["en"]) if "en" in node else {key: _english(held) for key, held in node.items()}
    return [_english(each) for each in node] if isinstance(node, list) else node


def _told(node: Any) -> Any:
    if isinstance(node, dict):
        return {
            key: _both(held) if key in _TOLD and isinstance(held, str) else _told(held) for key, held in node.items()
        }
    return [_told(each) for each in node] if isinstance(node, list) else node


def _both(text: str) -> dict[str, str]:
    parts = re.split(r"(\{[^{}]*\}|\]\([^)]*\))", text)  # places for numbers, and addresses, stay as they are
    return {"en": text, CODE: "".join(part if at % 2 else made_up(part) for at, part in enumerate(parts))}
