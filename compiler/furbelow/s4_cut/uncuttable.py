"""Whether the pieces of a garment can be cut at all, before any plan is made."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedMaterial, SolvedPiece
from furbelow.garment.spec import Piece
from furbelow.garment.workroom import Workroom
from furbelow.s4_cut.problem import Bolt, Strip, misfits, on_the_table

# Where the workroom names no table, nobody lays out more at once at home: the floor of two rooms with the door between
# them open. House rule, maker to confirm.
HOME_FLOOR = Fraction(8000)
# A table at home, where the workroom names none: what is longer is drawn on over it. House rule, maker to confirm.
HOME_TABLE = Fraction(1600)


def table_of(room: Workroom) -> Fraction:
    """How long the table is that cloth is laid on."""
    return room.table_length or HOME_TABLE


def uncuttable(solved: Solved, room: Workroom) -> tuple[Fault, ...]:
    """FB501 for each piece that no offered width of its cloth holds."""
    faults: list[Fault] = []
    for material in solved.materials.values():
        strips = strips_of(solved, material)
        if not strips:
            continue
        offered = [width for width, _ in offers_of(solved, material)]
        refused = [laid_on(solved, room, material, width, strips)[1] for width in offered]
        if all(refused):
            faults += [fault for told in refused for fault in told]
    return tuple(faults)


def strips_of(solved: Solved, material: SolvedMaterial) -> tuple[Strip, ...]:
    """The pieces that are cut from this cloth."""
    name = material.material.name
    return tuple(_strip(solved, piece) for piece in solved.pieces.values() if piece.piece.cloth.text == name)


def laid_on(
    solved: Solved, room: Workroom, material: SolvedMaterial, width: Fraction, strips: tuple[Strip, ...]
) -> tuple[Bolt, tuple[Fault, ...]]:
    """The cloth as it is laid out for these strips, and FB501 for each of them that it does not hold.

    Something is left over across, for selvedges are seldom straight; but where a piece takes the whole width, it may.
    """
    whole = _bolt(solved, material, width, room)
    spared = whole._replace(usable_width=whole.usable_width - room.spare_across, spared=room.spare_across)
    if spared.usable_width > 0 and not misfits(strips, spared):
        return _laid_out(spared, strips, room), ()
    refused = tuple(
        _too_wide(solved, room, material, width, misfit.strip, misfit.size, misfit.room)
        for misfit in misfits(strips, whole)
    )
    return (whole if refused else _laid_out(whole, strips, room)), refused


def _laid_out(bolt: Bolt, strips: tuple[Strip, ...], room: Workroom) -> Bolt:
    """Over a table that the workroom names the cloth is drawn, as far as the lanes go."""
    return bolt if room.table_length else on_the_table(bolt, strips, HOME_FLOOR)


def offers_of(solved: Solved, material: SolvedMaterial) -> list[tuple[Fraction, Fraction | None]]:
    """(width, price per mm) of each offer; the material's own width and price where it lists no offers."""
    name, amounts = material.material.name, material.amounts
    offers = []
    for number in range(1, len(material.material.offers) + 1):
        price = solved.values.get(f"{name} offer {number}.price")
        offers.append((solved.length(f"{name} offer {number}.width"), price.value.value if price else None))
    if not offers:
        price_amount = amounts.get("price")
        offers.append((amounts["width"].as_length_mm(), price_amount.value if price_amount else None))
    return offers


def _strip(solved: Solved, piece: SolvedPiece) -> Strip:
    name, piecing = piece.name, piece.piece.piecing
    grain = piece.piece.grain
    if piecing is None:
        return Strip(name, *piece.blank, piece.rectangles, grain=grain, selvedge=bool(piece.piece.selvedge))
    return Strip(
        name,
        *piece.blank,
        piece.count,
        True,
        solved.length(f"{name} piecing.seam"),
        solved.length(f"{name} piecing.shortest"),
        int(solved.values[f"{name} piecing.most_joins"].value.value),
        grain,
        selvedge=bool(piece.piece.selvedge),
    )


def _bolt(solved: Solved, material: SolvedMaterial, width: Fraction, room: Workroom) -> Bolt:
    """The whole cloth, without its selvedges and as it comes out of the wash."""
    amounts = material.amounts
    selvedge = amounts["selvedge"].as_length_mm() if "selvedge" in amounts else Fraction(0)
    shrinkage = amounts["shrinkage"].value if "shrinkage" in amounts else Fraction(0)
    usable = (width - 2 * selvedge) * (1 - shrinkage)
    name = material.material.name
    return Bolt(
        usable,
        solved.rounding or Fraction(1),
        room.fold_cloth,
        material.material.one_way,
        shrinkage,
        squared=room.square_ends,
        most_joins=room.joins_of.get(name, room.most_joins),
        most_sections=room.sections_of.get(name, room.most_sections),
    )


def _ways_out(piece: Piece) -> str:
    """Of a piece that is too wide for its cloth."""
    if piece.selvedge:
        return f"take a wider cloth, or leave `selvedge` of `{piece.name}` out"
    if piece.piecing:
        return f"turn the `grain` of `{piece.name}`, or take a wider cloth"
    return f"allow `piecing` for `{piece.name}`, turn its `grain`, or take a wider cloth"


def _too_wide(
    solved: Solved,
    room: Workroom,
    material: SolvedMaterial,
    width: Fraction,
    piece: str,
    size: Fraction,
    usable: Fraction,
) -> Fault:
    say, name = Phrasing(solved, room), material.material.name
    return Fault(
        "FB501",
        f"the {say.piece(piece)} needs {say.length(size)} across and `{name}` has {say.length(usable)} to use,"
        f" {say.length(size - usable)} too little",
        Label(solved.pieces[piece].piece.span, f"cut {' x '.join(map(say.length, solved.pieces[piece].blank))}"),
        (Label(material.material.span, f"{say.length(width)} wide, selvedges and shrinkage still on it"),),
        help=_ways_out(solved.pieces[piece].piece),
    )
