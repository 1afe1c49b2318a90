"""What a record of the work comes to, in words, as plain values, and as the first part of the fresh guide."""

from __future__ import annotations

from collections.abc import Iterator, Set
from dataclasses import replace
from fractions import Fraction
from typing import Any

from furbelow.amend.amended import BEFORE_CUTTING, Amended, Finding, Fix, Shared
from furbelow.amend.meeting import percent
from furbelow.amend.read_record import Measured
from furbelow.amend.verdict import Remedy, Verdict
from furbelow.amend.worked import SharedOut
from furbelow.compare.compare import Comparison, compare, finished
from furbelow.compare.compare import as_data as comparison_data
from furbelow.compare.compare import as_text as comparison_text
from furbelow.garment.message import Length, Number, One, Own, Pieces, Share, Value, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.tags import copy_letter
from furbelow.measure.plain_values import Plain, as_plain
from furbelow.measure.quantity import mm, number
from furbelow.named import NamedTuple
from furbelow.order.chain import Planned
from furbelow.order.whose import whose
from furbelow.s6_write.guide.guide import GuideStep
from furbelow.s6_write.guide.numbered import numbered
from furbelow.s6_write.words.said_step import said_action
from furbelow.s6_write.words.words import Words

_REMEDIES = {
    Remedy.NONE: "amend-none",
    Remedy.EASE: "amend-ease",
    Remedy.TRIM: "amend-trim",
    Remedy.CHOOSE: "amend-choose",
    Remedy.LET_OUT: "amend-let-out",
    Remedy.CLOSER: "amend-closer",
    Remedy.PLEATS_OUT: "amend-pleats-out",
    Remedy.PLEATS_IN: "amend-pleats-in",
    Remedy.ROW_OUT: "amend-row-out",
    Remedy.ROW_IN: "amend-row-in",
}
# What is drawn to a length has a check of its own.
_STEPS = {
    Remedy.LET_OUT: "amend-step-gathers",
    Remedy.CLOSER: "amend-step-gathers",
    Remedy.CHOOSE: "amend-step-choose",
    Remedy.ROW_OUT: "amend-step-row",
    Remedy.ROW_IN: "amend-step-row",
}
_FIXES = {
    Fix.GO_ON: "amend-go-on",
    Fix.WITHIN: "amend-none",
    Fix.FOLLOWS: "amend-follows",
    Fix.AT_HEM: "amend-follows-at-hem",
    Fix.PAIR: "amend-follows-pair",
    Fix.CUT_TO: "amend-cut-to",
    Fix.SEWN: "amend-sewn",
}
_CUT = {"length": "amend-cut-length", "depth": "amend-cut-depth"}
_CLOTH = {"width": "amend-cloth", "length": "amend-bolt", "shrinkage": "amend-shrinkage"}
METRE, YARD = Fraction(1000), Fraction("914.4")  # mm
PER = ("metre", "yard")
_STEP = ".step"  # of a message: as it begins a step


class Told(NamedTuple):
    """A message with its values, to be said in a list or at the beginning of a step."""

    message: str
    values: Values = {}

    def said(self, words: Words, form: str = "") -> str:
        return words.text(self.message + form, self.values)


def words_of(amended: Amended) -> Words:
    planned = amended.planned
    say = Phrasing(planned.rehearsal.solved, amended.order.room, planned.cutting.joins)
    words = Words(say.language, say, planned.cutting.marks)
    words.read("amend", "buying", "compare")
    return words


def what(finding: Finding, words: Words) -> Told:
    """The thing that was measured: "the top edge of the flounce, copy 2"."""
    one = finding.measured
    piece, _, side = one.name.partition(".")
    if one.kind == "cloth":
        return Told(_CLOTH[one.size], {"cloth": Own(words.name(one.name))})
    if one.kind == "elastic":
        return Told("amend-elastic", {"elastic": Own(words.name(one.name))})
    copy: Values = {"copy": one.copy or 0, "letter": Own(copy_letter(one.copy) if one.copy else "")}
    if one.kind == "edge" and not side:
        return Told("amend-stack", {"stack": Own(one.name.replace("_", " ")), **copy})
    if side:
        if one.kind == "edge":
            return Told("amend-edge", {"edge": Pieces((piece,), side), **copy})
        along = One(finding.along or "no", ("cut", "line", "no"))
        return Told("amend-ring-edge", {"edge": Pieces((piece,), side), "along": along, **copy})
    return Told("amend-ring" if one.kind == "ring" else _CUT[one.size], {"piece": Pieces((piece,)), **copy})


