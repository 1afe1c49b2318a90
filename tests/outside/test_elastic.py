"""How far elastic stretches, against published examples, asked of whole garments."""

import pytest

from tests.techniques.small import refused, sound

SKIRT = "skirt: {from: lawn, length: 160 cm, depth: 50 cm}"
STEPS = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}
- insert elastic: {elastic: rated, into: skirt.top, length: LONG}
- close gap: {of: skirt.top}"""


@pytest.mark.parametrize(("stretch", "passes", "too_short"), [("40%", "75 cm", "74 cm"), ("100%", "52 cm", "51 cm")])
def test_20_cm_stretched_to_28_is_40_percent_and_to_40_is_100(stretch: str, passes: str, too_short: str) -> None:
    """afiatelier.com, Elastics' stretch amount, May 2016: so 1.4 times 75 cm pass hips of 104 cm, and 2 times 52 cm."""
    rated = f"  rated: {{kind: elastic, width: 20 mm, stretch: {stretch}}}\n"
    sound(SKIRT, STEPS.replace("LONG", passes), materials=rated)
    refused("FB409", SKIRT, STEPS.replace("LONG", too_short), materials=rated)
