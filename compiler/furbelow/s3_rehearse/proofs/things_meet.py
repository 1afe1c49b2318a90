"""Nothing lies where something else lies that it can't meet, and all of it lies on its piece.

Guarantees: of all that steps put on the cloth (margins, hems, trims, channels with and without filling, gathering rows,
    tucks, pleats, slits, sewn-on strips, holes), no two overlap that the table of what may meet what forbids, in the order
    of the work; and none reaches beyond the cloth that is left of its piece.
Cannot know: where along a pieced strip its joins fall, or how exactly the work was placed.
Source: the table, `s3_rehearse/places/what_may_meet.txt`: house rules, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment import mends
from furbelow.garment.lying import Band, Lies, Occupant
from furbelow.garment.message import Part
from furbelow.garment.technique import Performed, edges_of, fault_at
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.places.what_may_meet import meeting
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-clear"
# Numbers that say where something lies, by the edge that they are measured from.
FROM_BELOW, FROM_ABOVE = ("above hem", "from edge"), ("below top",)


class _Lying(NamedTuple):
    done: Performed
    on: Occupant


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    there: dict[str, list[_Lying]] = {}
    count = 0
    for done in run.performed:
        if done.refused:
            continue
        told: set[tuple[int, str]] = set()
        for comes in done.on_cloth.occupants:
            if not run.sound([comes.piece]):
                continue
            count += 1
            faults += _beyond(run, done, comes)
            for lying in there.get(comes.piece, ()):
                key = (lying.done.step.written.index, comes.kind)
                if lying.done is done or key in told or not _overlap(lying.on, comes):
                    continue
                if comes.across and lying.on.kind is Lies.CHANNEL and _filled(lying.on, there[comes.piece]):
                    continue  # an end of a filled channel is asked of what is in it
                if not comes.across and _told_of_channel(lying.on, comes, there[comes.piece]):
                    continue
                if fault := _cannot_meet(run, lying, _Lying(done, comes)):
                    told.add(key)
                    faults.append(fault)
        for comes in done.on_cloth.occupants:
            there.setdefault(comes.piece, []).append(_Lying(done, comes))
    return Proof(CLAIM, (Part("proof-clear-things", {"things": count}),), tuple(faults))


def _told_of_channel(lies: Occupant, comes: Occupant, there: list[_Lying]) -> bool:
    """Whether one of the two is what fills a channel that meets the other alike: that is told of the channel."""
    for filler in (lies, comes):
        if filler.kind not in (Lies.ELASTIC, Lies.CORD) or not filler.down:
            continue
        for channel in (each.on for each in there if each.on.kind is Lies.CHANNEL and each.on.down):
            holds = channel.down and channel.down.near <= filler.down.near and filler.down.far <= channel.down.far
            one, two = (channel, comes) if filler is lies else (lies, channel)
            if holds and _overlap(one, two) and meeting(one, two).verdict == meeting(lies, comes).verdict:
                return True
    return False


def _filled(channel: Occupant, there: list[_Lying]) -> bool:
    return any(each.on.kind in (Lies.ELASTIC, Lies.CORD, Lies.STEEL) and _overlap(each.on, channel) for each in there)


def _overlap(one: Occupant, other: Occupant) -> bool:
    down = one.down is None or other.down is None or one.down.meets(other.down)
    along = one.along is None or other.along is None or one.along.meets(other.along)
    return down and along


def _cannot_meet(run: Run, there: _Lying, comes: _Lying) -> Fault | None:
    told = meeting(there.on, comes.on)
    if told.may_be:
        return None
    say, written = run.say, comes.done.step.written
    shared = _shared(there.on, comes.on)
    notes = (f"{told.reason}",) if told.reason else ()
    return fault_at(
        written,
        comes.on.arg or None,
        "FB420",
        f"{comes.on.what} of `{comes.on.piece}` would lie on {there.on.what}"
        + (f", {say.length(shared)} of it" if shared else ""),
        others=(Label(there.done.step.written.span, f"{there.on.what} lies {_where(run, there.on)}"),),
        notes=(f"{comes.on.what} would lie {_where(run, comes.on)}", *notes),
        mend=_mend(run, there, comes),
        severity=Severity.WARNING if told.verdict == "!" else Severity.ERROR,
    )


def _shared(one: Occupant, other: Occupant) -> Fraction:
    """How far the two overlap; 0 where one of them lies over the whole piece."""
    for mine, theirs in ((one.down, other.down), (one.along, other.along)):
        if mine and theirs:
            return min(mine.far, theirs.far) - max(mine.near, theirs.near)
    return Fraction(0)


def _where(run: Run, on: Occupant) -> str:
    say = run.say
    if on.down:
        return f"{say.length(on.down.near)} to {say.length(on.down.far)} below the cut top edge"
    if on.along:
        return f"{say.length(on.along.near)} to {say.length(on.along.far)} from the cut start edge"
    return "over the whole piece"


def _mend(run: Run, there: _Lying, comes: _Lying) -> mends.Mend:
    """Where one of the two is put so that it stays clear of the other; else a number made smaller, or one of them left out."""
    moved = _moved(run, comes, there.on) or _moved(run, there, comes.on)
    if moved:
        return moved
    one, other = there.done.step.written.technique, comes.done.step.written.technique
    if comes.on.kind is Lies.SLIT and comes.on.piece not in _edge_pieces(comes.done):
        return mends.Mend(
            "let the slit end above the seam, or sew the two pieces together flat, close both by one `join ends` with `open`,"
            " and write `in` instead of `slit`",
            None,
        )
    # Where the other order is fine, that is the mend: nothing has to be smaller or left out.
    if one != other and meeting(comes.on, there.on).may_be:
        return mends.Mend(f"move `{other}` before `{one}`", None)
    off = "leave one of the two steps out"
    if comes.on.arg in comes.done.step.amounts and comes.on.down and there.on.down:
        return mends.Mend(f"change `{comes.on.arg}` by {run.say.length(_shared(there.on, comes.on))}, or {off}", None)
    return mends.leave_out(comes.done.step.written)


def _edge_pieces(done: Performed) -> tuple[str, ...]:
    """The pieces at the edge that a step names; a slit may go on from there through a seam."""
    return tuple(piece for name in edges_of(done.step.written, "edge") for piece in done.before.edge(name).pieces)


def _moved(run: Run, mine: _Lying, other: Occupant) -> mends.Mend | None:
    """The height at which this step stays clear of the other; None where it has none, or there is no room beyond it."""
    on, amount = mine.on, mine.done.step.amounts.get(mine.on.arg)
    if not amount or on.arg not in (*FROM_BELOW, *FROM_ABOVE) or not on.down or not other.down:
        return None
    higher = on.down.near + on.down.far < other.down.near + other.down.far
    off = on.down.far - other.down.near if higher else other.down.far - on.down.near
    further = on.arg in (FROM_BELOW if higher else FROM_ABOVE)
    wanted = amount.as_length_mm() + (off if further else -off)
    if wanted < 0:
        return None
    text = run.say.within(wanted, least=further)
    return mends.write(mine.done.step.written, on.arg, text, " or more" if further else " or less")


def _beyond(run: Run, done: Performed, on: Occupant) -> Iterator[Fault]:
    """A place that lies outside of the cloth that is left of the piece."""
    cloth = done.before.cloths[on.piece].piece
    whole = Band(Fraction(0), cloth.cut_depth if on.down else cloth.cut_length)
    band = on.down or on.along
    if band is None or (whole.near <= band.near and band.far <= whole.far):
        return
    over = max(whole.near - band.near, band.far - whole.far)
    yield fault_at(
        done.step.written,
        on.arg or None,
        "FB427",
        f"{on.what} reaches {run.say.length(over)} beyond `{on.piece}`, cut {run.say.length(whole.far)}",
        notes=(f"it would lie {_where(run, on)}",),
        help="make it narrower or place it further inside, or make the piece larger",
    )