def measured(finding: Finding) -> Told:
    if finding.measured.size == "shrinkage":
        return Told("amend-share", {"share": Share(finding.measured.value)})
    length: Values = {"length": Length(finding.measured.value)}
    return Told("amend-length-assumed" if finding.assumed else "amend-length", length)


def off(finding: Finding) -> Told:
    gap = finding.wanted - finding.measured.value
    if gap == 0:
        return Told("amend-as-planned")
    if finding.measured.size == "shrinkage":
        return Told("amend-share-reckoned", {"share": Share(finding.wanted)})
    if gap < 0 and _is_bolt(finding):
        return Told("amend-bolt-enough", {"wanted": Length(finding.wanted), "gap": Length(-gap)})
    share = Number(abs(gap) / finding.wanted * 100, 2)
    values: Values = {"wanted": Length(finding.wanted), "gap": Length(abs(gap)), "share": share}
    return Told("amend-short" if gap > 0 else "amend-long", values)


def to_do(finding: Finding, words: Words) -> Told:
    """What is to be done about a gathered edge; of other things, what comes of it that they stay as they are."""
    found = finding.verdict
    if found is not None:
        values: Values = {"gap": Length(abs(found.gap)), "length": Length(found.measured)}
        return Told(_REMEDIES[found.remedy], {**values, **_in_each(found.share, words)})
    if _is_bolt(finding):
        short = finding.wanted - finding.measured.value
        if short <= 0:
            return Told("amend-go-on")
        other = finding.fix is Fix.MORE_JOINS
        return Told("amend-bolt-short" if other else "amend-bolt-buy", {"gap": Length(short)})
    if finding.level is not None:
        deeper = finding.measured.value > finding.level
        return Told("amend-level-it" if deeper else "amend-level-others", {"length": Length(finding.level)})
    if finding.measured.kind == "cloth":
        return Told("amend-cut-anew" if finding.measured.value != finding.wanted else "amend-go-on")
    values = {"length": Length(finding.measured.value), "wanted": Length(finding.wanted)}
    return Told(_FIXES[finding.fix], values)


def _in_each(share: Fraction, words: Words) -> Values:
    """A share of a length, as it falls on each metre or yard of it."""
    inches = words.say.system == "inch"
    return {"metre": Length(share * (YARD if inches else METRE)), "per": One("yard" if inches else "metre", PER)}


def _is_bolt(finding: Finding) -> bool:
    return (finding.measured.kind, finding.measured.size) == ("cloth", "length")


class Where(NamedTuple):
    """For which copies something changes, and from where on. place: for programs."""

    place: str
    same: Told
    changed: Told


_ALL = Where("all", Told("amend-same"), Told("amend-changes"))
_OTHERS = Where("for the other copies", Told("amend-same-others"), Told("amend-changes-others"))
_MEET = Where("from where the copies meet", Told("amend-same-meet"), Told("amend-changes-meet"))


def _copy(copy: int) -> Where:
    values: Values = {"letter": Own(copy_letter(copy))}
    return Where(f"for copy {copy}", Told("amend-same-copy", values), Told("amend-changes-copy", values))


def changes(amended: Amended) -> list[tuple[Where, Comparison]]:
    """What changes in the work still to do: for all copies, for single ones until they meet, and from there on."""
    if not amended.copies:
        return [(_ALL, _compared(amended, amended.now, amended.start, None))]
    found = [
        (_copy(copy), _compared(amended, planned, amended.start, amended.meet))
        for copy, planned in amended.copies.items()
    ]
    if not amended.all_apart:
        found.append((_OTHERS, _compared(amended, amended.now, amended.start, amended.meet)))
    meet = max(amended.start, amended.meet)
    return [*found, (_MEET, _compared(amended, amended.together, meet, None))]


def _compared(amended: Amended, now: Planned, start: int, end: int | None) -> Comparison:
    if start == BEFORE_CUTTING:
        return compare(amended.planned, now, "planned", "now")
    planned, left = (_part(each, start, end, amended.joined) for each in (amended.planned, now))
    found = compare(planned, left, "planned", "now")
    # What a piece was cut to is no news to who cut it, and nothing is rounded after the cutting.
    old = ("cut_length", "cut_depth", "rounding")
    # No measurement takes a number away: what is gone was a choice of what to cut.
    numbers = tuple(change for change in found.numbers if change.now and not change.name.endswith(old))
    return replace(found, numbers=numbers, totals=tuple(finished(amended.planned, now, words_of(amended))))


def _part(planned: Planned, start: int, end: int | None, joined: Set[str]) -> Planned:
    run = planned.rehearsal.run
    left = tuple(done for done in run.performed[start:end] if done.key not in joined)
    return planned._replace(rehearsal=planned.rehearsal._replace(run=run._replace(performed=left)))


