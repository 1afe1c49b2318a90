"""From a record of the work to what is to be done, and to the garment as it will now be.

A gathered edge that is off is brought back to its length, so nothing after it changes; a ring or a cut piece that is
off stays so, and every number after it is worked out again. What was done by the first guide stays as it told it. What
can't be made to agree is refused with its numbers.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.amend.amended import BEFORE_CUTTING, CUT, Amended, Finding, Runs, Shared
from furbelow.amend.as_cut import Amounts, Sizes, cut_size, with_cloth
from furbelow.amend.booking import Booking
from furbelow.amend.drawn_edges import DrawnEdges, drawn_at
from furbelow.amend.meeting import meeting
from furbelow.amend.read_record import Measured
from furbelow.amend.remade import Remaking
from furbelow.amend.unknown import unknown
from furbelow.amend.verdict import Remedy
from furbelow.amend.worked import held_before, shared_out
from furbelow.diagnose.fault import Fault, Span, Staged
from furbelow.order.chain import Planned, planned
from furbelow.order.order import Order


def amend(order: Order, record: Sequence[Measured]) -> Staged[Amended]:
    """What to do now. Fails: the faults of the spec; FB711 to FB713; those of the proofs where the garment no longer
    holds with what was measured. Warns: of what the proofs find in it that was not so as it was meant."""
    meant = planned(order)
    if meant.value is None:
        return Staged(None, meant.faults)
    first = meant.value
    faults = [fault for one in record if (fault := unknown(first.rehearsal.solved, one))]
    if faults:
        return Staged(None, tuple(faults))
    spec = order.spec
    for one in record:
        spec = with_cloth(spec, one) if one.kind == "cloth" else spec
    base = planned(order._replace(spec=spec)) if spec is not order.spec else meant
    order = order._replace(spec=spec)
    if base.value is None:
        return Staged(None, base.faults)
    return _Amending(order, first, base.value, record).run()


class _Amending:
    def __init__(self, order: Order, first: Planned, base: Planned, record: Sequence[Measured]) -> None:
        self.order, self.first, self.base = order, first, base
        self.performed = base.rehearsal.run.performed
        self.booking = Booking(first, base, record)
        self.faults = self.booking.faults
        self.warnings: list[Fault] = []  # of the garment as it will be, that it had not as it was meant
        self.held: Amounts = {}

    def run(self) -> Staged[Amended]:
        booking = self.booking
        plain = booking.findings()
        edges = [one for one in booking.record if one.kind == "edge"]
        drawn = [step[0] for one in edges if (step := drawn_at(booking, one))]
        last = max((*(found.after for found in plain), *drawn), default=CUT)
        start = BEFORE_CUTTING if last == BEFORE_CUTTING else last + 1
        here = booking.record[0].span if booking.record else None
        self.held = {(at, name): (length, here) for at, name, length in held_before(self.performed, start) if here}
        runs = None if self.faults else self._runs()
        if runs is None:
            return Staged(None, tuple(self.faults))
        drawing = DrawnEdges(booking, start)
        gathered = [found for one in edges if (found := drawing.measured(one, runs))]
        if any(found.verdict and found.verdict.remedy is Remedy.TRIM for found in gathered) and not self.faults:
            runs = self._runs() or runs
        if self.faults:
            return Staged(None, tuple(self.faults))
        findings = [*plain, *gathered]
        findings += drawing.assumed(runs, {(found.measured.name, found.measured.copy) for found in gathered})
        return Staged(self._told(runs, findings, start), tuple(self.warnings))

    def _told(self, runs: Runs, findings: Sequence[Finding], start: int) -> Amended:
        return Amended(
            self.order,
            self.first,
            runs.now,
            runs.copies,
            runs.together,
            runs.meet,
            runs.count,
            tuple(findings),
            start,
            self.booking.joined_before,
            tuple(self._shared(runs, start)),
        )

    def _shared(self, runs: Runs, start: int) -> Iterator[Shared]:
        """What is shared out along its seam: of each copy until they meet, and of all from there on."""
        meant = self.base.rehearsal
        for copy in runs.apart:
            now = runs.now if copy is None else runs.copies[copy]
            yield from ((copy, one) for one in shared_out(meant, now.rehearsal, start) if one.at < runs.meet)
        yield from ((None, one) for one in shared_out(meant, runs.together.rehearsal, start) if one.at >= runs.meet)

    def _runs(self) -> Runs | None:
        """The garment for all copies, for each copy that is told apart, and for all once they meet."""
        every = self.booking.sizes[None]
        own = {copy: sizes for copy, sizes in sorted(self._own().items()) if sizes}
        now = self._again(every) if every or self.booking.amounts else self.base
        copies = {}
        for copy, sizes in own.items():
            if (one := self._again({**every, **sizes}, alone=True)) is not None:
                copies[copy] = one
        if self.faults or now is None:
            return None
        pieces = {piece for sizes in own.values() for piece, _ in sizes}
        count = max((self.base.rehearsal.solved.pieces[piece].count for piece in pieces), default=0)
        if not copies:
            return Runs(now, copies, now, len(self.performed), count)
        each = [copies.get(copy, now) for copy in range(1, count + 1)]
        met = meeting(each, pieces, *self._oddest(own), self.booking.say)
        self.faults += met.faults
        together = None if self.faults else self._again(self._together(own, count, met.shortest))
        if together is None:
            return None
        return Runs(now, copies, met.marked(together), met.at, count)

    def _own(self) -> Mapping[int, Sizes]:
        return {copy: sizes for copy, sizes in self.booking.sizes.items() if copy is not None}

    def _together(self, own: Mapping[int, Sizes], count: int, shortest: int) -> Sizes:
        """What all copies come to where they hang beside each other: as deep as the deepest, in their common edge as long as the
        shortest, and in others as long as they are on average."""
        every, pieces = self.booking.sizes[None], self.base.rehearsal.solved.pieces
        found = dict(every)
        for name, size in dict.fromkeys(key for sizes in own.values() for key in sizes):
            usual = every.get((name, size), (cut_size(pieces[name], size), None))
            each = [own.get(copy, {}).get((name, size), usual) for copy in range(1, pieces[name].count + 1)]
            place = next(place for _, place in each if place)
            lengths = [length for length, _ in each]
            if size == "depth":
                found[name, size] = (max(lengths), place)
            elif self._lies_in_stack(name):
                found[name, size] = (lengths[shortest - 1], place)
            else:
                found[name, size] = (sum(lengths, Fraction(0)) / len(lengths), place)
        return found

    def _oddest(self, own: Mapping[int, Sizes]) -> tuple[str, Span]:
        """Of the copies that are told apart, the piece that came out furthest from what it was planned at, and where that is said."""
        planned = self.base.rehearsal.solved.pieces
        found = {}
        for (piece, size), (value, place) in (each for sizes in own.values() for each in sizes.items()):
            meant = cut_size(planned[piece], size)
            found[abs(value - meant) / meant] = (piece, place)
        return found[max(found)]

    def _lies_in_stack(self, piece: str) -> bool:
        return any(edge.partition(".")[0] == piece for edge in self.base.rehearsal.run.final.layered)

    def _again(self, sizes: Sizes, *, alone: bool = False) -> Planned | None:
        """The garment from pieces of these sizes, in the order of work that was begun. alone: of one copy among others."""
        one = {(row.name, row.size) for row in self.booking.in_one}
        remaking = Remaking(self.order, self.base, one, self.held, self.booking.say, alone)
        staged = remaking.remade(sizes, self.booking.amounts)
        self.faults += (
            fault for fault in staged.faults if fault.is_error and _told(fault) not in map(_told, self.faults)
        )
        self.warnings += (fault for fault in staged.faults if not fault.is_error and fault not in self.warnings)
        return staged.value


def _told(fault: Fault) -> tuple[str, str]:
    return fault.code, fault.headline
