"""What a check asks beyond the proof of each body: whether it can be cut, and whether the choices hold to their ends."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from furbelow.diagnose.fault import Fault, Label, Severity, Staged
from furbelow.garment.spec import Choice, Written
from furbelow.order.chain import prove_each
from furbelow.order.order import Order
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.uncuttable import uncuttable


def checked_each(orders: Iterable[Order]) -> Iterator[tuple[Order, Staged[Rehearsal]]]:
    """`prove` for one body after another, and whether some offered width holds every piece."""
    for order, proved in prove_each(orders):
        if proved.value is not None and (faults := uncuttable(proved.value.solved, order.room)):
            proved = Staged(None, (*proved.faults, *faults))
        yield order, proved


def at_the_ends(sound: Sequence[Order]) -> Iterator[Fault]:
    """What fails where one choice is taken to an end of its range: warnings, for the default is sound.

    sound: bodies that are sound with the default choices; the first and the last of them are asked. What a rule of the
    maker's own refuses at an end is not told: that is what the rule is for.
    """
    told: set[tuple[str, str, str]] = set()
    for order in sound[:1] if len(sound) == 1 else (*sound[:1], *sound[-1:]):
        asked = [
            (choice, end, order._replace(choices={**order.choices, choice.name: end}))
            for choice in order.spec.choices.values()
            if choice.name not in order.choices
            for end in (choice.low, choice.high)
            if end is not None and end.text != choice.default.text
        ]
        for (choice, end, _), (_, proved) in zip(asked, checked_each(each for _, _, each in asked), strict=True):
            cause = next((fault for fault in proved.faults if fault.is_error), None)
            if (
                "FB431" in order.spec.accepted
                or cause is None
                or cause.code.startswith("FB2")
                or (key := (choice.name, end.text, cause.code)) in told
            ):
                continue
            told.add(key)
            yield _at_end(order, choice, end, cause)


def _at_end(order: Order, choice: Choice, end: Written, cause: Fault) -> Fault:
    others = (Label(cause.primary.span, "fails here"),) if cause.primary else ()
    return Fault(
        "FB431",
        f"with `{choice.name}` at {end.text}, the end of its range, for {order.wearer}: {cause.headline}",
        Label(end.span, "may be chosen"),
        others,
        cause.notes,
        "narrow the range, or mend what fails at its end" + (f": {cause.help}" if cause.help else ""),
        Severity.WARNING,
    )