def as_text(amended: Amended) -> str:
    return "\n".join(_lines(amended)) + "\n"


def _lines(amended: Amended) -> Iterator[str]:
    words = words_of(amended)
    yield words.text("amend-report", {"title": amended.order.spec.title, "whose": whose(amended.order)})
    for finding in amended.findings:
        told = {"what": what(finding, words), "measured": measured(finding), "off": off(finding)}
        yield f"  {words.text('amend-report-line', {key: each.said(words) for key, each in told.items()})}"
        yield f"    {to_do(finding, words).said(words)}"
    for shared in amended.shared:
        yield f"  {_sharing(shared, words).said(words)}"
    for where, found in changes(amended):
        if found.alike:
            yield where.same.said(words)
        else:
            yield where.changed.said(words)
            yield from (f"  {line}" for line in comparison_text(found, words).splitlines()[1:])


def as_data(amended: Amended) -> dict[str, Any]:
    """The same as plain values for JSON."""
    words = words_of(amended)
    return {
        "title": amended.order.spec.title,
        "wearer": amended.order.wearer,
        "measured": [_finding_data(words, finding) for finding in amended.findings],
        "shared_out": [_shared_data(words, shared) for shared in amended.shared],
        "changes": [{"where": where.place, **comparison_data(found)} for where, found in changes(amended)],
    }


def _finding_data(words: Words, finding: Finding) -> dict[str, Any]:
    one, found, say = finding.measured, finding.verdict, words.say
    told: dict[str, Any] = {
        "what": what(finding, words).said(words),
        "copy": one.copy,
        "assumed": finding.assumed,
        "measured": _plain(one, one.value, words),
        "wanted": _plain(one, finding.wanted, words),
        "short_by": _plain(one, finding.wanted - one.value, words),
        "to_do": to_do(finding, words).said(words),
    }
    if found:
        told |= {
            "remedy": found.remedy.value,
            "share": as_plain(number(found.share), percent(found.share)),
            "in_each_metre": as_plain(mm(found.in_each_metre), say.length(found.in_each_metre)),
        }
    return told


def _plain(one: Measured, value: Fraction, words: Words) -> Plain:
    if one.size == "shrinkage":
        return as_plain(number(value), percent(value))
    return as_plain(mm(value), words.say.length(value))


def correction_steps(amended: Amended) -> tuple[GuideStep, ...]:
    """The first steps of the fresh guide: what to do about each measurement."""
    words = words_of(amended)
    found = [said_action(_message(finding.verdict), _values(finding, words), words) for finding in amended.findings]
    kept = [_sharing(shared, words) for shared in amended.shared]
    return numbered([*found, *(said_action("amend-step-shared", told.values, words) for told in kept)], words)


def _sharing(shared: Shared, words: Words) -> Told:
    """Two edges that are to be sewn to one another and no longer fit, each with its own length."""
    copy, one = shared
    return Told(
        "amend-shared",
        {
            "longer": edge_said(one.longer),
            "shorter": edge_said(one.shorter),
            "long": Length(one.longer.set_length),
            "short": Length(one.shorter.set_length),
            "gap": Length(one.by),
            "alike": flag(one.alike),
            # A band laps over beyond the edge that it goes on.
            **_in_each(one.by / min(one.longer.set_length, one.shorter.set_length), words),
            "copy": copy or 0,
            "letter": Own(copy_letter(copy) if copy else ""),
        },
    )


def in_step(one: SharedOut, words: Words) -> str:
    """The same as the step says it in which they are sewn."""
    return words.text("amend-step-shared", _sharing((None, one), words).values)


def _shared_data(words: Words, shared: Shared) -> dict[str, Any]:
    copy, one = shared
    by = as_plain(mm(one.by), words.say.length(one.by))
    return {
        "longer": one.longer.name,
        "shorter": one.shorter.name,
        "copy": copy,
        "by": by,
        "to_do": _sharing(shared, words).said(words),
    }


def _message(found: Verdict | None) -> str:
    return _STEPS.get(found.remedy, "amend-step") if found else "amend-step"


def _values(finding: Finding, words: Words) -> dict[str, Value]:
    wanted = finding.verdict.wanted if finding.verdict else Fraction(0)
    return {
        "what": Own(what(finding, words).said(words, _STEP)),
        "measured": Own(measured(finding).said(words)),
        "off": Own(off(finding).said(words)),
        "todo": Own(to_do(finding, words).said(words, _STEP)),
        "quarter": Length(wanted / 4),
        "whole": Length(wanted),
    }
