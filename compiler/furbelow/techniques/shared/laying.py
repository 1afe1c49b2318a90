"""What several techniques declare alike of what they put on the cloth: margins, turns, and the limits of both.

House rules, maker to confirm, unless a source stands beside them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from furbelow.garment.bench import Casing, Edge, State
from furbelow.garment.limits import NARROWEST_SEAM, NARROWEST_SEAM_FIRM, NARROWEST_TURN
from furbelow.garment.lying import Band, Held, Ledger, Lies, Occupant, Window
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.gathers import HAND, NARROWEST_MARGIN, ROWS

WIDE_MARGIN = Fraction(30)  # a wider margin is bulk that nobody asked for
SMALLEST_BUTTON, LARGEST_BUTTON = Fraction(8), Fraction(40)  # across
SHORTEST_LAP, USUAL_LAP = Fraction(5), Fraction(10)  # what two rows of stitches can hold, and what is usual
LONG_LAP = Fraction(100)  # a longer one is two layers where one is wanted
LEAST_TRIMMED = Fraction(1)
WIDE_GAP = Fraction(200)  # a wider one is a casing that is hardly stitched


def ravels(solved: Solved, pieces: Iterable[str]) -> bool:
    return any(solved.materials[solved.pieces[piece].piece.cloth.text].material.ravels for piece in pieces)


def margins(ledger: Ledger, width: Fraction, arg: str, *names: str) -> tuple[Occupant, ...]:
    """A seam margin along each of these edges."""
    return tuple(
        on for name in names for on in ledger.at_edge(name, Lies.MARGIN, "the seam margin", Fraction(0), width, arg)
    )


def end_margins(ledger: Ledger, pieces: Iterable[str], width: Fraction, arg: str) -> tuple[Occupant, ...]:
    """The margins of a seam that closes these pieces at their ends."""
    return tuple(
        Occupant(piece, Lies.MARGIN, "the side seam", along=ledger.band(piece, side, Fraction(0), width), arg=arg)
        for piece in pieces
        for side in ("start", "end")
    )


def seam_window(
    solved: Solved, arg: str, width: Fraction, pieces: Iterable[str], deepest: Fraction | None = None
) -> Window:
    """What a seam allowance may be: wide enough not to pull out, no deeper than what shows of the piece it goes into."""
    pieces = tuple(pieces)
    least = NARROWEST_SEAM if ravels(solved, pieces) else NARROWEST_SEAM_FIRM
    return Window(
        arg,
        "a seam allowance",
        width,
        sewable_least=least,
        most=WIDE_MARGIN,
        sewable_most=deepest if deepest is not None else min(solved.pieces[piece].depth for piece in pieces),
        why=f"cloth that {'ravels' if least is NARROWEST_SEAM else 'does not ravel'}; no deeper than its piece shows",
    )


def turn_window(
    arg: str,
    what: str,
    width: Fraction,
    *,
    into: Fraction | None = None,
    most: Fraction | None = None,
    bare: bool = False,
) -> Window:
    """What a turn may be: wide enough to fold, no deeper than the fold that it goes into.

    most: beyond it a turn is bulk that nobody asked for.
    bare: nothing has to be turned under here, so 0 is as good: the edge is neat or does not ravel.
    """
    least = None if bare and not width else NARROWEST_TURN
    return Window(
        arg,
        what,
        width,
        most=most,
        sewable_least=least,
        sewable_most=into,
        why="a fold no deeper than what it goes into",
    )


def lap_window(arg: str, what: str, width: Fraction, most: Fraction = LONG_LAP) -> Window:
    return Window(arg, what, width, least=USUAL_LAP, most=most, sewable_least=SHORTEST_LAP, why="two rows must hold it")


def trim_window(done: Performed) -> Window:
    """How near to its stitches a margin is trimmed."""
    why = "nearer to the stitches its threads pull out"
    trim = done.step.mm("trim to")
    return Window("trim to", "a trimmed margin", trim, sewable_least=LEAST_TRIMMED, why=why)


def gap_window(done: Performed) -> Window:
    """How wide the stitching of a casing may stay open; what goes through the gap asks for its least itself."""
    return Window("gap", "a gap in a casing", done.step.mm("gap"), most=WIDE_GAP, why="it is closed again by hand")


def button_window(wide: Fraction) -> Window:
    """What a button may be across: a hand takes hold of it, and it goes through its hole."""
    least, most = SMALLEST_BUTTON, LARGEST_BUTTON
    return Window("button", "a button", wide, least=least, most=most, sewable_least=least / 2, sewable_most=2 * most)


def bare_edge(ledger: Ledger, solved: Solved, name: str) -> bool:
    """Nothing of the edge has to be hidden: it is neat, or of cloth that does not ravel."""
    edge = ledger.bench.edge(name)
    return edge.state is not State.RAW or not ravels(solved, edge.pieces)


def hem(
    ledger: Ledger, name: str, first: Fraction, second: Fraction, arg: str, what: str = "the hem"
) -> tuple[tuple[Occupant, ...], tuple[Held, ...]]:
    """A turn of `first` and one of `second`: the cloth that goes over and the cloth it lies on, and how it lies on flared cloth."""
    deep = first + 2 * second
    occupants = tuple(ledger.at_edge(name, Lies.HEM, what, Fraction(0), deep, arg))
    return occupants, tuple(on_flare(ledger, name, what, first, deep, arg))


def on_flare(ledger: Ledger, name: str, what: str, cloth_at: Fraction, lies_at: Fraction, arg: str) -> Iterator[Held]:
    """Cloth of a flared piece, at one distance from its edge, that comes to lie at another; nothing on straight cloth."""
    for each in ledger.bench.opened(name):
        piece, _, side = each.partition(".")
        shape = ledger.bench.cloths[piece].piece
        if not (shape.ring or shape.gore) or side in ("start", "end"):
            continue
        cloth, line = (ledger.length_at(piece, ledger.flat(piece, side, at)) for at in (cloth_at, lies_at))
        yield Held(arg, f"{what} of `{each}`", piece, cloth, line, drawn=False)


def filled(ledger: Ledger, casing: Casing, kind: Lies, what: str, arg: str) -> tuple[Occupant, ...]:
    """What is drawn into a casing lies in all of its clear width: in a band, or under the edge that was folded down."""
    if casing.name in ledger.bench.edges:
        return tuple(ledger.at_edge(casing.name, kind, what, Fraction(0), casing.width * casing.channels, arg))
    piece, cloth = casing.piece, ledger.bench.cloths[casing.piece].piece
    near, far = ledger.line(piece, "top"), cloth.cut_depth - ledger.line(piece, "bottom")
    return (Occupant(piece, kind, what, down=Band(near, far), arg=arg),)


def held_in_seam(
    done: Performed, solved: Solved, room: Workroom, arg: str, seam: Fraction, edge: Edge, to: Edge
) -> tuple[Window, ...]:
    """What the allowance of a seam may be that holds an edge, gathered or not: its rows should end inside the margin."""
    window = seam_window(solved, arg, seam, (*edge.pieces, *to.pieces))
    if edge.held or edge.gathered not in (ROWS, HAND):
        return (window,)
    why = f"two rows of gathers lie clear of the seam in {NARROWEST_MARGIN} mm"
    return (window, Window(arg, "a seam over gathering rows", seam, least=NARROWEST_MARGIN, why=why))


def drawn_in(edge: Edge, arg: str, length: Fraction) -> tuple[Held, ...]:
    """An edge whose cloth is drawn in to a length, in each of its plies."""
    return tuple(
        Held(arg, f"`{edge.name}`", piece, edge.cloth_length, length, drawn=True)
        for piece in dict.fromkeys(edge.pieces)
    )
