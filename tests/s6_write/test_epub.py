"""The EPUB opens in any reader of books: its container, package, documents and links are as the standard asks.

Source: W3C, EPUB 3.3 (the sections are named beside the checks) and EPUB Accessibility 1.1; and, where it is installed,
epubcheck of the DAISY consortium for W3C, Debian's package of that name.
"""

from __future__ import annotations

import io
import os
import posixpath
import shutil
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from uuid import NAMESPACE_URL, uuid5
from xml.etree import ElementTree
from zipfile import ZIP_STORED, ZipFile

import pytest
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.epub import epub
from furbelow.s6_write.pages.page import step_count

from tests.demos.demos import NAMES, spec
from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, with_text_everywhere
from tests.s6_write.test_published import published

XHTML, OPF = "{http://www.w3.org/1999/xhtml}", "{http://www.idpf.org/2007/opf}"
DC = "{http://purl.org/dc/elements/1.1/}"
LANGUAGES = ("en", "de", "fr", "es")


@cache
def opened(of: Guide) -> dict[str, bytes]:
    with ZipFile(io.BytesIO(epub(of))) as container:
        assert container.testzip() is None
        return {name: container.read(name) for name in container.namelist()}


def documents(of: Guide) -> Iterator[tuple[str, ElementTree.Element]]:
    for name, content in opened(of).items():
        if name.endswith(".xhtml"):
            yield name, ElementTree.fromstring(content)


def package(of: Guide) -> ElementTree.Element:
    return ElementTree.fromstring(opened(of)["book/package.opf"])


def told(of: Guide, tag: str) -> str:
    return package(of).findtext(f".//{tag}") or ""


def test_the_media_type_stands_first_plain_and_at_its_place() -> None:
    """Source: EPUB 3.3, 4.3.3: first in the container, stored, without an extra field: so at byte 30, the word at 38."""
    content = epub(GUIDE)
    assert content[:4] == b"PK\x03\x04"
    assert content[30:58] == b"mimetypeapplication/epub+zip"
    with ZipFile(io.BytesIO(content)) as container:
        first = container.infolist()[0]
        assert (first.filename, first.compress_type, first.extra) == ("mimetype", ZIP_STORED, b"")
        assert not any(entry.flag_bits & 1 for entry in container.infolist())


def test_the_container_leads_to_the_package() -> None:
    """Source: EPUB 3.3, 4.2.6.3.1."""
    container = ElementTree.fromstring(opened(GUIDE)["META-INF/container.xml"])
    (root,) = container.iter("{urn:oasis:names:tc:opendocument:xmlns:container}rootfile")
    assert root.get("full-path") == "book/package.opf"
    assert root.get("media-type") == "application/oebps-package+xml"


@pytest.mark.parametrize("of", [pytest.param(GUIDE, id="sample"), pytest.param(None, id="published")])
def test_the_manifest_lists_each_file_once_and_the_spine_each_document(of: Guide | None) -> None:
    """Source: EPUB 3.3, 5.6 and 5.7."""
    of = of or published()
    items = {item.get("id"): item for item in package(of).iter(f"{OPF}item")}
    listed = [f"book/{item.get('href')}" for item in items.values()]
    apart = {"mimetype", "META-INF/container.xml", "book/package.opf"}
    assert sorted(listed) == sorted(set(opened(of)) - apart)
    spine = [items[ref.get("idref")].get("href") for ref in package(of).iter(f"{OPF}itemref")]
    assert sorted(f"book/{href}" for href in spine) == sorted(name for name, _ in documents(of))
    assert [item.get("href") for item in items.values() if "nav" in (item.get("properties") or "")] == ["nav.xhtml"]
    for name, document in documents(of):
        has_svg = any(True for _ in document.iter("{http://www.w3.org/2000/svg}svg"))
        (item,) = (each for each in items.values() if f"book/{each.get('href')}" == name)
        assert ("svg" in (item.get("properties") or "")) is has_svg, name


def test_the_package_says_what_a_library_asks() -> None:
    """Source: EPUB 3.3, 5.5.3: identifier, title, language and one time of change in UTC, which its own rule spells."""
    import re

    of = published()
    # By the same name, as the standard library has it.
    assert told(of, f"{DC}identifier") == uuid5(NAMESPACE_URL, f"furbelow:{of.content_key}").urn
    assert told(of, f"{DC}title") == f"{of.title}, {of.wearer}"
    assert told(of, f"{DC}language") == "en"
    assert told(of, f"{DC}creator") == "Village theatre, wardrobe"
    assert told(of, f"{DC}rights") == of.terms_of_use
    (modified,) = (meta.text for meta in package(of).iter(f"{OPF}meta") if meta.get("property") == "dcterms:modified")
    assert re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", modified or "")


def test_the_package_says_for_whom_it_can_be_read() -> None:
    """Source: EPUB Accessibility 1.1, 3.2: mode, feature, hazard, sufficient mode and a summary."""
    about: dict[str | None, set[str | None]] = {}
    for meta in package(GUIDE).iter(f"{OPF}meta"):
        about.setdefault(meta.get("property"), set()).add(meta.text)
    assert about["schema:accessMode"] == {"textual", "visual"}
    assert about["schema:accessModeSufficient"] == {"textual", "textual,visual"}
    assert {"alternativeText", "tableOfContents", "structuralNavigation"} <= about["schema:accessibilityFeature"]
    assert about["schema:accessibilityHazard"] == {"none"}
    (summary,) = about["schema:accessibilitySummary"]
    assert summary


