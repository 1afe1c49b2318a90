"""Draw elastic through a casing and join its ends.

What it does: pulls the elastic through the gap, overlaps and sews its ends.
    In a flat casing both ends are sewn fast, and the seam that closes the casing catches them.
Edges before and after: an open, empty casing before; the casing holds a closed elastic, its gap still open, after.
Allowance: the overlap, on the elastic; in a flat casing half of it lies in the seam at each end.
Example: `- insert elastic: {elastic: elastic, into: waistband, length: waist_girth - 15 cm, overlap: 2 cm}`
Source: elastic for a heavy skirt about 6 in less than the waist: common practice, no source. Waist less 2 to 4 in:
    home sewing practice, published 2020s.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Severity
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.limits import CASING_ROOM, width_of
from furbelow.garment.lying import Held, Ledger, Lies, OnCloth, Window
from furbelow.garment.message import Length, One, Part, Pieces, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Tool,
    Used,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.casings import casing_at, casing_in
from furbelow.techniques.shared.cautions import HAND_NEEDLE, NO_FLAME_ON_ENDS, SAFETY_PIN_LAST, TIGHT_ELASTIC
from furbelow.techniques.shared.elastics import does_not_go_in
from furbelow.techniques.shared.laying import filled, lap_window
from furbelow.techniques.shared.preconditions import no_length
from furbelow.techniques.shared.zigzag import zigzag_set

TO_LENGTH, LONG = "to length", "long"
TAIL = Fraction(50)  # of elastic that hangs out of the gap while the other end goes round
OUT = Fraction(100)  # of both ends, to lap and sew them in front of the casing


class DrawnIn(NamedTuple):
    """Elastic in its casing: cut length, the closed loop at rest, its width, and the casing before, in mm.

    spare: how much of the cut length is cut off when it was tried on.
    """

    cut: Fraction
    loop: Fraction
    width: Fraction
    casing: Casing
    spare: Fraction = Fraction(0)


TOOLS = (Tool.JOINING_ELASTIC, Tool.SAFETY_PINS, Tool.HAND_NEEDLE)
FLAT_TOOLS = (Tool.JOINING_ELASTIC, Tool.SAFETY_PINS)
LEAST_SPARE = Fraction(30)  # what a hand can hold and pin: house rule, maker to confirm


class InsertElastic:
    name = "insert elastic"
    about = "Draw elastic through a casing and join its ends to a loop."
    pictures = (Picture.ELASTIC,)
    parameters = {
        "elastic": Parameter("The elastic, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.ELASTIC,)),
        "into": Parameter("The casing: the band, or the edge that was folded down.", Kind.CASING),
        "length": Parameter("Length of the closed elastic loop, at rest.", Kind.LENGTH),
        "overlap": Parameter("How far its ends overlap; cut so much longer.", Kind.LENGTH, "2 cm"),
        "cut": Parameter(
            "To its length after it was tried on by itself, or long, to be tried on in the garment and shortened.",
            (TO_LENGTH, LONG),
            TO_LENGTH,
        ),
        "spare": Parameter(
            "How much longer it is bought, to be tried on; cut long, it is cut so much longer.", Kind.LENGTH, "10 cm"
        ),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written = done.step.written
        name, length, overlap = edge_of(written, "into"), done.step.mm("length"), done.step.mm("overlap")
        casing = facts_of(done, DrawnIn).casing
        windows = [lap_window("overlap", "a lap of the elastic", overlap, most=length / 4)]
        if word_of(written, "cut") == LONG:
            spare, why = done.step.mm("spare"), "it is cut off once the garment was tried on"
            windows.append(Window("spare", "a spare length of elastic", spare, least=LEAST_SPARE, most=length, why=why))
        held = Held("length", f"the casing in `{name}`", casing.piece, casing.length, length, drawn=True)
        return OnCloth(filled(ledger, casing, Lies.ELASTIC, "the elastic", "into"), tuple(windows), (held,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        elastic, name = word_of(written, "elastic"), edge_of(written, "into")
        pieces = casing_in(bench, name)
        casing = casing_at(bench, written, "into")
        if not isinstance(casing, Casing):
            return refused(bench, step, pieces, casing)
        length = step.mm("length")
        if fault := does_not_go_in(say, step, casing, elastic, length) or no_length(step, "overlap"):
            return refused(bench, step, pieces, fault)
        width = width_of(solved, elastic)
        room_to_twist = casing.width - width - CASING_ROOM
        loose = (
            ()
            if room_to_twist <= 0
            else (
                fault_at(
                    written,
                    "into",
                    "FB325",
                    f"the casing is {say.length(casing.width)} inside and `{elastic}` {say.length(width)} wide,"
                    f" {say.length(room_to_twist)} more than it can have without twisting",
                    help="make the casing narrower, or sew a row round it beside the elastic",
                    severity=Severity.WARNING,
                ),
            )
        )
        what = Part("use-elastic", {"piece": Pieces((casing.piece,))})
        overlap, to_try = step.mm("overlap"), step.mm("spare")
        spare = to_try if word_of(written, "cut") == LONG else Fraction(0)
        # In a flat casing the seam at its ends takes its share of the elastic, and closes the casing.
        at_rest, open_ = (length + overlap, False) if casing.flat else (length, casing.open)
        after, times = (
            bench.with_casing(casing._replace(elastic=elastic, elastic_length=at_rest, open=open_)),
            casing.channels,
        )
        return Performed(
            step,
            bench,
            after,
            pieces,
            loose,
            sewn=(Sewn(StitchType.ZIGZAG, 4 * width, times, Fraction(2)),),
            # Tried on, the loop may turn out longer, and its ends are held meanwhile.
            used=(Used(elastic, length + overlap + to_try, times, what),),
            setup=SetUp.ZIGZAG,
            handled=casing.length * times,
            facts=DrawnIn(length + overlap + spare, length, width, casing, spare),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, overlap, over = facts_of(done, DrawnIn), done.step.mm("overlap"), say.solved.length("worn.over")
        casing = facts.casing
        if casing.flat:
            return _into_flat(done, facts, overlap)
        # Inside a channel of its own rows there is no margin for it to run into.
        margin_inside = casing.name == casing.piece and not casing.in_seam and casing.channels == 1
        several = casing.channels > 1

        def each(*messages: str) -> Iterator[Action]:
            return (Action(message, casing.channels) for message in messages)

        order = (Action("insert-elastic-order"),) if several else ()
        if facts.spare:
            first: tuple[Action, ...] = (
                *each("insert-elastic-cut-long"),
                *order,
                *each(
                    "insert-elastic-pin-end",
                    "insert-elastic-thread-long-band" if margin_inside else "insert-elastic-thread-long",
                    "insert-elastic-lap-to-try",
                    "insert-elastic-try-on",
                    "insert-elastic-mark-lap",
                    "insert-elastic-shorten",
                ),
                Action("insert-elastic-write"),
                *each("insert-elastic-ends", "insert-elastic-lap-long"),
            )
        else:
            first = (
                Action("insert-elastic-try"),
                Action("insert-elastic-write"),
                *each("insert-elastic-cut", "insert-elastic-ends", "insert-elastic-line", "insert-elastic-cross"),
                *order,
                *each(
                    "insert-elastic-tail",
                    "insert-elastic-thread-band" if margin_inside else "insert-elastic-thread",
                    "insert-elastic-pull-out",
                    "insert-elastic-lap",
                ),
            )
        actions = (
            *first,
            zigzag_set(done.sewn[0].stitch),
            *each("insert-elastic-sew", "insert-elastic-slip-back"),
            Action("insert-elastic-stretch" if say.room.measures else "insert-elastic-stretch-over"),
        )
        values: Values = {
            "band": Pieces((casing.piece,)),
            "casing": Length(casing.length),
            "loop": Length(facts.loop),
            "cut": Length(facts.cut),
            "spare": Length(facts.spare),
            "lap": Length(overlap),
            "lap-off": Length(overlap / 10, "off"),
            "cross": Length(overlap + 15, "about"),
            "tail": Length(TAIL, "about"),
            "out": Length(OUT, "about"),
            "over": Length(over),
            "half-over": Length(over / 2),
            "channels": casing.channels,
            "opened": One("seam" if casing.in_seam else "row", ("seam", "row")),
        }
        cautions = (SAFETY_PIN_LAST, HAND_NEEDLE, NO_FLAME_ON_ENDS, TIGHT_ELASTIC)
        return Instructions("insert-elastic-title", "insert-elastic-aim", actions, values, cautions, TOOLS)


def _into_flat(done: Performed, facts: DrawnIn, overlap: Fraction) -> Instructions:
    """Through a casing that is open at both ends: nothing is lapped, the ends go into the seam."""
    actions = (
        Action("insert-elastic-try"),
        Action("insert-elastic-write"),
        Action("insert-elastic-cut-flat"),
        Action("insert-elastic-mark-flat"),
        Action("insert-elastic-thread-flat"),
        zigzag_set(done.sewn[0].stitch),
        Action("insert-elastic-bar-flat"),
        Action("insert-elastic-spread-flat"),
    )
    values: Values = {
        "band": Pieces((facts.casing.piece,)),
        "casing": Length(facts.casing.length),
        "loop": Length(facts.loop),
        "cut": Length(facts.cut),
        "lap": Length(overlap),
        "half-lap": Length(overlap / 2),
        "lap-off": Length(overlap / 10, "off"),
    }
    cautions = (SAFETY_PIN_LAST, NO_FLAME_ON_ENDS, TIGHT_ELASTIC)
    return Instructions("insert-elastic-title", "insert-elastic-aim-flat", actions, values, cautions, FLAT_TOOLS)


TECHNIQUE = InsertElastic()
