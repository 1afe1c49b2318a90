"""Shoulder straps: how they are cut, where they hang, that they hold the garment."""

from __future__ import annotations

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

from tests.techniques.small import refused, sound, spec_text, work

PIECES = """slip: {from: lawn, length: 116 cm, depth: 60 cm}
strap: {from: lawn, count: 2, length: 42 cm, depth: 15 mm}"""
READY = "- french seam: {of: slip}\n- narrow hem: {edge: slip.top}\n- narrow hem: {edge: slip.bottom}"
STEP = "- straps: {strap: strap, to: slip.top, front: 18 cm, back: 14 cm}"


def test_a_strap_is_cut_double_with_its_ends() -> None:
    cut = sound(PIECES, f"{READY}\n{STEP}").solved.pieces["strap"]
    # 2 x 15 mm and two seams of 5 mm; 42 cm and a lap of 2 cm and a turn of 1 cm at both ends.
    assert (cut.cut_depth, cut.cut_length) == (2 * 15 + 2 * 5, 420 + 2 * 30)


def test_the_marks_are_half_of_what_lies_between_them() -> None:
    words = sound(PIECES, f"{READY}\n{STEP}").words()
    assert "From the middle of the front mark 9 cm to both sides, from the middle of the back 7 cm." in words
    assert "Mark the top edge of the slip in quarters, every 29 cm" in words


def test_straps_hold_what_nothing_else_holds() -> None:
    """The test garments are held by the test: with that taken out, the wide slip slides down, and with straps it does not."""

    def told(pieces: str, steps: str) -> list[str]:
        read = read_spec(("small.yaml", spec_text(pieces, steps).replace(", held by: the test", "").encode())).value
        assert read is not None
        proved = prove(Order(read, "M", read.sizes["M"], {}, Workroom()))
        return [fault.code for fault in proved.faults]

    assert "FB424" in told(PIECES.splitlines()[0], READY)
    assert "FB424" not in told(PIECES, f"{READY}\n{STEP}")


def test_two_straps_are_needed_and_a_ring_with_a_finished_edge() -> None:
    assert "it takes 2 straps" in refused("FB305", PIECES.replace("count: 2", "count: 3"), f"{READY}\n{STEP}").headline
    late = f"- french seam: {{of: slip}}\n{STEP}\n- narrow hem: {{edge: slip.top}}\n- narrow hem: {{edge: slip.bottom}}"
    assert "inside a finished edge" in refused("FB335", PIECES, late).headline
    flat = "\n".join(f"- narrow hem: {{edge: slip.{side}}}" for side in ("start", "end", "top", "bottom"))
    assert "straps are placed round a ring" in refused("FB304", PIECES, f"{flat}\n{STEP}").headline


def test_straps_too_far_apart_fall_off_the_shoulders() -> None:
    worked = work(PIECES, f"{READY}\n{STEP.replace('front: 18 cm', 'front: 34 cm')}")
    assert "the space between the straps of 34 cm is 5 cm too much" in str(
        [fault.headline for fault in worked.warnings]
    )


OPENED = """slip: {from: lawn, length: 112 cm, depth: 60 cm}
facing: {from: lawn, length: 79.3 cm, depth: 2 cm}
strip: {from: lawn, length: 42 cm, depth: 3 cm}
strap: {from: lawn, count: 2, length: 42 cm, depth: 15 mm}"""
CLOSED = {
    "zip": ("- zip: {in: slip.ends, zip: zip}", "- fastening: {edge: slip.top, by: hook and eye}", "79.3 cm"),
    "button": (
        "- placket: {edge: slip.top, strip: strip, in: slip.ends}",
        "- fastening: {edge: slip.top, by: button and buttonhole}",
        "79.3 cm",
    ),
    "hook": (
        "- placket: {edge: slip.top, strip: strip, in: slip.ends}",
        "- fastening: {edge: slip.top, by: hook and bar}",
        "79.3 cm",
    ),
}


@pytest.mark.parametrize("closed", list(CLOSED))
def test_a_top_that_opens_carries_straps_once_it_is_closed(closed: str) -> None:
    """The top is 112 cm, or 115 cm with the overlap of a placket, and darts take it in to 79.3 cm or 82.3 cm: closed it is one."""
    way_in, fastening, round_it = CLOSED[closed]
    more = 3 if "placket" in way_in else 0
    steps = f"""- neaten: {{edge: [slip.start, slip.end]}}
- join ends: {{of: slip, seam: 2 cm, open: 20 cm}}
- darts: {{edge: slip.top, length: 79.3 cm, count: 8, long: 11 cm}}
{way_in}
- neaten: {{edge: facing.bottom}}
- facing: {{edge: slip.top, with: facing.top, fold ends: 1 cm}}
{fastening}
- narrow hem: {{edge: slip.bottom}}
{STEP}"""
    pieces = OPENED.replace("length: 79.3 cm", f"length: {79.3 + more} cm")
    worked = work(pieces, steps, materials="  zip: {kind: zip, length: 20 cm}\n")
    assert [fault.code for fault in worked.faults if fault.code in ("FB304", "FB335")] == []
    assert f"it is {round_it} round then" in worked.words()
    assert f"every {79.3 / 4:.1f} cm" in worked.words()
