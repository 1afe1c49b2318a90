"""The values of a guide as plain ones, as the typesetter reads them."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from typing import Any

from furbelow.s6_write.guide.guide import Figure


def plain(value: object) -> Any:
    """Its fields by their names, all the way down. A drawing is what is shown of it, with its height to its width.

    The library's `asdict` copies every single value besides, and takes longer.
    """
    kind = type(value)
    if kind is str:
        return value
    if isinstance(value, tuple | list):
        return [plain(part) for part in value]
    if isinstance(value, Figure):
        return {"svg": value.svg, "alt": value.alt, "caption": value.caption, "proportion": value.proportion}
    if isinstance(value, dict):
        return {name: plain(part) for name, part in value.items()}
    if is_dataclass(value):
        return {field.name: plain(getattr(value, field.name)) for field in fields(value)}
    return value
