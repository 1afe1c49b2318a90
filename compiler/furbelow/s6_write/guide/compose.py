"""Compose the guide: from the rehearsal, the cutting and the shopping list to everything a person reads."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from furbelow.garment import spec
from furbelow.garment.message import Things
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.spec import SupplyKind
from furbelow.garment.technique import Tool
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.rest_of_time import with_rest_of_time
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.figures import how_to_read, overview
from furbelow.s6_write.figures.measuring import measuring
from furbelow.s6_write.guide.afterwards import afterwards, terms
from furbelow.s6_write.guide.cautions import each_once, general_cautions
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.cut_operations import cut_operations
from furbelow.s6_write.guide.cutting_pages import cut_lines
from furbelow.s6_write.guide.front import at_a_glance, imprint_of, plan_of_sittings, waits_of
from furbelow.s6_write.guide.guide import Cover, Guide, Operation, Part, ProofLine
from furbelow.s6_write.guide.last_look import LABEL_TOOLS, label_left, last_look, sewn_before
from furbelow.s6_write.guide.left_out import left_out
from furbelow.s6_write.guide.letters import letters_of
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.measures import measured
from furbelow.s6_write.guide.operations import operations
from furbelow.s6_write.guide.own_pictures import own_figure
from furbelow.s6_write.guide.pile import BOUGHT_FOR_ALL, pile_materials, pile_operation
from furbelow.s6_write.guide.reasons import reasons
from furbelow.s6_write.guide.shown_once import shown_once
from furbelow.s6_write.guide.stops import sitting_ends
from furbelow.s6_write.guide.summary import summary, times
from furbelow.s6_write.guide.told_reason import cut_rounding
from furbelow.s6_write.guide.tools import tools
from furbelow.s6_write.picture import picture_of
from furbelow.s6_write.words.said_step import said_step
from furbelow.s6_write.words.words import Words


def compose(
    rehearsal: Rehearsal,
    cutting: Cutting,
    shopping: ShoppingList,
    wearer: str,
    *,
    for_some: bool = False,
    begun: int | None = None,
    pile: int = 0,
    marked: bool = False,
) -> Guide:
    """The guide for one wearer: the cutting first, each operation under its letter.

    pile: the number of the pile to take where a class cuts together, and `cutting` is a share of what it cuts.
    marked: for a booklet of sizes: numbers stand marked in what is said, cautions and drawings in each operation, and what a
        booklet shows of one size or not at all is left out.
    for_some: for who goes on with some of the operations: cautions and drawings stand in each, and not only in the first.
    begun: the first of the performed steps that is left, where the cloth is cut: the first page tells of the work from there on.
    """
    run, solved = rehearsal.run, rehearsal.solved
    shopping = shopping if begun is None else with_rest_of_time(shopping, begun)
    needs = {line.name: line.need for line in shopping.lines}
    say = Phrasing(solved, run.room, cutting.joins, cutting.lengths, needs)
    words = Words(say.language, say, cutting.marks, marked=marked)
    words.read("guide")
    told = [said_step(done, words) for done in run.performed]
    pieces = cut_lines(solved.pieces, cutting, words)
    steps = [done.step.written.index for done in run.performed]
    cut_letters, step_letters, last_letter = letters_of(tuple(cutting.sheets), steps)
    label = label_left(rehearsal, told)
    cut = (
        (pile_operation(solved, cutting, pile, words, next(iter(cut_letters.values()), "")),)
        if pile
        else tuple(cut_operations(cutting, solved, words, cut_letters, _trims(run)))
    )
    label_at = sewn_before(rehearsal, told) if label else None
    ends = sitting_ends(rehearsal, shopping, pile=bool(pile))
    parts: Sequence[Part] = operations(rehearsal, told, shopping, words, step_letters, ends, label_at)
    last = last_look(rehearsal, words, last_letter, label=label and label_at is None)
    if not marked:
        given = (*cut_letters.values(), *step_letters.values(), last_letter)
        skipped = left_out(given, _letters((Part("", cut), *parts, last)), words)
        *parts, last = _with_skip((*parts, last), skipped)
    worked = (*(operation for part in parts for operation in part.operations), *last.operations)
    to_cut, to_do = (cut, worked) if begun is None else ((), _left(worked, run, begun))
    waits = tuple(waits_of(run, told, to_do, to_cut))
    sittings = tuple(plan_of_sittings(rehearsal, shopping, to_cut, to_do, waits, words, ends, begun or 0))
    if not for_some and not marked:
        first, *rest, last = shown_once(each_once((Part("", cut), *parts, last), sittings))
        cut, parts = first.operations, tuple(rest)
    facts = tuple(summary(rehearsal, words))
    measures = tuple(measured(solved, words))
    asked = (*(LABEL_TOOLS if label else ()), *((Tool.PRESS_CLOTH,) if _trims(run) and not pile else ()))
    guide = Guide(
        title=solved.spec.title,
        wearer=wearer,
        about=solved.spec.about,
        facts=(*facts, *times(shopping, words)),
        cautions=general_cautions(rehearsal, words),
        tools=tuple(tools(rehearsal, told, words, asked)),
        materials=pile_materials(shopping, cutting, pile, words) if pile else material_lines(shopping, words),
        cutting=pieces,
        key=how_to_read(words),
        cut=cut,
        parts=(*parts, last),
        proofs=tuple(_proofs(rehearsal, words)),
        notes=solved.spec.notes,
        overview=None if marked else overview(run, words),
        picture=() if marked else picture_of(run, words),
        rounding=cut_rounding(solved, words),
        content_key="",
        language=words.language,
        reasons=() if marked and not run.room.reasons else reasons(run, facts, pieces, parts, words),
        reasons_in=_other_units(words),
        glance=tuple(
            fact
            for fact in at_a_glance(rehearsal, shopping, wearer, to_do, [wait for _, wait in waits], words)
            if not ((pile or begun is not None) and fact.name in BOUGHT_FOR_ALL)
        ),
        sittings=sittings,
        measuring=measuring(measures, words),
        measures=measures,
        terms=tuple(terms(run.performed, words)),
        afterwards=tuple(afterwards(run, worked, words)),
        paper=run.room.paper,
        given_out=bool(pile),
        with_reasons=run.room.reasons,
        imprint=tuple(imprint_of(solved.spec.imprint, words)),
        cover=_cover(solved.spec.cover),
    )
    return replace(guide, content_key=content_key(guide))


_SHRINK = (SupplyKind.TRIM, SupplyKind.CORD)
_BONE = "use-hoop"  # which may be written as a trim


def _trims(run: Run) -> tuple[str, ...]:
    """What shrinks in the wash of all that steps use but the cloth."""
    used = [use.material for done in run.performed for use in done.used if use.what.message != _BONE]
    trims = [name for name in used if run.solved.materials[name].material.kind in _SHRINK]
    return tuple(dict.fromkeys(trims))


def _left(worked: Sequence[Operation], run: Run, begun: int) -> tuple[Operation, ...]:
    """The operations of the steps from `begun` on, and the last look."""
    done = {each.key for each in run.performed[:begun]}
    return tuple(operation for operation in worked if operation.key not in done)


def _letters(parts: Sequence[Part]) -> set[str]:
    return {operation.letter for part in parts for operation in part.operations}


def _with_skip(parts: Sequence[Part], skipped: Mapping[str, str]) -> tuple[Part, ...]:
    """The parts, the first operation behind a letter that is left out saying why."""

    def of(operation: Operation) -> Operation:
        return replace(operation, skipped=skipped[operation.letter]) if operation.letter in skipped else operation

    return tuple(replace(part, operations=tuple(map(of, part.operations))) for part in parts)


def _cover(written: spec.Cover | None) -> Cover | None:
    if written is None:
        return None
    return Cover(written.words, own_figure("cover", written.picture) if written.picture else None)


def _proofs(rehearsal: Rehearsal, words: Words) -> Iterator[ProofLine]:
    words.read("proofs")
    for proof in rehearsal.proofs:
        # What was warned of is not shown, though the maker may have meant it.
        if proof.shown and not proof.faults:
            yield ProofLine(words.text(proof.claim), words.said(Things(proof.shown, "clauses")))
    for because in rehearsal.accepted:
        yield ProofLine(words.text("proof-accepted"), because)


def _other_units(words: Words) -> str:
    """The units of the spec, in which numbers are worked out, where the guide speaks in others."""
    worked_in = words.say.solved.spec.system
    if worked_in == words.say.system:
        return ""
    words.read("reasons")
    return words.text("reason-units-inches" if worked_in == "inch" else "reason-units-cm")
