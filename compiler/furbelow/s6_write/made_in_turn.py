"""Files by name that are made when they are asked for, so that not all of them have to be held at once."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

Make = Callable[[], bytes]


class MadeInTurn(Mapping[str, bytes]):
    """Each is made anew whenever it is asked for. Whoever writes them asks once for each."""

    def __init__(self, made: Mapping[str, Make]) -> None:
        self._made = dict(made)

    def __getitem__(self, name: str) -> bytes:
        return self._made[name]()

    def __contains__(self, name: object) -> bool:
        return name in self._made  # without this, to look for a name would make its file

    def __iter__(self) -> Iterator[str]:
        return iter(self._made)

    def __len__(self) -> int:
        return len(self._made)
