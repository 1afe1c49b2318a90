"""The hem hangs level all round, where the heights of the waist are known.

Guarantees: for every layer, the height of the waist less the length of the layer is the same in front, at the sides and
    behind, within one step of the rounding, where its hem is not cut to dip; marks and gathers count the sides from one seam.
Cannot know: how a stomach or a seat holds the skirt out, how the wearer stands, or how cloth drops on the bias; the
    height of the hem is measured on the wearer at the end.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.matching import EVEN
from furbelow.garment.message import Length, Part, Pieces, Values
from furbelow.garment.phrasing import listed
from furbelow.s3_rehearse.levelling import heights_of, lengths_at, levelled
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-hem-level"
_WORDS = ("in front", "at the sides", "behind")


def prove(run: Run) -> Proof:
    heights = heights_of(run) if run.solved.spec.worn.at == "waist" else None
    if heights is None:
        return Proof(CLAIM)
    if not run.whole:
        return Proof(CLAIM)
    if not run.sound(run.final.cloths):
        return Proof(CLAIM)
    from furbelow.s3_rehearse.volume import volume_of  # most specs ask for one height alone

    shown: list[Part] = []
    askew: list[tuple[Fraction, str, list[Fraction]]] = []
    for hem in volume_of(run).hems:
        if len(set(run.bottom_at(hem.piece))) > 1:
            continue  # it dips on purpose
        above = [height - length for height, length in zip(heights, lengths_at(run, hem.piece), strict=True)]
        shown.append(_shown(hem.piece, above))
        apart = max(above) - min(above)
        if apart > max(run.solved.rounding, Fraction(1)):
            askew.append((apart, hem.piece, above))
    faults = (_not_level(run, askew),) if askew else ()
    return Proof(CLAIM, tuple(shown), (*faults, *_seams_differ(run), *_bands(run)))


def _shown(piece: str, above: list[Fraction]) -> Part:
    front, side, back = map(Length, above)
    if front == side == back:
        return Part("proof-hem-above-floor", {"piece": Pieces((piece,)), "height": front})
    values: Values = {"piece": Pieces((piece,)), "front": front, "side": side, "back": back}
    return Part("proof-hem-above-floor-places", values)


def _at_each(run: Run, lengths: list[Fraction]) -> str:
    say = run.say
    if len(set(lengths)) == 1:
        return say.length(lengths[0])
    return listed([f"{say.length(length)} {place}" for length, place in zip(lengths, _WORDS, strict=True)])


def _not_level(run: Run, askew: list[tuple[Fraction, str, list[Fraction]]]) -> Fault:
    apart, piece, above = max(askew, key=lambda each: each[0])
    lowest = [place for place, height in zip(_WORDS, above, strict=True) if height == min(above)]
    steps = levelled(run)
    tops = list(dict.fromkeys(f"{_top(run, piece)}.top" for _, piece, _ in askew))
    edge = tops[0] if len(tops) == 1 else f"[{', '.join(tops)}]"
    row = f"level waist: {{edge: {edge}, front: front_waist_height, side: waist_height, back: back_waist_height}}"
    return Fault(
        "FB419",
        f"the hem of the {run.say.piece(piece)} hangs {run.say.length(apart)} lower {listed(lowest)} than where it is highest",
        Label(
            steps[0].step.written.span if steps else run.solved.pieces[piece].piece.span,
            "levelled here" if steps else "its hem is not level",
        ),
        notes=tuple(f"the {run.say.piece(hem)} ends {_at_each(run, at)} above the floor" for _, hem, at in askew),
        help="level the top edge of each layer once, all to the same heights"
        if steps
        else f"add `- {row}` before the edge is gathered or sewn",
        severity=Severity.WARNING,
    )


def _top(run: Run, piece: str) -> str:
    """The uppermost piece that this one hangs from, below the band."""
    return next(
        each for each in reversed((piece, *run.over(piece))) if each == piece or not run.final.cloths[each].folded
    )


def _seams_differ(run: Run) -> tuple[Fault, ...]:
    """Marks for levelling put the closing seam at a side, gathers with more cloth behind put it at the middle of the back."""
    level = {piece for done in levelled(run) for piece in done.touches}
    return tuple(
        Fault(
            "FB419",
            "the edge is levelled with its seam at a side and gathered with its seam at the back; the hem hangs askew",
            Label(done.step.written.span, "gathered unevenly here"),
            help="leave `behind` out, or level the waist by eye on the wearer",
            severity=Severity.WARNING,
        )
        for done in run.performed
        if done.drawn and done.drawn.behind != EVEN and level.intersection(done.touches)
    )


def _bands(run: Run) -> tuple[Fault, ...]:
    """A band is folded along a straight line, so it can't be cut to a curve."""
    return tuple(
        Fault(
            "FB419",
            f"`{piece}` is levelled and then folded to a band, and a fold is straight",
            Label(done.step.written.span, "levelled here"),
            help=f"level the edge that `{piece}` is sewn to",
        )
        for done in levelled(run)
        for piece in done.touches
        if run.final.cloths[piece].folded
    )
