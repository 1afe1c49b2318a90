"""The seam that marks are measured from, and the bright thread by which it is told from other upright seams."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.message import Length, One
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Action, Performed, new_seam
from furbelow.techniques.shared.gathers import ATTACHMENT, HAND, ROWS

TAG = Fraction(100)  # below every seam and casing that may come at the top, and above the middle


def tagged(bench: Bench, pieces: Sequence[str], say: Phrasing) -> bool:
    """Whether a ring has more upright seams than one, so that the one that marks are measured from bears a bright thread."""
    cloths = [(piece, bench.cloths[piece]) for piece in pieces]
    return any(cloth.ring and (say.joins.get(piece, 0) or bench.strips_round(piece) > 1) for piece, cloth in cloths)


def seam_said(bench: Bench, pieces: Sequence[str], say: Phrasing) -> One:
    """How messages name the side seam of these pieces: `{ side-seam }` asks for it as `$seam`."""
    return One("bright" if tagged(bench, pieces, say) else "plain", ("bright", "plain"))


def marked(edge: Edge) -> bool:
    """Whether an edge bears even marks already, at every part of its set length: from gathers, or from its stack."""
    stacked = "." not in edge.name and sum(ply.copies for ply in edge.plies) > 1
    return stacked or edge.gathered in (ROWS, HAND, ATTACHMENT)


def tag(done: Performed, pieces: Sequence[str], say: Phrasing) -> tuple[Action, ...]:
    """Tying the bright thread into the side seam of a ring that has other upright seams too; nothing where it has none."""
    copies = done.after.cloths[pieces[0]].copies
    if not tagged(done.after, pieces, say):
        return ()
    message = "tag-this-seam" if done.before.cloths[pieces[0]].copies == copies else "tag-one-seam"
    down = max(Fraction(min(TAG, new_seam(done).length / 4) // 5 * 5), Fraction(20))
    return (Action(message, copies, values={"down": Length(down, "about")}),)
