"""Calls of `make` at random: one guide, a class, every size, a booklet, a table of orders; with their rosters."""

from __future__ import annotations

import csv
import io
import random
from collections.abc import Mapping, Sequence

import yaml

from tests.fuzz.garments import Garment, garment_at_random, spec_files

NAMED = ("Ada", "Bo", "日本", "Élise d'Or", "Finn & Co", "مريم")
LANGUAGES = ("en", "de", "fr", "es")


def roster(luck: random.Random, garment: Garment, wearers: int) -> bytes:
    """A class as a table: measures, and now and then choices, numbers, notes and languages."""
    columns = {measure: [value] * wearers for measure, value in garment.body.items()}
    for choice, value in garment.choices:
        if luck.random() < 0.2:
            columns[choice] = [luck.choice([value, ""]) for _ in range(wearers)]
    columns |= _told(luck, wearers)
    return _table(luck, columns, wearers)


def class_file(luck: random.Random, garment: Garment, wearers: int) -> bytes:
    """A class as YAML."""
    rows: list[dict[str, object]] = [{"wearer": name, "body": dict(garment.body)} for name in NAMED[:wearers]]
    for row in rows:
        if garment.choices and luck.random() < 0.2:
            row["choices"] = dict([luck.choice(garment.choices)])
    return yaml.safe_dump({"class": "Thursday", "wearers": rows}, allow_unicode=True, sort_keys=False).encode()


def orders(luck: random.Random, garment: Garment) -> tuple[bytes, dict[str, bytes]]:
    """A table of orders, and the specs that its rows name."""
    other = garment_at_random(luck) if luck.random() < 0.5 else garment
    files = {**spec_files(luck, garment), "other.yaml": other.text.encode()}
    of_row = [luck.choice([("spec.yaml", garment), ("other.yaml", other)]) for _ in range(luck.randrange(1, 4))]
    columns = {"spec": [name for name, _ in of_row]}
    if luck.random() < 0.5:
        columns["size"] = [each.size for _, each in of_row]
    else:
        # Where the rows are of two garments each has the measures that its own asks for.
        measures = dict.fromkeys(measure for _, each in of_row for measure in each.body)
        columns |= {measure: [each.body.get(measure, "") for _, each in of_row] for measure in measures}
    columns |= _told(luck, len(of_row))
    return _table(luck, columns, len(of_row)), files


def _told(luck: random.Random, wearers: int) -> dict[str, list[str]]:
    columns = {}
    if luck.random() < 0.2:
        columns["number"] = [str(number) for number in luck.sample(range(1, 40), wearers)]
    if luck.random() < 0.2:
        columns["language"] = [luck.choice([*LANGUAGES, ""]) for _ in range(wearers)]
    if luck.random() < 0.2:
        columns["notes"] = [luck.choice(["", "left-handed", 'says "later"; pays <b>cash</b>']) for _ in range(wearers)]
    return columns


def _table(luck: random.Random, columns: Mapping[str, Sequence[str]], rows: int) -> bytes:
    told = io.StringIO()
    writer = csv.writer(told, delimiter=luck.choice(";,\t"), lineterminator=luck.choice(["\n", "\r\n"]))
    writer.writerow(["wearer", *columns])
    for at in range(rows):
        writer.writerow([NAMED[at], *(cells[at] for cells in columns.values())])
    return luck.choice([b"", b"\xef\xbb\xbf"]) + told.getvalue().encode()


def set_of_guides(luck: random.Random, garment: Garment) -> tuple[list[str], dict[str, bytes]]:
    """What stands behind `make` for more guides than one, and its files; not where it writes, nor with what."""
    kind = luck.choice(["class", "every size", "booklet", "orders", "orders"])
    if kind == "booklet":
        return ["spec.yaml", "--booklet", *_now_and_then(luck, "--no-measures", "--data")], spec_files(luck, garment)
    # Sheets are typeset for a printed set alone: a PDF takes as long as all else.
    paper = ["--print"] if luck.random() < 0.05 else ["--no-pdf"]
    options = [*paper, *_now_and_then(luck, "--data", "--no-measures", "--reasons", "--recut", "--dismiss", "--apart")]
    if kind == "every size":
        return ["spec.yaml", "--every-size", *options], spec_files(luck, garment)
    if kind == "orders":
        table, files = orders(luck, garment)
        only = ["--only", NAMED[0]] if luck.random() < 0.2 else []
        return ["orders.csv", *only, *options], {**files, "orders.csv": table}
    wearers = luck.randrange(2, 4)
    files = spec_files(luck, garment)
    if luck.random() < 0.5:
        return ["spec.yaml", "--class", "class.csv", *options], {**files, "class.csv": roster(luck, garment, wearers)}
    return ["spec.yaml", "--class", "class.yaml", *options], {**files, "class.yaml": class_file(luck, garment, wearers)}


def _now_and_then(luck: random.Random, *options: str) -> list[str]:
    return [option for option in options if luck.random() < 0.2]
