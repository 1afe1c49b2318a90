"""Draw a cord through a casing; its ends come out of the gap and are tied.

What it does: bars the gap in front, pulls the cord through, fastens it behind and finishes its ends. Through a flat casing it
    goes from end to end, and is tied round the waist.
Edges before and after: an open, empty casing before; the casing holds a cord, its ends out of the gap or of both its ends, after.
Allowance: none. The cord takes the length round the casing, both ends, and what finishes them.
Example: `- drawstring: {cord: cord, into: waistband, ends: 14 cm, for: child}`
Source: children up to 14 years: waist cord ends of 14 cm at most with the garment open, 28 cm closed: EN 14682:2007, of
    which a newer edition (2014) is in force: check it, and local rules.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, Lies, LooseEnd, OnCloth, Window
from furbelow.garment.message import Length, Part, Pieces, Supply, Values, flag
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
from furbelow.techniques.shared.casings import casing_at, casing_in, holes_said
from furbelow.techniques.shared.cautions import CORD_DRAWN, CORD_OPEN, CORDS, HAND_NEEDLE, NO_FLAME_ON_ENDS, SAFETY_PIN
from furbelow.techniques.shared.cords import CHILD, GROWN
from furbelow.techniques.shared.laying import filled
from furbelow.techniques.shared.zigzag import zigzag_set

PASS = Fraction(3)
THROUGH = Fraction(1)  # a hole wider than the cord by so much at least: its edge gives; house rule, maker to confirm
ENDS_OFF = Fraction(5)
FOLD = Fraction(20)  # of each end of a child's cord: folded under twice and sewn
KNOT = Fraction(40)  # of each end of a grown-up's cord: what a knot takes; house rule, maker to confirm
BEYOND = Fraction(10)  # of cord behind its knot


class Threaded(NamedTuple):
    """A cord in its casing: its cut length, how far each end hangs out once the waist is drawn in, the casing, in mm.

    finish: what the knot or the fold at each end takes. A grown-up's ends are knotted; on a child a knot catches, and
    free ends of cords bear none (EN 14682, from memory: check the newest edition).
    """

    cut: Fraction
    drawn: Fraction | None  # None where no waist is known
    casing: Casing
    finish: Fraction
    knotted: bool


LEAST_END, USUAL_END = Fraction(20), Fraction(100)  # when flat, so as not to slip in, and to tie; house rule

TOOLS = (Tool.BARS, Tool.SAFETY_PIN, Tool.TEXTILE_GLUE)


class Drawstring:
    name = "drawstring"
    about = "Draw a cord or ribbon through a casing, with its ends out of the gap."
    pictures = (Picture.CORD,)
    parameters = {
        "cord": Parameter(
            "The cord, one of the materials.",
            Kind.MATERIAL,
            supplies=(SupplyKind.CORD, SupplyKind.TRIM, SupplyKind.ELASTIC),
        ),
        "into": Parameter("The casing: the band, or the edge that was folded down.", Kind.CASING),
        "ends": Parameter("How far each end hangs out when the casing lies flat.", Kind.LENGTH, "14 cm"),
        "for": Parameter("Who wears it; cords on children have limits.", (CHILD, GROWN), CHILD),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        casing = facts_of(done, Threaded).casing
        # It is tied once the waist is drawn in, and then the ends are longer.
        drawn = facts_of(done, Threaded).drawn
        tied = done.step.mm("ends") if drawn is None else drawn
        ends, given = done.step.mm("ends"), tied - done.step.mm("ends")
        why = "it has to be tied, once the waist is drawn in"
        knot = Window("ends", "a cord end", ends, least=USUAL_END - given, sewable_least=LEAST_END - given, why=why)
        flat = Window("ends", "a cord end with the casing open", ends, sewable_least=LEAST_END, why="it slips in")
        side = casing.name.partition(".")[2] or "top"
        loose = (LooseEnd("ends", casing.piece, side, tied),)
        return OnCloth(filled(ledger, casing, Lies.CORD, "the cord", "into"), (knot, flat), loose=loose)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        cord, name = word_of(written, "cord"), edge_of(written, "into")
        pieces = casing_in(bench, name)
        casing = casing_at(bench, written, "into")
        if not isinstance(casing, Casing):
            return refused(bench, step, pieces, casing)
        ends, drawn = step.mm("ends"), _drawn_ends(solved, casing, step.mm("ends"))
        if fault := _not_to_thread(step, say, casing, cord, width_of(solved, cord)) or _too_long(
            step, say, ends, drawn
        ):
            return refused(bench, step, pieces, fault)
        knotted = word_of(written, "for") == GROWN
        finish = KNOT if knotted else FOLD
        cut = casing.length + 2 * (ends + finish)
        after = bench.with_casing(casing._replace(cord=cord, open=False))
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=(Sewn(StitchType.ZIGZAG, (2 if casing.flat or casing.holes else 4) * casing.width, 1, Fraction(1)),),
            used=(Used(cord, cut, 1, Part("use-cord", {"piece": Pieces((casing.piece,))})),),
            setup=SetUp.ZIGZAG,
            handled=casing.length,
            facts=Threaded(cut, drawn, casing, finish, knotted),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts = facts_of(done, Threaded)
        casing = facts.casing
        finish = Action("drawstring-knot" if facts.knotted else "drawstring-fold")
        if casing.flat:
            actions: tuple[Action, ...] = (
                Action("drawstring-cut"),
                Action("drawstring-wrap"),
                Action("drawstring-thread-flat"),
                Action("drawstring-even"),
                zigzag_set(done.sewn[0].stitch),
                Action("drawstring-bar-flat"),
                finish,
            )
        else:
            zigzag = zigzag_set(done.sewn[0].stitch)
            actions = (
                *(() if casing.holes else (zigzag, Action("drawstring-bars"))),
                Action("drawstring-cut"),
                Action("drawstring-wrap"),
                Action("drawstring-thread-holes" if casing.holes else "drawstring-thread"),
                Action("drawstring-even"),
                *((zigzag,) if casing.holes else ()),
                Action("drawstring-bar-behind-holes" if casing.holes else "drawstring-bar-behind"),
                finish,
            )
        values: Values = {
            "cord": Supply(word_of(done.step.written, "cord")),
            "band": Pieces((casing.piece,)),
            "casing": Length(casing.length),
            "gap": Length(casing.gap),
            "cut": Length(facts.cut),
            "ends": Length(done.step.mm("ends")),
            "finish": Length(facts.finish),
            "half-finish": Length(facts.finish / 2),
            "out": Length(done.step.mm("ends") + facts.finish),
            "beyond": Length(BEYOND, "about"),
            "ends-off": Length(ENDS_OFF, "about"),
            "waist-known": flag(facts.drawn is not None),
            "drawn": Length(facts.drawn or Fraction(0)),
            **holes_said(casing.holes),
        }
        by_hand, needle = ((), ()) if facts.knotted else ((HAND_NEEDLE,), (Tool.HAND_NEEDLE,))
        cautions = (CORDS, SAFETY_PIN, *by_hand, NO_FLAME_ON_ENDS)
        aim = "drawstring-aim-flat" if casing.flat else "drawstring-aim"
        return Instructions("drawstring-title", aim, actions, values, cautions, (*TOOLS, *needle))


def _drawn_ends(solved: Solved, casing: Casing, ends: Fraction) -> Fraction | None:
    """How far each end hangs out when the waist is drawn in; None where no waist is known."""
    waist = solved.values.get("waist_girth")
    if waist is None:
        return None
    given = (casing.length - waist.value.as_length_mm()) / 2
    return ends + (given if casing.flat else max(Fraction(0), given))


def _not_to_thread(step: SolvedStep, say: Phrasing, casing: Casing, cord: str, width: Fraction) -> Fault | None:
    written, name = step.written, casing.name
    if casing.elastic or casing.cord:
        return fault_at(
            written,
            "into",
            "FB322",
            f"the casing in `{name}` holds `{casing.elastic or casing.cord}` already",
            help="leave one of the two steps out",
        )
    if not casing.open:
        return fault_at(
            written,
            "into",
            "FB322",
            f"the gap in `{name}` is sewn shut before the cord goes in",
            help="leave `close gap` out: the cord comes out of the gap",
        )
    if casing.in_seam:
        return fault_at(
            written,
            "into",
            "FB322",
            f"the gap in `{name}` is opened on the inside, and the ends of a cord come out of it",
            help="leave the gap in the row of the casing, at the front",
        )
    if width > casing.width:
        return fault_at(
            written,
            "cord",
            "FB323",
            f"`{cord}` is {say.length(width)} wide and the casing is {say.length(casing.width)} inside,"
            f" {say.length(width - casing.width)} too narrow",
            help="make the casing deeper or choose a narrower cord",
        )
    if casing.holes and casing.holes.size < width + THROUGH:
        return fault_at(
            written,
            "into",
            "FB323",
            f"the {casing.holes.kind} of {say.length(casing.holes.size)} are too narrow for a cord {say.length(width)} wide,"
            f" {say.length(width + THROUGH - casing.holes.size)} short",
            help=f"work them {say.length(width + THROUGH)} or more",
        )
    if not casing.flat and not casing.holes and casing.gap < width + PASS:
        return fault_at(
            written,
            "into",
            "FB323",
            f"the gap of {say.length(casing.gap)} is too narrow for a cord {say.length(width)} wide,"
            f" {say.length(width + PASS - casing.gap)} short",
            help="leave a wider gap in the casing",
        )
    return None


def _too_long(step: SolvedStep, say: Phrasing, ends: Fraction, drawn: Fraction | None) -> Fault | None:
    if word_of(step.written, "for") == GROWN:
        return None
    for hang, most, how in ((ends, CORD_OPEN, "flat"), (drawn, CORD_DRAWN, "drawn in")):
        if hang is not None and hang > most:
            return fault_at(
                step.written,
                "ends",
                "FB348",
                f"the cord's ends hang out {say.length(hang)} when the casing is {how}, and on a child {say.length(most)} is the"
                f" most, {say.length(hang - most)} less",
                notes=("EN 14682:2007, children up to 14 years; a newer edition is in force",),
                help=f"make the ends {say.length(max(ends - (hang - most), Fraction(0)))}"
                + (", or use elastic" if how == "drawn in" else ", or write `for: grown-up` where no child wears it"),
            )
    return None


TECHNIQUE = Drawstring()
