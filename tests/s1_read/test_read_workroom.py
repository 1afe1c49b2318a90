"""A workroom as read: exact values in mm and money, and every fault with its place."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.garment.workroom import Workroom
from furbelow.s1_read.read_workroom import read_workroom
from furbelow.s1_read.schema_check import load_schema

THEATRE = Path(__file__).parents[2] / "specs" / "workrooms" / "theatre.yaml"


def read(text: str) -> Workroom:
    staged = read_workroom(("room.yaml", f"workroom: 1\n{text}".encode()))
    assert staged.value is not None, staged.faults
    return staged.value


def only_fault(text: str) -> Fault:
    staged = read_workroom(("room.yaml", f"workroom: 1\n{text}".encode()))
    assert staged.value is None
    (fault,) = staged.faults
    return fault


def test_the_demo_workroom() -> None:
    staged = read_workroom(THEATRE)
    assert staged.faults == ()
    assert staged.value == Workroom(
        title="Village theatre wardrobe room",
        neaten_with="overlocker",
        table_length=Fraction(2400),
        sewing_speed=Fraction(2000, 60),
        bobbin=Fraction(25_000),
        hourly_rate=Fraction(14),
        margin=Fraction(15, 100),
        sitting=Fraction(7200),
        machines=6,
        overlockers=1,
        irons=2,
    )


def test_a_workroom_that_says_nothing_is_a_home_table() -> None:
    assert read("") == Workroom()


def test_every_field_of_a_workroom_can_be_written() -> None:
    room = read(
        "title: Loft\npaper: letter\nreasons: yes\nlanguage: de\nwords: .\nfont: README.md\nunits: inches\nrounding: 1/8 in\nneaten with: pinking shears\ngather with: two rows by hand\n"
        "hold with: clips\npin spacing: 1 in\nseam stitch: 1.5 mm\ngathering stitch: 4 mm\nrow spacing: 1/4 in\n"
        "table length: 2 yd\ntable width: 1 yd\nspare across: 2 cm\nsquare ends: 0 cm\nfold cloth: yes\norder of work: as written\nmachine takes: 8 mm\nsewing speed: 1 yd/min\n"
        "bobbin: 50 yd\nattachment takes: {6: 50%, 12: 3/4}\nhourly rate: 20 GBP/h\nmargin: 0%\njoin price: 0.10 GBP\n"
        "setup price: 0.20 GBP\ncut price: 0 GBP\nsold by: 25 cm\nsitting: 90 min\nmost joins: 0\nmost sections: 2\nbeginner: 1.5\n"
        "machines: 4\noverlockers: 2\nirons: 1\n"
    )
    usual = Workroom()
    same = [name for name in room._fields if getattr(room, name) == getattr(usual, name)]
    # A theme is a file of its own; 0 is usual; measures and limits of one cloth are given in the call.
    assert same == ["theme", "measures", "margin", "joins_of", "sections_of"]
    assert room.rounding == Fraction("3.175")
    assert room.bobbin == 50 * 36 * Fraction("25.4")
    assert room.lever_takes == {"6": Fraction(1, 2), "12": Fraction(3, 4)}
    assert (room.most_joins, room.most_sections) == (0, 2)
    assert (room.machines, room.overlockers, room.irons) == (4, 2, 1)
    assert (room.hourly_rate, room.currency, room.cut_price) == (Fraction(20), "GBP", Fraction(0))


def test_the_defaults_that_editors_show_are_those_of_a_home_table() -> None:
    told = {
        key: rule["default"]
        for key, rule in load_schema("workroom.schema.json")["properties"].items()
        if "default" in rule
    }
    assert len(told) == 20
    assert read("".join(f"{key}: {value}\n" for key, value in told.items())) == Workroom()


@pytest.mark.parametrize(
    ("line", "code", "place", "headline"),
    [
        ("bobin: 25 m", "FB130", "2:1", "`bobin` is no key of a workroom"),
        ("neaten with: overlok", "FB133", "2:14", "`neaten with` is `overlok`, which is not one of its words"),
        ("fold cloth: true", "FB133", "2:13", "`fold cloth` is `true`, which is neither yes nor no"),
        ("bobbin: 25 g", "FB121", "2:9", "`bobbin` is 25 g, which is a weight; a length such as 5 mm is wanted"),
        ("bobbin: 0 m", "FB122", "2:9", "`bobbin` is 0 m, and it must be more than 0"),
        ("bobbin: 25 mtr", "FB120", "2:12", "`mtr` is no unit"),
        ("bobbin:", "FB135", "2:8", "`bobbin` is empty"),
        ("bobbin: [25 m]", "FB132", "2:9", "`bobbin` is a list, and a text is wanted"),
        ("margin: -1%", "FB122", "2:9", "`margin` is -1%, less than the least of 0"),
        ("join price: -1 EUR", "FB122", "2:13", "`join price` is -1 EUR, less than the least of 0"),
        ("most joins: -1", "FB122", "2:13", "`most joins` is -1, less than the least of 0"),
        ("most joins: 1.5", "FB122", "2:13", "`most joins` is 1.5, and it must be a whole number"),
        ("most sections: 0", "FB122", "2:16", "`most sections` is 0, less than the least of 1"),
        (
            "most sections: 1 m",
            "FB121",
            "2:16",
            "`most sections` is 1 m, which is a length; a whole number such as 2 is wanted",
        ),
        (
            "join price: 1 m",
            "FB121",
            "2:13",
            "`join price` is 1 m, which is a length; a price such as 0.25 EUR is wanted",
        ),
        (
            "hourly rate: 14 EUR",
            "FB121",
            "2:14",
            "`hourly rate` is 14 EUR, which is a price in EUR; a price for the time, such as 14 EUR/h, is wanted",
        ),
        (
            "join price: 1 EUR\nhourly rate: 9 GBP/h",
            "FB121",
            "3:14",
            "`hourly rate` is 9 GBP/h, and other prices are in EUR",
        ),
        (
            "attachment takes: {6: 120%}",
            "FB122",
            "2:23",
            "mark 6 takes 120%, and a share between 0% and 100% is wanted",
        ),
    ],
)
def test_each_fault_has_its_place_and_words(line: str, code: str, place: str, headline: str) -> None:
    fault = only_fault(line)
    assert (fault.code, fault.headline) == (code, headline)
    assert fault.primary is not None
    assert str(fault.primary.span) == f"room.yaml:{place}"


def test_all_faults_are_told_at_once() -> None:
    faults = read_workroom(("room.yaml", b"workroom: 2\nbobbin: 25 g\nmargin: x\nholdwith: pins\n")).faults
    assert [fault.code for fault in faults] == ["FB133", "FB121", "FB120", "FB130"]
