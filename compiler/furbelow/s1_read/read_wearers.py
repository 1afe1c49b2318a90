"""Read a wearer, or a class of wearers, from a YAML file or a table."""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Staged, in_reading_order
from furbelow.garment.spec import Written
from furbelow.garment.wearer import Wearer
from furbelow.s1_read.read_spec import lies_in, without_echoes
from furbelow.s1_read.roster import Known, number_of, read_roster, told_twice
from furbelow.s1_read.source import Source, read_bytes, read_checked
from furbelow.s1_read.values import Formulas, map_at, rows_at, text_at, value_at, word_at
from furbelow.s1_read.yaml_tree import MapTree, Tree

SCHEMA = "wearer.schema.json"


def read_wearers(source: Source, known: Known | None = None) -> Staged[tuple[Wearer, ...]]:
    """The wearers in a file, in its order: those whose part of the file is sound, and a fault for the rest.

    source: its path, or a name for messages and its bytes; a name that ends in .csv is a table (see roster.py).
    known: what the columns of a table may be.
    Fails: FB101 to FB112, FB130 to FB135 and FB201; FB150 and FB151 for a table; FB151 for a wearer told twice.
    There is no value where no wearer is sound.
    """
    name = str(source[0] if isinstance(source, tuple) else source)
    if name.lower().endswith(".csv"):
        name, read = read_bytes(source)
        return Staged(None, read.faults) if read.value is None else _some(read_roster(read.value, name, known))
    _, _, checked = read_checked(source, SCHEMA)
    if checked.value is None:
        return Staged(None, checked.faults)
    wearers, faults = _wearers(checked.value, checked.faults)
    return _some(Staged(wearers, in_reading_order((*checked.faults, *faults))))


def class_name(source: Source) -> str:
    """What the class in a file is called; empty for a table, for one wearer, and for a class without a name."""
    if str(source[0] if isinstance(source, tuple) else source).lower().endswith(".csv"):
        return ""
    return text_at(read_checked(source, SCHEMA)[2].value, "class")


def _some(staged: Staged[tuple[Wearer, ...]]) -> Staged[tuple[Wearer, ...]]:
    return staged if staged.value else Staged(None, staged.faults)


def _wearers(tree: Tree, told: tuple[Fault, ...]) -> tuple[tuple[Wearer, ...], tuple[Fault, ...]]:
    """The sound wearers, and the faults beyond those that the schema has told."""
    rows = rows_at(tree, "wearers") if value_at(tree, "class") else (tree,)
    wearers: dict[str, Wearer] = {}
    faults: list[Fault] = []
    for row in rows:
        if not isinstance(row, MapTree) or not (name := text_at(row, "wearer")):
            continue
        formulas = Formulas()
        place = value_at(row, "wearer")
        span = place.span if place else row.span
        number, wrong = number_of(word_at(row, "number"))
        wearer = Wearer(
            name,
            _read(row, "body", formulas),
            _read(row, "choices", formulas),
            span,
            word_at(row, "language"),
            number,
            text_at(row, "notes"),
            word_at(row, "workroom"),
        )
        faults.extend(without_echoes((*formulas.faults, *wrong), told))
        if first := wearers.get(name):
            faults.append(told_twice(wearer, first))
        elif not formulas.faults and not wrong and not any(lies_in(fault, row.span) for fault in told):
            wearers[name] = wearer
    return tuple(wearers.values()), tuple(faults)


def _read(row: MapTree, key: str, formulas: Formulas) -> dict[str, Written]:
    read = {entry.key: formulas.read(entry.value) for entry in map_at(row, key).entries}
    return {name: written for name, written in read.items() if written is not None}
