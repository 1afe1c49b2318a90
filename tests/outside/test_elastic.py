"""How far elastic stretches, against published examples, asked of whole garments."""

import pytest

from tests.techniques.small import refused, sound

SKIRT = "skirt: {from: lawn, length: 120 cm, depth: 50 cm}"
STEPS = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}
- insert elastic: {elastic: rated, into: skirt.top, length: 60 cm}
- close gap: {of: skirt.top}"""


@pytest.mark.parametrize(("stretch", "passes", "too_wide"), [("40%", 84, 85), ("100%", 120, 121)])
def test_20_cm_stretched_to_28_is_40_percent_and_to_40_is_100(stretch: str, passes: int, too_wide: int) -> None:
    """afiatelier.com, Elastics' stretch amount, May 2016: so 60 cm at rest pass 84 cm, or 120 cm."""
    rated = f"  rated: {{kind: elastic, width: 20 mm, stretch: {stretch}}}\n"
    wide = SKIRT.replace("120 cm", "160 cm")
    sound(wide, STEPS, over=f"{passes} cm", materials=rated)
    refused("FB409", wide, STEPS, over=f"{too_wide} cm", materials=rated)
