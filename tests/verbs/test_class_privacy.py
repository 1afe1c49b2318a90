"""Body measures are personal: the pages of a class and the names of its files give none away, and numbers may stand for names."""

from __future__ import annotations

import html
import re
from fractions import Fraction
from itertools import chain
from pathlib import Path
from zipfile import ZipFile, is_zipfile

import pytest
from furbelow.measure.quantity import show_length
from furbelow.verbs.command import run

SPEC = Path(__file__).parents[2] / "specs" / "larkspur.yaml"
MEASURES = ("waist_girth", "hip_girth", "waist_height", "knee_height")
# In mm, and odd, so that no cut length is one of them by chance.
BODIES = {
    "Zenobia": (713, 971, 1017, 453),
    "Yolande": (797, 1043, 1039, 461),
    "Xanthe": (853, 1109, 1061, 467),
}
OUTSIDE = ("index.html", "shopping.md", "materials.csv", "class-cutting.html", "furbelow.json")


def roster(folder: Path, kind: str, called: dict[str, str]) -> Path:
    file = folder / f"class.{kind}"
    if kind == "csv":
        rows = ["wearer;" + ";".join(MEASURES)]
        rows += [";".join([called[name], *(f"{mm / 10} cm" for mm in body)]) for name, body in BODIES.items()]
    else:
        rows = ["class: Thursday class", "wearers:"]
        for name, body in BODIES.items():
            told = ", ".join(f"{measure}: {mm / 10} cm" for measure, mm in zip(MEASURES, body, strict=True))
            rows += [f"  - wearer: {called[name]}", f"    body: {{{told}}}"]
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    return file


@pytest.fixture(
    scope="module", params=[("csv", "names"), ("yaml", "names"), ("csv", "numbers"), ("yaml", "numbers")], ids="-".join
)
def site(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, str]:
    kind, by = request.param
    called = {name: name if by == "names" else str(number) for number, name in enumerate(BODIES, 11)}
    folder = tmp_path_factory.mktemp("class")
    out = folder / "out"
    assert (
        run(["make", str(SPEC), "--class", str(roster(folder, kind, called)), "--no-pdf", "--data", "--out", str(out)])
        == 0
    )
    return out, by


def forms(mm: int) -> set[str]:
    """How a measure might be written: as in the roster, as on a tape, in inches, in metres, as a bare number."""
    length = Fraction(mm)
    bare = {f"{mm / 10}", f"{mm}", f"{mm / 1000}", f"{round(mm / 25.4, 1)}"}
    return bare | {
        show_length(length, "metric"),
        show_length(length, "inch"),
        show_length(length, "inch", Fraction("25.4") / 8),
    }


def tells(text: str, form: str) -> bool:
    return re.search(rf"(?<![\w.#-]){re.escape(form)}(?![\w.])", text) is not None


def texts_of(path: Path) -> list[str]:
    """The text of a file, or of those that it packs together."""
    if not is_zipfile(path):
        return [path.read_text(encoding="utf-8")]
    with ZipFile(path) as packed:
        return [packed.read(name).decode("utf-8", errors="replace") for name in packed.namelist()]


@pytest.mark.parametrize("name", OUTSIDE)
def test_no_measure_of_any_body_stands_in_a_page_for_all(site: tuple[Path, str], name: str) -> None:
    text = (site[0] / name).read_text(encoding="utf-8")
    # Drawings are coordinates without an end; what they say stands between the marks.
    drawn = re.sub(r"<svg\b.*?</svg>", lambda svg: re.sub(r"<[^>]*>", " ", svg[0]), text, flags=re.DOTALL)
    told = html.unescape(re.sub(r"<(style|script)\b.*?</\1>", " ", drawn, flags=re.DOTALL)).replace("\u00a0", " ")
    assert len(told) > 200
    for mm in chain(*BODIES.values()):
        for form in forms(mm):
            assert not tells(told, form), form
    if name in ("index.html", "shopping.md"):
        assert not [measure for measure in MEASURES if measure in told or measure.replace("_", " ") in told]


def test_no_name_of_a_file_or_folder_tells_a_measure_or_a_number_in_the_place_of_a_name(site: tuple[Path, str]) -> None:
    out, by = site
    names = [path.relative_to(out).as_posix() for path in out.rglob("*")]
    assert len(names) > 60
    folders = {path.name for path in out.iterdir() if path.is_dir()}
    assert folders == ({name.lower() for name in BODIES} if by == "names" else {"11", "12", "13"})
    for name in names:
        inside = name.partition("/")[2]
        for mm in chain(*BODIES.values()):
            assert not [form for form in (f"{mm}", f"{mm / 10}", f"{mm // 10}-{mm % 10}") if form in inside], name
        assert not [person for person in BODIES if person.lower() in inside.lower()], name


def test_where_numbers_stand_for_names_no_name_is_anywhere(site: tuple[Path, str]) -> None:
    out, by = site
    files = [path for path in out.rglob("*") if path.is_file()]
    named = [path for path in files if any(name in text for text in texts_of(path) for name in BODIES)]
    assert bool(named) == (by == "names")
    page = (out / "index.html").read_text(encoding="utf-8")
    assert ("11/guide.html" in page) == (by == "numbers")


def test_a_guide_of_one_wearer_tells_the_measures_of_no_other(site: tuple[Path, str]) -> None:
    out, _ = site
    texts = {
        folder.name: (folder / "guide.md").read_text(encoding="utf-8")
        for folder in sorted(out.iterdir())
        if folder.is_dir()
    }
    assert len(texts) == len(BODIES)
    for text in texts.values():
        own = [name for name, body in BODIES.items() if f"{body[0] / 10} cm" in text.replace("\u00a0", " ")]
        assert len(own) == 1
