"""Compose the guide: from the rehearsal, the cutting and the shopping list to everything a person reads."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.limits import gram_per_m2
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.solved import Derivation
from furbelow.garment.technique import OwnAction as Action
from furbelow.garment.technique import Performed, SetUp
from furbelow.s3_rehearse.levelling import heights_of, lengths_at, levelled
from furbelow.s3_rehearse.run import Rehearsal, Run
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.figures import cutting_figures, figures_for, how_to_read, overview
from furbelow.s6_write.guide.cautions import general_cautions
from furbelow.s6_write.guide.cutting_pages import cut_lines, cutting_steps
from furbelow.s6_write.guide.garment_facts import elastic_reason, garment_facts
from furbelow.s6_write.guide.guide import Caution, Fact, Guide, GuideStep, Operation, Part, ProofLine, Tool
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.reasons import elastic_name, name_of, numbers_of, reasons
from furbelow.s6_write.words.said_step import said_step
from furbelow.s6_write.words.words import Words


def compose(rehearsal: Rehearsal, cutting: Cutting, shopping: ShoppingList, wearer: str) -> Guide:
    """The guide for one wearer. Steps are numbered through, cutting first."""
    run, solved = rehearsal.run, rehearsal.solved
    say = Phrasing(solved, run.room, cutting.joins, cutting.lengths)
    cutting_page = cutting_steps(solved, cutting, say)
    words = Words("en", say, cutting.letters)
    parts = _parts(rehearsal, shopping, words, len(cutting_page))
    facts, pieces = _facts(rehearsal, say), cut_lines(solved, cutting, say)
    guide = Guide(
        title=solved.spec.title,
        wearer=wearer,
        about=solved.spec.about,
        facts=(*facts, *_times(rehearsal, shopping, parts)),
        cautions=general_cautions(rehearsal),
        tools=_tools(rehearsal, parts),
        materials=material_lines(shopping, say),
        cutting=pieces,
        cutting_figures=(how_to_read(), *cutting_figures(cutting, solved, words)),
        cutting_steps=cutting_page,
        parts=(*parts, _last_look(rehearsal, say, cutting_page, parts)),
        proofs=tuple(ProofLine(proof.claim, proof.shown) for proof in rehearsal.proofs if proof.shown),
        notes=solved.spec.notes,
        overview=overview(run, words),
        rounding=say.length(solved.rounding),
        content_key="",
        reasons=reasons(rehearsal.run, facts, pieces, parts),
        reasons_in=_other_units(say),
    )
    return replace(guide, content_key=_content_key(guide))


def _other_units(say: Phrasing) -> str:
    """The units of the spec, in which numbers are worked out, where the guide speaks in others."""
    worked_in = say.solved.spec.system
    return "" if worked_in == say.system else "inches" if worked_in == "inch" else "cm"


def _content_key(guide: Guide) -> str:
    told = json.dumps(guide, default=vars, sort_keys=True, ensure_ascii=False)
    return hashlib.sha256(told.encode("utf-8", "surrogatepass")).hexdigest()[:16]


def _parts(rehearsal: Rehearsal, shopping: ShoppingList, words: Words, numbered: int) -> tuple[Part, ...]:
    parts: list[tuple[str, list[Operation]]] = []
    performed, solved, say = rehearsal.run.performed, rehearsal.solved, words.say
    stops = _stops(rehearsal, shopping)
    number = numbered
    for at, done in enumerate(performed):
        telling = said_step(done, words)
        if not telling.actions:
            continue
        steps = []
        before = (*_back_to_straight(performed, at, say), *_fresh_bobbins(shopping, at, say))
        first = number + len(before) + 1
        for row in (*before, *(action.told for action in telling.actions)):
            number += 1
            steps.append(GuideStep(number, *row))
        heading = done.step.written.part or "The work"
        operation = Operation(
            key=f"step-{done.step.written.index + 1}",
            title=telling.title,
            aim=telling.aim,
            minutes=_minutes(shopping.minutes[at]),
            cautions=tuple(Caution(kind, text) for kind, text in telling.cautions),
            figures=figures_for(done, rehearsal.run, words, first),
            steps=tuple(steps),
            tip=done.step.written.tip,
            stop=stops[at],
            why=numbers_of(done, solved),
        )
        if not parts or parts[-1][0] != heading:
            parts.append((heading, []))
        parts[-1][1].append(operation)
    return tuple(Part(title, tuple(operations)) for title, operations in parts)


def _back_to_straight(performed: Sequence[Performed], at: int, say: Phrasing) -> list[Action]:
    """What to say before a straight seam where the machine is still set to zigzag."""
    sewn = [done.setup for done in performed[:at] if done.setup in ("zigzag", "straight stitch")]
    if performed[at].setup != "straight stitch" or not sewn or sewn[-1] != "zigzag":
        return []
    return [Action(f"Set the machine back from zigzag to straight, with a {say.stitch(say.room.seam_stitch)}.")]


def _fresh_bobbins(shopping: ShoppingList, at: int, say: Phrasing) -> list[Action]:
    """What to say before a step in which the bobbin would run out."""
    if shopping.bobbins is None:
        return []
    full = say.buy(say.room.bobbin) if say.room.bobbin else ""
    told = []
    for fresh in shopping.bobbins.fresh:
        step, before, rows = (int(number) for number in fresh.step.split())
        if step != at:
            continue
        sewn = before + fresh.piece - 1
        text = f"When {sewn} of the {rows} rows of this step are sewn, put in a fresh bobbin."
        left = say.thread_left(fresh.left)
        told.append(
            Action(
                "Start with a fresh bobbin." if sewn == 0 else text,
                check=f"About {left} of the {full} is left on the old one: too little for the next row.",
            )
        )
    longer = [inside for inside in shopping.bobbins.inside if inside.step.split()[0] == str(at)]
    if longer:
        spare = max(inside.changes for inside in longer)
        told.append(
            Action(
                f"Wind {say.count(spare, 'spare bobbin')}: each of these long rows takes more thread than one holds."
            )
        )
    return told


def _last_look(rehearsal: Rehearsal, say: Phrasing, cutting: tuple[GuideStep, ...], parts: tuple[Part, ...]) -> Part:
    """The check of the finished garment: pins, lengths, edges."""
    number = len(cutting) + sum(len(operation.steps) for part in parts for operation in part.operations)
    told = [
        (
            "Count the pins and needles.",
            "As many are in the box as when you began.",
            "",
            "Feel along every seam and the waist until the last one is found. Nobody puts the garment on before.",
        ),
        ("Cut off all loose threads and take out the bright ones.", "", "", ""),
        *_hem_checks(rehearsal, say),
        (
            "Turn it inside out and look along every edge.",
            "No edge frays, no layer is caught where it should not be.",
            "",
            "Neaten or sew again what you find.",
        ),
    ]
    steps = tuple(GuideStep(number + at, *row) for at, row in enumerate(told, 1))
    return Part(
        "Last look",
        (
            Operation(
                "last-look", "Look the garment over", "It is safe to put on.", _hours(LAST_LOOK), (), (), steps, "", ""
            ),
        ),
    )


def _hem_checks(rehearsal: Rehearsal, say: Phrasing) -> list[tuple[str, str, str, str]]:
    """How long it must be; where the waist was levelled, also how high the hem is on the wearer."""
    run, off = rehearsal.run, f"{say.about(rehearsal.solved.rounding * 2)} more or less"
    lowest = max(run.drops, key=lambda piece: run.drops[piece])
    front, side, back = (say.length(length) for length in lengths_at(run, lowest))
    heights = heights_of(run)
    if not levelled(run) or heights is None:
        return [
            (
                f"Hang it up and measure from the top edge to the hem: {say.length(run.drops[lowest])}.",
                "It is the same in front, behind and at the sides.",
                off,
                "If one side hangs lower, look there for a seam that was sewn narrower, and sew it again.",
            )
        ]
    above = say.length(max(heights) - run.drops[lowest])
    return [
        (
            f"Hang it up and measure from the top edge to the hem: {front} in front, {side} at the sides, {back} behind.",
            "All three are right.",
            off,
            "Where it is longer, unpick the waist there and take the top edge up.",
        ),
        (
            f"Ask the wearer to stand straight, without shoes. Measure from the floor up to the hem: {above}.",
            "It is the same in front, behind and at the sides.",
            off,
            "Where the hem hangs lower, take the top edge up there, and never trim the hem.",
        ),
    ]


# Without sittings a stop is worth naming only after so much work, in minutes.
STRETCH = Fraction(30)


def _stops(rehearsal: Rehearsal, shopping: ShoppingList) -> list[str]:
    """What is said after each step: where a sitting ends, or where the work may be put away after a good stretch.

    A sitting ends at the last safe place within its time; a step longer than a sitting has one of its own.
    """
    performed, room = rehearsal.run.performed, rehearsal.run.room
    told = [""] * len(performed)
    safe = [_safe_to_stop(done.after) for done in performed[:-1]] + [False]
    longest = STRETCH if room.sitting is None else room.sitting / 60
    spent, since, last_safe, sitting = Fraction(0), Fraction(0), -1, 0
    for at, minutes in enumerate(shopping.minutes):
        if room.sitting is None:
            spent += minutes
            if safe[at] and spent >= longest:
                told[at], spent = "A good place to stop and put the work away.", Fraction(0)
            continue
        if spent + minutes > longest and last_safe >= 0:
            sitting += 1
            told[last_safe] = f"End of sitting {sitting}. Put the work away here, pins counted."
            spent, last_safe = since, -1
        spent, since = spent + minutes, since + minutes
        if safe[at]:
            last_safe, since = at, Fraction(0)
    return told


def _safe_to_stop(bench: Bench) -> bool:
    """Nothing hangs on pins or loose threads: no gathers unsewn, no elastic in an open casing."""
    loose = any(edge.gathered and not edge.held and name not in bench.layered for name, edge in bench.edges.items())
    return not loose and not any(casing.open and casing.elastic for casing in bench.casings.values())


LAST_LOOK = 10  # minutes


def _fives(minutes: Fraction) -> int:
    """Time as a person plans it: to 5 minutes."""
    return max(1, round(minutes / 5)) * 5


def _minutes(minutes: Fraction) -> str:
    return _hours(_fives(minutes))


def _hours(minutes: int) -> str:
    hours, rest = divmod(minutes, 60)
    return " ".join(([f"{hours} h"] if hours else []) + ([f"{rest} min"] if rest else []))


def _facts(rehearsal: Rehearsal, say: Phrasing) -> tuple[Fact, ...]:
    solved, run = rehearsal.solved, rehearsal.run
    spec, facts = solved.spec, []
    # A body is nobody's business: only the measures that some number of this guide stands on are shown.
    needed = {name for number in solved.values.values() for name in number.inputs}
    for name in spec.body:
        if name in needed:
            facts.append(_fact(solved.values[name], name.replace("_", " "), say))
    for name, choice in spec.choices.items():
        facts.append(_fact(solved.values[name], choice.about or name.replace("_", " "), say))
    for name, measure in spec.measures.items():
        facts.append(_fact(solved.values[name], measure.about or name.replace("_", " "), say))
    facts += garment_facts(run, say)
    for casing in run.final.casings.values():
        facts.append(
            Fact(
                name_of(solved, f"{casing.piece}.length", casing.length),
                "cloth round the waist, before elastic",
                say.length(casing.length),
                "it must pass over the hips",
            )
        )
        if casing.elastic:
            facts.append(
                Fact(
                    elastic_name(run, casing),
                    "elastic, closed and at rest",
                    say.length(casing.elastic_length),
                    elastic_reason(run, casing, say),
                )
            )
    for opening in run.final.openings.values():
        facts.append(
            Fact("", "waist, closed", say.length(opening.waist), f"the band less its overlap; {opening.closed_by}")
        )
        facts.append(
            Fact(
                "",
                "opening below the waist",
                say.length(opening.length),
                "with the open band it must pass over the hips",
            )
        )
    return tuple(facts)


def _times(rehearsal: Rehearsal, shopping: ShoppingList, parts: tuple[Part, ...]) -> tuple[Fact, ...]:
    """How long the work takes, for planning the day: the times of the steps as they are printed, added up."""
    printed = {operation.key for part in parts for operation in part.operations}
    minutes = zip(rehearsal.run.performed, shopping.minutes, strict=True)
    told = (_fives(taken) for done, taken in minutes if f"step-{done.step.written.index + 1}" in printed)
    steps = sum(told, _fives(shopping.cutting_minutes) + LAST_LOOK)
    return (
        Fact("", "time for all of it, about", _hours(steps), "the times of the steps, without washing and drying"),
        Fact("", "of which cutting", _minutes(shopping.cutting_minutes), ""),
    )


def _fact(derivation: Derivation, label: str, say: Phrasing) -> Fact:
    # The maker's names read as words: `waist_height` is the waist height.
    reason = derivation.formula.replace("_", " ")
    if derivation.with_values and derivation.with_values != derivation.formula:
        reason = f"{reason} = {derivation.with_values.replace('_', ' ')}"
    elif reason == derivation.value.show(say.system):
        reason = ""
    if derivation.rounding:
        reason = f"{reason}; {derivation.rounding}"
    return Fact(
        derivation.name, label, derivation.value.show(say.system), "" if derivation.origin == "body" else reason
    )


# Machine needles by cloth weight in g/m2: common practice, no source.
_NEEDLES = ((60, "70 (10)"), (150, "80 (12)"), (250, "90 (14)"))


def _needle(rehearsal: Rehearsal) -> str:
    """Metric size and, in brackets, the older number, for the lightest cloth."""
    solved = rehearsal.solved
    lightest = min(gram_per_m2(solved, piece.piece.cloth.text) for piece in solved.pieces.values())
    return next((size for limit, size in _NEEDLES if lightest <= limit), "100 (16)")


_TOOLS = {
    "straight stitch": ("sewing machine with straight stitch", "seams, gathering rows, topstitching"),
    "zigzag": ("zigzag stitch", "neatening, joining elastic"),
    "overlocker": ("overlocker, threaded", "neatening"),
    "pleating attachment": ("pleating attachment", "gathering"),
    "hand": ("hand needle and thimble", "gathering by hand"),
    "iron": ("iron, ironing board", "pressing seams and folds"),
}


def _tools(rehearsal: Rehearsal, parts: tuple[Part, ...]) -> tuple[Tool, ...]:
    run = rehearsal.run
    setups = {done.setup for done in run.performed}
    operations = [operation for part in parts for operation in part.operations]
    told = [step.text for operation in operations for step in operation.steps]
    told += [caution.text for operation in operations for caution in operation.cautions]
    if any(caution.kind == "heat" for operation in operations for caution in operation.cautions):
        setups.add(SetUp.IRON)  # hems and bands are pressed in steps of the sewing machine
    neatens = (
        any(done.step.written.technique == "neaten" for done in run.performed) and run.room.neaten_with == "zigzag"
    )
    elastic = any(done.step.written.technique == "insert elastic" for done in run.performed)
    uses = {"zigzag": listed([*["neatening"] * neatens, *["joining elastic"] * elastic]) or "short bars"}
    tools = [Tool(_TOOLS[setup][0], uses.get(setup, _TOOLS[setup][1])) for setup in _TOOLS if setup in setups]
    if any("press cloth" in words for words in told):
        tools.append(Tool("press cloth", "between the iron and cloth that heat harms"))
    tools.append(Tool(f"machine needle {_needle(rehearsal)}", "the lightest cloth of this garment"))
    if run.room.neaten_with == "pinking shears":
        tools.append(Tool("pinking shears", "neatening"))
    pinned = max((done.pinned for done in run.performed), default=Fraction(0))
    # A tenth more: thread tails are wound round pins too.
    number = int(pinned / run.room.pin_spacing * Fraction(11, 10) / 10 + 1) * 10
    tools += [
        Tool(f"{run.room.hold_with}, about {number}", "holding edges; count them out"),
        *_tail_pins(run),
        Tool("tape measure, fabric marker that washes out, scissors for cloth", "measuring, marking, cutting"),
        Tool("long ruler, something with a square corner", "straight lines and square ends"),
        Tool("paper tape and paper tags", "lines on the table to cut along, letters of the pieces"),
        Tool("seam ripper", "unpicking"),
        Tool("blunt hand needle, thread in a bright colour", "fastening thread ends, tagging side seams"),
    ]
    if run.final.casings:
        tools.append(Tool("two safety pins", "drawing in the elastic"))
    return tuple(tools)


def _tail_pins(run: Run) -> list[Tool]:
    """Clips hold edges, but the thread tails of gathers are wound round pins all the same."""
    most = max((done.thread_ends for done in run.performed if done.step.written.technique == "gather"), default=0)
    return (
        [Tool(f"pins, about {most}", "holding thread tails; count them out")]
        if run.room.hold_with == "clips" and most
        else []
    )
