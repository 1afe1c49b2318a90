"""Which elastic is long for what it carries."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.limits import ELASTIC_CARRIES, HEAVY_REDUCTION
from furbelow.garment.message import Things
from furbelow.measure.units import UNITS
from furbelow.order.chain import prove
from furbelow.s3_rehearse.proofs.too_heavy_for_elastic import CLAIM
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.weight import grams_of, weight_of
from furbelow.s6_write.words.words import Words

from tests.demos.demos import EVERY_SIZE, order
from tests.techniques.small import Worked, work

STEPS = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom, first turn: 5 mm, second turn: 15 mm}
- folded casing: {edge: skirt.top, depth: DEEP, turn under: 5 mm, gap: 6 cm}
- insert elastic: {elastic: KIND, into: skirt.top, length: waist_girth - LESS, overlap: 2 cm}
- close gap: {of: skirt.top}"""
WIDE = "  wide: {kind: elastic, width: 40 mm, stretch: 100%}\n  stiff: {kind: elastic, width: 20 mm, stretch: 60%}\n"


def _skirt(grams: int, less: str, kind: str = "elastic", units: str = "metric") -> Worked:
    """A skirt of denim that weighs so many grams: 1 m x 340 g/m2 x its depth, with a hem and a casing of 5 cm."""
    deep = {"elastic": "25 mm", "stiff": "25 mm", "wide": "45 mm"}[kind]
    depth = Fraction(grams, 340) * 1000 / Fraction("1.2") - 20 - 5 - int(deep.split()[0])
    return work(
        f"skirt: {{from: denim, length: 118 cm, depth: {float(depth):.3f} mm}}",
        STEPS.replace("DEEP", deep).replace("KIND", kind).replace("LESS", less),
        materials=WIDE,
        units=units,
    )


def _told(worked: Worked) -> list[str]:
    return [fault.headline for fault in worked.warnings if fault.code == "FB417"]


@pytest.mark.parametrize(
    ("grams", "less", "kind", "told"),
    [
        (550, "5 cm", "elastic", 0),  # 20 mm carries 600 g
        (650, "5 cm", "elastic", 1),
        (650, "14 cm", "elastic", 1),
        (650, "15 cm", "elastic", 0),
        (650, "5 cm", "wide", 0),  # 40 mm carries 1200 g
        (1250, "5 cm", "wide", 1),
    ],
)
def test_a_heavy_skirt_wants_a_short_or_a_wide_elastic(grams: int, less: str, kind: str, told: int) -> None:
    assert len(_told(_skirt(grams, less, kind))) == told


def test_the_mend_names_the_length_and_the_width_in_the_makers_units() -> None:
    metric = next(fault for fault in _skirt(650, "5 cm").warnings if fault.code == "FB417")
    assert metric.help == "shorten the elastic to `waist_girth - 15 cm`, or use elastic 2.5 cm wide or wider"
    inch = next(fault for fault in _skirt(650, "2 in", units="inches").warnings if fault.code == "FB417")
    assert inch.help == "shorten the elastic to `waist_girth - 6 in`, or use elastic 1 in wide or wider"
    assert "22.9 oz (650 g)" in inch.headline


def test_either_mend_ends_the_warning() -> None:
    assert _told(_skirt(650, "15 cm")) == []
    assert _told(_skirt(650, "6 in")) == []
    assert _told(_skirt(650, "5 cm", "wide")) == []


def test_shortening_is_not_advised_where_the_elastic_would_not_pass_the_hips() -> None:
    # 78 - 15 = 63 cm at 60 % reach 100.8 cm, and the hips are 104 cm.
    fault = next(fault for fault in _skirt(650, "10 cm", "stiff").warnings if fault.code == "FB417")
    assert fault.help == "use elastic 2.5 cm wide or wider"


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_the_demos_are_light_and_the_guide_says_so(name: str, size: str) -> None:
    rehearsal = prove(order(name, size)).value
    assert rehearsal is not None
    run: Run = rehearsal.run
    grams = grams_of(run)
    assert grams is not None
    assert grams == weight_of(run).grams
    words = Words("en", run.say)
    words.read("proofs")
    shown = next(words.said(Things(proof.shown, "clauses")) for proof in rehearsal.proofs if proof.claim == CLAIM)
    elastic = any(done.step.written.technique in ("insert elastic", "adjustable elastic") for done in run.performed)
    assert shown.endswith(
        "any elastic shorter than the waist will do" if elastic else "no elastic is drawn in at a waist that is known"
    )


def test_6_inches_are_enough_and_4_are_not() -> None:
    """About 6 in for a heavy skirt: common practice, no source; 2 to 4 in for ordinary ones: a home sewing page."""
    inch = UNITS["in"].factor
    assert 4 * inch < HEAVY_REDUCTION <= 6 * inch
    assert ELASTIC_CARRIES * 25 == 750
