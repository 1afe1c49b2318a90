"""Gathering rows: how they are drawn, in how many runs, and what becomes of their thread tails."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Edge
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, Value, flag

FIRST_ROW = Fraction(4)  # from the edge; the second lies the row spacing further in
ROWS, HAND, ATTACHMENT = "two rows by machine", "two rows by hand", "pleating attachment"
TAIL = Fraction(100)  # thread left hanging at each end of a row
KNOT = Fraction(20)  # of a tail left behind its knot
LONGEST_RUN = Fraction(1500)  # of flat cloth: a longer thread breaks when it is pulled; house rule, maker to confirm


def runs_of(cloth_length: Fraction, length: Fraction) -> int:
    """In how many runs, one beside the other, an edge is gathered to this length: one, or one from mark to mark."""
    return divisions(length) if cloth_length > LONGEST_RUN else 1


def knots_of(edge: Edge) -> int:
    """How many knots the thread tails of a gathered edge take: one at each end of each row, by hand one for both rows."""
    rows = {ROWS: 2, HAND: 1}.get(edge.gathered, 0)
    return 2 * rows * runs_of(edge.cloth_length, edge.set_length) * edge.copies


def tails_hang(edge: Edge) -> bool:
    """Whether thread tails of gathering rows hang from this edge: no row of stitches holds the gathers yet."""
    return edge.gathered in (ROWS, HAND) and not edge.held


def tails_off(edge: Edge) -> str:
    """The message of what is done with the thread tails of gathers once pins hold the edge; see `tails_said`."""
    return "tails-off-machine" if edge.gathered == ROWS else "tails-off-hand"


def tails_said(edge: Edge) -> dict[str, Value]:
    """The values that the messages of `tails_off` are given."""
    return {"in-runs": flag(runs_of(edge.cloth_length, edge.set_length) > 1), "knot": Length(KNOT, "about")}
