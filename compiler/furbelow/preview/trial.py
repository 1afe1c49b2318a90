"""A garment tried by its choices: how it looks, what it takes, and the command that makes it.

Only what the eye follows while a control moves is worked out: the picture, cloth, cost, hours, weight and the proofs.
"""

from __future__ import annotations

import shlex
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from threading import Lock

from furbelow.diagnose.fault import Staged, has_errors
from furbelow.diagnose.report_text import render
from furbelow.fit.grid import values_of
from furbelow.garment.exact import exact_text
from furbelow.garment.message import Amount, Money, Weight
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.spec import Spec, SupplyKind
from furbelow.order.chain import Planned, plan_proved, prove, solved
from furbelow.order.content_key import key_of_files
from furbelow.order.read_order import Asked, OrderReader
from furbelow.order.unread import Unread
from furbelow.s1_read.read_spec import read_spec
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s3_rehearse.weight import grams_of
from furbelow.s4_cut.plan_cache import KeptPlans
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.picture import front_of
from furbelow.s6_write.words.words import Words

FEW = 6  # values of a choice that are shown as a list; more make a slider

# What the page says beside the garment, by the message that says it.
LABELS = (
    "preview-choices",
    "preview-size",
    "preview-as-written",
    "preview-command",
    "preview-copy",
    "preview-copied",
    "preview-not-sound",
)


@dataclass(frozen=True)
class Control:
    """A choice as a control: `values` as they are typed, `shown` as they are read, `now` the place of the one that holds."""

    name: str
    label: str
    values: tuple[str, ...]
    shown: tuple[str, ...]
    now: int
    listed: bool


@dataclass(frozen=True)
class Row:
    label: str
    value: str


@dataclass(frozen=True)
class Tried:
    """picture, alt, caption: "" where it can't be drawn. rows: nothing where it is not sound. report: its faults, as text."""

    language: str
    labels: Mapping[str, str]
    size: str
    sizes: tuple[str, ...]
    controls: tuple[Control, ...]
    command: str
    picture: str = ""
    alt: str = ""
    caption: str = ""
    rows: tuple[Row, ...] = ()
    report: str = ""


@dataclass
class Trials:
    """Tries garments of the spec that the call names, one at a time."""

    asked: Asked
    _plans: bytes = b""
    _read: tuple[str, str, Staged[Spec]] | None = None  # the text, a key of the files beside it, and what was read
    _lock: Lock = field(default_factory=Lock)

    def of(self, size: str, chosen: Sequence[str]) -> Tried:
        """The garment of a size, or of the wearer of the call, with these choices as `name=value`."""
        with self._lock:
            reader = OrderReader()
            try:
                return self._of(reader, size, chosen)
            except Unread:
                return _nothing(reader, size)
            except Exception as error:  # one bad trial must not end the preview
                told = f"this is our bug, not yours: {type(error).__name__}: {error}\n"
                return Tried("en", {}, size, (), (), "", report=told)

    def _of(self, reader: OrderReader, size: str, chosen: Sequence[str]) -> Tried:
        spec = self._spec(reader)
        asked = self.asked._replace(choices=(*self.asked.choices, *chosen))
        if asked.wearer is None:
            asked = asked._replace(size=size or asked.size)
        order = reader.orders_of(spec, asked)[0]
        proved = prove(order)
        reader.tell(proved.faults)
        # A rule of the maker's that is broken leaves every number known, and the controls that lead out of it.
        numbers = proved.value.solved if proved.value else solved(order).value
        if numbers is None:
            return _nothing(reader, size)
        words = Words(order.spec.language, Phrasing(numbers, order.room))
        words.read("preview")
        words.read("guide")
        figure = front_of(proved.value.run, words) if proved.value else None
        return Tried(
            words.language,
            {label: words.text(label) for label in LABELS},
            asked.size or "",
            tuple(spec.sizes) if asked.wearer is None else (),
            tuple(_controls(numbers, words)),
            _command(asked),
            *((figure.svg, figure.alt, figure.caption) if figure else ("", "", "")),
            self._takes(reader, proved, words),
            render(reader.told, reader.sources),
        )

    def _takes(self, reader: OrderReader, proved: Staged[Rehearsal], words: Words) -> tuple[Row, ...]:
        """What the garment takes; nothing where it is not sound."""
        if proved.value is None or has_errors(proved.faults):
            return ()
        plans = KeptPlans(self._plans)
        planned = plan_proved(Staged(proved.value), plans.planner)
        reader.tell(planned.faults)
        if planned.value is None:
            return ()
        self._plans = plans.as_file()
        return tuple(_rows(planned.value, words))

    def _spec(self, reader: OrderReader) -> Spec:
        """The spec as it is on the disk, read anew only where its text, or a file that it is built on, is another."""
        reader.keep(self.asked.spec)
        text = reader.sources[self.asked.spec]
        if (read := self._standing(text)) is None:
            read = read_spec(self.asked.spec)
            self._read = text, key_of_files(read.value) if read.value else "", read
        reader.tell(read.faults)
        if read.value is None:
            raise Unread(by_call=False)
        return read.value

    def _standing(self, text: str) -> Staged[Spec] | None:
        """The spec as it was read, where it still is so. One that could not be read may hang on files that come later."""
        if self._read is None or self._read[0] != text:
            return None
        _, beside, read = self._read
        return read if read.value and key_of_files(read.value) == beside else None


