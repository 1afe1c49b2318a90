"""What stands in the place of cutting and buying in the guide of a class: her pile of cut pieces, and what she is given."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from furbelow.garment.message import Length, Own, Part, Pieces, Things, Value
from furbelow.garment.solved import Solved
from furbelow.garment.tags import tag
from furbelow.garment.tolerance import CUT_OFF
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.guide.guide import MaterialLine, Operation
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.guide.numbered import numbered
from furbelow.s6_write.words.said_step import SaidAction, said_action
from furbelow.s6_write.words.words import Words

# Of the first page, what a class buys together.
BOUGHT_FOR_ALL = ("front-cloth", "front-cost")


def pile_operation(solved: Solved, share: Cutting, number: int, words: Words, letter: str) -> Operation:
    """How to take over the pile: all pieces counted, then each kind of piece measured. share: of the cutting for all."""
    words.read("pile")
    return Operation(
        key="pile",
        letter=letter,
        title=words.text("pile-title", {"number": number}),
        aim=words.text("pile-aim"),
        minutes="",
        cautions=(),
        figures=(),
        steps=numbered(_told(solved, share, number, words), words),
        tip="",
        stop="",
    )


def _told(solved: Solved, share: Cutting, number: int, words: Words) -> Iterator[SaidAction]:
    cut = tags(share)
    yield said_action("pile-take", {"number": number, "pieces": sum(map(len, cut.values()))}, words)
    for name, piece in solved.pieces.items():
        values: dict[str, Value] = {
            "piece": Pieces((name,)),
            "depth": Length(piece.blank[1], "cut"),
            "cuts": Things(cut[name]),
            "count": len(cut[name]),
            "off": Length(CUT_OFF, "off"),
        }
        yield said_action("pile-piece", values, words)


def tags(share: Cutting) -> dict[str, tuple[Part, ...]]:
    """What hangs on the tags of each piece, with the length to measure: 5-2a·1."""
    found: dict[str, list[Part]] = {}
    for name, copies in share.lengths.items():
        for copy, lengths in enumerate(copies, 1):
            for part, length in enumerate(lengths, 1):
                mark = Own(tag(share.marks[name], copy, part if len(lengths) > 1 else 0))
                found.setdefault(name, []).append(Part("pile-tag", {"mark": mark, "length": Length(length, "cut")}))
    return {name: tuple(each) for name, each in found.items()}


def pile_materials(shopping: ShoppingList, share: Cutting, number: int, words: Words) -> tuple[MaterialLine, ...]:
    """What she is given of each material; its cloth lies in her pile. Nothing is bought, so nothing has a price."""
    words.read("pile")
    return tuple(
        replace(
            told,
            amount=words.text("pile-cloth", {"number": number})
            if line.name in share.sheets
            else told.need or told.amount,
            need="",
            cost="",
        )
        for told, line in zip(material_lines(shopping, words), shopping.lines, strict=True)
    )
