"""What a workroom lays over page and PDF: a font for letters that the shipped ones lack, and the theme of a publisher."""

from __future__ import annotations

import base64
from collections.abc import Mapping

from furbelow.garment.contrast import contrast
from furbelow.garment.theme import Theme
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.guide.own_pictures import own_figure
from furbelow.s6_write.pages.own_font import OwnFont, own_font

# The page's own names for the colours of a theme.
_NAMES = {
    "ground": "paper",
    "card": "card",
    "words": "ink",
    "quiet words": "soft",
    "accent": "accent",
    "lines": "line",
}
_BY_DAY = "@media screen {{ :root {{ {light} }} }}\n"
# A page is dark by the reader's system or by the button.
_BY_NIGHT = (
    '@media screen and (prefers-color-scheme: dark) {{ :root:not([data-look="light"]) {{ {dark} }} }}\n'
    '@media screen {{ :root[data-look="dark"] {{ {dark} }} }}\n'
)
_FACE = '@font-face {{ font-family: "{name}"; font-weight: {weight}; src: url("data:font/ttf;base64,{data}"); }}\n'
TITLE, TEXT = "Furbelow Theme Title", "Furbelow Theme Text"


class Look(NamedTuple):
    font: OwnFont | None = None
    theme: Theme = Theme()

    @property
    def style(self) -> str:
        """What is laid over the style sheet of a page."""
        return (self.font.style if self.font else "") + self._colours() + self._fonts()

    @property
    def paper(self) -> dict[str, str]:
        """The colours of the PDF by the words of a theme; its ground stays white."""
        return {name: colour for name, colour in self.theme.light.items() if name not in ("ground", "card")}

    @property
    def faces(self) -> dict[str, str]:
        """The files of the fonts of the PDF, by the words of a theme."""
        theme = self.theme
        named = (("headings", theme.headings), ("text", theme.text), ("bold", theme.bold))
        return {name: path for name, path in named if path}

    @property
    def logo(self) -> Figure | None:
        return own_figure("logo", self.theme.logo) if self.theme.logo else None

    def _colours(self) -> str:
        light, dark = _told(self.theme.light), _told(self.theme.dark)
        if not light and not dark:
            return ""
        # The house's own night stays where the theme has none: its day is said again only by day.
        by_day = _BY_DAY.format(light=light).replace(":root", ':root:not([data-look="dark"])')
        by_day = by_day.replace("@media screen", "@media screen and (prefers-color-scheme: light)") + (
            f'@media screen {{ :root[data-look="light"] {{ {light} }} }}\n'
        )
        return (by_day if light else "") + (_BY_NIGHT.format(dark=dark) if dark else "")

    def _fonts(self) -> str:
        theme, own = self.theme, '"Furbelow Own", ' if self.font else ""
        faces = ((TITLE, 600, theme.headings), (TEXT, 400, theme.text), (TEXT, 600, theme.bold))
        style = "".join(
            _FACE.format(name=name, weight=weight, data=_file(path)) for name, weight, path in faces if path
        )
        title = f'--serif: "{TITLE}", "Furbelow Title", {own}serif; ' if theme.headings else ""
        text = f'--sans: "{TEXT}", "Furbelow Text", {own}sans-serif; ' if theme.text else ""
        # The words of drawings have the widths of the shipped font.
        drawn = f'.sheet svg {{ font-family: "Furbelow Text", {own}sans-serif; }}\n' if theme.text else ""
        return style + (f":root {{ {title}{text}}}\n" if title or text else "") + drawn


def look_of(room: Workroom) -> Look | None:
    """The look of a workroom; None where it has none of its own. Fails: FontFault, OSError for a font that can't be read."""
    font = own_font(room.font)
    return Look(font, room.theme or Theme()) if font or room.theme else None


def _told(colours: Mapping[str, str]) -> str:
    told = [f"--{_NAMES[name]}: {colour};" for name, colour in colours.items()]
    if accent := colours.get("accent"):
        # Of black and white one always has 4.5 : 1 with a colour.
        on_it = max("#ffffff", "#000000", key=lambda colour: contrast(colour, accent))
        told += [f"--button: {accent};", f"--button-ink: {on_it};"]
    return " ".join(told)


def _file(path: str) -> str:
    font = own_font(path)
    assert font is not None
    return base64.b64encode(font.data).decode("ascii")
