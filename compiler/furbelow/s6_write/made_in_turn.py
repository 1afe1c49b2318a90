"""Files by name that are made when they are asked for, so that not all of them have to be held at once."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

Make = Callable[[], bytes]
Key = Callable[[], str]


class MadeInTurn(Mapping[str, bytes]):
    """Each is made anew whenever it is asked for. Whoever writes them asks once for each.

    keys: of what some are made from. Where a file of the same key stands already, it need not be made.
    """

    def __init__(self, made: Mapping[str, Make], keys: Mapping[str, Key] | None = None) -> None:
        self._made, self._keys = dict(made), dict(keys or {})

    def key(self, name: str) -> str:
        """Of what the file is made from; empty where that is not known before it is made."""
        return self._keys[name]() if name in self._keys else ""

    def __getitem__(self, name: str) -> bytes:
        return self._made[name]()

    def __contains__(self, name: object) -> bool:
        return name in self._made  # without this, to look for a name would make its file

    def __iter__(self) -> Iterator[str]:
        return iter(self._made)

    def __len__(self) -> int:
        return len(self._made)
