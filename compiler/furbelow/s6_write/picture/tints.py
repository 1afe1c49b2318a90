"""The colours of the picture, by what they show: lighter where cloth faces the light, darkest inside.

They differ in lightness by more than in hue, so that the picture reads in greyscale. The page turns each into its dark
counterpart by this very value (`templates/picture.css`), so no two that differ there may be alike here.
"""

from __future__ import annotations

from furbelow.named import NamedTuple


class Tint(NamedTuple):
    """lit: faces the light; shade: faces away from it; inside: the inside of the cloth."""

    lit: str
    shade: str
    inside: str


CLOTH = Tint("#f3e6da", "#dcc9b8", "#b39c8a")
LINING = Tint("#e3e3e6", "#c6c7cc", "#9a9ca4")
TRIM = Tint("#cfbba9", "#b7a08d", "#8b7665")
INK = "#222222"
FORM, FORM_LINE = "#efefed", "#a5a5a2"
