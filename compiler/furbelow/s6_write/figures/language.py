"""The visual language of every figure: what each line, fill and sign means.

Nothing is told by colour alone: each meaning has a line pattern, a shape or a word of its own, so that the figures read
in greyscale and on a printer with one ink. Lines stand at 3 : 1 or more on the white ground, text at 4.5 : 1 or more
(Web Content Accessibility Guidelines 2.2, 2023, criteria 1.4.11 and 1.4.3).
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from furbelow.garment.bench import Edge, State
from furbelow.garment.message import One

WIDTH = 400.0  # units across; shown 302 px wide on the narrowest telephone, so that 13 units are 9.8 px
MARGIN = 8.0
SIZE = 13.0  # of every text
LEADING = 15.0
ASCENT, DESCENT = 10.5, 3.5  # of a line of text of SIZE, above and below its base line

INK = "#1c1c1c"  # outlines and words
SOFT = "#5a5a5a"  # dimension lines, hatching, words of less weight
ACCENT = "#9c2b3f"  # what this step does: always also thicker, numbered or named
RIGHT_SIDE = "#f1e3d3"  # the right side of cloth: a plain tint
WRONG_SIDE = "#ffffff"  # the wrong side: white with slanting hatching
ELASTIC = "#c9c4bd"  # filled and crossed by short lines; plain where it is a trim or a tape
GROUND = "#ffffff"

THIN, PLAIN, THICK, HEAVY = 0.8, 1.2, 1.8, 2.6

# Stitch lines by type: the dashes of the line as the machine makes it, longer stitch, longer dash.
SEAM = (5.0, 2.5)  # a bearing seam or topstitching
GATHERING = (11.0, 5.0)  # the longest stitch
HIDDEN = (1.2, 2.8)  # a line behind the cloth
FOLD = (9.0, 2.5, 1.5, 2.5)  # a fold, dash and dot

# How an edge is drawn, see edges.py:
# raw: a thin line with threads standing off; selvedge: a double line, the inner one dotted; neatened: a line crossed by a
# zigzag; hemmed: a thick line and a stitch line inside it; trimmed: a grey band with a stitch line along it; gathered: a
# wavy line with short folds; sewn: a line with a stitch line on it; enclosed: a thick dotted line; fold: dash and dot.
Pattern = Literal["raw", "selvedge", "neatened", "hemmed", "trimmed", "gathered", "sewn", "enclosed", "fold"]

FINISHED: Mapping[State, Pattern] = {
    State.RAW: "raw",
    State.SELVEDGE: "selvedge",
    State.NEATENED: "neatened",
    State.HEMMED: "hemmed",
    State.SEWN: "sewn",
    State.ENCLOSED: "enclosed",
}
LOOKS = (*map(str, State), "trimmed", "gathered", "pleated", "sewn-gathered", "sewn-pleated")


def pattern_of(edge: Edge) -> Pattern:
    """The pattern of an edge in this state of the work."""
    return "trimmed" if edge.trim else "gathered" if _drawn_in(edge) else FINISHED[edge.state]


def look_of(edge: Edge) -> One:
    """The state of an edge, said by `figure-edge-state`: "raw", "gathered", "sewn, pleated"."""
    if edge.trim or not _drawn_in(edge):
        return One("trimmed" if edge.trim else str(edge.state), LOOKS)
    drawn = "pleated" if "pleats" in edge.gathered else "gathered"
    return One(f"sewn-{drawn}" if edge.state is State.SEWN else drawn, LOOKS)


def _drawn_in(edge: Edge) -> bool:
    return bool(edge.gathered) and edge.state is not State.ENCLOSED and edge.set_length < edge.cloth_length
