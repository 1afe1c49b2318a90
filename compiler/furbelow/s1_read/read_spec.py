"""Read a garment spec: from a file to a located spec, with every fault in it."""

from __future__ import annotations

from collections import ChainMap
from collections.abc import Mapping
from typing import TYPE_CHECKING

from furbelow.diagnose.fault import Fault, Label, Span, Staged, has_errors, in_reading_order
from furbelow.garment.spec import ENGLISH, Spec
from furbelow.garment.technique import Technique
from furbelow.s1_read.lower import lower
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.schema_walk import Schema
from furbelow.s1_read.source import Source, read_checked
from furbelow.s1_read.values import is_library, names_files, text_at, value_at
from furbelow.s1_read.yaml_tree import Tree
from furbelow.techniques import techniques

if TYPE_CHECKING:
    from furbelow.techniques.own_technique import OwnTechnique

SCHEMA = "garment.schema.json"


def read_spec(source: Source, *, language: str | None = None, in_full: bool = False) -> Staged[Spec]:
    """The spec in a file, or every fault that keeps it from being one.

    source: its path, or a name for messages and its bytes.
    language: in which the maker's texts are wanted, where the spec has them in several; without it, that of the spec.
    in_full: ask the full schema validator even where the quick walk finds nothing.
    Fails: FB101 to FB112 for the file, FB130 to FB137 for its keys, FB140 to FB145 for its names, FB160 for
        its languages, FB170 to FB173 for its repeats, FB174 to FB176 for what it is built on, FB201 for its formulas.
    """
    own: dict[str, OwnTechnique] = {}
    own_faults: list[Fault] = []
    sayings = Sayings(ENGLISH, language)
    built_on: tuple[str, ...] = ()

    def built_up(tree: Tree, file: str) -> Staged[Tree]:
        nonlocal built_on
        if is_library(tree):
            here = Label(Span.at_start(file))
            said = "this file is a library, and no garment"
            return Staged(None, (Fault("FB174", said, here, help="check a garment that uses it"),))
        if not names_files(tree):
            return Staged(tree)
        from furbelow.s1_read.used_files import laid_together

        laid = laid_together(tree, file)
        built_on = tuple(used.path for used in laid.files)
        return Staged(None if has_errors(laid.faults) else laid.tree, in_reading_order(laid.faults))

    def with_own(tree: Tree, schema: Schema) -> Schema:
        nonlocal sayings
        sayings = Sayings(text_at(tree, "language", ENGLISH), language)
        if value_at(tree, "techniques") is None:
            return schema
        from furbelow.s1_read.read_own_techniques import own_techniques, with_techniques

        found, told = own_techniques(tree, techniques(), sayings)
        own.update(found)
        own_faults.extend(told)
        return with_techniques(schema, own)

    name, content, checked = read_checked(source, SCHEMA, in_full=in_full, whole=built_up, widened=with_own)
    if checked.value is None:
        return Staged(None, checked.faults)
    text = content.decode("utf-8-sig")
    # Not merged into one dict: that would load every technique there is.
    words: Mapping[str, Technique] = ChainMap(own, techniques())  # type: ignore[arg-type]  # only read
    lowered = lower(checked.value, text, name, words, sayings)
    further = (*own_faults, *lowered.faults)
    faults = in_reading_order((*checked.faults, *without_echoes(further, checked.faults)))
    if lowered.value is None or has_errors(faults):
        return Staged(None, faults)
    return Staged(lowered.value._replace(built_on=built_on) if built_on else lowered.value, faults)


def without_echoes(faults: tuple[Fault, ...], told: tuple[Fault, ...]) -> tuple[Fault, ...]:
    """The faults whose place is not told of already: what is no text is no formula either."""
    places = [fault.primary.span for fault in told if fault.primary]
    return tuple(fault for fault in faults if not any(lies_in(fault, place) for place in places))


def lies_in(fault: Fault, place: Span) -> bool:
    """Whether the fault is somewhere in that place."""
    if fault.primary is None:
        return False
    span = fault.primary.span
    starts = (place.start_line, place.start_column) <= (span.start_line, span.start_column)
    return starts and (span.end_line, span.end_column) <= (place.end_line, place.end_column)
