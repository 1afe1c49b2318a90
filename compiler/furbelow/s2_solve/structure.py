"""Whether every value is fixed once and in some order: names known, nothing twice, no circle."""

from __future__ import annotations

import re
from collections import deque
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence

from furbelow.diagnose.fault import Fault, Label
from furbelow.diagnose.nearest import nearest
from furbelow.garment.spec import Spec, Written
from furbelow.measure.formula import names_in
from furbelow.named import NamedTuple
from furbelow.s2_solve.equations import ATTRIBUTES, Equation


class Structure(NamedTuple):
    """The equations that can be worked out, each after what it needs, and what is wrong with the others."""

    order: tuple[Equation, ...]
    faults: tuple[Fault, ...]


def structure_of(equations: Iterable[Equation], spec: Spec) -> Structure:
    """The order to work in.

    An equation that stands on a faulty one stays in the order: it is passed over in silence when its value
    is wanted, so that one slip is told once.
    """
    by_name: dict[str, list[Equation]] = {}
    for equation in equations:
        by_name.setdefault(equation.name, []).append(equation)
    faults = [_fixed_twice(twice) for twice in by_name.values() if len(twice) > 1]
    once = {name: lines[0] for name, lines in by_name.items() if len(lines) == 1}
    # A piece has its five sizes even when one is fixed by nothing, which has been told already.
    known = by_name.keys() | {f"{piece}.{attribute}" for piece in spec.pieces for attribute in ATTRIBUTES}
    strangers = [list(_unknown(equation, known, spec)) for equation in once.values()]
    faults += [fault for told in strangers for fault in told]
    sound = {name: equation for (name, equation), told in zip(once.items(), strangers, strict=True) if not told}
    order: list[Equation] = []
    for group in _groups({name: equation.needs for name, equation in sound.items()}):
        if len(group) == 1 and group[0] not in sound[group[0]].needs:
            order.append(sound[group[0]])
        else:
            # In the order of the spec, so that the report reads from the top.
            faults.append(_circle([equation for name, equation in sound.items() if name in group]))
    return Structure(tuple(order), tuple(faults))


def _fixed_twice(equations: list[Equation]) -> Fault:
    first, *others = equations
    labels = [Label(line.span, "and here") for line in others if line.span]
    times = "twice" if len(equations) == 2 else f"{len(equations)} times"
    help_ = f"give one of them another name than `{first.name}`"
    primary = Label(first.span, f"a {_ORIGINS[first.origin]} here") if first.span else labels.pop(0)
    return Fault("FB204", f"`{first.name}` is fixed {times}", primary, tuple(labels), help=help_)


_ORIGINS = {"body": "body measure"}
_ORIGINS |= {origin: origin for origin in ("choice", "measure", "material", "piece", "allowance", "step", "rule")}


def _unknown(equation: Equation, known: Collection[str], spec: Spec) -> Iterator[Fault]:
    """A fault for every place where the formula uses a name that nothing fixes."""
    if not isinstance(equation.says, Written):
        return
    formula = equation.says.formula
    for name in names_in(formula.root):
        if name.name in known or name.name not in formula.names:
            continue
        span = equation.says.span.inside(name.start, name.end - name.start)
        headline, help_ = _stranger(name.name, known, spec)
        # `waist-height` is read as a difference.
        if whole := _hyphened(equation.says.text, name.start, known):
            help_ = f"write `{whole}`: a hyphen between names subtracts"
        yield Fault("FB203", headline, Label(span), help=help_)


def _hyphened(text: str, place: int, known: Collection[str]) -> str:
    """The known name that was written with hyphens around a place of a formula; empty where there is none."""
    runs = (run for run in re.finditer(r"\w+(?:-\w+)+", text) if run.start() <= place < run.end())
    return next((name for run in runs if (name := run[0].replace("-", "_")) in known), "")


def nearest_name(name: str, names: Iterable[str]) -> tuple[str, ...]:
    """The names most like this one; where what stands before the point is known, only the rest may be mistyped."""
    names = tuple(names)
    owner, _, attribute = name.partition(".")
    owned = [word.removeprefix(f"{owner}.") for word in names if word.startswith(f"{owner}.")]
    if attribute and owned:
        return tuple(f"{owner}.{word}" for word in nearest(attribute, owned))
    return nearest(name, names)


