"""What a note is made of: paragraphs, lines of lists, quotes and code, and how their letters are set."""

from __future__ import annotations

from typing import Literal

from furbelow.named import NamedTuple

Kind = Literal["paragraph", "bullet", "number", "quote", "code"]


class Run(NamedTuple):
    """Letters that are set alike; `link` is an http, https or mailto address, or empty."""

    text: str
    strong: bool = False
    emphasis: bool = False
    code: bool = False
    link: str = ""


class Block(NamedTuple):
    """A paragraph or a list line. `depth` counts the lists around it, `number` is set in numbered lists."""

    kind: Kind
    runs: tuple[Run, ...]
    depth: int = 0
    number: int = 0
