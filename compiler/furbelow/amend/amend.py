"""From a record of the work to what is to be done, and to the garment as it will now be.

A gathered edge that is off is brought back to its length, so nothing after it changes; a ring or a cut piece that is
off stays so, and every number after it is worked out again. What can't be made to agree is refused with its numbers.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from furbelow.amend.amended import BEFORE_CUTTING, CUT, Amended, Finding, Runs, Shared
from furbelow.amend.as_cut import Sizes, cut_size, with_cloth
from furbelow.amend.copies import as_cut_out, as_one, booked, cut_out_at, sewn_to_one
from furbelow.amend.meeting import meeting, percent
from furbelow.amend.read_record import Measured
from furbelow.amend.remade import Remaking
from furbelow.amend.unknown import ENDS, unknown
from furbelow.amend.verdict import Drawn, Remedy, Verdict, verdict
from furbelow.amend.worked import draws_in, mates, sews, shared_out
from furbelow.diagnose.fault import Fault, Label, Span, Staged
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import SolvedPiece, SolvedStep
from furbelow.garment.technique import Performed
from furbelow.order.chain import Planned, planned
from furbelow.order.order import Order
from furbelow.s2_solve.takes import allowances
from furbelow.techniques import technique_of

_OUT = {
    Drawn.GATHERED: "let the gathers out",
    Drawn.PLEATED: "let the pleats out",
    Drawn.EASED: "let the row of long stitches out",
}
_CLOSER = {
    Drawn.GATHERED: "take more into the gathers",
    Drawn.PLEATED: "take more into the pleats",
    Drawn.EASED: "pull the row of long stitches closer",
}


def amend(order: Order, record: Sequence[Measured]) -> Staged[Amended]:
    """What to do now. Fails: the faults of the spec; FB711 to FB713; those of the proofs where the garment no longer
    holds with what was measured. Warns: of what the proofs find in it that was not so as it was meant."""
    came = [one for one in record if one.kind == "cloth"]
    faults = [fault for one in record if (fault := unknown(order, one))]
    if faults:
        return Staged(None, tuple(faults))
    meant = planned(order)
    if meant.value is None:
        return Staged(None, meant.faults)
    first = meant.value
    spec = order.spec
    for one in came:
        spec = with_cloth(spec, one)
    base = planned(order._replace(spec=spec)) if spec is not order.spec else meant
    order = order._replace(spec=spec)
    if base.value is None:
        return Staged(None, base.faults)
    return _Amending(order, first, base.value, record).run()


class _Amending:
    def __init__(self, order: Order, first: Planned, base: Planned, record: Sequence[Measured]) -> None:
        self.order, self.first, self.base = order, first, base
        self.performed = base.rehearsal.run.performed
        self.record = [replace(one, copy=None) if one.copy == 1 and self._count(one) == 1 else one for one in record]
        self.say = Phrasing(base.rehearsal.solved, order.room, base.cutting.joins)
        self.faults: list[Fault] = []
        self.in_one: list[Measured] = []  # single copies of pieces that are sewn to one
        self.sizes: dict[int | None, dict[tuple[str, str], tuple[Fraction, Span]]] = {None: {}}
        self.warnings: list[Fault] = []  # of the garment as it will be, that it had not as it was meant
        # What steps have as it was measured: loops of elastic, flared edges, by the index of the step and its argument.
        self.amounts: dict[tuple[int, str], tuple[Fraction, Span]] = {}

    def run(self) -> Staged[Amended]:
        plain = [found for one in self.record if one.kind != "edge" and (found := self._plain(one))]
        together = dict(as_one(self.base.rehearsal.solved.pieces, self.sizes[None], self.in_one))
        self.sizes[None] |= together
        plain = [self._levelled(found, together) for found in plain]
        runs = None if self.faults else self._runs()
        if runs is None:
            return Staged(None, tuple(self.faults))
        gathered = [found for one in self.record if one.kind == "edge" and (found := self._gathered(one, runs))]
        if any(found.verdict and found.verdict.remedy is Remedy.TRIM for found in gathered) and not self.faults:
            again = self._runs()
            runs = again or runs
        if self.faults:
            return Staged(None, tuple(self.faults))
        findings = [*plain, *gathered]
        last = max((found.after for found in findings), default=CUT)
        start = BEFORE_CUTTING if last == BEFORE_CUTTING else last + 1
        findings += self._assumed(runs, start, {(found.measured.name, found.measured.copy) for found in gathered})
        apart = len(runs.copies) == runs.count
        shared = tuple(self._shared(runs, start, apart))
        told = Amended(
            self.order,
            self.first,
            runs.now,
            runs.copies,
            runs.together,
            runs.meet,
            apart,
            tuple(findings),
            start,
            shared,
        )
        return Staged(told, tuple(self.warnings))

    def _shared(self, runs: Runs, start: int, apart: bool) -> Iterator[Shared]:
        """What is shared out along its seam: of each copy until they meet, and of all from there on."""
        meant = self.base.rehearsal
        for copy in (*(() if apart and runs.copies else (None,)), *runs.copies):
            now = runs.now if copy is None else runs.copies[copy]
            yield from ((copy, one) for one in shared_out(meant, now.rehearsal, start) if one.at < runs.meet)
        yield from ((None, one) for one in shared_out(meant, runs.together.rehearsal, start) if one.at >= runs.meet)

    def _runs(self) -> Runs | None:
        """The garment for all copies, for each copy that is told apart, and for all once they meet."""
        everywhere = self.sizes[None]
        now = self._again(everywhere) if everywhere or self.amounts else self.base
        copies = {}
        for copy, sizes in self.sizes.items():
            if copy is not None and (one := self._again({**everywhere, **sizes})) is not None:
                copies[copy] = one
        if self.faults or now is None:
            return None
        copies = dict(sorted(copies.items()))
        pieces = {piece for copy, sizes in self.sizes.items() if copy for piece, _ in sizes}
        count = max((self.base.rehearsal.solved.pieces[piece].count for piece in pieces), default=0)
        meet, together = len(self.performed), now
        if copies:
            apart = [*copies.values()]
            runs = apart if len(copies) == count else [*apart, now]
            met = meeting(runs, now, pieces, *self._oddest(), self.say)
            meet, together = met.at, met.together
            self.faults += met.faults
        return None if self.faults else Runs(now, copies, together, meet, count)

    def _oddest(self) -> tuple[str, Span]:
        """Of the copies that are told apart, the piece that came out furthest from what it was planned at, and where that is said."""
        planned = self.base.rehearsal.solved.pieces
        sizes = [each for copy, of_copy in self.sizes.items() if copy is not None for each in of_copy.items()]
        found = {}
        for (piece, size), (value, place) in sizes:
            meant = cut_size(planned[piece], size)
            found[abs(value - meant) / meant] = (piece, place)
        return found[max(found)]

    # --- each measurement ---

    def _plain(self, one: Measured) -> Finding | None:
        """A cloth, an elastic, a cut piece or a ring: it is what it is, and its size is booked."""
        solved = self.base.rehearsal.solved
        if one.kind == "cloth":
            return Finding(one, self._reckoned(one), BEFORE_CUTTING, None)
        if one.kind == "elastic":
            return self._loop(one)
        name, _, side = one.name.partition(".")
        if not self._has_copy(one):
            return None
        piece = solved.pieces[name]
        if one.kind == "cut":
            wanted = as_cut_out(piece, one.size, one.copy)
            if one.copy is not None and sewn_to_one(name, self.performed):
                self.in_one.append(one)
            else:
                self._set(one, name, one.size, booked(piece, one))
            return Finding(one, wanted, cut_out_at(name, self.performed), None)
        closed = next(
            (
                at
                for at, done in enumerate(self.performed)
                if done.after.cloths[piece.name].ring and not done.before.cloths[piece.name].ring
            ),
            None,
        )
        if closed is None:
            self._refuse(
                "FB711", one, f"`{piece.name}` never becomes a ring", help_=f"measure it as `cut: {piece.name}`"
            )
            return None
        done = self.performed[closed]
        if done.after.cloths[piece.name].copies != done.before.cloths[piece.name].copies and one.copy is not None:
            headline = f"the {piece.count} copies of `{piece.name}` are sewn to one ring, so none of them has a ring of its own"
            self._refuse("FB711", one, headline, help_="measure the ring without `copy`")
            return None
        if not side and (piece.ring or piece.gore):
            top, bottom = (self.say.length(done.after.measured(done.after.edge(f"{name}.{end}"))) for end in ENDS)
            headline = f"the ring of `{name}` is {top} at its top and {bottom} at its bottom"
            self._refuse("FB711", one, headline, help_=f"write `ring: {name}.top` or `ring: {name}.bottom`")
            return None
        edge = done.after.edge(f"{name}.{side or 'bottom'}")
        wanted = done.after.measured(edge)
        self._close_to(one, piece, side, one.value - wanted, done)
        return Finding(one, wanted, closed, None)

    def _levelled(self, found: Finding, together: Sizes) -> Finding:
        """With the depth to which it or its like are cut, where they are sewn to one and are not equally deep."""
        one = found.measured
        level, _ = together.get((one.name, one.size), (None, None))
        if level is None or one.size == "length" or one not in self.in_one or one.value == level == found.wanted:
            return found
        return replace(found, level=level)

    def _reckoned(self, one: Measured) -> Fraction:
        """What the plan has of a cloth: its width, what it loses in the wash, or how much of it is needed."""
        if one.size == "length":
            sheet = self.base.cutting.sheets.get(one.name)
            return sheet[0].plan.bolt_length + sheet[0].bolt.squared if sheet else Fraction(0)
        amount = self.first.rehearsal.solved.materials[one.name].amounts.get(one.size)
        return amount.value if amount else Fraction(0)

    def _loop(self, one: Measured) -> Finding | None:
        """An elastic that was put in, the loop at rest: it stays so, and what the body asks of it is proved anew."""
        put_in = [
            (at, done.step)
            for at, done in enumerate(self.performed)
            if done.step.written.technique == "insert elastic" and one.name in [used.material for used in done.used]
        ]
        chosen = put_in if one.copy is None else put_in[one.copy - 1 : one.copy]
        if not chosen:
            times = "is put in by no step" if not put_in else f"is put in {len(put_in)} times"
            self._refuse("FB711", one, f"`{one.name}` {times}, so there is no loop of it that was measured")
            return None
        for _, step in chosen:
            self.amounts[step.written.index, "length"] = (one.value, one.span)
        at, step = chosen[-1]
        return Finding(one, step.mm("length"), at, None)

    def _close_to(self, one: Measured, piece: SolvedPiece, side: str, more: Fraction, done: Performed) -> None:
        """Take the ring of a piece for so much longer: what it was cut to is what gives that ring with the seams as planned.
        The lower edge of a flared piece is as long as its step says, whatever its length."""
        name = piece.name
        each = more * done.after.cloths[name].copies / done.before.cloths[name].copies
        if side == "bottom" and (flared := self._flared(name)):
            step, argument = flared
            self.amounts[step.written.index, argument] = (step.mm(argument) + each, one.span)
        else:
            self._set(one, name, "length", piece.cut_length + each)

    def _flared(self, piece: str) -> tuple[SolvedStep, str] | None:
        """The step that makes a piece wider below than above, and its argument for the lower edge."""
        taken = allowances(self.order.spec, technique_of)
        for done in self.performed:
            for each in taken.get(done.step.written.index, ()):
                if each.piece == piece and (argument := each.hem or each.gore):
                    return done.step, argument
        return None

    def _count(self, one: Measured) -> int:
        """How many there are of what was measured; a stack is always one, and an elastic is as many as it is put in."""
        if one.kind == "elastic":
            return sum(used.material == one.name for done in self.performed for used in done.used)
        piece = self.base.rehearsal.solved.pieces.get(one.name.partition(".")[0])
        return piece.count if piece else 1

    def _has_copy(self, one: Measured) -> bool:
        count = self._count(one)
        if one.copy is None or one.copy <= count:
            return True
        last = (
            "leave `copy` out" if count == 1 else f"write a copy from 1 to {count}, or leave `copy` out for all of them"
        )
        self._refuse("FB711", one, f"copy {one.copy} of `{one.name}` was measured, and there {_are(count)}", help_=last)
        return False

    def _gathered(self, one: Measured, runs: Runs) -> Finding | None:
        """A gathered edge against the length it is wanted at, with all that is known of the pieces."""
        if not self._has_copy(one):
            return None
        drawn_in = ((at, drawn) for at, done in enumerate(self.performed) if (drawn := draws_in(done, one.name)))
        first = next(drawn_in, None)
        if first is None:
            name = one.name.partition(".")[0]
            self._refuse(
                "FB711",
                one,
                f"`{one.name}` is never gathered, pleated or eased in",
                help_=f"measure `ring: {name}` or `cut: {name}`",
            )
            return None
        at, drawn = first
        done = runs.at(one.copy, at).rehearsal.run.performed[at]
        edge, say = done.after.edge(one.name), self.say
        wanted, cloth = edge.set_length, done.before.edges.get(one.name, edge).cloth_length
        if one.value > cloth:
            over = say.length(one.value - cloth)
            headline = (
                f"`{one.name}` was measured at {say.length(one.value)}, {over} more than the"
                f" {say.length(cloth)} of cloth in it"
            )
            self._refuse("FB712", one, headline, help_="measure it again")
            return None
        found = verdict(wanted, one.value, self.base.rehearsal.solved.rounding, one.do, drawn)
        if found is None:
            self._refuse_choice(one, Verdict(Remedy.CHOOSE, wanted, one.value), drawn)
            return None
        if found.remedy is Remedy.TRIM and not self._trim(one, at, found):
            return None
        return Finding(one, wanted, at, found)

    def _trim(self, one: Measured, at: int, found: Verdict) -> bool:
        """Make the edge that it is sewn to as short: its piece is taken in, and all that hangs on it follows."""
        sewn = next((done for done in self.performed[at + 1 :] if sews(done, one.name)), None)
        sewn_to = [] if sewn is None else [name for name in mates(sewn, one.name) if "." in name]
        if sewn is None or not sewn_to or one.name == sewn_to[0]:
            self._refuse(
                "FB713", one, f"`{one.name}` is sewn to no single piece that could be trimmed", help_="write `do: ease`"
            )
            return False
        piece = sewn_to[0].partition(".")[0]
        sizes = {**self.sizes[None], **self.sizes.get(one.copy, {})}
        length = sizes.get((piece, "length"), (self.base.rehearsal.solved.pieces[piece].cut_length, one.span))[0]
        self._set(one, piece, "length", length - found.gap)
        return True

    def _assumed(self, runs: Runs, start: int, told: set[tuple[str, int | None]]) -> list[Finding]:
        """The edges that were drawn to a length that is no longer wanted, and not sewn on yet."""
        found = []
        for at, done in enumerate(self.performed[: max(start, 0)]):
            for name, edge in done.after.edges.items():
                drawn = draws_in(done, name)
                if drawn is None or any(sews(later, name) for later in self.performed[at + 1 : start]):
                    continue
                copies = (
                    [None] if at >= runs.meet else [*([] if len(runs.copies) == runs.count else [None]), *runs.copies]
                )
                for copy in copies:
                    wanted = runs.at(copy, at).rehearsal.run.performed[at].after.edge(name).set_length
                    fix = verdict(wanted, edge.set_length, self.base.rehearsal.solved.rounding, drawn=drawn)
                    if fix is None or fix.remedy is Remedy.NONE or {(name, copy), (name, None)} & told:
                        continue
                    as_planned = Measured("edge", name, "length", edge.set_length, copy, "", done.step.written.span)
                    found.append(Finding(as_planned, wanted, at, fix, assumed=True))
        return found

    def _set(self, one: Measured, piece: str, size: str, value: Fraction) -> None:
        sizes = self.sizes.setdefault(one.copy, {})
        sizes[piece, size] = (value, one.span)

    def _refuse(
        self, code: str, one: Measured, headline: str, help_: str | None = None, notes: tuple[str, ...] = ()
    ) -> None:
        self.faults.append(Fault(code, headline, Label(one.span), notes=notes, help=help_))

    def _refuse_choice(self, one: Measured, found: Verdict, drawn: Drawn) -> None:
        say, short = self.say, found.gap > 0
        off = f"{say.length(abs(found.gap))} too {'short' if short else 'long'}"
        headline = f"`{one.name}` is {off}, {percent(found.share)} of {say.length(found.wanted)}; that can't be mended with `{one.do}`"
        help_ = _OUT[drawn] if short else f"{_CLOSER[drawn]}: leave `do` away"
        self._refuse("FB713", one, headline, help_)

    def _again(self, sizes: Sizes) -> Planned | None:
        """The garment from pieces of these sizes, in the order of work that was begun."""
        one = {(row.name, row.size) for row in self.in_one}
        staged = Remaking(self.order, self.base, one, self.say).remade(sizes, self.amounts)
        self.faults += (
            fault for fault in staged.faults if fault.is_error and _told(fault) not in map(_told, self.faults)
        )
        self.warnings += (fault for fault in staged.faults if not fault.is_error and fault not in self.warnings)
        return staged.value


def _told(fault: Fault) -> tuple[str, str]:
    return fault.code, fault.headline


def _are(count: int) -> str:
    return "is 1" if count == 1 else f"are {count}"
