"""`furbelow make` for a class or every size: a site with one order, which gives no measure of a wearer away."""

from __future__ import annotations

import argparse
import csv
import html
import io
import json
import re
from html.parser import HTMLParser
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.wearer import Wearer
from furbelow.measure.quantity import Quantity, parse_quantity, show_length
from furbelow.order.shelf import folder_names
from furbelow.s1_read.read_wearers import read_wearers
from furbelow.verbs.command import run
from furbelow.verbs.reading import Reader

SPECS = Path(__file__).parents[2] / "specs"
LARKSPUR, CLASS = str(SPECS / "larkspur.yaml"), SPECS / "wearers" / "class.yaml"
HEADING = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)\n"
SIX = ("Ada", "Bo", "Cleo", "Dara", "Edda", "Finn")


class _Links(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found += [
            value or "" for name, value in attrs if name in ("href", "src") and not (value or "").startswith("#")
        ]


def links(page: Path) -> list[str]:
    reader = _Links()
    reader.feed(page.read_text(encoding="utf-8"))
    return reader.found


def words(page: Path) -> str:
    """What a reader sees of a page, its figures and its style left out."""
    text = re.sub(r"<(style|script|svg)\b.*?</\1>", " ", page.read_text(encoding="utf-8"), flags=re.DOTALL)
    return html.unescape(re.sub(r"<[^>]*>", " ", text)).replace("\u00a0", " ")


def make(*arguments: object) -> int:
    return run(["make", LARKSPUR, "--data", *map(str, arguments)])


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("class") / "out"
    assert make("--class", CLASS, "--no-pdf", "--out", out) == 0
    return out


def test_every_link_of_the_page_leads_to_a_file_of_the_site(site: Path) -> None:
    found = links(site / "index.html")
    assert {f"{name.lower()}/guide.html" for name in SIX} <= set(found)
    assert {"shopping.md", "materials.csv", "class-cutting.html"} <= set(found)
    assert all((site / link).is_file() for link in found)
    assert {path.name for path in site.iterdir()} == {
        *map(str.lower, SIX),
        "index.html",
        "class-cutting.html",
        "class.json",
        "teacher.html",
        "handouts.html",
        "shopping.md",
        "materials.csv",
        "furbelow.json",
    }


def test_a_long_cutting_for_all_is_in_parts_that_lead_to_each_other(
    site: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("furbelow.s4_cut.parts.MOST", 30)
    assert make("--class", CLASS, "--no-pdf", "--out", tmp_path / "out") == 0
    pages = sorted((tmp_path / "out").glob("class-cutting*.html"))
    names = [f"class-cutting-{part}.html" for part in range(1, len(pages) + 1)]
    assert [page.name for page in pages] == names
    assert len(names) >= 3
    assert [link for link in links(tmp_path / "out" / "index.html") if link.startswith("class-cutting")] == names
    tags = re.compile(r"\b\d-\d[a-f](?:·\d)?")
    once = set(tags.findall(words(site / "class-cutting.html")))
    for page in pages:
        assert set(links(page)) >= {"index.html", *names} - {page.name}
        told = words(page)
        assert f"part {names.index(page.name) + 1} of {len(names)}" in told
        # Its first section is told in full, and nobody measures on from another page.
        assert re.search(r"section 1 of \d+|the one section", told)
    assert set.union(*(set(tags.findall(words(page))) for page in pages)) >= once


def _measures(wearer: Wearer) -> list[Quantity]:
    read = [parse_quantity(written.text) for written in wearer.body.values()]
    assert all(isinstance(each, Quantity) for each in read)
    return [each for each in read if isinstance(each, Quantity)]


@pytest.mark.parametrize("name", ["index.html", "shopping.md", "materials.csv", "furbelow.json"])
def test_no_body_measure_of_any_wearer_is_told(site: Path, name: str) -> None:
    wearers = read_wearers(CLASS).value
    assert wearers is not None
    assert len(wearers) == 6
    told = words(site / name)
    for wearer in wearers:
        for measure in _measures(wearer):
            length = measure.as_length_mm()
            forms = [show_length(length, "metric"), show_length(length, "inch"), f"{float(length):g} mm"]
            if name != "materials.csv":  # there a mean amount of cloth, in m, may be anybody's waist by chance
                forms.append(f"{float(length) / 1000:g} m")
            for shown in forms:
                assert not re.search(rf"(?<![\d.]){re.escape(shown)}\b", told), shown
        for body in wearer.body:
            assert body.replace("_", " ") not in told
    assert "Size chart" not in (site / name).read_text(encoding="utf-8")


def test_the_page_for_cutting_says_numbers_and_no_names(site: Path) -> None:
    told = words(site / "class-cutting.html")
    assert not [name for name in SIX if re.search(rf"\b{name}\b", told)]
    assert all(f"{number}-2a" in told for number in range(1, 7))
    page = (site / "class-cutting.html").read_text(encoding="utf-8")
    assert page.count("<svg ") >= 4
    assert re.search(r"(?i)lane 1\b.*?\b\d-2[a-f]", told)


def test_the_sums_on_the_list_are_those_of_the_separate_lists(site: Path, tmp_path: Path) -> None:
    """The amounts as printed, each list read by itself."""

    def costs(file: Path) -> list[float]:
        return [
            float(cost) for cost in re.findall(r"^- \[ \] .*\(([\d.]+) EUR\)$", file.read_text(encoding="utf-8"), re.M)
        ]

    own = {}
    for name in SIX:  # each as if made alone
        assert make("--class", CLASS, "--only", name, "--no-pdf", "--out", tmp_path / name) == 0
        own[name] = costs(tmp_path / name / "shopping.md")
    together = (site / "shopping.md").read_text(encoding="utf-8")
    alone = re.search(r"Each alone: ([\d.]+) EUR", together)
    whole = re.search(r"Together: ([\d.]+) EUR, or ([\d.]+) EUR a head", together)
    assert alone
    assert whole
    assert float(alone[1]) == pytest.approx(sum(map(sum, own.values())))
    assert float(whole[1]) == pytest.approx(sum(costs(site / "shopping.md")))
    assert float(whole[2]) == pytest.approx(float(whole[1]) / 6, abs=0.006)
    assert float(whole[1]) < float(alone[1])


def test_the_table_of_materials_has_the_trade_s_columns_and_the_order_of_all(site: Path, tmp_path: Path) -> None:
    """Columns: textileindustry.net, Bill of material (BOM) in the apparel industry; consumption is that of one piece."""
    rows = list(csv.DictReader(io.StringIO((site / "materials.csv").read_text(encoding="utf-8"))))
    own = []
    for name in SIX:  # each as if made alone
        assert make("--class", CLASS, "--only", name, "--no-pdf", "--out", tmp_path / name) == 0
        own.append(list(csv.DictReader(io.StringIO((tmp_path / name / "materials.csv").read_text(encoding="utf-8")))))
    assert [row["name"] for row in rows] == [row["name"] for row in own[0]]
    edging = next(row for row in rows if row["name"] == "edging")
    needs = [float(row["consumption per piece"].split()[0]) for rows in own for row in rows if row["name"] == "edging"]
    assert float(edging["consumption per piece"].split()[0]) == pytest.approx(sum(needs) / 6, abs=0.001)
    assert edging["garments that use it"] == "6"
    assert edging["to order"] == f"{-(-sum(needs) // 1):.0f} m"
    assert float(edging["cost of the order"].split()[0]) == pytest.approx(
        6 * float(edging["cost"].split()[0]), abs=0.04
    )


def test_the_same_call_writes_the_same_bytes(site: Path, tmp_path: Path) -> None:
    assert make("--class", CLASS, "--no-pdf", "--out", tmp_path) == 0
    for name in ("index.html", "class-cutting.html", "shopping.md", "materials.csv"):
        assert (tmp_path / name).read_bytes() == (site / name).read_bytes()


def test_every_size_has_a_chart_of_all_measurements(tmp_path: Path) -> None:
    assert make("--every-size", "--no-pdf", "--out", tmp_path) == 0
    told = words(tmp_path / "index.html")
    for shown in ("waist girth", "62 cm", "122 cm", "finished length", "cut depth", "layers of net", "The flounce"):
        assert shown in told
    made = json.loads((tmp_path / "size-m" / "guide.json").read_text(encoding="utf-8"))
    cut = {row["piece"]: row["cut_depth"] for row in made["cutting"]}
    chart = told[told.index("The flounce") : told.index("The lining")]
    assert cut["flounce"].replace("\u00a0", " ") in chart[chart.index("cut depth") :]
    assert len(re.findall(r"Guide\s+for size", told)) == 5


def test_sizes_are_no_class_so_nothing_is_bought_or_cut_for_all_of_them(tmp_path: Path) -> None:
    assert make("--every-size", "--no-pdf", "--out", tmp_path) == 0
    assert {path.name for path in tmp_path.iterdir() if path.is_file()} == {
        *("index.html", "class.json", "furbelow.json"),
    }
    assert json.loads((tmp_path / "class.json").read_text(encoding="utf-8"))["lots"] == []
    assert all((tmp_path / link).is_file() for link in links(tmp_path / "index.html"))
    told = words(tmp_path / "index.html")
    assert not any(said in told for said in ("One order for all", "Cutting for all", "cut for all", "Each alone"))


def test_pages_to_print_are_made_and_linked(tmp_path: Path) -> None:
    (tmp_path / "two.csv").write_text(HEADING + "1;70;96;101;45\n2;78;104;104;46\n")
    assert make("--class", tmp_path / "two.csv", "--out", tmp_path / "out") == 0
    found = set(links(tmp_path / "out" / "index.html"))
    assert {"1/guide.pdf", "2/guide.pdf", "class-cutting.pdf"} <= found
    assert all((tmp_path / "out" / name).read_bytes().startswith(b"%PDF-") for name in found if name.endswith(".pdf"))


def test_who_can_not_be_made_is_missing_without_a_reason_and_the_others_go_on(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rows = "Ada;70;96;101;45\nBo;154;96;101;45\nCleo;70;96;101;45;9\nDara;78;104;104;46\n"
    (tmp_path / "class.csv").write_text(HEADING + rows)
    out = tmp_path / "out"
    assert make("--class", tmp_path / "class.csv", "--no-pdf", "--out", out) == 1
    told = capsys.readouterr()
    assert "FB211" in told.err
    assert "index.html" in told.out
    assert sorted(path.name for path in out.iterdir() if path.is_dir()) == ["ada", "dara"]
    page = words(out / "index.html")
    missing = page[page.index("Not made", page.index("The guides", page.index("Not made"))) :]
    assert "Bo" in missing
    # Why, is said to who made it; the page is for all to see.
    assert "a body measure lies outside its range" not in missing
    assert "line 4 of the file" in missing
    assert "a row of a roster" not in missing
    assert "154" not in page
    assert "Cleo" not in page  # the row was not read, so neither was its name
    # Bo keeps the number 2, so that a mend of the measure numbers nobody anew.
    assert "2-2a" not in words(out / "class-cutting.html")
    assert "3-2a" in words(out / "class-cutting.html")


def test_one_sound_row_among_spoilt_ones_is_still_a_class(tmp_path: Path) -> None:
    (tmp_path / "class.csv").write_text(HEADING + "1;70;96;101;45\n2;;;;x y\n")
    assert make("--class", tmp_path / "class.csv", "--no-pdf", "--out", tmp_path / "out") == 1
    assert "line 3 of the file" in words(tmp_path / "out" / "index.html")
    assert (tmp_path / "out" / "1" / "guide.html").is_file()


def test_where_nobody_can_be_made_nothing_is_written(tmp_path: Path) -> None:
    (tmp_path / "class.csv").write_text(HEADING + "1;154;96;101;45\n2;155;104;104;46\n")
    assert make("--class", tmp_path / "class.csv", "--no-pdf", "--out", tmp_path / "out") == 1
    assert not (tmp_path / "out").exists()


def test_a_guide_that_was_edited_is_kept_and_named_as_missing(tmp_path: Path) -> None:
    (tmp_path / "class.csv").write_text(HEADING + "1;70;96;101;45\n2;78;104;104;46\n3;88;112;105;47\n")
    call = ("--class", tmp_path / "class.csv", "--no-pdf", "--out", tmp_path / "out")
    assert make(*call) == 0
    (tmp_path / "out" / "2" / "guide.md").write_text("mine")
    assert make(*call) == 1
    assert (tmp_path / "out" / "2" / "guide.md").read_text() == "mine"
    told = words(tmp_path / "out" / "index.html")
    assert re.search(r"names the line to mend\.\s+2\b", told)
    assert "edited" not in told  # the message that is printed says why
    assert "2-2a" in words(tmp_path / "out" / "class-cutting.html")  # cut for all the same
    assert make(*call, "--replace") == 0


def test_every_size_goes_with_nobody_else_and_needs_sizes(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert make("--every-size", "--size", "M", "--out", tmp_path) == 2
    spec = tmp_path / "spec.yaml"
    text = Path(LARKSPUR).read_text(encoding="utf-8")
    spec.write_text(re.sub(r"(?ms)^sizes:.*?(?=^choices)", "", text), encoding="utf-8")
    assert run(["make", str(spec), "--every-size", "--out", str(tmp_path / "out")]) == 2
    assert "names no sizes" in capsys.readouterr().err


HOSTILE = (
    "CON",
    "con.",
    "..",
    ".",
    "a/b",
    "a b",
    "A-B",
    "NUL",
    "lpt1",
    "com9.txt",
    "Žofie",
    "index.html",
    "<b>x</b>",
    "=1+1",
    "日本",
)


def test_hostile_names_get_folders_of_their_own_inside_the_site(tmp_path: Path) -> None:
    """Device names: Microsoft, "Naming Files, Paths, and Namespaces"."""
    rows = "".join(f'"{name}";{70 + at};{100 + at};101;45\n' for at, name in enumerate(HOSTILE))
    (tmp_path / "class.csv").write_text(HEADING + rows, encoding="utf-8")
    out = tmp_path / "deep" / "out"
    assert make("--class", tmp_path / "class.csv", "--no-pdf", "--out", out) == 0
    assert {path.name for path in tmp_path.iterdir()} == {"class.csv", "deep"}
    assert [path.name for path in (tmp_path / "deep").iterdir()] == ["out"]
    folders = [path.name for path in out.iterdir() if path.is_dir()]
    assert len({folder.casefold() for folder in folders}) == len(folders) == len(HOSTILE)
    assert all(re.fullmatch(r"[a-z0-9][a-z0-9-]*", folder) for folder in folders)
    assert not any(re.fullmatch(r"con|prn|aux|nul|(com|lpt)\d", folder) for folder in folders)
    page = words(out / "index.html")
    assert all(name in page for name in HOSTILE)
    assert "<b>x</b>" not in (out / "index.html").read_text(encoding="utf-8")
    assert all((out / link).is_file() for link in links(out / "index.html"))


def test_a_name_can_not_steer_the_terminal(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rows = "".join(
        f'  - wearer: "{name}"\n    body: {{waist_girth: 70 cm, hip_girth: 96 cm, waist_height: 101 cm, knee_height: 45 cm}}\n'
        for name in (r"\u2066a", r"\u202eb", r"c\nd: e")
    )
    (tmp_path / "class.yaml").write_text(f'class: "\\u202ef"\nwearers:\n{rows}', encoding="utf-8")
    assert make("--class", tmp_path / "class.yaml", "--no-pdf", "--out", tmp_path / "out") == 0
    told = capsys.readouterr().out
    assert len(told.splitlines()) == 4
    assert all(sign == "\n" or sign.isprintable() for sign in told)


def test_names_without_plain_letters_or_alike_still_differ() -> None:
    names = ("Žofie", "zofie", "Zofie", "con", "wearer-con", "日本", "中国", "Ana Bo", "")
    named = folder_names(names)
    assert len(set(named.values())) == len(names)
    assert (named["zofie"], named["wearer-con"], named["Ana Bo"]) == ("zofie", "wearer-con", "ana-bo")
    assert all(re.fullmatch("[a-z0-9][a-z0-9-]*", name) for name in named.values())


def test_no_folder_of_a_name_depends_on_who_else_is_in_the_class() -> None:
    names = ("Žofie", "日本", "中国", "a!", "con")
    together = folder_names(names)
    assert together == {name: folder_names([name])[name] for name in names}
    assert together == {**together, **folder_names(reversed(names))}


def test_a_link_in_place_of_the_folder_of_a_wearer_is_not_followed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    elsewhere, out = tmp_path / "elsewhere", tmp_path / "out"
    elsewhere.mkdir()
    out.mkdir()
    (out / "bo").symlink_to(elsewhere, target_is_directory=True)
    roster = tmp_path / "class.csv"
    roster.write_text(HEADING + "Ada;70;96;101;45\nBo;78;104;104;46\n", encoding="utf-8")
    assert make("--class", roster, "--no-pdf", "--out", out) == 1
    assert list(elsewhere.iterdir()) == []
    assert "FB651" in capsys.readouterr().err
    assert (out / "ada" / "guide.html").is_file()


def test_the_folder_of_who_has_left_the_class_is_named(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text(HEADING + "Ada;70;96;101;45\nBo;78;104;104;46\n", encoding="utf-8")
    assert make("--class", roster, "--no-pdf", "--out", tmp_path / "out") == 0
    assert "FB656" not in capsys.readouterr().err
    (tmp_path / "out" / "pictures").mkdir()
    roster.write_text(HEADING + "Bo;78;104;104;46\nCleo;80;104;104;46\n", encoding="utf-8")
    assert make("--class", roster, "--no-pdf", "--out", tmp_path / "out") == 0
    told = capsys.readouterr().err
    assert "warning FB656" in told
    assert "for nobody in this run: ada\n" in told
    assert (tmp_path / "out" / "ada" / "guide.html").is_file()


def test_a_warning_that_is_the_same_for_many_is_printed_once(capsys: pytest.CaptureFixture[str]) -> None:
    reader = Reader(argparse.Namespace(called="make"))
    warning = Fault("FB603", "the work goes on for longer than a sitting", severity=Severity.WARNING)
    error = Fault("FB402", "the waist is too narrow")
    for _ in range(3):
        reader.tell([warning, error])
    printed = capsys.readouterr().err
    assert printed.count("FB603") == 1
    assert printed.count("FB402") == 3  # an error is each one's own
    assert reader.told.count(warning) == 3
