"""The values that each free choice can take: on its declared step, or on a grid that a maker would measure by."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Span, Staged
from furbelow.diagnose.nearest import nearest
from furbelow.garment.exact import as_written, exact_text
from furbelow.garment.solved import Solved
from furbelow.garment.spec import Choice, Spec, Written
from furbelow.measure.quantity import Quantity, System
from furbelow.measure.units import LENGTH

FREE = "--free"
# Where a choice has no step: plain numbers in twentieths, lengths in whole centimetres or half inches. House rule.
_PLAIN_STEP = Fraction(1, 20)
_LENGTH_STEP = {"metric": Fraction(10), "inches": Fraction("12.7")}
MOST_VALUES = 400  # of one choice
MOST_GARMENTS = 5_000  # all combinations: more would take minutes


def free_choices(spec: Spec, text: str) -> Staged[tuple[Choice, ...]]:
    """The choices named, parted by commas. Fails: FB703 for a name that is no choice or stands twice."""
    found: dict[str, Choice] = {}
    faults = []
    for name in (part.strip() for part in text.split(",")):
        span = Span(FREE, 1, 1, 1, len(text) + 1)
        if name in found:
            faults.append(Fault("FB703", f"`{name}` is set free twice", Label(span)))
        elif name not in spec.choices:
            near = nearest(name, spec.choices)
            help_ = f"did you mean `{near[0]}`?" if near else f"the choices are {', '.join(spec.choices) or 'none'}"
            faults.append(Fault("FB703", f"`{name}` is no choice of this garment", Label(span), help=help_))
        else:
            found[name] = spec.choices[name]
    return Staged(None if faults else tuple(found.values()), tuple(faults))


def values_of(choice: Choice, solved: Solved) -> Staged[tuple[Quantity, ...]]:
    """Every value of the choice between its bounds, the least first, the bounds among them.

    Fails: FB704 when it has no `from` or no `to`, or more values than can be tried.
    """
    numbers = solved.values
    low, high = numbers.get(f"{choice.name} from"), numbers.get(f"{choice.name} to")
    if low is None or high is None:
        missing = "`from`" if low is None else "`to`"
        return Staged(
            None,
            (
                Fault(
                    "FB704",
                    f"`{choice.name}` has no {missing}, so it can't be set free",
                    Label(choice.span),
                    help="give the choice a range with `from` and `to`",
                ),
            ),
        )
    step, dims = numbers.get(f"{choice.name} step"), low.value.dims
    if step is not None:
        width = step.value.value
    elif dims == LENGTH:
        width = _LENGTH_STEP[solved.spec.units]
    else:
        width = _PLAIN_STEP
    count = (high.value.value - low.value.value) // width
    if count >= MOST_VALUES:
        return Staged(
            None,
            (
                Fault(
                    "FB704",
                    f"`{choice.name}` has {count + 1} values between its bounds, more than"
                    f" the {MOST_VALUES} that are tried",
                    Label(choice.span),
                    help="give the choice a wider `step`",
                ),
            ),
        )
    values = [low.value.value + at * width for at in range(count + 1)]
    if values[-1] != high.value.value and step is None:
        values.append(high.value.value)
    return Staged(tuple(Quantity(value, dims) for value in values))


def garments(values: Mapping[str, Sequence[Quantity]]) -> Staged[int]:
    """How many garments there are to choose from. Fails: FB704 when they are too many."""
    count = 1
    for each in values.values():
        count *= len(each)
    if count <= MOST_GARMENTS:
        return Staged(count)
    return Staged(
        None,
        (
            Fault(
                "FB704",
                f"the free choices make {count:,} garments, more than the {MOST_GARMENTS:,} that are tried",
                help="free fewer choices, or give them wider steps",
            ),
        ),
    )


def as_chosen(name: str, value: Quantity, system: System) -> Written:
    """The value as it would be typed after `--set name=`."""
    text = exact_text(value, system)
    return as_written(text, Span(f"{FREE} {name}", 1, 1, 1, len(text) + 1))
