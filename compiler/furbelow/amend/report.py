"""What a record of the work comes to, in words, as plain values, and as the first part of the fresh guide."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, replace
from typing import Any

from furbelow.amend.amend import BEFORE_CUTTING, Amended, Finding, percent
from furbelow.amend.verdict import Remedy, Verdict
from furbelow.compare.compare import Comparison, compare
from furbelow.compare.compare import as_text as comparison_text
from furbelow.garment.phrasing import Phrasing
from furbelow.order.chain import Planned
from furbelow.s6_write.guide.guide import GuideStep


def say_of(amended: Amended) -> Phrasing:
    return Phrasing(amended.planned.rehearsal.solved, amended.order.room, amended.planned.cutting.joins)


def what(say: Phrasing, finding: Finding) -> str:
    """The thing that was measured: "the top edge of the flounce, copy 2"."""
    one = finding.measured
    piece, _, side = one.name.partition(".")
    if one.kind == "cloth":
        named = f"the width of the {one.name}"
    elif one.kind == "edge":
        named = say.edge(piece, side) if side else f"the stacked edge {one.name.replace('_', ' ')}"
    else:
        named = f"the {say.piece(piece)}" + (" all round" if one.kind == "ring" else f", cut {one.size}")
    return named + (f", copy {one.copy}" if one.copy else "")


def measured(say: Phrasing, finding: Finding) -> str:
    length = say.length(finding.measured.value)
    return f"{length} by the first guide" if finding.assumed else length


def off(say: Phrasing, finding: Finding) -> str:
    gap = finding.wanted - finding.measured.value
    if gap == 0:
        return "as planned"
    by = f"{say.length(abs(gap))} {'short' if gap > 0 else 'too long'}"
    return f"{say.length(finding.wanted)} wanted, {by} ({percent(abs(gap) / finding.wanted)})"


def remedy(say: Phrasing, found: Verdict) -> str:
    """What is to be done about a gathered edge."""
    gap, metre = say.length(abs(found.gap)), say.length(found.in_each_metre)
    each = f"{metre} in each metre"
    match found.remedy:
        case Remedy.NONE:
            return "within the rounding: go on"
        case Remedy.EASE:
            return f"ease in {gap} as you sew, {each}"
        case Remedy.TRIM:
            return f"take the edge it is sewn to in by {gap}, to {say.length(found.measured)}"
        case Remedy.CHOOSE:
            return f"the choice is yours: ease in {gap}, {each}, or let the gathers out by as much"
        case Remedy.LET_OUT:
            return f"let the gathers out by {gap}, {each}"
    return f"pull the gathers closer by {gap}, {each}"


def follows(finding: Finding) -> str:
    """What comes of a measurement that stays as it is."""
    if finding.measured.kind == "cloth":
        return "the cutting is planned anew"
    return "it stays so, and the numbers after it follow" if finding.measured.value != finding.wanted else "go on"


def changes(amended: Amended) -> list[tuple[str, Comparison]]:
    """What changes in the work still to do: for all copies, for single ones until they meet, and from there on."""
    if not amended.copies:
        return [("", _compared(amended, amended.now, amended.start, None))]
    found = [
        (f" for copy {copy}", _compared(amended, planned, amended.start, amended.meet))
        for copy, planned in amended.copies.items()
    ]
    if not amended.all_apart:
        found.append((" for the other copies", _compared(amended, amended.now, amended.start, amended.meet)))
    meet = max(amended.start, amended.meet)
    return [*found, (" from where the copies meet", _compared(amended, amended.together, meet, None))]


def _compared(amended: Amended, now: Planned, start: int, end: int | None) -> Comparison:
    if start == BEFORE_CUTTING:
        return compare(amended.planned, now, "planned", "now")
    found = compare(_part(amended.planned, start, end), _part(now, start, end), "planned", "now")
    # What a piece was cut to is no news to who cut it, and nothing is rounded after the cutting.
    old = ("cut_length", "cut_depth", "rounding")
    numbers = tuple(change for change in found.numbers if not change.name.endswith(old))
    return replace(found, numbers=numbers, totals=())


def _part(planned: Planned, start: int, end: int | None) -> Planned:
    run = planned.rehearsal.run
    return planned._replace(rehearsal=planned.rehearsal._replace(run=run._replace(performed=run.performed[start:end])))


def as_text(amended: Amended) -> str:
    return "\n".join(_lines(amended)) + "\n"


def _lines(amended: Amended) -> Iterator[str]:
    say = say_of(amended)
    yield f"{amended.order.spec.title}, {amended.order.wearer}, as measured"
    for finding in amended.findings:
        yield f"  {what(say, finding)}: {measured(say, finding)}; {off(say, finding)}"
        yield f"    {remedy(say, finding.verdict) if finding.verdict else follows(finding)}"
    for where, found in changes(amended):
        if found.alike:
            yield f"nothing changes{where or ' in the steps that follow'}"
        else:
            told = comparison_text(found).splitlines()[1:]
            yield f"what changes{where or ' in the steps that follow'}:"
            yield from (f"  {line}" for line in told)


def as_data(amended: Amended) -> dict[str, Any]:
    """The same as plain values for JSON; lengths as a maker reads them."""
    say = say_of(amended)
    return {
        "title": amended.order.spec.title,
        "wearer": amended.order.wearer,
        "measured": [_finding_data(say, finding) for finding in amended.findings],
        "changes": [{"where": where.strip() or "all", **asdict(found)} for where, found in changes(amended)],
    }


def _finding_data(say: Phrasing, finding: Finding) -> dict[str, Any]:
    one, found = finding.measured, finding.verdict
    told: dict[str, Any] = {
        "what": what(say, finding),
        "copy": one.copy,
        "assumed": finding.assumed,
        "measured": say.length(one.value),
        "wanted": say.length(finding.wanted),
        "short_by": say.length(finding.wanted - one.value),
        "to_do": remedy(say, found) if found else follows(finding),
    }
    if found:
        told |= {
            "remedy": found.remedy.value,
            "share": percent(found.share),
            "in_each_metre": say.length(found.in_each_metre),
        }
    return told


def correction_steps(amended: Amended) -> tuple[GuideStep, ...]:
    """The first steps of the fresh guide: what to do about each measurement."""
    say, steps = say_of(amended), []
    for number, finding in enumerate(amended.findings, 1):
        found, named = finding.verdict, what(say, finding)
        begin = f"{named[0].upper()}{named[1:]} measures {measured(say, finding)}: {off(say, finding)}."
        if found is None:
            told = follows(finding)
            steps.append(GuideStep(number, f"{begin} {told[0].upper()}{told[1:]}."))
            continue
        todo = remedy(say, found)
        to_length = found.remedy in (Remedy.LET_OUT, Remedy.CLOSER, Remedy.CHOOSE)
        quarters = say.length(found.wanted / 4)
        steps.append(
            GuideStep(
                number,
                f"{begin} {todo[0].upper()}{todo[1:]}.",
                check=f"Each quarter measures {quarters}, all four {say.length(found.wanted)}." if to_length else "",
                remedy="Share the gathers out again from mark to mark." if to_length else "",
            )
        )
    return tuple(steps)
