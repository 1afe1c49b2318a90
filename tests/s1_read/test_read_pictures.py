"""Photographs and drawings of a maker's own: taken over without what a camera adds, and hostile files refused.

Source: the files are made by Pillow, which also reads back what came of them; Exif tags by the Exif 2.32 standard of CIPA
(orientation 0x0112, description 0x010E, GPS 0x8825).
"""

from __future__ import annotations

import os
import socket
import struct
import sys
import zlib
from collections.abc import Callable
from contextlib import suppress
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from furbelow.diagnose.fault import Fault, Staged
from furbelow.garment.spec import Spec
from furbelow.order.read_order import Asked
from furbelow.preview.build import Builder
from furbelow.s1_read.picture_dots import LONGEST, MOST_BYTES, MOST_DOTS, PictureFault, taken_over
from furbelow.s1_read.read_pictures import MOST_PICTURES, picture_files
from furbelow.s1_read.read_spec import read_spec
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageCms

from tests.techniques.small import spec_text

PIECES = "  skirt: {from: net, length: 3 m, cut depth: 51 cm}\n"
STEP = "  - join ends: {of: skirt, seam: 1 cm}\n"


def spec(cover: str = "", steps: str = STEP) -> str:
    return spec_text(PIECES, steps) + (f"cover: {{picture: {cover}}}\n" if cover else "")


def read_in(folder: Path, text: str, language: str | None = None) -> Staged[Spec]:
    return read_spec((str(folder / "small.yaml"), text.encode()), language=language)


def told(folder: Path, name: str) -> Fault:
    """The one fault of a cover with the file of that name."""
    staged = read_in(folder, spec(f"{{file: '{name}', alt: A skirt.}}"))
    assert staged.value is None
    (fault,) = staged.faults
    assert fault.primary is not None
    assert fault.primary.span.file == str(folder / "small.yaml")
    assert fault.help
    return fault


