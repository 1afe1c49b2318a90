"""Something holds the garment at its top, and does not cut in.

Guarantees: at the top, or above the hips, a line is shorter than the body there: elastic, a cord, a band that closes, or
    shirring; elastic at rest is at least three quarters of the waist, and no rating above what elastic can give is believed.
Cannot know: straps that the spec does not say, friction, or how an old elastic stretches.
Source: woven elastic stretches to about twice its length, knitted to two and a half: from memory. How loose a band may be
    and how tight elastic: house rules, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Opening
from furbelow.garment.message import Length, Part, Pieces, Values
from furbelow.s3_rehearse.body_at import BodyAt
from furbelow.s3_rehearse.rings import Ring
from furbelow.s3_rehearse.run import Proof, Run, drawn_in
from furbelow.s3_rehearse.ways_in import ways_in

CLAIM = "proof-held"
LOOSEST = Fraction(40)  # a line looser than the body by more slides down
TIGHTEST = Fraction(3, 4)  # of the body there: tighter elastic cuts in
MOST_STRETCH = Fraction(2)  # of its length at rest, beyond it: rated more than this is not believed


def prove(run: Run) -> Proof:
    if not run.whole:
        return Proof(CLAIM)
    if not run.sound(run.final.cloths):
        return Proof(CLAIM)
    body = run.body
    faults = [*_tight(run, body), *_beyond_belief(run)]
    if any(_closes_round(body, opening) for opening in ways_in(run.final)):
        return Proof(CLAIM, (Part("proof-held-band"),), tuple(faults))
    if run.final.straps:
        return Proof(CLAIM, (Part("proof-held-straps"),), tuple(faults))
    if run.solved.spec.worn.held_by:
        return Proof(CLAIM, (Part("proof-held-by-maker"),), tuple(faults))
    holds = next((ring for ring in run.rings if _holds(body, ring)), None)
    tied = any(casing.flat and casing.cord for casing in run.final.casings.values())
    if holds is None and not tied and not run.final.openings:
        faults += _falls(run, body)
    if holds is None:
        return Proof(CLAIM, (Part("proof-held-tied" if tied else "proof-held-none"),), tuple(faults))
    piece, _, side = holds.name.partition(".")
    values: Values = {"edge": Pieces((piece,), side), "rest": Length(holds.rest)}
    return Proof(CLAIM, (Part("proof-held-cord" if holds.cord else "proof-held-ring", values),), tuple(faults))


def _holds(body: BodyAt, ring: Ring) -> bool:
    if ring.level + body.top > body.hip_depth:
        return False
    girth = body.girth(ring.level) or body.waist
    return ring.cord or girth is None or ring.rest <= girth + (0 if ring.elastic else LOOSEST)


def _closes_round(body: BodyAt, opening: Opening) -> bool:
    """A band, or a top edge that a zip closes no looser than what holds."""
    return bool(opening.band) or (opening.zipped and (body.waist is None or opening.waist <= body.waist + LOOSEST))


def _falls(run: Run, body: BodyAt) -> Iterator[Fault]:
    say = run.say
    top = next(iter(run.rings), None)
    if top is None:
        first = next(iter(run.solved.pieces.values()))
        yield Fault(
            "FB424",
            "nothing holds the garment: it is flat, and 0 ties, cords or bands close it",
            Label(first.piece.span, "it would hang on nothing"),
            help="add ties, or a band that closes",
        )
        return
    girth = body.girth(top.level) or body.waist
    if girth is None or top.casing:
        return  # a casing that stays empty is told of where it is made
    yield Fault(
        "FB424",
        f"nothing holds the garment: its top is {say.length(top.rest)} round and the body there {say.length(girth)},"
        f" {say.length(top.rest - girth)} too loose; it slides down",
        Label(run.solved.pieces[top.name.partition(".")[0]].piece.span, "the top of the garment"),
        help="add a casing with elastic or a cord, or a band that closes; or write `worn: held by`",
    )


def _tight(run: Run, body: BodyAt) -> Iterator[Fault]:
    for ring in run.rings:
        girth = body.girth(ring.level) or body.waist
        if not ring.elastic or ring.casing is None or girth is None or ring.rest >= girth * TIGHTEST:
            continue
        if ring.level + body.top > body.hip_depth:
            continue  # a cuff below the hips is asked whether it clears the legs
        say = run.say
        yield Fault(
            "FB426",
            f"the elastic at `{ring.name}` is {say.length(ring.rest)} at rest and the body there {say.length(girth)},"
            f" {say.share(ring.rest / girth)} of it; it cuts in",
            Label(drawn_in(run, ring.casing), "length of the closed elastic at rest"),
            notes=(f"three quarters of {say.length(girth)} are {say.length(girth * TIGHTEST)}",),
            help=f"make it {say.length(girth * TIGHTEST)} or longer",
            needs=girth * TIGHTEST,
            severity=Severity.WARNING,
        )


def _beyond_belief(run: Run) -> Iterator[Fault]:
    used = {casing.elastic for casing in run.final.casings.values() if casing.elastic}
    for name, material in run.solved.materials.items():
        stretch = material.amounts.get("stretch")
        if name in used and stretch and stretch.value > MOST_STRETCH:
            yield Fault(
                "FB426",
                f"`{name}` is rated to stretch {run.say.share(stretch.value)}, and elastic gives"
                f" {run.say.share(MOST_STRETCH)} at the most",
                Label(material.material.span),
                help="stretch a piece of it along a tape and write what it gives",
                severity=Severity.WARNING,
            )
