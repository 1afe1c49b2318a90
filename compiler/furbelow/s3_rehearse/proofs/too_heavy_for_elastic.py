"""The elastic at the waist is short enough, or wide enough, for the weight that hangs on it.

Guarantees: where the garment weighs more than its elastic carries by its width, the elastic is shorter than the waist by
    as much as is usual for a heavy skirt; else it warns. A light skirt is held by any elastic shorter than the waist.
Cannot know: what is not weighed (thread, and trims without a weight), a weight that pulls at one side, or how the elastic
    ages; the maker tries it round the waist before it is cut.
Source: elastic for a heavy skirt about 6 in less than the waist, common practice, no source; for ordinary garments 2 to
    4 in less, home sewing pages of the 2020s. What counts as heavy: house rule, maker to confirm.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import Casing
from furbelow.garment.limits import ELASTIC_CARRIES, HEAVY_REDUCTION, width_of
from furbelow.garment.message import Length, Part, Weight
from furbelow.measure.quantity import round_to_step, show_decimal
from furbelow.measure.units import UNITS
from furbelow.s3_rehearse.run import Proof, Run, drawn_in
from furbelow.s3_rehearse.weight import grams_of, show_weight

CLAIM = "proof-elastic"


def prove(run: Run) -> Proof:
    waist = run.solved.values.get("waist_girth")
    casings = [casing for casing in run.final.casings.values() if _carries(run, casing)]
    if waist is None or not casings:
        return Proof(CLAIM, (Part("proof-elastic-none"),))
    grams = grams_of(run)
    if grams is None:
        return Proof(CLAIM, (Part("proof-elastic-no-weight"),))
    if not run.whole:
        return Proof(CLAIM)
    # Elastics that lie in casings of their own share the weight by their widths.
    wide = sum((width_of(run.solved, casing.elastic) * casing.channels for casing in casings), Fraction(0))
    limit = wide * ELASTIC_CARRIES
    least = min(waist.value.as_length_mm() - casing.elastic_length for casing in casings)
    load = Part("proof-elastic-load", {"weight": Weight(grams), "wide": Length(wide), "less": Length(least)})
    if grams <= limit:
        return Proof(CLAIM, (load, Part("proof-elastic-limit", {"limit": Weight(limit)})))
    above = Part("proof-elastic-limit-heavy", {"limit": Weight(limit), "usual": Length(HEAVY_REDUCTION, "about")})
    faults = tuple(_too_long(run, casing, grams, limit, wide) for casing in casings if _long(run, casing))
    return Proof(CLAIM, (load, above), faults)


def _carries(run: Run, casing: Casing) -> bool:
    """Elastic drawn through a channel at the top of the garment; shirring is sewn on and has no gap."""
    return bool(casing.elastic and casing.gap) and run.sound([casing.piece]) and run.hangs[casing.piece] == 0


def _long(run: Run, casing: Casing) -> bool:
    """Less reduced than is usual for a heavy skirt; one as long as the waist is refused elsewhere."""
    reduction = run.solved.length("waist_girth") - casing.elastic_length
    return 0 < reduction < HEAVY_REDUCTION


def _usual(run: Run) -> str:
    """The usual reduction as a maker writes it."""
    return "15 cm" if run.say.system == "metric" else "6 in"


def _too_long(run: Run, casing: Casing, grams: Fraction, limit: Fraction, wide: Fraction) -> Fault:
    solved, say, system = run.solved, run.say, run.say.system
    reduction = solved.length("waist_girth") - casing.elastic_length
    unit = Fraction(1) if system == "metric" else UNITS["in"].factor
    short = solved.length("waist_girth") - round_to_step(HEAVY_REDUCTION, unit, "up")
    stretch = solved.materials[casing.elastic].amounts.get("stretch")
    passes = short > 0 and (stretch is None or solved.length("worn.over") <= short * (1 + stretch.value))
    step = Fraction(5) if system == "metric" else unit / 4
    wider = round_to_step(grams / ELASTIC_CARRIES - wide + width_of(solved, casing.elastic), step, "up")
    mends = [f"shorten the elastic to `waist_girth - {_usual(run)}`"] if passes else []
    mends.append(f"use elastic {say.length(wider)} wide or wider")
    return Fault(
        "FB417",
        f"the garment weighs about {show_weight(grams, system)} and its elastic, {say.length(wide)} wide, is"
        f" {say.length(reduction)} shorter than the waist, where {_usual(run)} is usual for a heavy skirt",
        Label(drawn_in(run, casing), f"{say.length(casing.elastic_length)} at rest"),
        (Label(solved.materials[casing.elastic].material.span, f"carries {show_weight(limit, system)}"),),
        notes=(
            f"a skirt is heavy above {show_decimal(ELASTIC_CARRIES, 0)} g for each mm of elastic width (house rule):"
            f" {show_weight(limit, system)} here",
        ),
        help=", or ".join(mends),
        severity=Severity.WARNING,
    )