def photograph(size: tuple[int, int] = (60, 40), **kept: Any) -> bytes:
    """Red on the left, blue on the right."""
    image = Image.new("RGB", size, "red")
    image.paste("blue", (size[0] // 2, 0, *size))
    written = BytesIO()
    image.save(written, "JPEG", quality=95, **kept)
    return written.getvalue()


def drawn(image: Image.Image, form: str = "PNG", **kept: Any) -> bytes:
    written = BytesIO()
    image.save(written, form, **kept)
    return written.getvalue()


def opened(content: bytes) -> Image.Image:
    image = Image.open(BytesIO(content))
    image.load()
    return image


def near(dot: Any, colour: tuple[int, int, int]) -> bool:
    return all(abs(is_ - wanted) < 12 for is_, wanted in zip(dot, colour, strict=True))


def test_place_time_and_notes_of_the_camera_stay_behind_and_the_picture_stands_upright() -> None:
    exif = Image.Exif()
    exif[0x0112] = 6  # to be turned a quarter clockwise
    exif[0x010E] = "taken at home"
    exif.get_ifd(0x8825)[2] = (50.0, 10.0, 7.0)
    content = photograph(exif=exif, comment=b"my name", dpi=(72, 72))
    assert b"taken at home" in content
    dots = taken_over(content)
    assert (dots.kind, dots.width, dots.height) == ("jpeg", 40, 60)
    image = opened(dots.content)
    assert not image.getexif()
    assert not {"exif", "comment", "icc_profile", "dpi"} & set(image.info)
    assert b"taken at home" not in dots.content
    assert b"my name" not in dots.content
    assert near(image.getpixel((20, 5)), (254, 0, 0))
    assert near(image.getpixel((20, 55)), (0, 0, 254))


def test_what_hides_behind_the_end_and_in_the_chunks_of_a_file_stays_behind() -> None:
    from PIL.PngImagePlugin import PngInfo

    notes = PngInfo()
    notes.add_text("Comment", "taken at home")
    notes.add_itxt("XML:com.adobe.xmp", "<x>taken at home</x>")
    content = drawn(Image.new("RGB", (9, 9), "red"), pnginfo=notes) + b"taken at home"
    assert b"taken at home" not in taken_over(content).content
    assert b"taken at home" not in taken_over(photograph() + b"taken at home").content


def test_a_large_picture_is_made_smaller_and_a_small_one_stays() -> None:
    assert (taken_over(photograph((4000, 2000))).width, taken_over(photograph((4000, 2000))).height) == (LONGEST, 800)
    assert taken_over(photograph((300, 400)))[2:] == (300, 400)


@pytest.mark.parametrize(
    ("content", "colour"),
    [
        pytest.param(drawn(Image.new("RGBA", (9, 9), (0, 0, 0, 0))), (255, 255, 255), id="nothing on it: white"),
        pytest.param(drawn(Image.new("LA", (9, 9), (0, 0))), (255, 255, 255), id="grey with nothing on it: white"),
        pytest.param(drawn(Image.new("I;16", (9, 9), 0x8000)), (128, 128, 128), id="16 bits of grey"),
        pytest.param(drawn(Image.new("1", (9, 9), 1)), (255, 255, 255), id="one bit"),
        pytest.param(drawn(Image.new("P", (9, 9), 0), transparency=0), (255, 255, 255), id="a palette with a hole"),
        pytest.param(drawn(Image.new("CMYK", (9, 9), (0, 255, 255, 0)), "JPEG"), (255, 0, 0), id="inks"),
        pytest.param(drawn(Image.new("L", (9, 9), 77), "JPEG"), (77, 77, 77), id="grey"),
    ],
)
def test_every_kind_of_colour_comes_out_as_it_looks(content: bytes, colour: tuple[int, int, int]) -> None:
    image = opened(taken_over(content).content)
    assert image.mode == "RGB"
    assert near(image.getpixel((4, 4)), colour)


def test_colours_of_a_camera_are_told_in_those_of_the_screen() -> None:
    # LAB mid grey by its own profile would be another grey by none; a profile that can't be read changes nothing.
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    for told_as in (profile, b"no profile", profile[:80]):
        assert near(opened(taken_over(photograph(icc_profile=told_as)).content).getpixel((5, 5)), (254, 0, 0))


def test_the_same_file_gives_the_same_bytes() -> None:
    assert taken_over(photograph()) == taken_over(photograph())


def test_a_drawing_stays_a_drawing_and_the_name_of_a_file_says_nothing(tmp_path: Path) -> None:
    image = Image.new("RGB", (400, 300), "white")
    image.paste("black", (10, 100, 390, 103))
    (tmp_path / "drawing.jpg").write_bytes(drawn(image))
    cover = read_in(tmp_path, spec("{file: drawing.jpg, alt: A line.}")).value
    assert cover is not None
    assert cover.cover is not None
    assert cover.cover.picture is not None
    assert cover.cover.picture.kind == "png"


def _chunk(kind: bytes, content: bytes) -> bytes:
    return struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content))


def png_of(width: int, height: int, dots: bytes, *more: bytes) -> bytes:
    """Source: PNG specification, third edition, section 5: signature, IHDR, IDAT, IEND."""
    head = _chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0))
    return b"\x89PNG\r\n\x1a\n" + head + b"".join(more) + _chunk(b"IDAT", dots) + _chunk(b"IEND", b"")


_NOTHING = zlib.compress(bytes(100_000), 9)
_MOVES = BytesIO()
Image.new("RGB", (9, 9), "red").save(
    _MOVES, "PNG", save_all=True, append_images=[Image.new("RGB", (9, 9), "blue")], duration=9
)

HOSTILE = [
    pytest.param(b"", "something else", id="empty"),
    pytest.param(b"<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>", "an SVG", id="svg"),
    pytest.param(b"\n <?xml version='1.0'?><svg/>", "an SVG", id="svg behind a declaration"),
    pytest.param(b"GIF89a" + bytes(40), "a GIF", id="gif"),
    pytest.param(b"RIFF\0\0\0\0WEBPVP8 ", "a WebP", id="webp"),
    pytest.param(b"\0\0\0\x18ftypheic", "a HEIC", id="heic"),
    pytest.param(b"%PDF-1.7", "a PDF", id="pdf"),
    pytest.param(_MOVES.getvalue(), "it moves", id="moving png"),
    pytest.param(photograph((600, 400))[:900], "cut short", id="jpeg cut short"),
    pytest.param(photograph()[:3], "cut short", id="jpeg of a sign alone"),
    pytest.param(png_of(60, 40, _NOTHING[:9]), "cut short", id="png cut short"),
    pytest.param(png_of(60, 40, b"no dots"), "cut short", id="png of nothing"),
    pytest.param(png_of(0, 40, _NOTHING), "broken", id="png without width"),
    pytest.param(png_of(20_000, 20_000, _NOTHING), f"more than the {MOST_DOTS:,}", id="bomb"),
    pytest.param(png_of(8_000, 8_000, _NOTHING), "64,000,000 dots, 4,000,000 more", id="a little too many dots"),
    pytest.param(png_of(2**31 - 1, 2**31 - 1, _NOTHING), f"more than the {MOST_DOTS:,}", id="largest bomb"),
    pytest.param(
        png_of(9, 9, _NOTHING, _chunk(b"zTXt", b"a\0\0" + zlib.compress(bytes(90_000_000)))), "broken", id="text bomb"
    ),
    pytest.param(png_of(1000, 10, _NOTHING), "10 times as long as wide", id="thread"),
    pytest.param(photograph() + b"\xff\xda" * 200, "passes", id="endless passes"),
]


