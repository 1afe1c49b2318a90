"""How far elastic stretches, against published examples, asked of whole garments."""

import pytest

from tests.techniques.small import refused, sound, work

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


@pytest.mark.parametrize(("stretch", "believed"), [("100%", True), ("125%", True), ("300%", False)])
def test_a_rating_that_elastic_has_is_believed(stretch: str, believed: bool) -> None:
    """Good elastic stretches to twice its length and goes back: infosekolah.net, Elastic (notion). A braided one drawn from
    2 in to 4.5 in, 125 %: littlestitchstudio.com, Braided elastic 1/4 in. None of them names 300 %."""
    rated = f"  rated: {{kind: elastic, width: 20 mm, stretch: {stretch}}}\n"
    warned = {fault.code for fault in work(SKIRT, STEPS.replace("LONG", "70 cm"), materials=rated).warnings}
    assert ("FB426" not in warned) == believed
