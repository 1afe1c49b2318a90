"""The builds of a preview: each is the guide for one body, or what keeps it from being one."""

from __future__ import annotations

import os
from collections.abc import Iterator
from dataclasses import dataclass

from furbelow.diagnose.fault import has_errors
from furbelow.diagnose.report_text import render, tally
from furbelow.garment.workroom import Workroom
from furbelow.order.make_one import make_page
from furbelow.order.read_order import Asked, OrderReader
from furbelow.order.unread import Unread
from furbelow.s1_read.read_pictures import picture_files
from furbelow.s1_read.used_files import files_used


@dataclass(frozen=True)
class Built:
    """guide: the page, or nothing where the spec is at fault. report: all faults as text, "" for none.

    built_on: the files that the spec is built on, its pictures and what the workroom names, those too that are not there yet.
    """

    guide: bytes | None
    report: str
    tally: str
    built_on: tuple[str, ...] = ()


def files_of_room(room: Workroom) -> Iterator[str]:
    """The files that a workroom names: its font, its theme, the folder of its words and all in it."""
    theme = (room.theme.file, *room.theme.fonts) if room.theme else ()
    yield from (file for file in (room.font, *theme) if file)
    if room.words is not None:
        yield room.words
        for folder, _, names in os.walk(room.words):
            yield folder
            yield from (os.path.join(folder, name) for name in names if name.endswith(".ftl"))


class Builder:
    """Builds for the size or wearer that the call names."""

    def __init__(self, asked: Asked) -> None:
        self._asked = asked
        self._of_the_room: tuple[str, ...] = ()  # its font and its words, as far as a build came to read them
        self._plans = b""  # of the last build: most saves leave some cloth to be cut as it was

    def build(self) -> Built:
        reader = OrderReader()
        try:
            guide = self._guide(reader)
        except Unread as unread:
            if unread.said:
                return Built(None, f"{unread.said}\n", "the call")
            guide = None
        except Exception as error:  # one bad build must not end the preview
            report = f"this is our bug, not yours: {type(error).__name__}: {error}\n"
            return Built(None, report, "a bug of ours")
        sound = guide is not None and not has_errors(reader.told)
        report, counted = render(reader.told, reader.sources), tally(dict.fromkeys(reader.told))
        used = files_used(self._asked.spec, reader.sources.get(self._asked.spec, ""))
        shown = picture_files(self._asked.spec, reader.sources.get(self._asked.spec, ""))
        built_on = (*(file.path for file in used), *shown, *self._of_the_room)
        return Built(guide if sound else None, report, counted, built_on)

    def _guide(self, reader: OrderReader) -> bytes | None:
        spec, faults = reader.spec_and_faults(self._asked.spec)
        reader.tell(faults)
        if spec is None:
            return None
        order = reader.the_one(reader.orders_of(spec, self._asked))
        self._of_the_room = tuple(files_of_room(order.room))
        page = make_page(order, self._plans)
        reader.tell(page.faults)
        if page.value is None:
            return None
        self._plans = page.value.plans
        return page.value.html.encode()
