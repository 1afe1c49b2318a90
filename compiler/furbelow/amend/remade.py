"""The garment from pieces as they were measured, and what is new about it: its faults, and the warnings it had not as meant."""

from __future__ import annotations

from collections.abc import Set

from furbelow.amend.as_cut import Amounts, Sizes, as_cut, cut_size, hems_of_short, with_amounts
from furbelow.diagnose.fault import Fault, Label, Span, Staged, has_errors
from furbelow.garment.phrasing import Phrasing
from furbelow.named import NamedTuple
from furbelow.order.as_begun import planned_as_begun, solved_as_begun
from furbelow.order.chain import Planned
from furbelow.order.order import Order


class Remaking(NamedTuple):
    """The order and the garment as it was meant, whose order of work was begun. in_one: sizes that single copies of a piece
    come to on average. held: the lengths of work that was done by the first guide and stays."""

    order: Order
    base: Planned
    in_one: Set[tuple[str, str]]
    held: Amounts
    say: Phrasing
    alone: bool = False  # of one copy among others

    def remade(self, sizes: Sizes, amounts: Amounts) -> Staged[Planned]:
        """The garment from pieces of these sizes. Fails: the faults of the proofs, with the measurements that led to them.
        Warns: of what was not so in the garment as it was meant."""
        planned = self._planned(sizes, amounts)
        faults = planned.faults
        if planned.value and faults:
            had = {_place(fault) for fault in self._as_meant(sizes, amounts).faults}
            faults = tuple(fault for fault in faults if _place(fault) not in had)
        return Staged(planned.value, tuple(self._because(fault, sizes, amounts) for fault in faults))

    def _as_meant(self, sizes: Sizes, amounts: Amounts) -> Staged[Planned]:
        """With the same places, and the planned number for each that was measured."""
        solved = self.base.rehearsal.solved
        steps = {step.written.index: step for step in solved.steps}
        cut = {(name, size): (cut_size(solved.pieces[name], size), span) for (name, size), (_, span) in sizes.items()}
        return self._planned(cut, {(at, name): (steps[at].mm(name), span) for (at, name), (_, span) in amounts.items()})

    def _planned(self, sizes: Sizes, amounts: Amounts) -> Staged[Planned]:
        solved = self.base.rehearsal.solved
        hems = hems_of_short(solved, self.base.rehearsal.run.performed, sizes)
        spec = as_cut(solved, sizes)
        if self.alone:
            spec = spec._replace(worn=spec.worn._replace(length=None, hidden={}))
        order = self.order._replace(spec=with_amounts(spec, {**hems, **self.held, **amounts}))
        begun = solved_as_begun(order, self.base)
        if begun.value is None or has_errors(begun.faults):
            return Staged(None, begun.faults)
        planned = planned_as_begun(begun.value, self.base)
        return Staged(planned.value, (*begun.faults, *planned.faults))

    def _because(self, fault: Fault, sizes: Sizes, amounts: Amounts) -> Fault:
        places = tuple(
            Label(span, f"{self._comes_out(piece, size)} {self.say.length(value)} of cut {size}")
            for (piece, size), (value, span) in sizes.items()
        )
        steps = tuple(
            Label(span, f"its `{name}` is {self.say.length(value)} as measured")
            for (_, name), (value, span) in amounts.items()
        )
        # What is cut can't be mended by other numbers in the spec.
        return fault._replace(
            others=(*fault.others, *places, *steps), help=self._anew(fault, sizes, amounts), change=None
        )

    def _anew(self, fault: Fault, sizes: Sizes, amounts: Amounts) -> str:
        pieces = self.base.rehearsal.solved.pieces
        off = {key: abs(value - cut_size(pieces[key[0]], key[1])) for key, (value, _) in sizes.items()}
        if not off or not max(off.values()):
            again = "measure it again" if amounts else "measure again"
            return f"{again}; if it is so, take it out and make it as the guide says"
        piece, size = max(off, key=lambda key: off[key] / cut_size(pieces[key[0]], key[1]))
        meant = f"{self.say.length(cut_size(pieces[piece], size))} of {size}"
        if pieces[piece].shaped:
            meant = "as the guide says"
        if fault.is_error:
            return f"measure `{piece}` again; if it is so, cut it anew, {meant}"
        return f"work on with it, or cut `{piece}` anew, {meant}"

    def _comes_out(self, piece: str, size: str) -> str:
        one = size == "length" and (piece, size) in self.in_one
        return f"with it the copies of {piece} come on average to" if one else f"{piece} comes out at"


def _place(fault: Fault) -> tuple[str, Span | None]:
    """A warning that the garment had with another number is no news."""
    return fault.code, fault.primary and fault.primary.span
