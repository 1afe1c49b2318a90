"""The booklet as an EPUB: every sentence, letter and size is in it, and each link leads somewhere.

Source: W3C, EPUB 3.3; and, where it is installed, epubcheck of the DAISY consortium for W3C.
"""

from __future__ import annotations

import io
import posixpath
import subprocess
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from xml.etree import ElementTree
from zipfile import ZipFile

import pytest
from furbelow.s6_write.booklet.texts import letters_in, versions_of
from furbelow.s6_write.pages.booklet_epub import booklet_epub

from tests.s6_write.test_epub import XHTML, epubcheck

from .made import DEMOS, booklet

LANGUAGES = ("en", "de", "fr", "es")


@cache
def content(demo: str, language: str = "en") -> bytes:
    return booklet_epub(booklet(demo, language))


def documents(demo: str) -> Iterator[tuple[str, ElementTree.Element]]:
    with ZipFile(io.BytesIO(content(demo))) as container:
        for name in container.namelist():
            if name.endswith(".xhtml"):
                yield posixpath.basename(name), ElementTree.fromstring(container.read(name))


@pytest.mark.parametrize("demo", DEMOS)
def test_each_id_is_one_and_each_link_leads_to_one(demo: str) -> None:
    places = {name: [e.get("id") for e in document.iter() if e.get("id")] for name, document in documents(demo)}
    assert all(len(ids) == len(set(ids)) for ids in places.values())
    for name, document in documents(demo):
        for link in (e.get("href", "") for e in document.iter(f"{XHTML}a")):
            file, _, place = link.partition("#")
            if not link.startswith("http"):
                assert not place or place in places[file or name], link


@pytest.mark.parametrize("demo", DEMOS)
def test_every_sentence_is_in_it_and_every_letter_with_a_row_for_all_sizes(demo: str) -> None:
    made = booklet(demo)
    sections = {
        section.get("id"): section for _, document in documents(demo) for section in document.iter(f"{XHTML}section")
    }
    for operation in made.operations:
        section = sections[f"operation-{operation.key}"]
        assert len(list(section.iter(f"{XHTML}li"))) == len(operation.steps)
        rows = [row for row in section.iter(f"{XHTML}tr") if len(row) > 1 and row[0].get("scope") == "row"]
        assert [row.findtext(f".//{XHTML}strong") for row in rows] == [
            made.numbers[at].letter for at in operation.numbers
        ]
        told = " ".join("".join(section.itertext()).split())
        for step in operation.steps:
            for version in versions_of(step.text):
                if not letters_in(version.text):
                    assert " ".join(version.text.split()) in told


def test_each_size_has_its_drawings_and_those_on_paper_lead_to_them() -> None:
    made, found = booklet("larkspur"), dict(documents("larkspur"))
    shown = {
        figure.get("id"): [link.get("href") for link in figure.iter(f"{XHTML}a")]
        for document in found.values()
        for figure in document.iter(f"{XHTML}figure")
    }
    assert len(made.drawings_of_sizes) == 4
    for key, drawings in made.drawings_of_sizes.items():
        links = shown[f"figure-{key}"]
        assert len(links) == len(drawings)
        for (size, drawing), link in zip(drawings, links, strict=True):
            assert link == f"drawn-{made.sizes.index(size) + 1}.xhtml#figure-{drawing.key}"
            assert f"figure-{drawing.key}" in shown


@pytest.mark.parametrize("at", range(len(DEMOS)))
def test_epubcheck_finds_nothing(tmp_path: Path, at: int) -> None:
    """Each demo, in one language after another."""
    asked = epubcheck()
    file = tmp_path / "booklet.epub"
    file.write_bytes(content(DEMOS[at], LANGUAGES[at % 4]))
    told = subprocess.run([*asked, "--failonwarnings", str(file)], capture_output=True, text=True)
    assert told.returncode == 0, told.stdout + told.stderr
