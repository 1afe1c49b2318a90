"""What a note is made of: paragraphs, lines of lists, quotes and code, and how their letters are set."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Kind = Literal["paragraph", "bullet", "number", "quote", "code"]


@dataclass(frozen=True)
class Run:
    """Letters that are set alike; `link` is an http, https or mailto address, or empty."""

    text: str
    strong: bool = False
    emphasis: bool = False
    code: bool = False
    link: str = ""


@dataclass(frozen=True)
class Block:
    """A paragraph or a list line. `depth` counts the lists around it, `number` is set in numbered lists."""

    kind: Kind
    runs: tuple[Run, ...]
    depth: int = 0
    number: int = 0
