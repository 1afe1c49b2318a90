"""What was measured of cloths, pieces, rings and elastics, booked: the sizes and lengths that the garment has from here on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from furbelow.amend.amended import BEFORE_CUTTING, Finding, Fix
from furbelow.amend.as_cut import Sizes, hem_arguments
from furbelow.amend.copies import as_cut_out, as_one, booked, cut_out_at, sewn_to_one
from furbelow.amend.read_record import Measured
from furbelow.amend.unknown import ENDS
from furbelow.amend.worked import joins_alone
from furbelow.compare.ways_to_cut import ways_to_cut
from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import SolvedPiece
from furbelow.garment.technique import Performed
from furbelow.order.chain import Planned


class Booking:
    """first: the garment as it was meant. base: with the cloths as they came, before anything else was measured.

    sizes: what pieces are cut to, of all copies (None) and of single ones. amounts: what steps have as it was measured,
    by their index in the spec and the argument. in_one: single copies of pieces that are sewn to one.
    """

    def __init__(self, first: Planned, base: Planned, record: Sequence[Measured]) -> None:
        self.first, self.base = first, base
        self.performed = base.rehearsal.run.performed
        self.say = Phrasing(base.rehearsal.solved, base.rehearsal.run.room, base.cutting.joins)
        self.faults: list[Fault] = []
        self.in_one: list[Measured] = []
        self.sizes: dict[int | None, dict[tuple[str, str], tuple[Fraction, Span]]] = {None: {}}
        self.amounts: dict[tuple[int, str], tuple[Fraction, Span]] = {}
        self.record = [replace(one, copy=None) if one.copy == 1 and self._count(one) == 1 else one for one in record]
        self._twice()
        self.joined: set[str] = set()  # pieces whose strips lay joined when they were measured

    def findings(self) -> list[Finding]:
        """Of all but drawn edges, in their order."""
        found = [found for one in self.record if one.kind != "edge" and (found := self._found(one))]
        together = dict(as_one(self.base.rehearsal.solved.pieces, self.sizes[None], self.in_one))
        self.sizes[None] |= together
        return [self._levelled(each, together) for each in found]

    @property
    def joined_before(self) -> frozenset[str]:
        """The operations that joined strips which were measured as one, and nothing else."""
        return frozenset(done.key for done in self.performed if joins_alone(done, self.joined))

    def set(self, one: Measured, piece: str, size: str, value: Fraction) -> None:
        self.sizes.setdefault(one.copy, {})[piece, size] = (value, one.span)

    def refuse(
        self, code: str, one: Measured, headline: str, help_: str | None = None, notes: tuple[str, ...] = ()
    ) -> None:
        self.faults.append(Fault(code, headline, Label(one.span), notes=notes, help=help_))

    def has_copy(self, one: Measured) -> bool:
        count = self._count(one)
        piece = one.name.partition(".")[0]
        number = self.base.cutting.marks.get(piece, "")
        if one.tag and number and one.tag != number:
            headline = f"`copy: {one.called}` is a tag of piece {one.tag}, and `{piece}` is piece {number}"
            self.refuse("FB711", one, headline, help_="write the letter of the tag alone, or name its piece")
            return False
        if one.copy is None or one.copy <= count:
            return True
        there = "is 1" if count == 1 else f"are {count}"
        last = (
            "leave `copy` out" if count == 1 else f"write a copy from 1 to {count}, or leave `copy` out for all of them"
        )
        copy = one.called or str(one.copy)
        self.refuse("FB711", one, f"copy {copy} of `{one.name}` was measured, and there {there}", help_=last)
        return False

    # --- each measurement ---

    def _twice(self) -> None:
        seen: dict[tuple[str, str, str, int | None], Measured] = {}
        for one in self.record:
            before = seen.setdefault((one.kind, one.name, one.size, one.copy), one)
            if before is not one:
                what = f"`{one.kind}: {one.name}`" + (f", copy {one.called or one.copy}," if one.copy else "")
                lengths = f"{self._said(before)} on line {before.span.start_line} and {self._said(one)} here"
                self.refuse("FB711", one, f"{what} was measured twice: {lengths}", help_="keep the later of the two")

    def _said(self, one: Measured) -> str:
        return self.say.share(one.value) if one.size == "shrinkage" else self.say.length(one.value)

    def _found(self, one: Measured) -> Finding | None:
        """What was measured is what it is, and its size is booked; of cloth that is too long no more is taken than was planned."""
        if one.kind == "cloth":
            other = one.size == "length" and self._another_way(one)
            return Finding(one, self._reckoned(one), BEFORE_CUTTING, None, fix=Fix.MORE_JOINS if other else Fix.GO_ON)
        if one.kind == "elastic":
            return self._loop(one)
        if not self.has_copy(one):
            return None
        return self._piece(one) if one.kind == "cut" else self._ring(one)

    def _another_way(self, one: Measured) -> bool:
        """Whether a cloth that is too short for the plan is enough for another way to cut."""
        short = one.name in self.base.cutting.sheets and one.value < self._reckoned(one)
        if not short:
            return False
        squared = self.base.cutting.sheet(one.name).bolt.squared
        return any(way.bolt_length + squared <= one.value for way in ways_to_cut(self.base)[one.name])

    def _as_told(self, one: Measured, wanted: Fraction) -> Measured:
        """What measures as the guide tells it, rounded, came out as it was meant."""
        return replace(one, value=wanted) if self._said(one) == self.say.length(wanted) else one

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
            self.refuse("FB711", one, f"`{one.name}` {times}, so there is no loop of it that was measured")
            return None
        for _, step in chosen:
            if self._said(one) != self.say.length(step.mm("length")):
                self.amounts[step.written.index, "length"] = (one.value, one.span)
        at, step = chosen[-1]
        one = self._as_told(one, step.mm("length"))
        return Finding(one, step.mm("length"), at, None)

    def _piece(self, one: Measured) -> Finding | None:
        solved = self.base.rehearsal.solved
        piece, size = solved.pieces[one.name], one.size
        wanted = as_cut_out(piece, size, one.copy)
        if size == "length" and piece.shaped and abs(one.value - piece.blank[0]) < abs(one.value - wanted):
            shape = "one gore" if piece.gore else "the piece as it is cut out"
            headline = (
                f"`cut: {one.name}` is {shape}, {self.say.length(wanted)} along its cut top;"
                f" {self.say.length(one.value)} is near the {self.say.length(piece.blank[0])} of its rectangle"
            )
            counted = ", its copy counted in the order of sewing, from the front on" if piece.gore else ""
            self.refuse("FB711", one, headline, help_=f"cut it out, and measure along its cut top{counted}")
            return None
        one = self._as_told(one, wanted)
        finding = Finding(one, wanted, cut_out_at(one.name, self.performed), None)
        if size == "length" and piece.piece.piecing is not None:
            self.joined.add(one.name)
        together = one.copy is not None and sewn_to_one(one.name, self.performed)
        if one.value > wanted and not together and (size == "depth" or not piece.shaped):
            within = one.value - wanted <= solved.slack
            return replace(finding, fix=Fix.WITHIN if within else Fix.CUT_TO)
        if together:
            self.in_one.append(one)
        else:
            self.set(one, one.name, size, booked(piece, one))
        if one.value == wanted:
            return finding
        if one.copy is not None and not together and one.name in self.base.rehearsal.run.final.borne:
            return replace(finding, fix=Fix.PAIR)
        return replace(finding, fix=Fix.AT_HEM if size == "depth" and piece.shaped else Fix.FOLLOWS)

    def _levelled(self, found: Finding, together: Sizes) -> Finding:
        """With the depth to which it or its like are cut, where they are sewn to one and are not equally deep."""
        one = found.measured
        level, _ = together.get((one.name, one.size), (None, None))
        if level is None or one.size == "length" or one not in self.in_one or one.value == level == found.wanted:
            return found
        return replace(found, level=level)

    def _ring(self, one: Measured) -> Finding | None:
        name, _, side = one.name.partition(".")
        piece = self.base.rehearsal.solved.pieces[name]
        closed = next(
            (
                at
                for at, done in enumerate(self.performed)
                if done.after.cloths[name].ring and not done.before.cloths[name].ring
            ),
            None,
        )
        if closed is None:
            self.refuse("FB711", one, f"`{name}` never becomes a ring", help_=f"measure it as `cut: {name}`")
            return None
        done = self.performed[closed]
        if done.after.cloths[name].copies != done.before.cloths[name].copies and one.copy is not None:
            headline = (
                f"the {piece.count} copies of `{name}` are sewn to one ring, so none of them has a ring of its own"
            )
            self.refuse("FB711", one, headline, help_="measure the ring without `copy`")
            return None
        if not side and (piece.ring or piece.gore):
            top, bottom = (self.say.length(along_cut(done.after, done.after.edge(f"{name}.{end}"))) for end in ENDS)
            headline = f"the ring of `{name}` is {top} at its top and {bottom} at its bottom"
            self.refuse("FB711", one, headline, help_=f"write `ring: {name}.top` or `ring: {name}.bottom`")
            return None
        edge = done.after.edge(f"{name}.{side or 'bottom'}")
        at_cut, on_line = along_cut(done.after, edge), edge.set_length
        # Of a flared piece guides tell the line of the later seam too, where that is what has to come out.
        wanted = on_line if self._said(one) == self.say.length(on_line) else at_cut
        one = self._as_told(one, wanted)
        if one.value != wanted:
            self._close_to(one, piece, side, one.value - wanted, done)
        along = "" if at_cut == on_line else "cut" if wanted == at_cut else "line"
        return Finding(one, wanted, closed, None, fix=Fix.GO_ON if one.value == wanted else Fix.FOLLOWS, along=along)

    def _close_to(self, one: Measured, piece: SolvedPiece, side: str, more: Fraction, done: Performed) -> None:
        """Take the ring of a piece for so much longer: what it was cut to is what gives that ring with the seams as planned.
        The lower edge of a flared piece is as long as its step says, whatever its length."""
        name = piece.name
        each = more * done.after.cloths[name].copies / done.before.cloths[name].copies
        hems = hem_arguments(self.base.rehearsal.solved, self.performed, name) if side == "bottom" else ()
        step, argument = next(((step, argument) for step, argument, _ in hems), (None, ""))
        if step is None:
            self.set(one, name, "length", piece.cut_length + each)
        else:
            self.amounts[step.written.index, argument] = (step.mm(argument) + each, one.span)

    def _count(self, one: Measured) -> int:
        """How many there are of what was measured; a stack is always one, and an elastic is as many as it is put in."""
        if one.kind == "elastic":
            return sum(used.material == one.name for done in self.performed for used in done.used)
        piece = self.base.rehearsal.solved.pieces.get(one.name.partition(".")[0])
        return piece.count if piece else 1


def along_cut(bench: Bench, edge: Edge) -> Fraction:
    """What a tape along an edge shows, in mm: at its cut edge where it is raw, and without the margins beside a way in."""
    return bench.measured(edge) - edge.stands_out
