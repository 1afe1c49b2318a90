"""A technique that a project describes in its spec, under `techniques:`, worked and proved as the built-in ones are.

What it does: whatever its `do` says; what it needs, takes and leaves is declared, so that every proof holds for it.
Example:
    techniques:
      shell edge:
        about: Draw a hem into small shells by hand.
        works on: edge
        needs: [ring]
        lengths: {turn: 6 mm, shell: 1 cm}
        takes: [turn, turn]
        leaves: hemmed
        stitch: {type: 101, length: 3 mm, rows: 1}
        set up: hand
        do:
          - Turn {edge} twice by {turn}.
          - say: Sew over the turn every {shell} and pull the stitch tight, {length} in all.
            check: The shells are even.
            remedy: Undo the last shell and sew it again.
    steps:
      - shell edge: {edge: flounce.bottom, turn: 5 mm}
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.message import Length, Own, Part, Pieces, Supply, Value, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import EdgeName, Step, SupplyKind
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    CautionKind,
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Used,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.preconditions import edge_not_ready, strips_not_joined

EDGE, SEAM, PIECE = "edge", "seam", "piece"
WITH = "with"  # the key for a supply
BY_LENGTH = (
    SupplyKind.TRIM,
    SupplyKind.CORD,
    SupplyKind.BONE,
    SupplyKind.ELASTIC,
    SupplyKind.OTHER,
)  # what is used by the length of an edge or seam
KEYS = (EDGE, SEAM, PIECE, WITH)
NEEDS = ("ring", "flat", "hemmed", "neatened", "not gathered")
LEAVES = ("neatened", "hemmed", "enclosed")
PLACE = re.compile(r"\{([^{}]*)\}")  # a place in a sentence that a number or name goes into


@dataclass(frozen=True)
class OwnStitch:
    """Rows sewn along the edge or seam: ISO 4915 type, stitch length in mm."""

    kind: StitchType
    length: Fraction
    rows: int


class OwnWork(NamedTuple):
    """How long the work is, in mm, and on how many copies."""

    length: Fraction
    copies: int


@dataclass(frozen=True)
class OwnTechnique:
    """What a spec says of its own technique; see the module for the keys.

    called: in the guide. lengths: its own length parameters with their defaults as written. takes: those that are taken at the edge.
    uses: supply for each length of the edge or seam, 0 for none. words: its sentences, with places such as {edge}.
    """

    name: str
    called: str
    about: str
    works_on: str
    needs: tuple[str, ...]
    lengths: Mapping[str, str]
    taken: tuple[str, ...]
    leaves: str
    stitch: OwnStitch | None
    uses: Fraction
    setup: SetUp
    cautions: tuple[tuple[CautionKind, str], ...]
    words: tuple[OwnAction, ...]
    pictures: tuple[Picture, ...] = (Picture.PIECES,)

    @property
    def parameters(self) -> Mapping[str, Parameter]:
        kind = {EDGE: Kind.EDGE, SEAM: Kind.EDGE, PIECE: Kind.PIECE}[self.works_on]
        keys = {self.works_on: Parameter(f"The {self.works_on} it is worked on.", kind)}
        keys |= {name: Parameter(f"The {name} of it.", Kind.LENGTH, default) for name, default in self.lengths.items()}
        if self.uses:
            keys[WITH] = Parameter("The supply it uses, one of the materials.", Kind.MATERIAL, supplies=BY_LENGTH)
        return keys

    @property
    def places(self) -> tuple[str, ...]:
        """What may stand in braces in its sentences."""
        return (self.works_on, "length", *self.lengths, *((WITH,) if self.uses else ()))

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        edge = step.args[EDGE].value if EDGE in step.args else None
        if not isinstance(edge, EdgeName) or edge.side is None or not self.taken:
            return ()
        return (Allowance(edge.piece, edge.side, self.taken),)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        if not self.taken:
            return OnCloth()
        took, name = sum((done.step.mm(key) for key in self.taken), Fraction(0)), edge_of(done.step.written, EDGE)
        return OnCloth(tuple(ledger.at_edge(name, Lies.HEM, f"`{self.name}`", Fraction(0), took, self.taken[-1])))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        work = {EDGE: self._edge, SEAM: self._seam, PIECE: self._piece}[self.works_on]
        worked = work(bench, step, solved, room)
        if isinstance(worked, Fault):
            return refused(bench, step, (), worked)
        after, pieces, length, copies, joins_of = worked
        sewn = tuple(
            Sewn(self.stitch.kind, length, copies, self.stitch.length, joins_of=joins_of)
            for _ in range(self.stitch.rows if self.stitch else 0)
            if self.stitch
        )
        supply = (
            (
                Used(
                    word_of(step.written, WITH), length * self.uses, copies, Part("use-own", {"name": Own(self.called)})
                ),
            )
            if self.uses
            else ()
        )
        by_hand = self.setup in (SetUp.HAND, SetUp.IRON)
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=sewn,
            used=supply,
            setup=self.setup,
            handled=length * copies if by_hand else Fraction(0),
            facts=OwnWork(length, copies),
        )

    def _edge(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> _Worked | Fault:
        written, name, say = step.written, edge_of(step.written, EDGE), Phrasing(solved, room)
        if "." not in name and (self.taken or self.leaves):
            return fault_at(
                written,
                EDGE,
                "FB363",
                f"`{name}` is a stack, and `{self.name}` finishes an edge of one piece",
                help="work on the edges before they are stacked",
            )
        if "hemmed" in self.needs and name in bench.edges:
            fault = strips_not_joined(bench, written, EDGE, bench.edge(name).pieces)
        else:
            fault = edge_not_ready(bench, written, EDGE, name)
        if fault:
            return fault
        edge = bench.edge(name)
        if fault := self._unmet(bench, step, edge):
            return fault
        took = sum((step.mm(key) for key in self.taken), Fraction(0))
        if "." in name and took and took >= (depth := min(bench.depth(piece) for piece in edge.pieces)):
            return fault_at(
                written,
                EDGE,
                "FB312",
                f"`{self.name}` takes {say.length(took)} and its piece is {say.length(depth)} deep",
                help="take less, or make the piece deeper",
            )
        state = State(self.leaves) if self.leaves else edge.state
        after = bench.turned(edge, took, state)
        return after, edge.pieces, edge.set_length, edge.copies, ""

    def _unmet(self, bench: Bench, step: SolvedStep, edge: Edge) -> Fault | None:
        """The first need that the edge does not meet."""
        ring = bench.ring(edge)
        is_so = {
            "ring": ring,
            "flat": not ring,
            "not gathered": not edge.gathered,
            "hemmed": edge.state is State.HEMMED,
            "neatened": edge.state in (State.NEATENED, State.SELVEDGE),
        }
        for need in self.needs:
            if not is_so[need]:
                now = {"ring": "flat", "flat": "a ring", "not gathered": "gathered"}.get(need, str(edge.state))
                return fault_at(
                    step.written,
                    EDGE,
                    "FB363",
                    f"`{self.name}` needs an edge that is {need}, and `{edge.name}` is {now}",
                    help=f"move this step to where `{edge.name}` is {need}",
                )
        return None

    def _seam(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> _Worked | Fault:
        name = edge_of(step.written, SEAM)
        seam = bench.seam_at(name)
        if seam is None or (self.leaves and seam.state is not State.RAW):
            headline = f"the margin of `{name}` is finished already" if seam else f"there is no seam at `{name}` yet"
            mend = "leave this step out" if seam else "move this step after the one that sews the seam"
            return fault_at(step.written, SEAM, "FB318", headline, help=mend)
        joins = name.partition(".")[0] if name.endswith(".joins") else ""
        if joins and self.uses:
            return fault_at(
                step.written,
                SEAM,
                "FB337",
                f"how many joins `{name}` has is known only when the cloth is planned",
                help="use `neaten` there",
            )
        state = State(self.leaves) if self.leaves else seam.state
        pieces = tuple(dict.fromkeys(ply.piece for ply in seam.plies))
        return bench.with_seams(seam._replace(state=state)), pieces, seam.length, 1 if joins else seam.copies, joins

    def _piece(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> _Worked | Fault:
        name = word_of(step.written, PIECE)
        if fault := strips_not_joined(bench, step.written, PIECE, (name,)):
            return fault
        cloth = bench.cloths[name]
        return bench, (name,), cloth.piece.cut_length, cloth.copies, ""

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        """The maker's sentences as they stand, and the values for their places."""
        worked = facts_of(done, OwnWork)
        values: dict[str, Value] = {
            **{name: Length(done.step.mm(name)) for name in self.lengths},
            "length": Length(worked.length),
            self.works_on: self._where(done),
        }
        if self.uses:
            values[WITH] = Supply(word_of(done.step.written, WITH))
        actions = tuple(action._replace(copies=worked.copies) for action in self.words)
        title = f"{self.called}: {{{self.works_on}}}"
        return OwnInstructions(title, self.about, actions, self.cautions, values)

    def _where(self, done: Performed) -> Value:
        if self.works_on == EDGE:
            return edge_said(done.before.edge(edge_of(done.step.written, EDGE)))
        if self.works_on == SEAM:
            return Part("own-seam", {"pieces": Pieces(done.touches)})
        return Pieces(done.touches)


# The bench after it, the pieces worked on, the length of the work in mm, how many copies, and the piece of its joins.
_Worked = tuple[Bench, tuple[str, ...], Fraction, int, str]
