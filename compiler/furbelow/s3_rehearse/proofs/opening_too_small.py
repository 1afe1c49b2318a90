"""The waist opening passes what it must pass, and what holds it there holds.

Guarantees: the flat casing is at least the girth to pass and its ease; the elastic, stretched to that girth, stays within
    the stretch of its material; at rest it is shorter than the waist. Where there is a placket: the way in, round the
    open band and down both sides of the slit, and the cloth at its foot, pass the girth and its ease; the band closes
    round the waist.
Cannot know: the real girth of the wearer on the day, or how an old elastic stretches.
Source: use the larger of hip and waist: in 17 of 1,986 women and 370 of 4,082 men of a large survey the waist is larger
    (ANSUR II, Gordon et al. 2014; its waist is taken at the navel). The looseness of a fitted band: house rule.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Casing, Opening, State
from furbelow.garment.message import Length, Part, Share
from furbelow.measure.quantity import mm
from furbelow.s3_rehearse.body_at import BodyAt
from furbelow.s3_rehearse.run import Proof, Run, drawn_in
from furbelow.s3_rehearse.ways_in import closes, ways_in

CLAIM = "proof-opening"
LOOSEST = mm(40).value  # a band looser than this slides down; house rule, maker to confirm
TIGHTEST = Fraction(1, 50)  # of the waist, which gives way so far under a band, though it is felt; house rule


def prove(run: Run) -> Proof:
    solved, worn = run.solved, run.solved.spec.worn
    body = run.body
    passes = body.widest + (solved.length("worn.ease") if worn.ease else 0)
    faults: list[Fault] = []
    shown: list[Part] = []
    for casing in run.final.casings.values():
        # A casing below the hips is a cuff: what it must pass is asked of every ring.
        if (
            run.sound([casing.piece])
            and not casing.flat
            and run.hangs[casing.piece] + body.top <= body.hip_depth
            and not _at_hem(run, casing)
        ):
            faults += _casing(run, casing, passes, body)
            shown += _casing_shown(run, casing, body)
    for opening in ways_in(run.final):
        if run.sound([opening.piece]):
            faults += _opening(run, opening, passes)
            shown.append(
                Part(
                    "proof-opening-band",
                    {"way-in": Length(way_in(opening)), "passes": Length(passes), "waist": Length(opening.waist)},
                )
            )
    return Proof(CLAIM, tuple(shown) or (Part("proof-opening-none"),), tuple(faults))


def way_in(opening: Opening) -> Fraction:
    """Round the band when it is open: its length at the waist, and both sides of the slit."""
    return opening.waist + 2 * opening.length


def _at_hem(run: Run, casing: Casing) -> bool:
    return casing.name.endswith(".bottom")


def _casing(run: Run, casing: Casing, passes: Fraction, body: BodyAt) -> list[Fault]:
    solved, say, worn = run.solved, run.say, run.solved.spec.worn
    girth, faults = body.widest, []
    piece = solved.pieces[casing.piece].piece
    if casing.length < passes:
        faults.append(
            Fault(
                "FB408",
                f"the opening of {say.length(casing.length)} is {say.length(passes - casing.length)} too small for"
                f" {say.length(girth)} and {say.length(passes - girth)} of ease; the garment can't be put on",
                Label(
                    (piece.length or piece.cut_length or worn.over).span,
                    f"this gives {say.length(casing.length)} round",
                ),
                (Label(worn.over.span, f"the opening must pass {say.length(girth)}"),),
                notes=(f"{say.length(girth)} + {say.length(passes - girth)} = {say.length(passes)}",),
                help=f"make `{casing.piece}` at least {say.length(passes)} long",
                needs=passes,
            )
        )
    if not casing.elastic:
        return faults
    material = solved.materials[casing.elastic]
    needed = girth / casing.elastic_length - 1
    rated = material.amounts["stretch"].value if "stretch" in material.amounts else None
    place = drawn_in(run, casing)
    if rated is not None and needed > rated:
        faults.append(
            Fault(
                "FB409",
                f"the elastic of {say.length(casing.elastic_length)} must stretch {say.share(needed)} to pass"
                f" {say.length(girth)}, and it is rated {say.share(rated)}",
                Label(place, f"{say.length(casing.elastic_length)} at rest"),
                (Label(material.material.span, f"rated {say.share(rated)}"),),
                notes=(f"{say.length(girth)} / {say.length(casing.elastic_length)} - 1 = {say.share(needed)}",),
                help=f"cut it {say.length(girth / (1 + rated))} or longer, or choose an elastic that stretches further",
                needs=girth / (1 + rated),
            )
        )
    waist = body.girth(Fraction(0)) or body.waist
    if waist and casing.elastic_length >= waist:
        faults.append(
            Fault(
                "FB410",
                f"the elastic of {say.length(casing.elastic_length)} is not shorter than the {'hips' if body.top else 'waist'}"
                f" of {say.length(waist)}; the skirt slides down",
                Label(place, "length of the closed elastic at rest"),
                help="make it shorter than the body there",
            )
        )
    return faults


def _casing_shown(run: Run, casing: Casing, body: BodyAt) -> Iterator[Part]:
    girth = body.widest
    yield Part("proof-opening-flat", {"flat": Length(casing.length), "girth": Length(girth)})
    if casing.elastic:
        stretch = Share(girth / casing.elastic_length - 1)
        rated = run.solved.materials[casing.elastic].amounts.get("stretch")
        if rated is None:
            yield Part("proof-opening-stretch", {"stretch": stretch})
        else:
            yield Part("proof-opening-stretch-rated", {"stretch": stretch, "rated": Share(rated.value)})
    elif casing.cord:
        yield Part("proof-opening-cord")


def _opening(run: Run, opening: Opening, passes: Fraction) -> list[Fault]:
    solved, say, worn = run.solved, run.say, run.solved.spec.worn
    made = next(done for done in run.performed if opening.name in done.after.openings).step.written
    if not closes(opening):
        return [
            Fault(
                "FB346",
                f"the opening in `{opening.name}` of {say.length(opening.length)} is never closed by a band, a zip or a fastening",
                Label(made.span, "opened here"),
                help=f"add `- zip: {{in: {opening.seam}, zip: zip}}`, with a zip of that length among the materials"
                if opening.seam
                else f"add `- fitted waistband: {{band: waistband, to: {opening.name}}}`",
                # A faced waist is finished, and may be closed by hand with what the maker likes.
                severity=Severity.WARNING if run.final.edge(opening.name).state is State.SEWN else Severity.ERROR,
            )
        ]
    faults = []
    closed = "the band" if opening.band else f"`{opening.name}`"
    place = Label(made.span, f"{say.length(opening.length)} open below the waist")
    must = (Label(worn.over.span, f"the way in must pass {say.length(passes)} with its ease"),)
    narrow = min(way_in(opening), opening.round_it)
    if narrow < passes:
        where = (
            "round the open band and down the slit" if way_in(opening) <= opening.round_it else "of cloth at its foot"
        )
        faults.append(
            Fault(
                "FB344",
                f"the way in is {say.length(narrow)} {where} and {say.length(passes)} is needed,"
                f" {say.length(passes - narrow)} too little; the garment can't be put on",
                place,
                must,
                notes=(
                    f"{say.length(opening.waist)} + 2 x {say.length(opening.length)} = {say.length(way_in(opening))}",
                ),
                help=f"make the slit {say.length((passes - opening.waist) / 2)} long or longer"
                if way_in(opening) <= opening.round_it
                else "make the skirt fuller",
                needs=passes - narrow,
            )
        )
    if opening.closed_by == "ties":
        if not opening.tied:
            faults.append(
                Fault(
                    "FB346",
                    f"the band `{opening.band}` is closed by ties, and 0 of them are sewn on",
                    Label(made.span, "opened here"),
                    help=f"add `- tie ends: {{tie: tie, to: {opening.band}}}`",
                )
            )
        return faults
    body = run.body
    waist = body.girth(Fraction(0)) or body.waist
    if waist is None:
        return faults
    if opening.waist < waist:
        faults.append(
            Fault(
                "FB345",
                f"{closed} closes to {say.length(opening.waist)} and the waist is {say.length(waist)},"
                f" {say.length(waist - opening.waist)} too tight",
                Label(solved.pieces[opening.band or opening.piece].piece.span, "closed round the waist"),
                help=f"make `{opening.band or opening.piece}` {say.length(waist - opening.waist)} longer or more",
                needs=waist - opening.waist,
                severity=Severity.WARNING if waist - opening.waist <= waist * TIGHTEST else Severity.ERROR,
            )
        )
    elif opening.waist > waist + LOOSEST:
        faults.append(
            Fault(
                "FB345",
                f"{closed} closes to {say.length(opening.waist)} and the waist is {say.length(waist)},"
                f" {say.length(opening.waist - waist)} loose; it slides down",
                Label(solved.pieces[opening.band or opening.piece].piece.span, "closed round the waist"),
                help=f"make it {say.length(opening.waist - waist - LOOSEST)} shorter or more",
                needs=opening.waist - waist,
                severity=Severity.WARNING,
            )
        )
    return faults
