"""The maker's texts by language: wherever one may be told, so may a map of it."""

from __future__ import annotations

from furbelow.garment.spec import Spec
from furbelow.s1_read.read_spec import read_spec

from tests.techniques.small import spec_text

PIECES = "skirt: {from: lawn, length: 240 cm, depth: 50 cm, about: {en: skirt, de: Rock}}"
STEPS = """- part: {en: The skirt, de: Der Rock}
    - {narrow hem: {edge: skirt.bottom}, tip: {en: Press first., de: Zuerst bügeln.}}
    - wax hem: {edge: skirt.bottom}"""
OWN = """\
about: {en: A skirt., de: Ein Rock.}
notes: {en: Wash it cold., de: Kalt waschen.}
choices:
  flare: {default: 2, about: {en: flare, de: Weite}}
measures:
  girth: {value: 2 * waist_girth, about: {en: girth, de: Umfang}}
rules:
  - {check: skirt.depth > 1 cm, message: {en: too short, de: zu kurz}}
techniques:
  wax hem:
    about: {en: Wax the hem., de: Den Saum wachsen.}
    called: {en: Waxed hem, de: Gewachster Saum}
    works on: edge
    cautions: {heat: {en: Hot wax., de: Heißes Wachs.}}
    do:
      - say: {en: "Wax {edge}.", de: "{edge} wachsen."}
        check: {en: It shines., de: Es glänzt.}
"""


def _read(language: str | None) -> Spec:
    text = spec_text(PIECES, STEPS, own=OWN).replace("Small test garment", "{en: Test skirt, de: Proberock}")
    read = read_spec(("case.yaml", text.encode()), language=language)
    assert read.value is not None, read.faults
    return read.value


def _texts(spec: Spec) -> list[str]:
    hem, wax = spec.steps
    own = wax.own
    assert own is not None
    return [
        *(spec.title, spec.about, spec.notes, spec.pieces["skirt"].about),
        *(spec.choices["flare"].about, spec.measures["girth"].about, spec.rules[0].message, hem.part, hem.tip),
        *(own.called, own.about, own.words[0].text, own.words[0].check, own.cautions[0][1]),  # type: ignore[attr-defined]
    ]


def test_a_text_told_by_language_is_read_in_that_of_the_guide() -> None:
    assert _texts(_read("de")) == [
        *("Proberock", "Ein Rock.", "Kalt waschen.", "Rock", "Weite", "Umfang", "zu kurz", "Der Rock"),
        *("Zuerst bügeln.", "Gewachster Saum", "Den Saum wachsen.", "{edge} wachsen.", "Es glänzt.", "Heißes Wachs."),
    ]
    assert _texts(_read(None))[0] == "Test skirt"


def test_a_region_is_told_in_its_language() -> None:
    assert _read("de-AT").title == "Proberock"


def test_names_without_a_text_are_untold_in_another_language_only() -> None:
    assert _read("en").untold == ()
    untold = [word.text for word in _read("de").untold]
    assert "`waist_girth`" in untold
    assert "`net`" in untold
    assert not any("skirt" in text or "title" in text for text in untold)


def test_a_place_that_is_not_known_is_told_in_every_language() -> None:
    text = spec_text(PIECES, STEPS, own=OWN.replace("{edge} wachsen", "{kante} wachsen"))
    assert [fault.code for fault in read_spec(("case.yaml", text.encode())).faults] == ["FB361"]


def test_what_is_no_language_is_told_at_its_key() -> None:
    text = spec_text(PIECES.replace("de: Rock", "german: Rock"), STEPS, own=OWN)
    (fault,) = read_spec(("case.yaml", text.encode())).faults
    assert (fault.code, fault.headline) == ("FB160", "`german` is no language in which `about` of `skirt` is told")
