"""A photograph or drawing opened and written anew: nothing of the file is left but what it shows.

So no place, time, name or thumbnail of a camera comes into a guide, and whatever else a file may hide. Loads Pillow.
"""

from __future__ import annotations

import warnings
from io import BytesIO
from typing import TYPE_CHECKING, Literal

from furbelow.named import NamedTuple

if TYPE_CHECKING:
    from PIL.Image import Image

MOST_BYTES = 20 * 1024 * 1024
MOST_DOTS = 60_000_000  # as many as a large camera takes
LONGEST = 1600  # dots along the longer side: 18 to the mm beside a sentence, 9 on a cover
NARROWEST = 10  # times as long as wide
MOST_SCANS = 100  # of a JPEG: each is a pass over all dots, and takes two bytes to ask for
QUALITY = 82
_SIGNS = (
    (b"GIF8", "a GIF"),
    (b"%PDF", "a PDF"),
    (b"BM", "a BMP"),
    (b"II*\0", "a TIFF"),
    (b"MM\0*", "a TIFF"),
    (b"RIFF", "a WebP"),
    (b"<", "an SVG or a page"),
    (b"\xef\xbb\xbf<", "an SVG or a page"),
)


class PictureFault(Exception):
    """A file that can't be taken over; says why in half a sentence, and what would mend it."""

    def __init__(self, said: str, mend: str = "save it anew as JPEG or PNG") -> None:
        super().__init__(said)
        self.mend = mend


class Dots(NamedTuple):
    """A picture as it stands in a guide."""

    kind: Literal["jpeg", "png"]
    content: bytes
    width: int
    height: int


def taken_over(content: bytes) -> Dots:
    """The picture upright, on white, in sRGB, at most LONGEST dots long, as JPEG, or as PNG where that is smaller.

    What counts is what the file holds, not what it is called.
    Fails: PictureFault. ModuleNotFoundError without `furbelow[pictures]`.
    """
    is_png = content.startswith(b"\x89PNG\r\n\x1a\n")
    if not is_png and not content.startswith(b"\xff\xd8\xff"):
        raise PictureFault(f"it is {_looks_like(content)}, and no JPEG or PNG")
    if not is_png and content.count(b"\xff\xda") > MOST_SCANS:
        raise PictureFault(f"it is a JPEG in more than {MOST_SCANS} passes")
    from PIL import Image

    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # of large pictures, which are counted here, and of odd notes of cameras
        try:
            with Image.open(BytesIO(content), formats=("PNG",) if is_png else ("JPEG",)) as opened:
                _check_size(*opened.size)
                if is_png and getattr(opened, "is_animated", False):
                    raise PictureFault("it moves", "save one picture of it")
                # A decoder of JPEG can leave out dots that would be thrown away.
                opened.draft("RGB", (LONGEST, LONGEST))
                return _written(_plain(opened), is_png)
        except Image.DecompressionBombError as error:
            raise PictureFault(f"it has more than the {MOST_DOTS:,} dots allowed", _SMALLER) from error
        except PictureFault:
            raise
        except Exception as error:  # decoders fail in every way on broken bytes
            raise PictureFault("it is broken or cut short") from error


_SMALLER = f"save it smaller: {LONGEST} dots along its longer side are enough"


def _looks_like(content: bytes) -> str:
    if content[4:8] == b"ftyp":
        return "a HEIC, an AVIF or a film"
    return next((name for sign, name in _SIGNS if content.lstrip().startswith(sign)), "something else")


def _check_size(width: int, height: int) -> None:
    if width * height > MOST_DOTS:
        said = f"it has {width * height:,} dots, {width * height - MOST_DOTS:,} more than the {MOST_DOTS:,} allowed"
        raise PictureFault(said, _SMALLER)
    if max(width, height) > NARROWEST * min(width, height):
        said = f"it is {width} by {height} dots, more than {NARROWEST} times as long as wide"
        raise PictureFault(said, "cut away what is not needed")


def _plain(opened: Image) -> Image:
    """Upright, small, in sRGB, on white."""
    from PIL import Image, ImageOps

    profile = opened.info.get("icc_profile")
    image = ImageOps.exif_transpose(opened)
    if image.mode.startswith("I"):  # 16 bits of grey
        image = image.convert("I").point(lambda value: value * (1 / 256)).convert("L")
    if image.mode == "P" or image.has_transparency_data:
        image = image.convert("RGBA")
    image.thumbnail((LONGEST, LONGEST), Image.Resampling.LANCZOS)
    if image.mode == "RGBA":
        ground = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(ground, image).convert("RGB")
    # Pasted on a new sheet: what the file says beside its dots stays behind.
    sheet = Image.new("RGB", image.size)
    sheet.paste(_in_srgb(image, profile))
    return sheet


def _in_srgb(image: Image, profile: bytes | None) -> Image:
    if profile:
        from PIL import ImageCms

        try:
            told = ImageCms.ImageCmsProfile(BytesIO(profile))
            changed = ImageCms.profileToProfile(image, told, ImageCms.createProfile("sRGB"), outputMode="RGB")
        except (ImageCms.PyCMSError, OSError, ValueError):
            changed = None  # a profile that can't be read, or of another kind of colour
        if changed is not None:
            return changed
    return image.convert("RGB")


def _written(image: Image, or_png: bool) -> Dots:
    jpeg, png = BytesIO(), BytesIO()
    image.save(jpeg, "JPEG", quality=QUALITY, optimize=True)
    if or_png:
        image.save(png, "PNG", optimize=True)
        if len(png.getvalue()) < len(jpeg.getvalue()):
            return Dots("png", png.getvalue(), *image.size)
    return Dots("jpeg", jpeg.getvalue(), *image.size)
