"""The look of a publisher: colours, fonts and a logo laid over page and PDF."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from furbelow.garment.contrast import LINES, WORDS, contrast, nearest_that_passes
from furbelow.garment.spec import OwnPicture
from furbelow.named import NamedTuple

# The colours that a theme may give, by its words; the others stay as they are. A test holds them to the page's own.
HOUSE: Mapping[str, Mapping[str, str]] = {
    "light": {
        "ground": "#fbf7f0",
        "card": "#ffffff",
        "words": "#2a2420",
        "quiet words": "#5f554d",
        "accent": "#8d2f38",
        "lines": "#8a7d70",
        "ticks": "#2f6650",
        "ground of what is done": "#eaf2ea",
        "paper": "#ffffff",
    },
    "dark": {
        "ground": "#1e1a18",
        "card": "#292422",
        "words": "#f3ebe1",
        "quiet words": "#c9bcae",
        "accent": "#f0a3a0",
        "lines": "#948779",
        "ticks": "#9ad1b4",
        "ground of what is done": "#22302a",
    },
}
COLOURS = ("ground", "card", "words", "quiet words", "accent", "lines")
_GROUNDS = ("ground", "card", "paper")
_PAIRS = (
    *((front, ground, WORDS) for front in ("words", "quiet words", "accent") for ground in _GROUNDS),
    *((front, "ground of what is done", WORDS) for front in ("words", "quiet words", "accent")),
    *(("ticks", ground, WORDS) for ground in ("ground", "card")),
    *(("lines", ground, LINES) for ground in _GROUNDS),
)


class Theme(NamedTuple):
    """Colours by the words of the file, as `#rrggbb`; the paths of fonts. Empty or None where it does not say."""

    file: str = ""
    light: Mapping[str, str] = {}
    dark: Mapping[str, str] = {}
    headings: str | None = None
    text: str | None = None
    bold: str | None = None  # goes with the text
    logo: OwnPicture | None = None

    @property
    def fonts(self) -> tuple[str, ...]:
        return tuple(font for font in (self.headings, self.text, self.bold) if font)


class TooNear(NamedTuple):
    """Two colours that can't be told apart well enough. `name` is the one that the theme gives, and that is to change."""

    name: str
    colour: str
    other: str
    its_colour: str
    ratio: float
    least: float
    nearest: str | None


def too_near(given: Mapping[str, str], by: str) -> Iterator[TooNear]:
    """What of these colours breaks the contrast with each other or with those that stay. by: light or dark."""
    shown = {**HOUSE[by], **given}
    for front, ground, least in _PAIRS:
        if ground not in shown or not {front, ground} & set(given):
            continue
        ratio = contrast(shown[front], shown[ground])
        if ratio < least:
            name, other = (front, ground) if front in given else (ground, front)
            nearest = nearest_that_passes(shown[name], _partners(name, shown))
            yield TooNear(name, shown[name], other, shown[other], ratio, least, nearest)


def _partners(name: str, shown: Mapping[str, str]) -> Iterator[tuple[str, float]]:
    for front, ground, least in _PAIRS:
        if name in (front, ground) and ground in shown:
            yield shown[ground if name == front else front], least
