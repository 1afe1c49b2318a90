"""Edges that were gathered, pleated or eased in: what was measured of them, and those that nobody measured and no longer fit."""

from __future__ import annotations

from fractions import Fraction

from furbelow.amend.amended import Finding, Fix, Runs
from furbelow.amend.booking import Booking
from furbelow.amend.meeting import percent
from furbelow.amend.read_record import Measured
from furbelow.amend.verdict import Drawn, Remedy, Verdict, verdict
from furbelow.amend.worked import draws_in, holds, mates, sews

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


class DrawnEdges:
    """start: the first performed step that is still to do."""

    def __init__(self, booking: Booking, start: int) -> None:
        self.booking, self.start = booking, start
        self.performed, self.say = booking.performed, booking.say
        self.within = booking.base.rehearsal.solved.rounding

    def measured(self, one: Measured, runs: Runs) -> Finding | None:
        """A drawn edge against the length it is wanted at, with all that is known of the pieces."""
        found = drawn_at(self.booking, one)
        if found is None:
            return None
        at, drawn = found
        done = runs.at(one.copy, at).rehearsal.run.performed[at]
        edge, say, refuse = done.after.edge(one.name), self.say, self.booking.refuse
        wanted, cloth = edge.set_length, done.before.edges.get(one.name, edge).cloth_length
        if one.value > cloth:
            over = say.length(one.value - cloth)
            headline = (
                f"`{one.name}` was measured at {say.length(one.value)}, {over} more than the"
                f" {say.length(cloth)} of cloth in it"
            )
            refuse("FB712", one, headline, help_="measure it again")
            return None
        if self._held(at, one.name):
            return Finding(one, wanted, at, None, fix=Fix.SEWN)
        fix = verdict(wanted, one.value, self.within, one.do, drawn)
        if fix is None:
            self._refuse_choice(one, Verdict(Remedy.CHOOSE, wanted, one.value), drawn)
            return None
        if fix.remedy is Remedy.TRIM and not self._trim(one, at, fix):
            return None
        return Finding(one, wanted, at, fix)

    def assumed(self, runs: Runs, told: set[tuple[str, int | None]]) -> list[Finding]:
        """The edges that were drawn to a length that is no longer wanted, and not sewn on yet."""
        found = []
        for at, done in enumerate(self.performed[: max(self.start, 0)]):
            for name, edge in done.after.edges.items():
                drawn = draws_in(done, name)
                if drawn is None or self._held(at, name):
                    continue
                for copy in [None] if at >= runs.meet else runs.apart:
                    wanted = runs.at(copy, at).rehearsal.run.performed[at].after.edge(name).set_length
                    fix = verdict(wanted, edge.set_length, self.within, drawn=drawn)
                    if fix is None or fix.remedy is Remedy.NONE or {(name, copy), (name, None)} & told:
                        continue
                    as_planned = Measured("edge", name, "length", edge.set_length, copy, "", done.step.written.span)
                    found.append(Finding(as_planned, wanted, at, fix, assumed=True))
        return found

    def _held(self, at: int, name: str) -> bool:
        return any(holds(later, name) for later in self.performed[at + 1 : max(self.start, 0)])

    def _trim(self, one: Measured, at: int, found: Verdict) -> bool:
        """Make the edge that it is sewn to as short: its piece is taken in, and all that hangs on it follows."""
        booking = self.booking
        sewn = next((done for done in self.performed[at + 1 :] if sews(done, one.name)), None)
        sewn_to = [] if sewn is None else [name for name in mates(sewn, one.name) if "." in name]
        if sewn is None or not sewn_to or one.name == sewn_to[0]:
            headline = f"`{one.name}` is sewn to no single piece that could be trimmed"
            booking.refuse("FB713", one, headline, help_="write `do: ease`")
            return False
        piece = sewn_to[0].partition(".")[0]
        sizes = {**booking.sizes[None], **booking.sizes.get(one.copy, {})}
        usual: tuple[Fraction, object] = (booking.base.rehearsal.solved.pieces[piece].cut_length, None)
        booking.set(one, piece, "length", sizes.get((piece, "length"), usual)[0] - found.gap)
        return True

    def _refuse_choice(self, one: Measured, found: Verdict, drawn: Drawn) -> None:
        say, short = self.say, found.gap > 0
        off = f"{say.length(abs(found.gap))} too {'short' if short else 'long'}"
        headline = f"`{one.name}` is {off}, {percent(found.share)} of {say.length(found.wanted)}; that can't be mended with `{one.do}`"
        help_ = _OUT[drawn] if short else f"{_CLOSER[drawn]}: leave `do` away"
        self.booking.refuse("FB713", one, headline, help_)


def drawn_at(booking: Booking, one: Measured) -> tuple[int, Drawn] | None:
    """The step that draws a measured edge in, and how. Fails: FB711, which is told."""
    if not booking.has_copy(one):
        return None
    drawn_in = ((at, drawn) for at, done in enumerate(booking.performed) if (drawn := draws_in(done, one.name)))
    first = next(drawn_in, None)
    if first is None:
        edge = next(
            (done.after.edges[one.name] for done in booking.performed if one.name in done.after.edges),
            None,
        )
        names = edge.pieces if edge else (one.name.partition(".")[0],)
        pieces = booking.base.rehearsal.solved.pieces
        rings = (one.name if "." in one.name and pieces[name].shaped else name for name in dict.fromkeys(names))
        help_ = " or ".join(f"`ring: {ring}`" for ring in rings)
        cut = f" or `cut: {names[0]}`" if "." in one.name else ""
        booking.refuse(
            "FB711", one, f"`{one.name}` is never gathered, pleated or eased in", help_=f"measure {help_}{cut}"
        )
    return first
