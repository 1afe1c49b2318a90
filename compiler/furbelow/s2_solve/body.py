"""The body that a garment is made for, and what it must keep to: measures and choices within their ranges."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Staged
from furbelow.diagnose.nearest import nearest
from furbelow.garment.spec import Choice, Spec, Written
from furbelow.measure.formula import evaluate
from furbelow.measure.measure_text import System, show_apart
from furbelow.measure.quantity import Quantity, round_to_step
from furbelow.measure.units import LENGTH, PLAIN, describe_dims
from furbelow.s2_solve.evaluate import Evaluation


def size_body(spec: Spec, size: str) -> Staged[Mapping[str, Written]]:
    """The body measures of a named size of the spec; FB214 when it has no such size.

    A measure of the size that the spec does not ask for is told as FB217, as it is most likely mistyped.
    """
    body = spec.sizes.get(size)
    if body is None:
        near = nearest(size, spec.sizes)
        help_ = f"the sizes are {', '.join(spec.sizes)}" if spec.sizes else "give the measures of a wearer"
        if near:
            help_ = "did you mean " + " or ".join(f"`{word}`" for word in near) + "?"
        return Staged(None, (Fault("FB214", f"{spec.title} has no size `{size}`", help=help_),))
    faults = []
    for name, written in body.items():
        if name not in spec.body:
            near = nearest(name, spec.body)
            help_ = f"did you mean `{near[0]}`?" if near else f"the body measures are {', '.join(spec.body)}"
            headline = f"size {size} gives `{name}`, which is no body measure of this garment"
            faults.append(Fault("FB217", headline, Label(written.span), help=help_))
    return Staged({name: body[name] for name in body if name in spec.body}, tuple(faults))


def missing_measures(spec: Spec, wearer: str, body: Mapping[str, Written]) -> Iterator[Fault]:
    """FB210 for every body measure that the spec asks for and the wearer does not give."""
    for name, measure in spec.body.items():
        if name not in body:
            near = [word for word in nearest(name, body) if word not in spec.body]
            help_ = f"did you mean `{name}` by `{near[0]}`?" if near else f"measure {wearer} and add `{name}`"
            yield Fault("FB210", f"{wearer} gives no `{name}`", Label(measure.span, "asked for here"), help=help_)


def unknown_choices(spec: Spec, choices: Mapping[str, Written]) -> Iterator[Fault]:
    """FB215 for every choice made that the spec does not leave open."""
    for name, written in choices.items():
        if name not in spec.choices:
            near = nearest(name, spec.choices)
            help_ = f"did you mean `{near[0]}`?" if near else None
            if not near and spec.choices:
                help_ = f"the choices are {', '.join(spec.choices)}"
            yield Fault("FB215", f"`{name}` is no choice of this garment", Label(written.span), help=help_)


def out_of_range(
    spec: Spec, wearer: str, given: Mapping[str, Written], workings: Evaluation
) -> Iterator[tuple[str, Fault]]:
    """Each body measure and choice that lies outside its range, is of another kind, or is off its step."""
    for measure in spec.body.values():
        written = given.get(measure.name)
        if written and measure.name in workings.values:
            bounds = {"from": measure.low, "to": measure.high}
            said = f"the `{measure.name}` of {wearer}"
            if fault := _beyond(measure.name, said, written, bounds, "FB211", workings):
                yield measure.name, fault
    for choice in spec.choices.values():
        if choice.name in workings.values:
            written = given.get(choice.name, choice.default)
            bounds = {"from": choice.low, "to": choice.high}
            fault = (
                _of_another_kind(choice, written, workings)
                or _beyond(choice.name, f"`{choice.name}`", written, bounds, "FB212", workings)
                or _off_step(choice, written, workings)
            )
            if fault:
                yield choice.name, fault


def _of_another_kind(choice: Choice, written: Written, workings: Evaluation) -> Fault | None:
    """FB207 when the value is a length where the default is a number, or a bound is."""
    value = workings.values[choice.name]
    if written is not choice.default:
        usual = evaluate(choice.default.formula, workings.values.__getitem__, workings.system)
        if isinstance(usual, Quantity) and usual.dims != value.dims:
            said, wanted = describe_dims(value.dims), describe_dims(usual.dims)
            headline = f"`{choice.name}` is {said} and must be {wanted}: {value.show(workings.system)}"
            unit_left_out = value.dims == PLAIN and usual.dims == LENGTH
            help_ = (
                f"write the unit: `{written.text} {'in' if workings.system == 'inch' else 'cm'}`"
                if unit_left_out
                else f"write it as its default, `{choice.default.text}`"
            )
            return Fault(
                "FB207", headline, Label(written.span), (Label(choice.default.span, "its default"),), help=help_
            )
    for word, bound in (("from", choice.low), ("to", choice.high), ("step", choice.step)):
        limit = workings.values.get(f"{choice.name} {word}")
        if bound and limit and limit.dims != value.dims:
            headline = (
                f"the `{word}` of `{choice.name}` is {describe_dims(limit.dims)} "
                f"and its value {describe_dims(value.dims)}"
            )
            value_at = Label(written.span, value.show(workings.system))
            help_ = f"write `{word}` and the value in one kind, such as `{choice.default.text}`"
            return Fault("FB207", headline, Label(bound.span), (value_at,), help=help_)
    return None


def _beyond(
    name: str,
    said: str,
    written: Written,
    bounds: Mapping[str, Written | None],
    code: str,
    workings: Evaluation,
) -> Fault | None:
    value, system = workings.values[name], workings.system
    low, high = (workings.values.get(f"{name} {word}") for word in bounds)
    first, last = bounds.values()
    if first and last and low and high and high.value < low.value:
        least, most, short = _apart(low, high, system)
        headline = f"the range of `{name}` goes from {least} to {most}, {short} less"
        help_ = f"write `from: {last.text}` and `to: {first.text}`"
        return Fault(code, headline, Label(first.span), (Label(last.span, "and ends here"),), help=help_)
    for word, bound in bounds.items():
        limit = workings.values.get(f"{name} {word}")
        if not bound or limit is None:
            continue
        if limit.value > value.value if word == "from" else value.value > limit.value:
            below, least = ("below", "least") if word == "from" else ("above", "most")
            given, bounded, short = _apart(value, limit, system)
            headline = f"{said} is {given}, {short} {below} the {least} of {bounded}"
            others = (Label(bound.span, f"the range goes {word} {limit.show(system)}"),)
            notes = (f"{written.text} = {workings.put_in(written)}",) if written.formula.names else ()
            verb = "measure again: the garment is meant for" if code == "FB211" else "choose"
            help_ = f"{verb} {_range(name, workings)}"
            return Fault(code, headline, Label(written.span), others, notes, help_)
    return None


def _apart(value: Quantity, limit: Quantity, system: System) -> tuple[str, str, str]:
    """Two values and the difference, which never reads as nothing."""
    if value.dims == LENGTH:
        return show_apart(value.value, limit.value, system, Fraction(1, 10) if system == "metric" else None)
    return value.show(system), limit.show(system), abs(limit - value).show(system)


def _range(name: str, workings: Evaluation) -> str:
    low, high = (workings.values.get(f"{name} {word}") for word in ("from", "to"))
    if low and high:
        return f"{low.show(workings.system)} to {high.show(workings.system)}"
    return f"{low.show(workings.system)} or more" if low else f"{high.show(workings.system)} or less" if high else ""


def _off_step(choice: Choice, written: Written, workings: Evaluation) -> Fault | None:
    value, step = workings.values[choice.name], workings.values.get(f"{choice.name} step")
    if choice.step is None or step is None:
        return None
    if step.value <= 0:
        return Fault("FB208", f"the step of `{choice.name}` must be above 0", Label(choice.step.span))
    start = workings.values.get(f"{choice.name} from", Quantity(Fraction(0), value.dims))
    under = start + Quantity(round_to_step((value - start).value, step.value, "down"), value.dims)
    if under == value:
        return None
    system = workings.system
    lower, upper = under.show(system), (under + step).show(system)
    headline = f"`{choice.name}` is {value.show(system)}, between the steps {lower} and {upper}"
    others = (Label(choice.step.span, f"steps of {step.show(system)}"),)
    return Fault("FB213", headline, Label(written.span), others, help=f"choose {lower} or {upper}")
