"""`NamedTuple`, made in half the time that `typing` takes.

That one compiles the annotation of every field, to see whether it is a type. mypy, to which both are one, sees that before
anything runs; and a guide needs so many classes that it would take as long as to prove the garment. Here annotations stay
text, so a file begins with `from __future__ import annotations`. A generic class still needs the one of `typing`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from typing import NamedTuple as NamedTuple
else:
    from collections import namedtuple

    class _Making(type):
        def __new__(made_by, name, bases, body):
            if not bases:
                return super().__new__(made_by, name, bases, body)
            fields = body.get("__annotations__", {})
            defaults = [body.pop(field) for field in fields if field in body]
            made = namedtuple(name, fields, defaults=defaults)
            for key, part in body.items():
                setattr(made, key, part)
            return made

    class NamedTuple(metaclass=_Making):
        """A tuple with a name for each place."""
