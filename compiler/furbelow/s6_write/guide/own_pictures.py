"""The maker's own photographs and drawings in the frame of a figure, so that every page shows them as it shows drawings."""

from __future__ import annotations

import base64

from furbelow.garment.spec import OwnPicture
from furbelow.named import NamedTuple
from furbelow.s6_write.guide.guide import Figure

WIDE = 400  # units, as the drawings are
_OWN = "own-"  # no other key has it in front
_DATA, _BASE64 = 'href="data:image/', ";base64,"


class PictureFile(NamedTuple):
    """A picture as a file of its own: its name, its media type and what is in it."""

    name: str
    media_type: str
    content: bytes


def own_figure(key: str, picture: OwnPicture) -> Figure:
    """key: what it belongs to, fit for a key."""
    high = f"{WIDE * picture.height / picture.width:.1f}"
    content = base64.b64encode(picture.content).decode("ascii")
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {high}">'
        f'<image width="{WIDE}" height="{high}" {_DATA}{picture.kind}{_BASE64}{content}"/></svg>'
    )
    return Figure(f"{_OWN}{key}", svg, picture.alt, picture.caption)


def own_figures(key: str, pictures: tuple[OwnPicture, ...]) -> tuple[Figure, ...]:
    return tuple(own_figure(f"{key}-{number}", picture) for number, picture in enumerate(pictures, 1))


def picture_file(figure: Figure) -> PictureFile | None:
    """The photograph or drawing in a figure that is the maker's own; None for one that is drawn here."""
    if not figure.key.startswith(_OWN):
        return None
    kind, _, content = figure.svg.partition(_DATA)[2].partition(_BASE64)
    ending = "jpg" if kind == "jpeg" else kind
    return PictureFile(f"{figure.key}.{ending}", f"image/{kind}", base64.b64decode(content.partition('"')[0]))
