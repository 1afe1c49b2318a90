"""Plan the cutting of every cloth of a garment, in each width it is offered in."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from compiler.diagnostics import Fault, Label, Staged
from compiler.s2_solve.solved import Solved, SolvedMaterial, SolvedPiece
from compiler.s4_cut.plan import CuttingPlan
from compiler.s4_cut.planner import plan_cutting
from compiler.s4_cut.problem import Bolt, CutPrices, Grain, Strip, misfits
from compiler.say import Say
from compiler.workroom import Workroom

# A cloth without a price is planned as if it cost one unit a metre: least cloth, few joins.
NO_PRICE = Fraction(1, 1000)


@dataclass(frozen=True)
class Sheet:
    """One cloth as it will be cut. `width` is that of the shop, edge to edge; price is per mm, None if not known."""

    material: SolvedMaterial
    width: Fraction
    price: Fraction | None
    strips: tuple[Strip, ...]
    bolt: Bolt
    plan: CuttingPlan


@dataclass(frozen=True)
class Cutting:
    """The sheets of each cloth, the cheapest offered width first, and the letter of each piece on the drawings."""

    sheets: Mapping[str, tuple[Sheet, ...]]
    letters: Mapping[str, str]

    def sheet(self, cloth: str) -> Sheet:
        """The sheet to cut from."""
        return self.sheets[cloth][0]

    @property
    def lengths(self) -> Mapping[str, tuple[tuple[Fraction, ...], ...]]:
        """How each copy of each piece is cut: the lengths of its segments in order, seams included."""
        found: dict[str, dict[int, dict[int, Fraction]]] = {}
        for sheets in self.sheets.values():
            for section in sheets[0].plan.sections:
                for lane in section.lanes:
                    for each in lane.segments:
                        length = lane.depth if each.turned else each.length
                        found.setdefault(each.strip, {}).setdefault(each.copy, {})[each.part] = length
        return {
            piece: tuple(tuple(parts[part] for part in sorted(parts)) for _, parts in sorted(copies.items()))
            for piece, copies in found.items()
        }

    @property
    def joins(self) -> Mapping[str, int]:
        """How many joins each piece has, over all its copies."""
        joins: dict[str, int] = {}
        for sheets in self.sheets.values():
            segments = {
                (segment.strip, segment.copy): segment.parts - 1
                for section in sheets[0].plan.sections
                for lane in section.lanes
                for segment in lane.segments
            }
            for (piece, _), count in segments.items():
                joins[piece] = joins.get(piece, 0) + count
        return joins


Planner = Callable[[tuple[Strip, ...], Bolt, CutPrices], CuttingPlan]


def cut(solved: Solved, room: Workroom, planner: Planner = plan_cutting) -> Staged[Cutting]:
    """A plan for each cloth and each width it is offered in. FB501 for a piece that no offered width holds."""
    sheets: dict[str, tuple[Sheet, ...]] = {}
    faults: list[Fault] = []
    for name, material in solved.materials.items():
        pieces = [piece for piece in solved.pieces.values() if piece.piece.cloth.text == name]
        if not pieces:
            continue
        planned, refused = [], []
        for width, price in _offers(solved, material):
            strips = tuple(_strip(solved, piece) for piece in pieces)
            bolt = _bolt(solved, material, width, room)
            wrong = misfits(strips, bolt)
            if wrong:
                refused += [
                    _too_wide(solved, room, material, width, misfit.strip, misfit.size, misfit.room)
                    for misfit in wrong
                ]
                continue
            prices = CutPrices(price or NO_PRICE, room.join_price, room.setup_price, room.cut_price)
            planned.append(Sheet(material, width, price, strips, bolt, planner(strips, bolt, prices)))
        if planned:
            sheets[name] = tuple(sorted(planned, key=lambda sheet: sheet.plan.cost))
        else:
            faults += refused
    letters = {piece: letter(number) for number, piece in enumerate(solved.pieces)}
    return Staged(None if faults else Cutting(sheets, letters), tuple(faults))


def letter(number: int) -> str:
    """A, B ... Z, AA: how a piece is marked on the cutting drawing."""
    return letter(number // 26 - 1) + chr(65 + number % 26) if number >= 26 else chr(65 + number)


def _offers(solved: Solved, material: SolvedMaterial) -> list[tuple[Fraction, Fraction | None]]:
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
    grain: Grain = piece.piece.grain  # type: ignore[assignment]
    if piecing is None:
        return Strip(name, *piece.blank, piece.count, grain=grain)
    return Strip(
        name, *piece.blank, piece.count, True,
        solved.length(f"{name} piecing.seam"), solved.length(f"{name} piecing.shortest"),
        int(solved.values[f"{name} piecing.most_joins"].value.value), grain,
    )  # fmt: skip


def _bolt(solved: Solved, material: SolvedMaterial, width: Fraction, room: Workroom) -> Bolt:
    amounts = material.amounts
    selvedge = amounts["selvedge"].as_length_mm() if "selvedge" in amounts else Fraction(0)
    shrinkage = amounts["shrinkage"].value if "shrinkage" in amounts else Fraction(0)
    usable = (width - 2 * selvedge) * (1 - shrinkage)
    return Bolt(usable, solved.rounding or Fraction(1), room.fold_cloth, material.material.one_way, shrinkage)


def _too_wide(
    solved: Solved,
    room: Workroom,
    material: SolvedMaterial,
    width: Fraction,
    piece: str,
    size: Fraction,
    usable: Fraction,
) -> Fault:
    say, name = Say(solved, room), material.material.name
    return Fault(
        "FB501",
        f"the {say.piece(piece)} needs {say.length(size)} across and `{name}` has {say.length(usable)} to use,"
        f" {say.length(size - usable)} too little",
        Label(solved.pieces[piece].piece.span, f"cut {' x '.join(map(say.length, solved.pieces[piece].blank))}"),
        (Label(material.material.span, f"{say.length(width)} wide, selvedges and shrinkage still on it"),),
        help=f"allow `piecing` for `{piece}`, turn its `grain`, or take a wider cloth",
    )  # fmt: skip
