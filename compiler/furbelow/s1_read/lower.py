"""From a tree to a spec: every value read for what it is, every name known to stand for one thing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, get_args

from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Label, Span, Staged, has_errors
from furbelow.garment.dyeing import DyeClass
from furbelow.garment.spec import (
    BodyMeasure,
    Choice,
    Cover,
    Grain,
    Imprint,
    Material,
    Measure,
    Offer,
    OnSelvedge,
    OwnPicture,
    Piece,
    Piecing,
    Rule,
    Spec,
    SupplyKind,
    Within,
    Worn,
    Written,
)
from furbelow.garment.technique import Technique
from furbelow.s1_read.lower_steps import StepLowering, stack_names
from furbelow.s1_read.names import Names, unknown_name
from furbelow.s1_read.rounds import Rounds, Row
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.unsaid_joins import with_joins
from furbelow.s1_read.values import Formulas, answer_at, map_at, maps_in, rows_at, text_at, value_at, word_at
from furbelow.s1_read.yaml_tree import Entry, MapTree, TextTree, Tree

if TYPE_CHECKING:
    from furbelow.s1_read.read_pictures import OwnPictures

AMOUNTS = (
    "width",
    "length",
    "selvedge",
    "weight",
    "shrinkage",
    "sold by",
    "price",
    "stretch",
    "reel",
    "count",
    "gathers",
    "bending length",
    "spare",
)
ROUNDING = {"metric": "5 mm", "inches": "1/8 in"}  # house rule, maker to confirm
MOST_PIECES = 200  # as many as may be written
SECTIONS = {
    "body": "a body measure",
    "choices": "a choice",
    "measures": "a measure",
    "materials": "a material",
    "pieces": "a piece",
}


def lower(tree: Tree, source: str, file: str, techniques: Mapping[str, Technique], sayings: Sayings) -> Staged[Spec]:
    """The spec in a tree, and every fault in its names and formulas.

    What the schema has told is passed over in silence: such a tree gives no value, and no fault of its own.
    sayings: reads the maker's texts, in the language that is asked for.
    Fails: FB140 to FB145, FB160, FB177, FB178, FB201.
    """
    return _Lowering(tree, source, file, techniques, sayings).lowered()


class _Lowering:
    def __init__(
        self, tree: Tree, source: str, file: str, techniques: Mapping[str, Technique], sayings: Sayings
    ) -> None:
        self.tree = tree
        self.source = source
        self.file = file
        self.techniques = techniques
        self.say = sayings
        self.names = Names()
        self.formulas = Formulas()
        self.faults: list[Fault] = []
        self.pictures: OwnPictures | None = None

    def lowered(self) -> Staged[Spec]:
        title, about = self.say.at(self.tree, "title"), self.say.at(self.tree, "about").strip()
        units = text_at(self.tree, "units", "metric")
        rounding = self.formulas.at(self.tree, "rounding") or self._default_rounding(units)
        body = {entry.key: self._body(entry, at) for entry, at in maps_in(map_at(self.tree, "body"))}
        sizes = {entry.key: self._size(at) for entry, at in maps_in(map_at(self.tree, "sizes"))}
        choices = self._choices()
        self.rounds = Rounds(self.formulas, choices)
        rows = self.rounds.rows(rows_at(self.tree, "steps"))
        self._give_names(rows)
        if self.rounds.faults:
            # Names that a repeat would have given are missed everywhere.
            return Staged(None, (*self.rounds.faults, *self.formulas.faults))
        measures = self._measures()
        worn = self._worn()
        materials = {entry.key: self._material(entry, at) for entry, at in maps_in(map_at(self.tree, "materials"))}
        pieces = self._pieces()
        steps = StepLowering(
            self.techniques,
            frozenset(self._piece_names()),
            {entry.key: _supply_kind(entry.value) for entry in map_at(self.tree, "materials").entries},
            frozenset(name for name, _ in stack_names(rows, self.techniques, self.rounds)),
            self.formulas,
            self.faults,
            self.say,
            self.rounds,
            self._picture,
            frozenset(entry.key for entry in map_at(self.tree, "techniques").entries),
        ).steps(rows)
        steps = with_joins(steps, pieces)
        rules, accepted = self._rules(), self._accepted()
        notes = self.say.at(self.tree, "notes").strip()
        imprint, cover = self._imprint(), self._cover()
        self.faults += self.pictures.faults if self.pictures else ()
        faults = (*self.names.faults, *self.formulas.faults, *self.rounds.faults, *self.say.faults, *self.faults)
        if worn is None or rounding is None or has_errors(faults):
            return Staged(None, faults)
        spec = Spec(
            file=self.file,
            source=self.source,
            title=title,
            about=about,
            notes=notes,
            units=units,
            rounding=rounding,
            body=body,
            sizes=sizes,
            choices=choices,
            measures=measures,
            worn=worn,
            materials=materials,
            pieces=pieces,
            steps=steps,
            rules=rules,
            accepted=accepted,
            language=self.say.language,
            written_in=word_at(self.tree, "language"),
            untold=tuple(self.say.untold),
            imprint=imprint,
            cover=cover,
        )
        return Staged(spec, faults)

    def _give_names(self, rows: list[Row]) -> None:
        for section, what in SECTIONS.items():
            for entry in map_at(self.tree, section).entries:
                if section != "pieces" or value_at(entry.value, "for") is None:
                    self.names.give(entry.key, what, entry.key_span)
                    continue
                repeat = self.rounds.repeat(entry.value)
                # One round stands for a repeat that can't be read, so that its name is known.
                for number in repeat.numbers if repeat else (1,):
                    self.rounds.add(entry.key, f"{entry.key}_{number}")
                    self.names.give(f"{entry.key}_{number}", what, entry.key_span)
        made = list(self._piece_names())
        # So many that are written out are told by the schema.
        if len(made) > max(MOST_PIECES, len(map_at(self.tree, "pieces").entries)):
            said = f"the repeats make {len(made)} pieces, {len(made) - MOST_PIECES} more than the {MOST_PIECES} allowed"
            place = map_at(self.tree, "pieces").span
            self.faults.append(Fault("FB171", said, Label(place), help="let them go less far"))
        for name, value in stack_names(rows, self.techniques, self.rounds, note=True):
            if name:
                self.names.give(name, "a stack", value.span)
        for row in rows:
            for name in row.numbers:
                if self.names.taken(name):
                    self.faults.append(_counts_and_is(name, row.tree.span))

    def _piece_names(self) -> Iterator[str]:
        for entry in map_at(self.tree, "pieces").entries:
            if value_at(entry.value, "for") is None:
                yield entry.key
            else:
                yield from self.rounds.every(entry.key)

    def _imprint(self) -> Imprint:
        at = map_at(self.tree, "imprint")
        licence, skill = (self.say.at(at, key, " of the imprint").strip() for key in ("licence", "skill"))
        return Imprint(text_at(at, "author").strip(), text_at(at, "version").strip(), licence, skill)

    def _cover(self) -> Cover | None:
        at = value_at(self.tree, "cover")
        if not isinstance(at, MapTree):
            return None
        picture = value_at(at, "picture")
        shown = None if picture is None else self._picture(picture, " of the picture on the cover")
        return Cover(self.say.at(at, "words", " of the cover").strip(), shown)

    def _picture(self, tree: Tree, owner: str) -> OwnPicture | None:
        if self.pictures is None:
            from furbelow.s1_read.read_pictures import OwnPictures  # most specs have none

            self.pictures = OwnPictures(self.file, self.say)
        return self.pictures.at(tree, owner)

    def _default_rounding(self, units: str) -> Written | None:
        default = TextTree(Span.at_start(self.file), ROUNDING.get(units, ROUNDING["metric"]), quoted=False)
        return self.formulas.read(default)

    def _body(self, entry: Entry, at: MapTree) -> BodyMeasure:
        about = self._about(entry, at)
        return BodyMeasure(entry.key, entry.key_span, about, self.formulas.at(at, "from"), self.formulas.at(at, "to"))

    def _about(self, entry: Entry, at: Tree) -> str:
        about = self.say.at(at, "about", f" of `{entry.key}`")
        self.say.name(entry, about)
        return about

    def _size(self, at: MapTree) -> dict[str, Written]:
        read = {entry.key: self.formulas.read(entry.value) for entry in at.entries}
        return {name: value for name, value in read.items() if value is not None}

    def _choices(self) -> dict[str, Choice]:
        choices = {}
        for entry, at in maps_in(map_at(self.tree, "choices")):
            default = self.formulas.at(at, "default")
            low, high, step = (self.formulas.at(at, key) for key in ("from", "to", "step"))
            if default is not None:
                about = self._about(entry, at)
                choices[entry.key] = Choice(entry.key, entry.key_span, about, default, low, high, step)
        return choices

    def _measures(self) -> dict[str, Measure]:
        measures = {}
        for entry in map_at(self.tree, "measures").entries:
            of = entry.value
            value = self.formulas.read(value_at(of, "value") if isinstance(of, MapTree) else of)
            if value is not None:
                measures[entry.key] = Measure(entry.key, entry.key_span, self._about(entry, of), value)
        return measures

    def _worn(self) -> Worn | None:
        at = map_at(self.tree, "worn")
        over, ease, length = (self.formulas.at(at, key) for key in ("over", "ease", "length"))
        pieces = list(self._piece_names())
        hidden = {}
        for entry in map_at(at, "hidden").entries:
            for name, numbers in self._rounds_of(entry.key):
                with self.rounds.inside(numbers):
                    clearance = self.formulas.read(entry.value)
                if name not in pieces:
                    self.faults.append(unknown_name(entry.key, "piece", pieces, "FB142", entry.key_span))
                elif clearance is not None:
                    hidden[name] = clearance
        if over is None:
            return None
        return Worn(text_at(at, "from"), over, ease, length, hidden, text_at(at, "held by"), at.span)

    def _material(self, entry: Entry, at: MapTree) -> Material:
        amounts = {}
        for key in AMOUNTS:
            if (amount := self.formulas.at(at, key)) is not None:
                amounts[key.replace(" ", "_")] = amount
        return Material(
            name=entry.key,
            span=entry.key_span,
            kind=_supply_kind(at) or SupplyKind.OTHER,
            about=self._about(entry, at),
            fibre=text_at(at, "fibre"),
            amounts=amounts,
            offers=self._offers(at),
            ravels=answer_at(at, "ravels", otherwise=False),
            has_right_side=answer_at(at, "right side", otherwise=True),
            one_way=answer_at(at, "one way", otherwise=False),
            colour=self.say.at(at, "colour", f" of `{entry.key}`"),
            supplier=text_at(at, "supplier"),
            code=text_at(at, "code"),
            dye_class=_dye_class(at),
        )

    def _offers(self, at: MapTree) -> tuple[Offer, ...]:
        offers = []
        for row in rows_at(at, "offers"):
            width, price = self.formulas.at(row, "width"), self.formulas.at(row, "price")
            if width is not None:
                offers.append(Offer(width, price, row.span))
        return tuple(offers)

    def _rounds_of(self, name: str) -> list[tuple[str, Mapping[str, int]]]:
        """A piece by its name, or each that a repeated piece is, with the number of its round."""
        entry = map_at(self.tree, "pieces").entry(name)
        repeat = entry and self.rounds.repeat(entry.value)
        if not repeat:
            return [(name, {})]
        return [(f"{name}_{number}", {repeat.name: number}) for number in repeat.numbers]

    def _pieces(self) -> dict[str, Piece]:
        pieces: dict[str, Piece] = {}
        for entry, at in maps_in(map_at(self.tree, "pieces")):
            if value_at(at, "for") is None:
                pieces |= self._piece(entry.key, entry, at)
            elif repeat := self.rounds.repeat(at):
                for name, numbers in self._rounds_of(entry.key):
                    with self.rounds.inside(numbers):
                        within = repeat.within(numbers[repeat.name])
                        pieces |= {
                            made: piece._replace(
                                within=next((each for each in within if isinstance(each, Within)), None),
                                about=self.rounds.in_words(piece.about, repeat.name),
                            )
                            for made, piece in self._piece(name, entry, at).items()
                        }
        return pieces

    def _piece(self, name: str, entry: Entry, at: MapTree) -> dict[str, Piece]:
        """The piece by its name; none where the schema has told what it lacks."""
        keys = ("count", "length", "cut length", "depth", "cut depth")
        count, length, cut_length, depth, cut_depth = (self.formulas.at(at, key) for key in keys)
        piecing = self._piecing(value_at(at, "piecing"))
        if (cloth := word_at(at, "from")) is None:
            return {}
        self._cloth_exists(cloth.text, cloth.span)
        piece = Piece(
            name=name,
            span=entry.key_span,
            about=self._about(entry, at),
            cloth=cloth,
            count=count,
            length=length,
            cut_length=cut_length,
            depth=depth,
            cut_depth=cut_depth,
            grain=_grain(at),
            piecing=piecing,
            selvedge=_on_selvedge(at),
        )
        return {name: piece}

    def _cloth_exists(self, name: str, span: Span) -> None:
        materials = map_at(self.tree, "materials")
        cloths = [entry.key for entry in materials.entries if _supply_kind(entry.value) is SupplyKind.CLOTH]
        entry = materials.entry(name)
        if entry is None and name:
            self.faults.append(unknown_name(name, "cloth", cloths, "FB143", span))
        elif entry is not None and name not in cloths:
            headline = f"`{name}` is not cloth, and a piece is cut from cloth"
            others = (Label(entry.key_span, f"its kind is {text_at(entry.value, 'kind')}"),)
            help_ = f"the cloths are {', '.join(f'`{cloth}`' for cloth in cloths)}" if cloths else None
            self.faults.append(Fault("FB143", headline, Label(span), others, help=help_))

    def _piecing(self, at: Tree | None) -> Piecing | None:
        seam, shortest, most = (self.formulas.at(at, key) for key in ("seam", "shortest", "most joins"))
        if at is None or seam is None or shortest is None or most is None:
            return None
        return Piecing(seam, shortest, most, at.span)

    def _rules(self) -> tuple[Rule, ...]:
        rules = []
        for number, row in enumerate(rows_at(self.tree, "rules"), 1):
            check = self.formulas.at(row, "check", check=True)
            if check is not None:
                rules.append(Rule(check, self.say.at(row, "message", f" of rule {number}"), row.span))
        return tuple(rules)

    def _accepted(self) -> dict[str, str]:
        accepted = {}
        for row in rows_at(self.tree, "accept"):
            code = value_at(row, "code")
            if not isinstance(code, TextTree):
                continue
            if code.text not in CODES:
                self.faults.append(unknown_name(code.text, "fault code", sorted(CODES), "FB147", code.span))
            accepted[code.text] = self.say.at(row, "because", f" of {code.text}")
        return accepted


def _counts_and_is(name: str, span: Span) -> Fault:
    headline = f"`{name}` counts a repeat and is a name of the spec as well"
    return Fault("FB141", headline, Label(span), help="rename one of the two")


def _supply_kind(material: Tree) -> SupplyKind | None:
    """The kind of a material; None where it is missing or misspelt, which the schema has told."""
    said = text_at(material, "kind")
    return SupplyKind(said) if said in set(SupplyKind) else None


def _dye_class(material: Tree) -> DyeClass | None:
    said = text_at(material, "class")
    return DyeClass(said) if said in set(DyeClass) else None


def _on_selvedge(piece: Tree) -> OnSelvedge:
    said = text_at(piece, "selvedge")
    return next((edge for edge in get_args(OnSelvedge) if edge == said), "")


def _grain(piece: Tree) -> Grain:
    said = text_at(piece, "grain")
    return next((grain for grain in get_args(Grain) if grain == said), "along")
