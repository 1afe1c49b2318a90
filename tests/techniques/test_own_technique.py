"""Techniques that a spec describes itself: read, booked, proved and told like the built-in ones."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import State
from furbelow.s1_read.read_spec import read_spec

from tests.techniques.small import refused, sound, spec_text, work

SHELLS = """\
techniques:
  shell edge:
    about: Draw a hem into small shells by hand.
    works on: edge
    needs: [ring]
    lengths: {turn: 6 mm, shell: 1 cm}
    takes: [turn, turn]
    leaves: hemmed
    stitch: {type: 101, length: 3 mm, rows: 2}
    set up: hand
    cautions: {needle: Use a thimble.}
    do:
      - Turn {edge} twice by {turn}.
      - say: Sew over the turn every {shell} and pull the stitch tight, {length} in all.
        check: The shells are {shell} wide.
        tolerance: 1 mm
        remedy: Undo the last shell and sew it again.
  wax seam:
    about: Brush the margin of a seam with wax.
    works on: seam
    leaves: neatened
    do: ["Brush {seam} with wax, {length}."]
  couched cord:
    about: Couch a cord along an edge.
    works on: edge
    uses: 1.1
    do: ["Lay {with} along {edge} and sew over it."]
"""
SKIRT = "skirt: {from: lawn, length: 120 cm, depth: 40 cm}"
RING = "- join ends: {of: skirt, seam: 1 cm}\n- wax seam: {seam: skirt.ends}\n- narrow hem: {edge: skirt.top}"


def test_it_takes_leaves_sews_and_tells_what_it_declares() -> None:
    worked = sound(SKIRT, f"{RING}\n- shell edge: {{edge: skirt.bottom, turn: 5 mm}}", own=SHELLS)
    assert worked.solved.pieces["skirt"].cut_depth == 400 + 15 + 10
    assert worked.bench.edge("skirt.bottom").state is State.HEMMED
    assert worked.bench.seams["skirt.ends"].state is State.NEATENED
    assert [(row.kind, row.length, row.stitch) for row in worked.performed[-1].sewn] == [("101", 1200, 3)] * 2
    words = worked.words()
    assert "Turn the bottom edge of the skirt twice by 5 mm." in words
    assert "Sew over the turn every 1 cm and pull the stitch tight, 120 cm in all. The shells are 1 cm wide." in words
    assert "Use a thimble." in words


def test_its_lengths_may_be_formulas_of_the_spec() -> None:
    worked = sound(SKIRT, f"{RING}\n- shell edge: {{edge: skirt.bottom, turn: waist_girth / 100}}", own=SHELLS)
    assert worked.solved.pieces["skirt"].cut_depth == 415 + 2 * Fraction(78, 10)


def test_a_supply_is_counted() -> None:
    worked = sound(
        SKIRT,
        f"{RING}\n- couched cord: {{edge: skirt.bottom, with: cord}}\n- narrow hem: {{edge: skirt.bottom}}",
        own=SHELLS,
    )
    use = worked.performed[-2].used[0]
    assert (use.material, use.amount) == ("cord", 1320)
    assert "Lay cotton cord along the bottom edge of the skirt" in worked.words()


def test_what_it_does_not_finish_is_still_told_by_the_proofs() -> None:
    worked = work(SKIRT, f"{RING}\n- couched cord: {{edge: skirt.bottom, with: cord}}", own=SHELLS)
    assert worked.codes == ["FB402"]


def test_a_need_that_is_not_met_is_refused() -> None:
    fault = refused("FB363", SKIRT, "- shell edge: {edge: skirt.bottom}", own=SHELLS)
    assert fault.headline == "`shell edge` needs an edge that is ring, and `skirt.bottom` is flat"


def test_it_does_not_finish_an_edge_twice() -> None:
    refused("FB302", SKIRT, f"{RING}\n- shell edge: {{edge: skirt.top}}", own=SHELLS)


def test_a_seam_that_is_not_sewn_yet_is_refused() -> None:
    refused("FB318", SKIRT, "- wax seam: {seam: skirt.ends}", own=SHELLS)


def told(own: str, steps: str = "- press: {piece: skirt}") -> list[Fault]:
    return list(read_spec(("small.yaml", spec_text(SKIRT, steps, own=own).encode())).faults)


FAULTS = [
    ("FB360", "  shell edge:", "  narrow hem:", "`narrow hem` is a built-in technique already"),
    ("FB360", "turn: 6 mm, shell", "edge: 6 mm, turn: 6 mm, shell", "`edge` is a key of every step already"),
    ("FB361", "takes: [turn, turn]", "takes: [torn]", "`torn` is not a length of this technique"),
    ("FB361", "every {shell} and", "every {shall} and", "`shall` is not something that is known here"),
    ("FB361", "twice by {turn}", "twice by {turn.__class__}", "`turn.__class__` is not something that is known here"),
    ("FB362", "length: 3 mm", "length: 3 g", "`3 g` is not a length such as 2 mm"),
    ("FB362", "uses: 1.1", "uses: 1 m", "`1 m` is not a number such as 1.1"),
    (
        "FB364",
        "works on: seam\n",
        "works on: seam\n    needs: [ring]\n",
        "a technique that works on a seam has no `needs`",
    ),
    (
        "FB364",
        "leaves: neatened",
        "leaves: hemmed",
        "the margin of a seam is left neatened or enclosed, and not hemmed",
    ),
    ("FB130", "    set up: hand", "    setup: hand", "`setup` is no key of"),
    ("FB133", "leaves: hemmed", "leaves: hem", "`hem`"),
    ("FB131", "    about: Couch a cord along an edge.\n", "", "has no `about`"),
]


@pytest.mark.parametrize(("code", "was", "now", "headline"), FAULTS, ids=[row[3] for row in FAULTS])
def test_a_slip_in_its_description_is_told_at_its_place(code: str, was: str, now: str, headline: str) -> None:
    assert SHELLS.count(was) == 1
    faults = told(SHELLS.replace(was, now))
    assert [fault.code for fault in faults] == [code], [f"{fault.code} {fault.headline}" for fault in faults]
    assert headline in faults[0].headline
    assert faults[0].primary is not None
    assert faults[0].primary.span.start_line > spec_text(SKIRT, "").count("\n")


def test_a_slip_of_the_pen_in_a_step_is_told_with_the_nearest_name() -> None:
    faults = told(SHELLS, "- shel edge: {edge: skirt.bottom}")
    assert [(fault.code, fault.help) for fault in faults] == [("FB137", "did you mean `shell edge`?")]


def test_an_unknown_key_of_its_step_is_told() -> None:
    faults = told(SHELLS, "- shell edge: {edge: skirt.bottom, tern: 5 mm}")
    assert [(fault.code, fault.help) for fault in faults] == [("FB130", "did you mean `turn`?")]


def test_specs_do_not_see_each_others_techniques() -> None:
    assert not told(SHELLS, "- shell edge: {edge: skirt.bottom}")
    assert [fault.code for fault in told("", "- shell edge: {edge: skirt.bottom}")] == ["FB137"]
