"""Rows on a line and openings in seams against what the trade does, worked out by hand beside each check."""

from __future__ import annotations

from furbelow.garment.levels import levels_of

from tests.techniques.small import sound


def test_rows_at_even_heights_each_hide_the_seam_of_the_one_below_and_the_lowest_is_sewn_on_first() -> None:
    # common practice, no source: three rows over 60 cm, a line every 20 cm, each row deeper than that by its overlap.
    rows = ("low", "middle", "high")
    pieces = "base: {from: net, length: 120 cm, depth: 60 cm}\n" + "\n".join(
        f"{row}: {{from: net, length: 240 cm, depth: 22 cm}}" for row in rows
    )
    steps = ["- join ends: {of: base}"]
    steps += [f"- join ends: {{of: {row}}}\n- gather: {{edge: {row}.top, length: 120 cm}}" for row in rows]
    for row, above, at in (("low", "middle", 40), ("middle", "high", 20), ("high", "", 1)):
        covered = f", covered by: {above}" if above else ""
        steps.append(f"- sew on: {{edge: {row}.top, on: base, below top: {at} cm{covered}}}")
    worked = sound(pieces, "\n".join(steps))
    bottoms = levels_of(worked.bench).bottoms
    # 1 + 22, 20 + 22, 40 + 22: they pass the lines at 20 and 40 cm by 3 and 2 cm, and the base by 2 cm.
    assert [bottoms[row] for row in ("high", "middle", "low")] == [230, 420, 620]
    assert not worked.warnings or "FB436" not in [fault.code for fault in worked.warnings]
