"""Whether a size that is written twice, finished and cut, is the same size both times."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.diagnose.fault import Fault, Label
from furbelow.s2_solve.equations import Agreement, Equations, Sum
from furbelow.s2_solve.evaluate import Evaluation


def disagreements(equations: Equations, workings: Evaluation) -> Iterator[tuple[str, Fault]]:
    """FB209, with the sum shown, for each cut size that is not exactly the finished one with what steps take."""
    for agreement in equations.agreements:
        names = (agreement.cut, *(name for _, name in agreement.expected.terms))
        if not all(name in workings.values for name in names):
            continue
        if agreement.expected.total(workings.values) != workings.values[agreement.cut]:
            yield agreement.cut, _disagreement(agreement, equations, workings)


def _disagreement(agreement: Agreement, equations: Equations, workings: Evaluation) -> Fault:
    expected, cut, units = agreement.expected, workings.values[agreement.cut], workings.system
    wanted = expected.total(workings.values)
    piece, size = agreement.piece, agreement.size
    less = "less" if cut < wanted else "more"
    headline = (
        f"the cut {size} of `{piece}` is {cut.show(units)}, {abs(wanted - cut).show(units)} {less} than the "
        f"{wanted.show(units)} that its finished {size} and its seams add up to"
    )
    notes = [f"{workings.put_in(expected)} = {wanted.show(units)}"]
    for _, name in expected.terms[1:]:
        taken = equations.by_name[name].says
        if isinstance(taken, Sum):
            notes.append(f"{name} = {taken.text({})} = {workings.put_in(taken)}")
    lines = ((agreement.cut, f"the cut {size}"), (agreement.finished, f"the finished {size}"))
    labels = [Label(span, said) for name, said in lines if (span := equations.by_name[name].span)]
    help_ = f"write only one of `{size}` and `cut {size}`"
    return Fault("FB209", headline, labels[0], tuple(labels[1:]), tuple(notes), help_)
