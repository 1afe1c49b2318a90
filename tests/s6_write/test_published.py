"""What a publisher says and shows: imprint, cover and pictures of her own, in every file of a guide.

Source: ISO 14289-1:2014 (PDF/UA-1), every figure with its alternative; ISO 32000-1, 14.3.3 for author and subject.
"""

from __future__ import annotations

import io
import json
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import pikepdf
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import guide_of, planned
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.files import guide_files
from furbelow.s6_write.words.messages import Messages

from tests.demos.demos import SPECS
from tests.s1_read.test_read_pictures import opened, photograph

PUBLISHED = """
imprint:
  author: Village theatre, wardrobe
  version: 2
  licence: {en: Copy it for your class; do not sell it., de: "Für die Klasse kopieren, nicht verkaufen."}
  skill: you have sewn one skirt before
cover:
  words: A skirt for the <first> term
  picture: {file: cover.jpg, alt: "Two dancers, mid-turn.", caption: First night.}
"""
ROW = "  - picture: {file: cover.jpg, alt: 'The folds lie evenly.', caption: Mine.}\n"


@cache
def published(cover: bool = True, language: str = "en") -> Guide:
    text = (SPECS / "foxglove.yaml").read_text(encoding="utf-8")
    told = PUBLISHED if cover else PUBLISHED[: PUBLISHED.index("cover:")]
    at = text.index("  - gather:")
    at = text.index("\n", at) + 1
    with TemporaryDirectory() as folder:
        Path(folder, "cover.jpg").write_bytes(photograph((300, 200)))
        file = str(Path(folder, "foxglove.yaml"))
        read = read_spec((file, (text[:at] + ROW + text[at:] + told).encode()), language=language)
    assert read.value is not None, read.faults
    found = planned(Order(read.value, "size C", read.value.sizes["C"], {}, Workroom()))
    assert found.value is not None, found.faults
    return guide_of(found.value, "size C")


@cache
def files(cover: bool = True) -> dict[str, bytes]:
    return dict(guide_files(published(cover), Messages("en"), None))


def pdf_of(cover: bool = True) -> pikepdf.Pdf:
    return pikepdf.open(io.BytesIO(files(cover)["guide.pdf"]))


def test_the_guide_says_who_published_it_and_what_a_sewist_can_do_already() -> None:
    guide = published()
    assert guide.author == "Village theatre, wardrobe"
    assert guide.terms_of_use == "Version 2; Licence Copy it for your class; do not sell it."
    assert [fact.value for fact in guide.glance if fact.name == "front-skill"] == ["you have sewn one skirt before"]
    assert published(language="de").imprint[-1].value == "Für die Klasse kopieren, nicht verkaufen."


def test_every_file_of_the_guide_says_it() -> None:
    for name in ("guide.html", "guide.md", "guide.json"):
        text = files()[name].decode()
        for said in ("Village theatre, wardrobe", "Copy it for your class; do not sell it.", "mid-turn", "lie evenly"):
            assert said in text, (name, said)
    page = files()["guide.html"].decode()
    assert '<meta name="author" content="Village theatre, wardrobe">' in page
    assert '<meta name="dcterms.rights" content="Version 2; Licence Copy it for your class; do not sell it.">' in page
    assert "A skirt for the &lt;first&gt; term" in page
    told = json.loads(files()["guide.json"])
    assert told["cover"]["picture"]["alt"] == "Two dancers, mid-turn."
    assert [fact["name"] for fact in told["imprint"]] == ["front-author", "front-version", "front-licence"]


def test_a_guide_of_nobody_has_nothing_of_it() -> None:
    from tests.s6_write.sample_guide import GUIDE

    page = guide_files(GUIDE, Messages("en"), None, with_pdf=False)["guide.html"].decode()
    assert 'name="author"' not in page
    assert "dcterms" not in page


def test_markdown_links_the_picture_as_a_file_of_its_own() -> None:
    named = "figures/own-cover.jpg"
    assert f"![Two dancers, mid-turn.]({named})" in files()["guide.md"].decode()
    assert opened(files()[named]).size == (300, 200)


def test_the_pdf_bears_author_and_terms_and_each_picture_its_alternative() -> None:
    document = pdf_of()
    assert str(document.docinfo["/Author"]) == "Village theatre, wardrobe"
    assert str(document.docinfo["/Subject"]) == published().terms_of_use
    with document.open_metadata() as about:
        assert about["pdfuaid:part"] == "1"
    alternatives = {
        str(each["/Alt"]) for each in document.objects if isinstance(each, pikepdf.Dictionary) and "/Alt" in each
    }
    assert {"Two dancers, mid-turn.", "The folds lie evenly."} <= alternatives


def test_a_cover_and_its_back_stand_before_the_first_page() -> None:
    with_cover, without = pdf_of(), pdf_of(cover=False)
    assert len(with_cover.pages) == len(without.pages) + 2