@pytest.mark.parametrize("of", [pytest.param(GUIDE, id="sample"), pytest.param(None, id="published")])
def test_every_link_leads_somewhere_and_every_name_of_a_place_is_one(of: Guide | None) -> None:
    of = of or published()
    places: dict[str, set[str]] = {}
    for name, document in documents(of):
        ids = [element.get("id") or "" for element in document.iter() if element.get("id")]
        assert len(ids) == len(set(ids)), name
        places[name] = set(ids)
    for name, document in documents(of):
        for element in document.iter():
            link = element.get("href") or element.get("src")
            if not link or link.startswith(("http:", "https:", "mailto:")):
                continue
            file, _, place = link.partition("#")
            there = posixpath.normpath(posixpath.join(posixpath.dirname(name), file)) if file else name
            assert there in opened(of), link
            assert not place or place in places[there], link


def test_each_document_says_its_language_and_each_drawing_what_it_shows() -> None:
    for of in (GUIDE, published()):
        shown = 0
        for name, document in documents(of):
            assert document.get("lang") == of.language, name
            assert document.findtext(f".//{XHTML}title"), name
            assert len(list(document.iter(f"{XHTML}h1"))) == 1, name
            for figure in document.iter(f"{XHTML}figure"):
                alternative = [each.get("alt") or each.get("aria-label") for each in figure.iter()]
                assert any(alternative), name
                shown += 1
        assert shown > 3


def test_all_work_is_in_the_contents_and_every_sentence_in_a_document() -> None:
    of = published()
    (nav,) = (document for name, document in documents(of) if name == "book/nav.xhtml")
    said = "".join(nav.itertext())
    assert all(operation.title in said for operation in of.operations)
    boxes = sum(
        1
        for _, document in documents(of)
        for element in document.iter(f"{XHTML}li")
        for box in element.iter(f"{XHTML}span")
        if box.get("class") == "box"
    )
    assert boxes == step_count(of)


def test_a_picture_of_the_makers_own_is_a_file_and_that_of_the_cover_the_covers() -> None:
    held = {item.get("href"): item for item in package(published()).iter(f"{OPF}item")}
    assert held["own-cover.jpg"].get("properties") == "cover-image"
    assert held["own-cover.jpg"].get("media-type") == "image/jpeg"
    assert opened(published())["book/own-cover.jpg"].startswith(b"\xff\xd8\xff")
    assert not any(b"data:image" in content for content in opened(published()).values())


@pytest.mark.parametrize("probe", PROBES)
def test_no_text_is_more_than_text(probe: str) -> None:
    for _, document in documents(with_text_everywhere(probe)):
        tags = {element.tag.rpartition("}")[2] for element in document.iter()}
        assert not tags & {"script", "iframe", "object", "embed", "form", "base", "animate", "video", "style"}
        assert not any(name.startswith("on") for element in document.iter() for name in element.attrib)


def test_the_same_guide_gives_the_same_bytes_and_the_date_is_the_one_given(monkeypatch: pytest.MonkeyPatch) -> None:
    assert epub(GUIDE) == epub(GUIDE)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1000000000")
    assert b"2001-09-09T01:46:40Z" in ZipFile(io.BytesIO(epub(GUIDE))).read("book/package.opf")


def epubcheck() -> list[str]:
    """The command that a file is named to, where it is installed."""
    jar, java = shutil.which("epubcheck") or os.environ.get("FURBELOW_EPUBCHECK"), shutil.which("java")
    if jar is None or java is None:
        pytest.skip("epubcheck is not here")
    return [java, "-jar", jar]


@pytest.mark.parametrize("at", range(len(NAMES)))
def test_epubcheck_finds_nothing(tmp_path: Path, at: int) -> None:
    """Each demo, in one language after another."""
    asked = epubcheck()
    out = tmp_path / "book"
    made = [sys.executable, "-m", "furbelow", "make", f"specs/{NAMES[at]}.yaml", "--no-pdf", "--out", str(out)]
    size = next(iter(spec(NAMES[at]).sizes))
    root = Path(__file__).parents[2]
    subprocess.run([*made, "--size", size, "--language", LANGUAGES[at % 4]], cwd=root, check=True, capture_output=True)
    told_of = subprocess.run([*asked, "--failonwarnings", str(out / "guide.epub")], capture_output=True, text=True)
    assert told_of.returncode == 0, told_of.stdout + told_of.stderr


def test_epubcheck_finds_nothing_in_a_book_with_pictures_and_a_cover(tmp_path: Path) -> None:
    asked = epubcheck()
    for name, of in (("published", published()), ("sample", GUIDE)):
        (tmp_path / f"{name}.epub").write_bytes(epub(of))
        told_of = subprocess.run(
            [*asked, "--failonwarnings", str(tmp_path / f"{name}.epub")], capture_output=True, text=True
        )
        assert told_of.returncode == 0, told_of.stdout + told_of.stderr
