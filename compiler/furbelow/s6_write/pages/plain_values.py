"""The values of a guide as plain ones, as the typesetter reads them."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from typing import Any

from furbelow.s6_write.guide.guide import Figure


class PlainValues:
    """Values by the names of their fields, all the way down, and the drawings among them as files beside.

    A file is named by its number, for the typesetter holds files until others come in under their names. It knows a drawing
    of the guide before by what stands in it.
    """

    def __init__(self) -> None:
        self._files: dict[str, str] = {}

    @property
    def drawings(self) -> dict[str, str]:
        """By the names of their files."""
        return {name: svg for svg, name in self._files.items()}

    def of(self, value: object) -> Any:
        """The value. A drawing is the name of its file, its height to its width, and what is said of it."""
        if isinstance(value, str):
            return value
        if isinstance(value, tuple) and hasattr(value, "_asdict"):
            return {name: self.of(part) for name, part in value._asdict().items()}
        if isinstance(value, tuple | list):
            return [self.of(part) for part in value]
        if isinstance(value, Figure):
            told = {"alt": value.alt, "caption": value.caption, "proportion": value.proportion}
            return {"file": self._file(value.svg), **told}
        if is_dataclass(value):
            return {field.name: self.of(getattr(value, field.name)) for field in fields(value)}
        return value

    def _file(self, svg: str) -> str:
        return self._files.setdefault(svg, f"{len(self._files) + 1}.svg")