def _nothing(reader: OrderReader, size: str) -> Tried:
    return Tried("en", {}, size, (), (), "", report=render(reader.told, reader.sources))


def _controls(numbers: Solved, words: Words) -> Iterator[Control]:
    """A control for each choice that has a range."""
    system = numbers.spec.system
    for choice in numbers.spec.choices.values():
        values = values_of(choice, numbers).value
        if not values or len(values) < 2:
            continue
        now = numbers.values[choice.name].value.value
        yield Control(
            choice.name,
            choice.about or words.name(choice.name),
            tuple(exact_text(value, system) for value in values),
            tuple(words.said(Amount(value, system)) for value in values),
            min(range(len(values)), key=lambda at: abs(values[at].value - now)),
            len(values) <= FEW,
        )


def _rows(planned: Planned, words: Words) -> Iterator[Row]:
    """What the garment takes, in the words of its guide."""
    shopping, run = planned.shopping, planned.rehearsal.run
    cloths = {line.name for line in shopping.lines if line.material.material.kind is SupplyKind.CLOTH}
    for line, told in zip(shopping.lines, material_lines(shopping, words), strict=True):
        if line.name in cloths:
            yield Row(told.name, told.need)
    cost = sum((line.cost for line in shopping.lines if line.cost is not None), Fraction(0))
    if cost:
        yield Row(words.text("preview-cost"), words.said(Money(cost, shopping.currency)))
    yield Row(words.text("preview-hours"), words.said(duration(shopping.planned_minutes)))
    grams = grams_of(run)
    if grams is not None:
        yield Row(words.text("preview-weight"), words.said(Weight(grams)))
    held = sum(1 for proof in planned.rehearsal.proofs if proof.shown and not has_errors(proof.faults))
    yield Row(words.text("preview-proofs"), words.text("preview-proved", {"proofs": held}))


def _command(asked: Asked) -> str:
    """The call that writes the guide of this garment, as a shell reads it."""
    options = {
        "--size": asked.size,
        "--wearer": asked.wearer,
        "--workroom": asked.workroom,
        "--language": asked.language,
    }
    words = ["furbelow", "make", asked.spec]
    for option, value in options.items():
        words += [option, value] if value is not None else []
    for name in asked.only:
        words += ["--only", name]
    latest = {choice.partition("=")[0].strip(): choice for choice in asked.choices}
    for choice in latest.values():
        words += ["--set", choice]
    return shlex.join([*words, "--out", "guide"])
