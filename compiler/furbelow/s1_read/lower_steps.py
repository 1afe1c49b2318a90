"""From the rows of the steps to steps whose pieces, edges and materials are known to exist."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from typing import TypeVar

from furbelow.diagnose.fault import Fault, Label, Severity, Span
from furbelow.garment.spec import (
    Arg,
    ArgValue,
    Condition,
    EdgeName,
    LayerName,
    OwnPicture,
    Step,
    SupplyKind,
    Word,
    each_of,
)
from furbelow.garment.technique import Kind, Parameter, Technique
from furbelow.named import NamedTuple
from furbelow.s1_read.names import unknown_name
from furbelow.s1_read.rounds import Rounds, Row
from furbelow.s1_read.sayings import Sayings
from furbelow.s1_read.values import Formulas, text_at, value_at
from furbelow.s1_read.yaml_tree import Entry, ListTree, MapTree, TextTree, Tree

T = TypeVar("T")

EDGE_SIDES = ("top", "bottom", "start", "end")
SEAM_SIDES = ("ends", "joins")
SIDES = (*EDGE_SIDES, *SEAM_SIDES)


def stack_names(
    rows: Iterable[Row], techniques: Mapping[str, Technique], rounds: Rounds, *, note: bool = False
) -> list[tuple[str, TextTree]]:
    """The names that steps give to new edges, in the order of the work, each with its place.

    note: tell the rounds of those that a repeat gives.
    """
    given = []
    for row in rows:
        for entry, technique in _techniques_in(row.tree, techniques):
            for key, parameter in technique.parameters.items():
                if parameter.kind is Kind.NAME and isinstance(value := value_at(entry.value, key), TextTree):
                    with rounds.inside(row.numbers):
                        name = rounds.one(value)
                    if note and name != value.text:
                        rounds.add(value.text.partition("(")[0].strip(), name)
                    given.append((name, value))
    return given


def _techniques_in(row: Tree, techniques: Mapping[str, Technique]) -> list[tuple[Entry, Technique]]:
    entries = row.entries if isinstance(row, MapTree) else ()
    return [(entry, techniques[entry.key]) for entry in entries if entry.key in techniques]


class StepLowering(NamedTuple):
    """Lowers the steps of one spec. The names are those given in it."""

    techniques: Mapping[str, Technique]
    pieces: frozenset[str]
    materials: Mapping[str, SupplyKind | None]  # None where the kind can't be read
    stacks: frozenset[str]
    formulas: Formulas
    faults: list[Fault]
    say: Sayings
    rounds: Rounds
    picture: Callable[[Tree, str], OwnPicture | None]
    own: frozenset[str] = frozenset()  # the words that the spec describes itself

    def steps(self, rows: Iterable[Row]) -> tuple[Step, ...]:
        """The working steps, each under the heading it stands under, with the pictures that stand below it.

        Fails: FB142 to FB145, FB170, FB172, FB177, FB178, FB201.
        """
        lowered: list[Step] = []
        part = ""
        for row in rows:
            with self.rounds.inside(row.numbers):
                part = self.rounds.in_words(self.say.at(row.tree, "part")) or part
                for entry, technique in _techniques_in(row.tree, self.techniques):
                    tip = self.say.at(row.tree, "tip", f" of step {len(lowered) + 1}")
                    lowered.append(
                        Step(
                            len(lowered),
                            technique.name,
                            self._args(entry, technique),
                            part,
                            self.rounds.in_words(tip),
                            entry.key_span,
                            technique if entry.key in self.own else None,
                            row.only,
                        )
                    )
                if (shown := value_at(row.tree, "picture")) is not None:
                    self._show(lowered, shown, row.only)
        return tuple(lowered)

    def _show(self, lowered: list[Step], shown: Tree, only: tuple[Condition, ...]) -> None:
        # A group may begin with no picture: the step above is there where the group is not.
        if not lowered or lowered[-1].only[: len(only)] != only:
            said = "this picture has no step above it, which it would stand with"
            self.faults.append(Fault("FB177", said, Label(shown.span), help="put its row below that of its step"))
        elif picture := self.picture(shown, f" of a picture of step {len(lowered)}"):
            lowered[-1] = lowered[-1]._replace(pictures=(*lowered[-1].pictures, picture))

    def _args(self, entry: Entry, technique: Technique) -> dict[str, Arg]:
        args = {}
        for name, parameter in technique.parameters.items():
            given = value_at(entry.value, name)
            value: Tree | None = given
            if given is None and parameter.default:
                value = TextTree(entry.key_span, parameter.default, quoted=False)
            if value is not None and (lowered := self._value(value, parameter)) is not None:
                kind = parameter.kind if isinstance(parameter.kind, str) else ""
                args[name] = Arg(name, lowered, value.span, given is not None, kind, parameter.default is None)
        self.faults.extend(_within_itself(args))
        return args

    def _value(self, value: Tree, parameter: Parameter) -> ArgValue | None:
        match parameter.kind:
            case Kind.LENGTH | Kind.NUMBER:
                return self.formulas.read(value)
            case Kind.EDGE:
                return self._edge(value)
            case Kind.CASING:
                return self._casing(value)
            case Kind.EDGES:
                return _all_of(self._edge(row) for row in self._each(value))
            case Kind.PIECE:
                return self._known(value, "piece", self.pieces, "FB142")
            case Kind.PIECES:
                return _all_of(self._known(row, "piece", self.pieces, "FB142") for row in self._each(value))
            case Kind.MATERIAL:
                return self._material(value, parameter)
            case Kind.LAYERS:
                return _all_of(layer for row in _rows(value) for layer in self._layers(row))
            case Kind.NAME if isinstance(value, TextTree):
                return Word(self.rounds.one(value), value.span)
        return Word(value.text, value.span) if isinstance(value, TextTree) else None

    def _each(self, value: Tree) -> Iterator[Tree]:
        """The rows of a list, with every one of what is repeated in the place of its name alone."""
        for row in _rows(value):
            name, dot, side = row.text.partition(".") if isinstance(row, TextTree) else ("", "", "")
            made = self.rounds.every(name)
            if not isinstance(row, TextTree) or not made:
                yield row
            yield from (row._replace(text=f"{each}{dot}{side}") for each in made if isinstance(row, TextTree))

    def _layers(self, value: Tree) -> Iterator[LayerName | None]:
        faces = text_at(value, "right side", "out")
        edge = value_at(value, "edge") if isinstance(value, MapTree) else value
        for each in self._each(edge) if edge else ():
            named = self._edge(each)
            yield LayerName(named, faces) if named else None

    def _material(self, value: Tree, parameter: Parameter) -> Word | None:
        named = self._known(value, "material", self.materials, "FB143")
        kind = named and self.materials[named.text]
        if named is None or kind is None or kind in parameter.supplies:
            if named and kind is SupplyKind.TRIM and SupplyKind.BONE in parameter.supplies:
                # Specs of old know no boning: it was written as a trim, and so may be a ribbon by mistake.
                self.faults.append(
                    Fault(
                        "FB148",
                        f"`{named.text}` is of the kind trim, and boning is wanted here",
                        Label(named.span),
                        help=f"write `kind: bone` in `{named.text}` if it is boning, or name what is",
                        severity=Severity.WARNING,
                    )
                )
            return named
        wanted = " or ".join(parameter.supplies)
        fit = [f"`{name}`" for name, other in self.materials.items() if other in parameter.supplies]
        help_ = f"name {' or '.join(fit)}" if fit else f"add a material of the kind {wanted}"
        self.faults.append(
            Fault(
                "FB146",
                f"`{named.text}` is of the kind {kind}, and {wanted} is wanted here",
                Label(named.span),
                help=help_,
            )
        )
        return None

    def _known(self, value: Tree, wanted: str, known: Collection[str], code: str) -> Word | None:
        if not isinstance(value, TextTree) or not value.text:
            return None
        if (value := self._single(value)) is None:  # type: ignore[assignment]
            return None
        if value.text not in known:
            piece, _, side = value.text.partition(".")
            if wanted == "piece" and piece in known and side in SIDES:
                headline = f"`{value.text}` is an edge, and a piece is wanted"
                self.faults.append(Fault("FB142", headline, Label(value.span), help=f"write `{piece}`"))
            else:
                self.faults.append(unknown_name(value.text, wanted, sorted(known), code, value.span))
            return None
        return Word(value.text, value.span)

    def _casing(self, value: Tree) -> EdgeName | None:
        if isinstance(value, TextTree) and (name := self.rounds.one(value)) in self.pieces:
            return EdgeName(name, None, value.span)
        return self._edge(value)

    def _single(self, value: TextTree) -> TextTree | None:
        """A name as it is in this round; None, and FB172, where it stands for several."""
        name, dot, side = value.text.partition(".")
        if made := self.rounds.every(name):
            said = f"`{name}` is repeated, and one of {made[0]} to {made[-1]} is wanted here"
            help_ = f"write `{name}(1){dot}{side}`, or put the step into a group with `for:`"
            self.faults.append(Fault("FB172", said, Label(value.place(0, len(name))), help=help_))
            return None
        one = self.rounds.one(value)
        return value._replace(text=one) if one else None

    def _edge(self, value: Tree | None) -> EdgeName | None:
        if not isinstance(value, TextTree) or not value.text or (value := self._single(value)) is None:
            return None
        name, dot, side = value.text.partition(".")
        if not dot:
            if name in self.stacks:
                return EdgeName(name, None, value.span)
            self.faults.append(self._no_edge(name, value.span))
        elif name in self.stacks - self.pieces:
            headline = f"`{name}` is a stack, which has no sides"
            self.faults.append(Fault("FB145", headline, Label(value.span), help=f"write `{name}`"))
        elif name not in self.pieces:
            place = value.place(0, len(name))
            self.faults.append(unknown_name(name, "piece", sorted(self.pieces), "FB142", place))
        elif side not in SIDES:
            place = value.place(len(name) + 1, len(side))
            self.faults.append(_no_side(name, side, place))
        else:
            return EdgeName(name, side, value.span)
        return None

    def _no_edge(self, name: str, span: Span) -> Fault:
        if name in self.pieces:
            headline = f"`{name}` is a piece, and one of its edges is wanted"
            return Fault("FB144", headline, Label(span), help=f"write `{name}.top` or another of its sides")
        if self.stacks:
            return unknown_name(name, "stack", sorted(self.stacks), "FB144", span)
        help_ = "write a piece and its side, such as `flounce.top`"
        return Fault("FB144", f"`{name[:60]}` is no edge", Label(span), help=help_)


def _within_itself(args: Mapping[str, Arg]) -> Iterator[Fault]:
    """FB144 for a stack that its own step lays into it."""
    made = [arg.value.text for arg in args.values() if isinstance(arg.value, Word) and arg.kind == Kind.NAME]
    rows = [row for arg in args.values() for row in each_of(arg.value)]
    edges = [row.edge if isinstance(row, LayerName) else row for row in rows]
    for edge in edges:
        if isinstance(edge, EdgeName) and edge.side is None and edge.piece in made:
            said = f"`{edge.piece[:60]}` is made by this step, and is no layer of itself"
            yield Fault(
                "FB144", said, Label(edge.span), help="name the edge of a piece, or give the new edge another name"
            )


def _no_side(piece: str, side: str, place: Span) -> Fault:
    from furbelow.diagnose.nearest import nearest

    near = nearest(side, SIDES)
    headline = f"`{piece}` has no side called `{side[:60]}`" if side else f"no side stands after `{piece}.`"
    help_ = f"did you mean `{near[0]}`?" if near else f"the sides are {', '.join(EDGE_SIDES)}; the seams ends and joins"
    return Fault("FB145", headline, Label(place), help=help_)


def _rows(value: Tree) -> tuple[Tree, ...]:
    return value.rows if isinstance(value, ListTree) else (value,)


def _all_of(values: Iterable[T | None]) -> tuple[T, ...] | None:
    lowered = tuple(value for value in values if value is not None)
    return lowered or None