@pytest.mark.parametrize(("content", "said"), HOSTILE)
def test_a_file_that_is_no_still_sound_picture_is_told(tmp_path: Path, content: bytes, said: str) -> None:
    (tmp_path / "a.png").write_bytes(content)
    fault = told(tmp_path, "a.png")
    assert fault.code == "FB177"
    assert said in fault.headline


@given(st.binary(max_size=60), st.integers(0, 700), st.sampled_from([photograph(), drawn(Image.new("P", (30, 30)))]))
def test_damage_anywhere_is_told_or_does_no_harm(damage: bytes, at: int, sound: bytes) -> None:
    with suppress(PictureFault):
        dots = taken_over(sound[:at] + damage + sound[at + len(damage) :])
        assert opened(dots.content).size == (dots.width, dots.height)


def _outside(folder: Path) -> Path:
    outside = folder / "outside.jpg"
    outside.write_bytes(photograph())
    return outside


@pytest.mark.parametrize(
    "name", ["../outside.jpg", "sub/../../outside.jpg", "link.jpg", "sub/link.jpg", "ring/outside.jpg"]
)
def test_nothing_outside_of_the_folder_is_opened_links_followed(tmp_path: Path, name: str) -> None:
    inside = tmp_path / "specs"
    (inside / "sub").mkdir(parents=True)
    _outside(tmp_path)
    (inside / "link.jpg").symlink_to(tmp_path / "outside.jpg")
    (inside / "sub" / "link.jpg").symlink_to("../../outside.jpg")
    (inside / "ring").symlink_to(tmp_path)
    assert "outside of the folder of the spec" in told(inside, name).headline


def test_a_whole_path_or_one_that_is_none_is_refused(tmp_path: Path) -> None:
    (tmp_path / "a.jpg").write_bytes(photograph())
    assert "outside of the folder" in told(tmp_path, str(tmp_path / "a.jpg")).headline
    assert "no such file" in told(tmp_path, "b" * 199).headline


def test_a_link_within_the_folder_is_followed(tmp_path: Path) -> None:
    (tmp_path / "a.jpg").write_bytes(photograph())
    (tmp_path / "b.jpg").symlink_to("a.jpg")
    assert read_in(tmp_path, spec("{file: b.jpg, alt: A skirt.}")).value is not None


def _pipe(path: Path) -> None:
    os.mkfifo(path)


def _socket(path: Path) -> None:
    with socket.socket(socket.AF_UNIX) as opened_socket:
        opened_socket.bind(str(path))


def _device(path: Path) -> None:
    os.mknod(path, 0o666 | 0o020000, os.makedev(1, 5))  # endless zeros


@pytest.mark.skipif(sys.platform == "win32", reason="these are files of Unix")
@pytest.mark.parametrize("make", [Path.mkdir, _pipe, _socket, _device])
def test_a_folder_a_pipe_and_a_device_are_never_opened(tmp_path: Path, make: Callable[[Path], None]) -> None:
    try:
        make(tmp_path / "a.jpg")
    except PermissionError:
        pytest.skip("only root makes devices")
    assert "a folder, a pipe or a device" in told(tmp_path, "a.jpg").headline


def test_a_file_of_too_many_bytes_is_told_with_both_numbers(tmp_path: Path) -> None:
    with open(tmp_path / "a.jpg", "wb") as file:
        file.truncate(MOST_BYTES + 5)
    assert f"{MOST_BYTES + 5:,} bytes, 5 more than the {MOST_BYTES:,} allowed" in told(tmp_path, "a.jpg").headline


