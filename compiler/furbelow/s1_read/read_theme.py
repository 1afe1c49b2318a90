"""Read a theme file: the colours, fonts and logo of a publisher."""

from __future__ import annotations

import os
import re
from math import floor

from furbelow.diagnose.fault import Fault, Label, Staged, has_errors, in_reading_order
from furbelow.garment.spec import OwnPicture
from furbelow.garment.theme import COLOURS, Theme, too_near
from furbelow.s1_read.inside import is_inside
from furbelow.s1_read.read_pictures import OwnPictures
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.source import Source, read_checked
from furbelow.s1_read.values import map_at, value_at
from furbelow.s1_read.yaml_tree import MapTree, TextTree, Tree

SCHEMA = "theme.schema.json"
_COLOUR = re.compile(r"#?([0-9a-fA-F]{6})")


def read_theme(source: Source) -> Staged[Theme]:
    """The theme in a file, or every fault in it.

    Fails: FB101 to FB112, FB130 to FB135, FB165 for a font that is not beside it, FB168 for what is no colour, FB169 for
        colours that are too near each other, FB177 and FB178 for its logo.
    """
    file, _, checked = read_checked(source, SCHEMA)
    if checked.value is None:
        return Staged(None, checked.faults)
    reading = _Reading(checked.value, file)
    theme = reading.theme()
    faults = in_reading_order((*checked.faults, *reading.faults))
    return Staged(None if has_errors(faults) else theme, faults)


class _Reading:
    def __init__(self, tree: Tree, file: str) -> None:
        self.tree = tree
        self.here = os.path.dirname(os.path.abspath(file))
        self.file = file
        self.faults: list[Fault] = []

    def theme(self) -> Theme:
        light, dark = self._colours("light"), self._colours("dark")
        fonts = map_at(self.tree, "fonts")
        headings, text, bold = (self._font(fonts, key) for key in ("headings", "text", "bold"))
        return Theme(self.file, light, dark, headings, text, bold, self._logo())

    def _colours(self, by: str) -> dict[str, str]:
        at = map_at(self.tree, by)
        given: dict[str, str] = {}
        for entry in at.entries:
            value = entry.value
            if entry.key not in COLOURS or not isinstance(value, TextTree):
                continue
            if found := _COLOUR.fullmatch(value.text):
                given[entry.key] = f"#{found[1].lower()}"
            elif value.text:
                said = f"`{entry.key}` is {value.text[:40]}, and no colour"
                help_ = "write six digits of 0-9 and a-f: two for red, two for green, two for blue, such as 8d2f38"
                self.faults.append(Fault("FB168", said, Label(value.span), help=help_))
        worst = {near.name: near for near in sorted(too_near(given, by), key=lambda near: near.least - near.ratio)}
        for near in worst.values():
            place = at.entry(near.name)
            assert place is not None
            ratio = floor(near.ratio * 100) / 100  # never told as more than it is
            said = (
                f"`{near.name}` {near.colour} with `{near.other}` {near.its_colour} has a contrast of {ratio:.2f} : 1,"
                f" {near.least - ratio:.2f} less than the {near.least} : 1 wanted"
            )
            mend = (
                f"the nearest that can be told from all it meets is {near.nearest}"
                if near.nearest
                else "no colour can be told from all it meets; change those first"
            )
            self.faults.append(Fault("FB169", said, Label(place.value.span), help=mend))
        return given

    def _font(self, fonts: MapTree, key: str) -> str | None:
        value = value_at(fonts, key)
        if not isinstance(value, TextTree) or not value.text:
            return None
        path = os.path.join(self.here, value.text)
        if "\0" in value.text or not is_inside(path, self.here) or not os.path.isfile(path):
            said = f"the font {value.text[:80]} is not in the folder of this file"
            self.faults.append(Fault("FB165", said, Label(value.span), help="put it there, or into a folder within it"))
            return None
        return path

    def _logo(self) -> OwnPicture | None:
        at = value_at(self.tree, "logo")
        if not isinstance(at, MapTree):
            return None
        pictures = OwnPictures(self.file, Sayings("en", None))
        logo = pictures.at(at, " of the logo")
        self.faults += pictures.faults
        return logo
