"""The values of a guide as plain ones, as the typesetter reads them."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from hashlib import blake2b
from typing import Any

from furbelow.s6_write.guide.guide import Figure


class PlainValues:
    """Values by the names of their fields, all the way down, and the drawings among them as files beside.

    A file is named by what stands in it: the same drawing of the next guide is the same to the typesetter.
    """

    def __init__(self) -> None:
        self.drawings: dict[str, str] = {}

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
        name = f"{blake2b(svg.encode(), digest_size=12).hexdigest()}.svg"
        self.drawings[name] = svg
        return name
