"""The values of a tree as texts, formulas and answers, each with its place.

A value of the wrong form gives nothing here and no fault: the schema has told it.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.spec import Word, Written
from furbelow.measure.formula import NO_ROUND, Formula, Round, parse_formula
from furbelow.s1_read.yaml_tree import Entry, ListTree, MapTree, TextTree, Tree


def map_at(tree: Tree | None, key: str) -> MapTree:
    """The map under a key, or an empty one in its place."""
    value = value_at(tree, key)
    if isinstance(value, MapTree):
        return value
    return MapTree(tree.span if tree else Span.at_start(""), ())


def rows_at(tree: Tree | None, key: str) -> tuple[Tree, ...]:
    value = value_at(tree, key)
    return value.rows if isinstance(value, ListTree) else ()


def value_at(tree: Tree | None, key: str) -> Tree | None:
    entry = tree.entry(key) if isinstance(tree, MapTree) else None
    return entry.value if entry else None


def text_at(tree: Tree | None, key: str, otherwise: str = "") -> str:
    value = value_at(tree, key)
    return value.text if isinstance(value, TextTree) else otherwise


def word_at(tree: Tree | None, key: str) -> Word | None:
    value = value_at(tree, key)
    return Word(value.text, value.span) if isinstance(value, TextTree) else None


def answer_at(tree: Tree | None, key: str, otherwise: bool) -> bool:
    """Whether `yes` stands under the key."""
    answer = text_at(tree, key)
    return answer == "yes" if answer in ("yes", "no") else otherwise


def maps_in(tree: MapTree) -> list[tuple[Entry, MapTree]]:
    """The entries whose value is a map, with that map."""
    return [(entry, entry.value) for entry in tree.entries if isinstance(entry.value, MapTree)]


USE, BASE = "use", "based on"


def names_files(tree: Tree) -> bool:
    """Whether the spec is built on other files."""
    return isinstance(tree, MapTree) and any(tree.entry(key) for key in (USE, BASE))


def is_library(tree: Tree) -> bool:
    """Whether the file holds what several garments share, and is none itself."""
    return isinstance(tree, MapTree) and tree.entry("library") is not None and tree.entry("furbelow") is None


class Formulas:
    """Reads formulas, as they are in the round of a repeat that is being read, and keeps the faults in them."""

    def __init__(self) -> None:
        self.faults: list[Fault] = []
        self.round: Round = NO_ROUND

    def at(self, tree: Tree | None, key: str, *, check: bool = False) -> Written | None:
        return self.read(value_at(tree, key), check=check)

    def read(self, value: Tree | None, *, check: bool = False) -> Written | None:
        """The formula in a value, or None. Fails: FB201. check: a comparison is wanted."""
        if not isinstance(value, TextTree):
            return None
        formula = parse_formula(value.text, check=check, within=self.round)
        if isinstance(formula, Formula):
            return Written(value.text, formula, value.place(0, len(value.text)))
        place = value.place(formula.offset, max(formula.length, 1))
        self.faults.append(Fault("FB201", formula.message, Label(place), help=formula.help))
        return None
