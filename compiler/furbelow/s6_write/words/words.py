"""The words of one language for one guide: messages said with the values of a garment."""

from __future__ import annotations

import re
from collections.abc import Mapping
from fractions import Fraction

from furbelow.garment.message import (
    FIBRES,
    Amount,
    Fibre,
    Length,
    Money,
    Number,
    One,
    Pieces,
    Ratio,
    Share,
    Stitch,
    Supply,
    Things,
    Value,
    Values,
    Volume,
    Weight,
    flag,
)
from furbelow.garment.phrasing import Phrasing, share_digits
from furbelow.garment.spec import FastenerKind
from furbelow.measure.measure_text import show_decimal, show_volume
from furbelow.s3_rehearse.weight import show_weight
from furbelow.s6_write.words.holes import SENTENCE, MarkedNumber, SentenceNumber, called, hole
from furbelow.s6_write.words.messages import Messages

_INCH = Fraction("25.4")
_FASTENERS = tuple(kind.replace(" ", "-") for kind in FastenerKind)
_QUANTITY = re.compile(r"\b(\d+(?:\.\d+)?(?:(?: \d+)?/\d+)?)(?: (mm|cm|m|in|yd)\b)?")


class Words(Messages):
    """The words of one language for one guide.

    `say` rounds the numbers; marks: the number of each piece on the cutting plan, where there is one.
    marked: whether numbers stand marked in what is said, for a booklet of sizes (see `holes`).
    """

    def __init__(
        self, language: str, say: Phrasing, marks: Mapping[str, str] | None = None, *, marked: bool = False
    ) -> None:
        self.say, self.marks, self.marked = say, marks or {}, marked
        # A guide says the same lengths, and names the same pieces, a thousand times.
        self._lengths: dict[Length | Amount, str] = {}
        self._measures: dict[str, str] = {}
        self._pieces: dict[tuple[str, str, str], str] = {}
        super().__init__(language, say.room.words)

    def said(self, value: Value, name: str = "") -> str:
        """name: what the number is, where it stands alone in a drawing and no message says it."""
        shown = self._shown(value)
        if not self.marked:
            return shown
        kind = _MARKED.get(type(value))
        return hole(kind, shown, name) if kind else called(shown, name)

    def value(self, values: Values, name: str) -> str:
        """One of the values, alone in a drawing."""
        return self.said(values[name], name)

    def whole(self, number: int) -> str:
        return hole(_MARKED[type(number)], super().whole(number)) if self.marked else super().whole(number)

    def _shown(self, value: Value) -> str:
        match value:
            case Length() | Amount():
                if (said := self._lengths.get(value)) is None:
                    self._lengths[value] = said = self._measure(self._as_read(value))
                return said
            case Weight(grams):
                return self.local(show_weight(grams, self.say.system))
            case Volume(ml):
                return self._measure(show_volume(ml))
            case Stitch(mm):
                number = self.local(show_decimal(mm, 1))
                if self.say.system == "metric":
                    return self.text("stitch", {"number": number})
                return self.text("stitch-inches", {"number": number, "per-inch": round(_INCH / mm)})
            case Share(share):
                return self.text("share", {"number": self.local(share_digits(share))})
            case Ratio(ratio):
                return self.local(f"{float(ratio):.3g}")
            case Pieces():
                return self.edge(value) if value.side else self.pieces(value)
            case Supply(name):
                material = self.say.solved.materials[name].material
                return material.about or self.name(name)
            case Fibre(word):
                known = word if word in FIBRES else "own" if word else "unknown"
                return self.text("fibre", {"fibre": One(known, (*FIBRES, "own", "unknown")), "own": word})
        return super().said(value)

    def _as_read(self, value: Length | Amount) -> str:
        if isinstance(value, Amount):
            return value.quantity.show(value.system)
        shown: str = getattr(self.say, value.how)(value.mm)
        return shown

    def name(self, name: str) -> str:
        """What a measure, a choice or a material is called where its name in the spec would stand.

        In another language than that of the spec the name means nothing, and what the maker says that it is stands there.
        """
        bought = self.say.solved.materials.get(name)
        if bought and bought.material.fastener:
            return self._fastener(bought.material.fastener)
        spec = self.say.solved.spec
        if spec.is_translated and (about := spec.about_of(name)):
            return about
        own = name.replace("_", " ")
        if not spec.is_translated or name not in spec.body:
            return own
        self.read("names")
        return self.text("name-body", {"name": name.replace("_", "-"), "own": own})

    def _fastener(self, kind: FastenerKind) -> str:
        """What is bought and no spec lists has its name from us."""
        self.read("buying")
        return self.text("fastener", {"kind": One(kind.replace(" ", "-"), _FASTENERS)})

    def number(self, name: str) -> str:
        """What a number of a step, a piece, a material or the garment is called, by its own name without its owner's."""
        self.read("names")
        own = name.replace("_", " ")
        return self.text("name-number", {"name": own.replace(" ", "-"), "own": own})

    def reckoned(self, formula: str) -> str:
        """A sum as the solver shows it, in the signs and unit names of the language."""
        return _QUANTITY.sub(lambda found: self._measure(found[0]) if found[2] else self.local(found[0]), formula)

    def _measure(self, shown: str) -> str:
        """A number with its unit, as measure shows it, in the signs and unit names of the language."""
        if shown not in self._measures:
            self._measures[shown] = self._with_unit(shown)
        return self._measures[shown]

    def _with_unit(self, shown: str) -> str:
        number, _, unit = shown.rpartition(" ")
        if unit not in UNITS_SAID:
            return self.local(shown)
        return self.text("unit", {"number": self.local(number), "unit": One(unit, UNITS_SAID)})

    def count(self, given: object) -> int:
        if not isinstance(given, Pieces):
            return super().count(given)
        return 2 if given.stack else len(dict.fromkeys(given.names))  # the layers of a stack are several

    def pieces(self, pieces: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        if isinstance(pieces, Things):
            return _begun(self.listed([self.pieces(each, form=form, case=case) for each in pieces.items]), at)
        if not isinstance(pieces, Pieces):
            raise TypeError(f"takes pieces, not {pieces!r}")
        if pieces.stack:
            return _begun(self.text("stack-layers-of", self._stack(pieces, form, case)), at)
        return _begun(self.listed([self._piece(name, form, case) for name in dict.fromkeys(pieces.names)]), at)

    def _stack(self, stack: Pieces, form: str, case: str) -> dict[str, Value | str]:
        """A stack has its name in the spec alone, so the name reads as words do: `skirt_top` is the skirt top."""
        return {
            "named": flag(not self.say.solved.spec.is_translated),
            "name": stack.stack.replace("_", " "),
            "pieces": self.pieces(Pieces(stack.names), form=form, case="of"),
            "form": form,
            "case": case,
        }

    def _piece(self, name: str, form: str, case: str) -> str:
        if (known := self._pieces.get((name, form, case))) is not None:
            return known
        mark = self.marks.get(name, "")
        told: dict[str, Value | str] = {
            "label": self.say.piece(name),
            "mark": mark,
            "numbered": flag(mark),
            "form": form,
            "case": case,
        }
        self._pieces[name, form, case] = said = self.text("piece", told)
        return said

    def edge(self, edge: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        if not isinstance(edge, Pieces) or not edge.side:
            raise TypeError(f"takes an edge, not {edge!r}")
        if edge.stack:
            return _begun(self.text("stack", self._stack(edge, form, case)), at)
        told: dict[str, Value | str] = {
            "side": edge.side,
            "count": len(dict.fromkeys(edge.names)),
            "pieces": self.pieces(edge, form=form, case="of"),
            "case": case,
        }
        return _begun(self.text("edge", told), at)


# The sign of each kind of number that is marked.
_MARKED: Mapping[type, str] = {
    Length: "l",
    Amount: "l",
    Stitch: "s",
    Number: "n",
    Share: "%",
    Ratio: "r",
    Weight: "w",
    Volume: "v",
    Money: "m",
    int: "n",
    SentenceNumber: SENTENCE,
    MarkedNumber: SENTENCE,
}
UNITS_SAID = ("mm", "cm", "m", "in", "yd", "ml", "l")  # the units that messages have words for


def _begun(text: str, at: str) -> str:
    return text[:1].upper() + text[1:] if at == "start" else text