def _stranger(name: str, known: Collection[str], spec: Spec) -> tuple[str, str]:
    owner, _, attribute = name.partition(".")
    # What stands in the spec can be named; `step 3.seam` and its like are for `why` only.
    usable = [word for word in known if " " not in word and not word.endswith("_takes")]
    near = nearest_name(name, usable)
    if near:
        help_ = "did you mean " + " or ".join(f"`{word}`" for word in near) + "?"
    elif attribute and owner in spec.materials and owner not in spec.pieces:
        help_ = f"write `{attribute.replace('_', ' ')}:` under the material `{owner}`"
    elif attribute and owner in spec.pieces:
        help_ = f"a piece has {', '.join(f'`{word}`' for word in ATTRIBUTES)}"
    elif not attribute and name in spec.pieces:
        help_ = f"name one of its sizes, such as `{name}.length`"
    elif not attribute and name in spec.materials:
        help_ = f"name one of its amounts, such as `{name}.width`"
    else:
        help_ = f"add `{name}` to the measures, or use a name that the spec has"
    if attribute and (owner in spec.pieces or owner in spec.materials):
        return f"`{owner}` has no `{attribute}`", help_
    if name in spec.pieces or name in spec.materials:
        return f"`{name}` is a {'piece' if name in spec.pieces else 'material'}, not a measure", help_
    return f"nothing is named `{name}`", help_


# Beyond so many lines in one circle, which of them opens it is not sought.
_MOST_TRIED = 100


def _circle(equations: list[Equation]) -> Fault:
    """The fault of a group whose values all need one another."""
    names = {equation.name for equation in equations}
    inside = {equation.name: tuple(n for n in equation.needs if n in names) for equation in equations}
    written = {
        equation.name: Label(equation.says.span, f"`{equation.name}` needs {_listed(inside[equation.name])}")
        for equation in equations
        if isinstance(equation.says, Written)
    }
    start, *others = written
    ring = _shortest_ring(start, inside)
    said = _listed(others or ring[1:]) if others or ring[1:] else "itself"
    cures: list[str] = []
    if len(written) <= _MOST_TRIED:
        cures = [name for name in written if not _goes_round(inside, without=name)]
    if not cures:
        help_ = "give several of these lines quantities of their own: no single one opens every circle"
    elif len(cures) == 1:
        help_ = f"give `{cures[0]}` a quantity of its own"
    else:
        help_ = f"give one of {_listed(cures, 'or')} a quantity of its own"
    return Fault(
        "FB206",
        f"`{start}` is worked out from {said}, in a circle",
        written[start],
        tuple(written[name] for name in others),
        (" -> ".join(f"`{name}`" for name in (*ring, start)),),
        help_ if len(written) <= _MOST_TRIED else "give one or more of these lines quantities of their own",
    )


def _listed(names: Sequence[str], link: str = "and") -> str:
    quoted = [f"`{name}`" for name in names]
    return quoted[0] if len(quoted) == 1 else ", ".join(quoted[:-1]) + f" {link} {quoted[-1]}"


def _shortest_ring(start: str, inside: Mapping[str, tuple[str, ...]]) -> list[str]:
    """The shortest way from a name back to itself, without the end."""
    came: dict[str, str] = {}
    waiting = deque([start])
    while waiting:
        name = waiting.popleft()
        for need in inside[name]:
            if need == start:
                ring = [name]
                while ring[-1] != start:
                    ring.append(came[ring[-1]])
                return ring[::-1]
            if need not in came:
                came[need] = name
                waiting.append(need)
    raise AssertionError(f"{start} stands in no circle")


def _goes_round(inside: Mapping[str, tuple[str, ...]], without: str) -> bool:
    left = {name: tuple(n for n in needs if n != without) for name, needs in inside.items() if name != without}
    return any(len(group) > 1 or group[0] in left[group[0]] for group in _groups(left))


def _groups(needs: Mapping[str, Collection[str]]) -> Iterator[list[str]]:
    """The names in groups that need one another, each group after what it needs.

    Names outside the mapping are passed over. Without recursion, so that a long chain does no harm.
    Source: R. Tarjan, "Depth-first search and linear graph algorithms", 1972.
    """
    index: dict[str, int] = {}
    low: dict[str, int] = {}
    path: dict[str, None] = {}
    for root in needs:
        if root in index:
            continue
        work = [(root, iter(needs[root]))]
        index[root] = low[root] = len(index)
        path[root] = None
        while work:
            name, following = work[-1]
            for need in following:
                if need not in needs:
                    continue
                if need not in index:
                    index[need] = low[need] = len(index)
                    path[need] = None
                    work.append((need, iter(needs[need])))
                    break
                if need in path:
                    low[name] = min(low[name], index[need])
            else:
                work.pop()
                if work:
                    low[work[-1][0]] = min(low[work[-1][0]], low[name])
                if low[name] == index[name]:
                    group: list[str] = []
                    while not group or group[-1] != name:
                        group.append(path.popitem()[0])
                    yield group
