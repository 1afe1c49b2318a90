"""Shoulder straps: how they are cut, where they hang, that they hold the garment."""

from __future__ import annotations

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