def test_a_missing_file_is_told_with_the_nearest_name(tmp_path: Path) -> None:
    (tmp_path / "gathered.jpg").write_bytes(photograph())
    assert told(tmp_path, "gatherd.jpg").help == "did you mean gathered.jpg?"


def test_one_picture_too_many_is_told(tmp_path: Path) -> None:
    (tmp_path / "a.jpg").write_bytes(photograph())
    rows = "  - picture: {file: a.jpg, alt: A skirt.}\n" * (MOST_PICTURES + 1)
    (fault,) = read_in(tmp_path, spec(steps=STEP + rows)).faults
    assert f"one more than the {MOST_PICTURES}" in fault.headline


def test_what_it_shows_has_to_be_said(tmp_path: Path) -> None:
    (tmp_path / "a.jpg").write_bytes(photograph())
    assert [fault.code for fault in read_in(tmp_path, spec("{file: a.jpg}")).faults] == ["FB131"]
    assert [fault.code for fault in read_in(tmp_path, spec("{file: a.jpg, alt: ''}")).faults] == ["FB135"]


def test_a_picture_stands_with_the_step_above_it(tmp_path: Path) -> None:
    (tmp_path / "a.jpg").write_bytes(photograph())
    row = "  - picture: {file: a.jpg, alt: {en: A skirt., de: Ein Rock.}, caption: Mine.}\n"
    found = read_in(tmp_path, spec(steps=STEP + row + "  - press: {piece: skirt}\n" + row + row), "de").value
    assert found is not None
    assert [len(step.pictures) for step in found.steps] == [1, 2]
    assert {(each.alt, each.caption) for each in found.pictures} == {("Ein Rock.", "Mine.")}
    of_some = "  - {press: {piece: skirt}, when: waist_girth > 10 cm}\n"
    hanging = read_in(tmp_path, spec(steps=STEP + of_some + row)).value
    assert hanging is not None
    assert [len(step.pictures) for step in hanging.steps] == [0, 1]
    (fault,) = read_in(tmp_path, spec(steps=row + STEP)).faults
    assert (fault.code, "no step above" in fault.headline) == ("FB177", True)
    within = "  - {when: waist_girth > 10 cm, steps: [{picture: {file: a.jpg, alt: A skirt.}}]}\n"
    (fault,) = read_in(tmp_path, spec(steps=STEP + within)).faults
    assert (fault.code, "no step above" in fault.headline) == ("FB177", True)


@pytest.mark.parametrize("beside", ["tip: A note", "press: {piece: skirt}", "part: More", "when: waist_girth > 10 cm"])
def test_a_picture_has_a_row_of_its_own(tmp_path: Path, beside: str) -> None:
    (tmp_path / "a.jpg").write_bytes(photograph())
    row = f"  - {{picture: {{file: a.jpg, alt: A skirt.}}, {beside}}}\n"
    assert "FB136" in {fault.code for fault in read_in(tmp_path, spec(steps=STEP + row)).faults}


def test_without_its_library_a_picture_is_told_and_all_else_goes_on(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "b.jpg").write_bytes(photograph((8, 8)))
    monkeypatch.setitem(sys.modules, "PIL", None)
    fault = told(tmp_path, "b.jpg")
    assert (fault.code, fault.help) == ("FB178", "pip install 'furbelow[pictures]'")
    assert read_in(tmp_path, spec()).value is not None


def test_the_library_is_loaded_for_a_picture_alone() -> None:
    import subprocess

    asked = [sys.executable, "-c", "import sys, furbelow.s1_read.lower; print('PIL' in sys.modules)"]
    assert subprocess.run(asked, capture_output=True, text=True, check=True).stdout == "False\n"


def test_the_preview_watches_pictures_also_those_that_are_not_there_yet(tmp_path: Path) -> None:
    row = "  - picture: {file: sub/b.jpg, alt: A skirt.}\n"
    text = spec("{file: a.jpg, alt: A skirt.}", STEP + row)
    (tmp_path / "small.yaml").write_text(text, encoding="utf-8")
    wanted = {str(tmp_path / "a.jpg"), str(tmp_path / "sub" / "b.jpg")}
    assert set(picture_files(str(tmp_path / "small.yaml"), text)) == wanted
    built = Builder(Asked(str(tmp_path / "small.yaml"), size="M")).build()
    assert built.guide is None
    assert wanted <= set(built.built_on)
