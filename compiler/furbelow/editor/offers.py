"""What may come next at a place among the steps of a spec: techniques, their keys, and edges as they are at that step.

A spec is seldom whole while a step is typed, so it is read without that step: as it stands up to there, or else with all
other steps.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from furbelow.garment.bench import Bench
from furbelow.garment.spec import Spec
from furbelow.garment.technique import Kind, Parameter, Technique
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.named import NamedTuple
from furbelow.order.chain import solved
from furbelow.order.order import Order
from furbelow.s1_read.read_own_techniques import own_techniques
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.used_files import laid_together
from furbelow.s1_read.values import names_files, text_at
from furbelow.s1_read.yaml_tree import read_tree
from furbelow.s3_rehearse.rehearse import carried_out
from furbelow.techniques import technique_of, techniques

_STEP = re.compile(r"^(\s*)-\s+(?:([\w ]+?)\s*:)?")
_NEW_ROW = re.compile(r"^\s*-\s+[\w ]*$")
_VALUE = re.compile(r"(?:^\s+|[{,]\s*)([\w ]+?):\s*\[?[\w., ]*$")
_NEW_KEY = re.compile(r"(?:\{|,|^\s+)\s*[\w ]*$")
WORD = re.compile(r"[\w.]*$")  # what of the offer stands already before the pointer


class Offer(NamedTuple):
    word: str
    about: str


class _Place(NamedTuple):
    """A step that is being typed. start, end: its lines; rest: the first line after all steps."""

    start: int
    end: int
    rest: int
    technique: str


def offers(file: str, text: str, line: int, column: int) -> tuple[Offer, ...]:
    """What may stand at that place, in the order that is told. line and column count from 0, in characters."""
    lines = text.splitlines()
    place = _place(lines, line)
    if place is None:
        return ()
    before = lines[line][:column]
    known = _techniques(file, "\n".join([*lines[: place.start], *lines[place.end :]]))
    if line == place.start and _NEW_ROW.match(before):
        return tuple(Offer(name, each.about) for name, each in known.items())
    technique = known.get(place.technique)
    if technique is None:
        return ()
    if value := _VALUE.search(before):
        key = technique.parameters.get(value[1])
        return tuple(_values(key, file, lines, place)) if key else ()
    if _NEW_KEY.search(before):
        return tuple(Offer(name, key.about) for name, key in technique.parameters.items())
    return ()


def _place(lines: list[str], line: int) -> _Place | None:
    """The step that the line belongs to; None where it stands under another heading of the spec."""
    if not 0 <= line < len(lines):
        return None
    heads = [at for at, row in enumerate(lines) if row[:1].strip() and row[0] not in "-#"]
    over = [at for at in heads if at <= line]
    if not over or not lines[over[-1]].startswith("steps:"):
        return None
    start = next((at for at in range(line, over[-1], -1) if _STEP.match(lines[at])), None)
    if start is None:
        return None
    found = _STEP.match(lines[start])
    assert found is not None
    indent, rest = len(found[1]), next((at for at in heads if at > line), len(lines))
    inside = (at for at in range(line + 1, rest) if lines[at].strip())
    end = next((at for at in inside if len(lines[at]) - len(lines[at].lstrip()) <= indent), rest)
    return _Place(start, end, rest, found[2] or "")


def _techniques(file: str, text: str) -> Mapping[str, Technique]:
    """The spec's own techniques first, those of its libraries among them, then the built-in ones."""
    tree = read_tree(text, file).value
    if tree is None:
        return techniques()
    whole = laid_together(tree, file).tree if names_files(tree) else tree
    own, _ = own_techniques(whole, techniques(), Sayings(text_at(whole, "language", "en"), None))
    return {**own, **techniques()}


def _values(key: Parameter, file: str, lines: list[str], place: _Place) -> Iterator[Offer]:
    """What may be written after a key."""
    if isinstance(key.kind, tuple):
        yield from (Offer(word, "") for word in key.kind)
        return
    at_work = _at_work(file, lines, place)
    if at_work is None:
        return
    spec, bench = at_work
    if key.kind in (Kind.EDGE, Kind.EDGES, Kind.CASING):
        system = spec.system
        for name, edge in bench.edges.items():
            gathered = ", gathered" if edge.gathered else ""
            yield Offer(name, f"{mm(edge.set_length).show(system)}, {edge.state}{gathered}")
        yield from (Offer(name, "seam") for name in bench.seams if name not in bench.edges)
    if key.kind in (Kind.PIECE, Kind.PIECES, Kind.CASING):
        yield from (Offer(name, piece.about) for name, piece in spec.pieces.items())
    if key.kind is Kind.MATERIAL:
        fitting = (each for each in spec.materials.values() if each.kind in key.supplies)
        yield from (Offer(each.name, each.about) for each in fitting)


def _at_work(file: str, lines: list[str], place: _Place) -> tuple[Spec, Bench] | None:
    """The spec and its pieces as they lie when the step begins, for the first size."""
    so_far = [*lines[: place.start], *lines[place.rest :]]
    others = [*lines[: place.start], *lines[place.end :]]
    for kept in (so_far, others):
        read = read_spec((file, "\n".join(kept).encode("utf-8", "surrogatepass")))
        if read.value is None or not read.value.sizes:
            continue
        size, body = next(iter(read.value.sizes.items()))
        numbers = solved(Order(read.value, f"size {size}", body, {}, Workroom()))
        if numbers.value is None:
            continue
        run = carried_out(numbers.value, Workroom(), technique_of)
        earlier = [done for done in run.performed if done.step.written.span.start_line <= place.start]
        return read.value, earlier[-1].after if earlier else run.performed[0].before
    return None
