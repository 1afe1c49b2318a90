"""Specs put together by hand, for tests of the stages after reading.

Every text gets a line of its own in the spec's source, so that a fault can be checked against the characters
that it points at.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from furbelow.diagnose.fault import Fault, Span, Staged
from furbelow.garment.solved import Allowance, Solved
from furbelow.garment.spec import (
    Arg,
    BodyMeasure,
    Choice,
    Material,
    Measure,
    Offer,
    Piece,
    Piecing,
    Rule,
    Spec,
    Step,
    SupplyKind,
    Word,
    Worn,
    Written,
)
from furbelow.measure.formula import Formula, parse_formula
from furbelow.s2_solve.solve import prepare

FILE = "garment.yaml"


@dataclass
class Page:
    """The source as it grows, one text a line."""

    file: str = FILE
    lines: list[str] = field(default_factory=list)

    def place(self, key: str, text: str) -> Span:
        self.lines.append(f"{key}: {text}")
        line, start = len(self.lines), len(key) + 3
        return Span(self.file, line, start, line, start + len(text))

    def written(self, key: str, text: str, *, check: bool = False) -> Written:
        formula = parse_formula(text, check=check)
        assert isinstance(formula, Formula), formula
        return Written(text, formula, self.place(key, text))

    def maybe(self, key: str, text: str | None) -> Written | None:
        return None if text is None else self.written(key, text)


def given(values: Mapping[str, str], file: str = "wearer.yaml") -> dict[str, Written]:
    """Body measures or choices as a wearer gives them."""
    page = Page(file)
    return {name: page.written(name, text) for name, text in values.items()}


def at(spec: Spec, span: Span) -> str:
    """The characters of the spec that a place covers."""
    assert span.file == spec.file
    assert span.start_line == span.end_line
    return spec.source.splitlines()[span.start_line - 1][span.start_column - 1 : span.end_column - 1]


def pointed_at(spec: Spec, fault: Fault) -> list[str]:
    """The characters under each label of a fault, the primary one first."""
    assert fault.primary
    return [at(spec, label.span) for label in (fault.primary, *fault.others)]


@dataclass(frozen=True)
class Work:
    """A step by hand: the technique, its quantities as texts, what it takes, and of which kind they are."""

    technique: str
    args: Mapping[str, str]
    takes: Sequence[Allowance]
    kinds: Mapping[str, str] = field(default_factory=dict)


def garment(
    *,
    body: Mapping[str, tuple[str | None, str | None]] | None = None,
    sizes: Mapping[str, Mapping[str, str]] | None = None,
    choices: Mapping[str, Mapping[str, str]] | None = None,
    measures: Mapping[str, str] | None = None,
    materials: Mapping[str, Mapping[str, Any]] | None = None,
    pieces: Mapping[str, Mapping[str, Any]] | None = None,
    steps: Sequence[Work] = (),
    rules: Mapping[str, str] | None = None,
    worn: Mapping[str, Any] | None = None,
    rounding: str = "0 mm",
    units: str = "metric",
) -> tuple[Spec, dict[int, tuple[Allowance, ...]]]:
    """A spec, and what its steps take of the cloth."""
    page = Page()
    rounding_line = page.written("rounding", rounding)
    worn = {"over": "1 m"} | dict(worn or {})
    spec = Spec(
        file=FILE,
        source="",
        title="Teasel test skirt",
        about="",
        notes="",
        units=units,
        rounding=rounding_line,
        body={
            name: BodyMeasure(name, page.place("body", name), "", page.maybe("from", low), page.maybe("to", high))
            for name, (low, high) in (body or {}).items()
        },
        sizes={
            size: {name: page.written(name, text) for name, text in measured.items()}
            for size, measured in (sizes or {}).items()
        },
        choices={
            name: Choice(
                name,
                page.place("choice", name),
                "",
                page.written("default", texts["default"]),
                page.maybe("from", texts.get("from")),
                page.maybe("to", texts.get("to")),
                page.maybe("step", texts.get("step")),
            )
            for name, texts in (choices or {}).items()
        },
        measures={
            name: Measure(name, page.place("measure", name), "", page.written(name, text))
            for name, text in (measures or {}).items()
        },
        worn=Worn(
            "waist",
            page.written("over", worn["over"]),
            page.maybe("ease", worn.get("ease")),
            page.maybe("length", worn.get("length")),
            {name: page.written(name, text) for name, text in worn.get("hidden", {}).items()},
            "",
            page.place("worn", "from waist"),
        ),
        materials={name: _material(page, name, keys) for name, keys in (materials or {}).items()},
        pieces={name: _piece(page, name, keys) for name, keys in (pieces or {}).items()},
        steps=tuple(
            Step(
                index,
                work.technique,
                {
                    name: Arg(name, page.written(name, text), page.place("arg", name), kind=work.kinds.get(name, ""))
                    for name, text in work.args.items()
                },
                "",
                "",
                page.place("step", work.technique),
            )
            for index, work in enumerate(steps)
        ),
        rules=tuple(
            Rule(page.written("check", check, check=True), message, page.place("message", message))
            for check, message in (rules or {}).items()
        ),
        accepted={},
        language="en",
        written_in=None,
        untold=(),
    )
    takes = {index: tuple(work.takes) for index, work in enumerate(steps)}
    spec = spec._replace(source="\n".join(page.lines) + "\n")
    return spec, takes


def _material(page: Page, name: str, keys: Mapping[str, Any]) -> Material:
    amounts = {k: v for k, v in keys.items() if k not in ("kind", "offers")}
    return Material(
        name=name,
        span=page.place("material", name),
        kind=SupplyKind(keys.get("kind", "cloth")),
        about="",
        fibre="cotton",
        amounts={key: page.written(key, text) for key, text in amounts.items()},
        offers=tuple(
            Offer(page.written("width", width), page.written("price", price), page.place("offer", name))
            for width, price in keys.get("offers", ())
        ),
        ravels=True,
        has_right_side=True,
        one_way=False,
        colour="",
        supplier="",
        code="",
    )


def _piece(page: Page, name: str, keys: Mapping[str, Any]) -> Piece:
    piecing = keys.get("piecing")
    return Piece(
        name=name,
        span=page.place("piece", name),
        about="",
        cloth=Word("cloth", page.place("from", "cloth")),
        count=page.maybe("count", keys.get("count")),
        length=page.maybe("length", keys.get("length")),
        cut_length=page.maybe("cut length", keys.get("cut length")),
        depth=page.maybe("depth", keys.get("depth")),
        cut_depth=page.maybe("cut depth", keys.get("cut depth")),
        grain="along",
        piecing=Piecing(
            page.written("seam", piecing["seam"]),
            page.written("shortest", piecing["shortest"]),
            page.written("most joins", piecing["most joins"]),
            page.place("piecing", name),
        )
        if piecing
        else None,
    )


def solve(
    spec: Spec,
    takes: Mapping[int, tuple[Allowance, ...]],
    wearer: str,
    body: Mapping[str, Written],
    choices: Mapping[str, Written],
    rounding: Fraction | None = None,
) -> Staged[Solved]:
    """The garment for one body at once, as the chain solves it for one after another."""
    return prepare(spec, takes, rounding).solve(wearer, body, choices)
