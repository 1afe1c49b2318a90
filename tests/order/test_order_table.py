"""A table of orders: each row is made by its own spec, and what is of one cloth is bought and cut together."""

from __future__ import annotations

import csv
import json
import shutil
from pathlib import Path

import pytest
from furbelow.verbs.command import run

SPECS = Path(__file__).parents[2] / "specs"
HEADING = "wearer;spec;size;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)"
ROWS = ("1001;specs/larkspur.yaml;M;;;;", "1002;specs/foxglove.yaml;C;;;;", "1003;specs/larkspur.yaml;;70;98;104;46")


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    (tmp_path / "specs").mkdir()
    for name in ("larkspur", "foxglove"):
        shutil.copy(SPECS / f"{name}.yaml", tmp_path / "specs")
    return tmp_path


def table(shop: Path, *rows: str, heading: str = HEADING) -> str:
    file = shop / "orders.csv"
    file.write_text("\n".join((heading, *rows)) + "\n", encoding="utf-8")
    return str(file)


def test_each_row_is_made_by_its_own_spec(shop: Path) -> None:
    out = shop / "out"
    assert run(["make", table(shop, *ROWS), "--no-pdf", "--data", "--out", str(out)]) == 0
    of = {
        name: json.loads((out / name / "guide.json").read_text(encoding="utf-8"))["title"] for name in ("1001", "1002")
    }
    assert of == {"1001": "Larkspur dancing underskirt", "1002": "Foxglove flounced half slip"}
    page = (out / "index.html").read_text(encoding="utf-8")
    assert page.count("Larkspur dancing underskirt") == 2
    assert not (out / "teacher.html").exists()


def test_what_is_of_one_cloth_is_bought_once_and_what_is_not_stays_apart(shop: Path) -> None:
    out = shop / "out"
    assert run(["make", table(shop, *ROWS), "--no-pdf", "--data", "--out", str(out)]) == 0
    with (out / "materials.csv").open(encoding="utf-8", newline="") as file:
        named = {row[0]: int(row[-3]) for row in list(csv.reader(file))[1:]}
    assert named["net"] == 2  # of the two of larkspur
    assert named["batiste"] == 1
    elastics = [number for name, number in named.items() if name.startswith("elastic")]
    assert sum(elastics) == 3
    assert len(elastics) == 2  # 25 mm wide in one spec and 20 mm in the other: no shop sells them as one


def test_a_row_that_can_not_be_used_is_told_at_its_cell_and_the_others_go_on(
    shop: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (shop / "specs" / "broken.yaml").write_text("furbelow: 1\n", encoding="utf-8")
    (shop.parent / "outside.yaml").write_text("furbelow: 1\n", encoding="utf-8")
    file = table(
        shop,
        *ROWS[:1],
        "a;specs/nowhere.yaml;M;;;;",
        "b;../outside.yaml;M;;;;",
        "c;specs/broken.yaml;M;;;;",
        "d;specs/foxglove.yaml;Q;;;;",
        "e;specs/foxglove.yaml;C;70;;;",
        "f;;M;;;;",
    )
    out = shop / "out"
    assert run(["make", file, "--no-pdf", "--data", "--out", str(out)]) == 1
    told = capsys.readouterr().err
    places = ("FB165", 3, 3), ("FB165", 4, 3), ("FB151", 5, 3), ("FB214", 6, 23), ("FB151", 7, 25), ("FB151", 8, 1)
    for code, line, column in places:
        assert f"error {code}" in told
        assert f"orders.csv:{line}:{column}\n" in told
    assert [each.name for each in out.iterdir() if each.is_dir()] == ["1001"]
    assert run(["check", file]) == 1
    assert "proved for 1 of 7 bodies" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("heading", "row", "told"),
    [
        ("wearer;size", "1;M", "the table has no column `spec`"),
        ("wearer;spec;size;fulness", "1;specs/larkspur.yaml;M;2", "the garment has no use for the column `fulness`"),
        ("wearer;spec;size;layers", "1;specs/foxglove.yaml;C;2", "`layers` is no choice of this garment"),
    ],
)
def test_a_column_that_would_be_passed_over_is_refused(
    heading: str, row: str, told: str, shop: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rows = (row, "2;specs/larkspur.yaml;M;1" if "layers" in heading else row.replace("1;", "2;", 1))
    call = ["make", table(shop, *rows, heading=heading), "--no-pdf", "--data", "--out", str(shop / "out")]
    assert run(call) == 1
    assert told in capsys.readouterr().err


def test_a_verb_for_one_body_takes_an_order_by_its_name(shop: Path, capsys: pytest.CaptureFixture[str]) -> None:
    call = ["why", table(shop, *ROWS), "waist_girth", "--format", "json"]
    assert run([*call, "--only", "1003"]) == 0
    assert json.loads(capsys.readouterr().out)["value"]["shown"] == "70 cm"
    assert run(call) == 2
    assert "say which: --only NAME" in capsys.readouterr().err


@pytest.mark.parametrize(
    "more", [["--size", "M"], ["--class", str(SPECS / "wearers" / "class.yaml")], ["--every-size"]]
)
def test_a_table_says_for_whom_it_is(more: list[str], shop: Path) -> None:
    assert run(["make", table(shop, *ROWS), *more, "--out", str(shop / "out")]) == 2


def test_orders_cut_apart_buy_their_own_cloth(shop: Path) -> None:
    for name, more in (("together", []), ("apart", ["--apart"])):
        assert run(["make", table(shop, *ROWS), *more, "--no-pdf", "--data", "--out", str(shop / name)]) == 0
    together, apart = (
        json.loads((shop / name / "1001" / "guide.json").read_text(encoding="utf-8")) for name in ("together", "apart")
    )
    assert '"1-1"' in json.dumps(together["cutting"])
    assert '"1-1"' not in json.dumps(apart["cutting"])
    assert [each["materials"][0]["amount"] for each in (together, apart)] == ["in pile 1", "4.6 m"]
    # Nobody cuts for all, and no page leads there; of the cloth all that the plans take alone is bought.
    assert (shop / "together" / "class-cutting.html").is_file()
    assert not list((shop / "apart").glob("class-cutting*"))
    assert "class-cutting" not in (shop / "apart" / "index.html").read_text(encoding="utf-8")

    def net(folder: Path) -> float:
        with (folder / "materials.csv").open(encoding="utf-8", newline="") as file:
            return float(next(csv.reader(list(file)[1:]))[2].removesuffix(" m"))

    alone = net(shop / "apart" / "1001") + net(shop / "apart" / "1003")
    assert net(shop / "apart") == pytest.approx(alone / len(ROWS), abs=0.001)  # told as a mean of all orders
