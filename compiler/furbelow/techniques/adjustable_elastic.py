"""Draw elastic with buttonholes through a casing, one end sewn fast and the other buttoned on inside, to be let out later.

What it does: sews one end fast beside the gap, draws the other round and out again, hems it, and sews a flat button on inside.
Edges before and after: an open, empty casing whose gap is on the inside before; its elastic in and buttoned, its gap left open
    between two bars, after.
Allowance: none; the elastic is longer by what it may be let out, and by both ends.
Example: `- adjustable elastic: {elastic: slotted, into: skirt.top, length: waist_girth - 8 cm, let out: 6 cm, button: 12 mm}`
Source: common practice, no source. Buttons that come off choke small children: CEN/TR 16792:2014.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing
from furbelow.garment.fasteners import Fastener
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Held, Ledger, Lies, OnCloth, Window
from furbelow.garment.message import Length, Part, Pieces, Supply, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import FastenerKind, Step, SupplyKind
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
from furbelow.techniques.shared.cautions import (
    HAND_NEEDLE,
    NO_FLAME_ON_ENDS,
    SAFETY_PIN_LAST,
    SMALL_PARTS,
    TIGHT_ELASTIC,
)
from furbelow.techniques.shared.elastics import does_not_go_in
from furbelow.techniques.shared.laying import button_window, filled
from furbelow.techniques.shared.zigzag import zigzag_set

FAST = Fraction(20)  # of the end that is sewn fast, folded under by half
HEM = Fraction(20)  # of the end that is buttoned, folded under twice
REACH = Fraction(30)  # from the gap to the button, so that the end lies flat when it is buttoned
USUAL_OUT, LEAST_OUT = Fraction(40), Fraction(20)  # to let out, by which it is worth the button; house rule
SLOTS = Fraction(25)  # about, from one buttonhole of the elastic to the next as it is sold; common practice, no source
END = Part("use-elastic-end")


class Buttoned(NamedTuple):
    """Elastic in its casing, in mm: cut length, round at the first wearing and let out all the way, how wide its button is, and
    the casing before."""

    cut: Fraction
    first: Fraction
    out: Fraction
    button: Fraction
    casing: Casing


class AdjustableElastic:
    name = "adjustable elastic"
    about = "Draw elastic with buttonholes through a casing; its end buttons on inside and can be let out."
    pictures = (Picture.BUTTONED_ELASTIC,)
    parameters = {
        "elastic": Parameter("The elastic with buttonholes.", Kind.MATERIAL, supplies=(SupplyKind.ELASTIC,)),
        "into": Parameter("The casing, its gap on the inside: the edge that was folded down, or a band.", Kind.CASING),
        "length": Parameter("How long it is round at the first wearing, at rest.", Kind.LENGTH),
        "let out": Parameter("How much longer it can be made later.", Kind.LENGTH, "6 cm"),
        "button": Parameter("How wide the button is across, where it is none of the materials.", Kind.LENGTH, "12 mm"),
        "with": Parameter("The button, where it is one of the materials.", Kind.MATERIAL, "", (SupplyKind.FASTENING,)),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, out = done.step.written, done.step.mm("let out")
        facts, name = facts_of(done, Buttoned), edge_of(written, "into")
        reserve = Window(
            "let out", "a reserve", out, least=USUAL_OUT, sewable_least=LEAST_OUT, why="the next buttonhole"
        )
        windows = (reserve, button_window(facts.button))
        held = Held(
            "length", f"the casing in `{name}`", facts.casing.piece, facts.casing.length, facts.first, drawn=True
        )
        return OnCloth(filled(ledger, facts.casing, Lies.ELASTIC, "the elastic", "into"), windows, (held,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        elastic, pieces = word_of(written, "elastic"), casing_in(bench, edge_of(written, "into"))
        casing = casing_at(bench, written, "into")
        if not isinstance(casing, Casing):
            return refused(bench, step, pieces, casing)
        width, first, out = width_of(solved, elastic), step.mm("length"), step.mm("let out")
        fault = _opens_outside(written, casing) or does_not_go_in(say, step, casing, elastic, first + out)
        if fault:
            return refused(bench, step, pieces, fault)
        own = word_of(written, "with") if "with" in written.args else ""
        button = (width_of(solved, own) if own else Fraction(0)) or step.mm("button")
        cut = first + out + REACH + FAST + HEM
        used = (
            Used(elastic, cut, 1, Part("use-elastic", {"piece": Pieces((casing.piece,))})),
            Used(own, Fraction(1), 1, END)
            if own
            else Used.of_ours(Fastener(FastenerKind.FLAT_BUTTON, button), Fraction(1), END),
        )
        after = bench.with_casing(casing._replace(elastic=elastic, elastic_length=first, open=False, buttoned=True))
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=(Sewn(StitchType.ZIGZAG, 6 * width, 1, Fraction(2)), Sewn(StitchType.HAND, 2 * width, 1, Fraction(2))),
            used=used,
            setup=SetUp.ZIGZAG,
            handled=casing.length,
            facts=Buttoned(cut, first, first + out, button, casing),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, written = facts_of(done, Buttoned), done.step.written
        bars = (
            () if facts.casing.in_seam else ("adjustable-elastic-bars",)
        )  # those of a slit are sewn when it is opened
        names = (
            *bars,
            "adjustable-elastic-try",
            "adjustable-elastic-cut",
            "adjustable-elastic-lay-end",
            "adjustable-elastic-fast",
            "adjustable-elastic-thread",
            "adjustable-elastic-hem",
            "adjustable-elastic-button",
            "adjustable-elastic-close",
        )
        actions = [Action(name) for name in names]
        values: Values = {
            "elastic": Supply(word_of(written, "elastic")),
            "piece": Pieces((facts.casing.piece,)),
            "gap": Length(facts.casing.gap),
            "first": Length(facts.first),
            "out": Length(facts.out),
            "more": Length(facts.out - facts.first),
            "cut": Length(facts.cut),
            "reach": Length(REACH),
            "fast": Length(FAST),
            "half-fast": Length(FAST / 2),
            "hem": Length(HEM),
            "half-hem": Length(HEM / 2),
            "button": Length(facts.button),
            "slots": Length(SLOTS, "about"),
        }
        tools = (Tool.JOINING_ELASTIC, Tool.SAFETY_PINS, Tool.HAND_NEEDLE)
        cautions = (SAFETY_PIN_LAST, HAND_NEEDLE, NO_FLAME_ON_ENDS, TIGHT_ELASTIC, SMALL_PARTS)
        title, aim = "adjustable-elastic-title", "adjustable-elastic-aim"
        return Instructions(title, aim, (zigzag_set(done.sewn[0].stitch), *actions), values, cautions, tools)


def _opens_outside(step: Step, casing: Casing) -> Fault | None:
    if casing.flat or casing.holes or casing.channels > 1:
        how = "flat" if casing.flat else "made for a cord" if casing.holes else f"divided in {casing.channels}"
        return fault_at(
            step,
            "into",
            "FB322",
            f"the casing in `{casing.name}` is {how}, and elastic that buttons goes round in one closed channel",
            help="use a casing that is closed all round, of one channel",
        )
    if casing.name != casing.piece or casing.in_seam:
        return None
    return fault_at(
        step,
        "into",
        "FB322",
        f"the gap in `{casing.name}` is on the outside, and the end of the elastic is buttoned inside",
        help="write `gap in: seam` in the step that makes the casing",
    )


TECHNIQUE = AdjustableElastic()
