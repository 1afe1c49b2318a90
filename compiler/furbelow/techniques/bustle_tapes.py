"""Sew tapes with rings inside the back of a skirt, whose cords draw it up in swags until the hem clears the floor.

What it does: sews tapes down the inside of the back, rings on each tape, and threads a cord from the lowest ring up through
    all others. Drawn and tied, each cord gathers its tape; let down, the skirt trails again. Where the hem dips, the outer
    tapes are drawn up by less, so that it hangs level.
Edges before and after: no edge changes. The piece knows how far its hem is drawn up behind.
Allowance: none. The tapes lie inside the piece, above its hem and below its top edge.
Example: `- bustle tapes: {on: skirt, tape: tape, rings: ring, cord: cord, below top: 20 cm, every: 10 cm, each: 6, up: 30 cm}`
Source: plane geometry: a tape of so many rings is as long as the spaces between them, and drawn up it is shorter by what the
    hem rises. Tapes of three or four to a back, rings every 8 to 12 cm: common practice, no source. That cloth falls flat again
    one space beside the outermost tape: house rule, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, DrawnUp, Edge
from furbelow.garment.levels import levels_of
from furbelow.garment.lying import Band, Ledger, Lies, LooseEnd, Occupant, OnCloth, Window
from furbelow.garment.matching import Places
from furbelow.garment.message import Length, One, Part, Pieces, Stitch, Supply, Things, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    Caution,
    CautionKind,
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.dipped_hem import rise_at
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT
from furbelow.techniques.shared.marks import back_gore, front_gore, seam_said

TAIL = Fraction(300)  # of each cord beyond its tape, to take hold of and to tie
TURN = Fraction(10)  # folded under at both ends of a tape
STITCHES = 8  # that hold a ring
LEAST_UP = Fraction(10)  # a tape that draws up less is not worth its cord; house rule, maker to confirm
LEAST_LEFT = Fraction(1, 4)  # of a tape drawn up: the cloth lies in folds on it; house rule, maker to confirm
CLOSEST, FURTHEST = Fraction(40), Fraction(150)  # between rings: nearer they lie on each other, further the folds sag
FROM = ("seam", "fold", "front", "back")
MARKED = (Action("bustle-tapes-mark-upper"), Action("bustle-tapes-mark-lower"), Action("bustle-tapes-lines"))
TRIP = Caution(CautionKind.TRIP, "caution-train")
CHILD = Caution(CautionKind.CHILD, "caution-bustle-cords")


class Taped(NamedTuple):
    """many tapes, `apart` mm from each other at their lower ends, the middle of all at the middle of the back; each `long`, from
    `below` the edge as it is now, with so many rings; the hem goes up by `up`; each cord is cut so long.

    upper: how much of the cloth round their lower ends there is round the upper ones, where they lie closer by as much.
    ups: how far each is drawn up, that in the middle or the two nearest to it first: less where the hem is cut higher.
    """

    many: int
    apart: Fraction
    below: Fraction
    down: Fraction
    long: Fraction
    rings: int
    up: Fraction
    cord: Fraction
    upper: Fraction
    ups: tuple[Fraction, ...]

    @property
    def left(self) -> tuple[Fraction, ...]:
        """How long each tape is when it is drawn up, those in the middle first."""
        return tuple(self.long - up for up in self.ups)

    @property
    def alike(self) -> bool:
        return len(set(self.ups)) == 1

    def beside(self) -> tuple[Fraction, ...]:
        """How far the tapes to one side lie from the middle of the back at their lower ends, the nearest first."""
        first = self.apart if self.many % 2 else self.apart / 2
        return tuple(first + self.apart * at for at in range(self.many // 2))


class BustleTapes:
    name = "bustle tapes"
    about = "Sew tapes with rings and cords inside the back, which draw up a train."
    pictures = (Picture.BUSTLE_TAPES,)
    parameters = {
        "on": Parameter("The piece whose back is drawn up.", Kind.PIECE),
        "tape": Parameter("The tape that carries the rings.", Kind.MATERIAL, None, (SupplyKind.TRIM,)),
        "rings": Parameter("The rings, counted singly.", Kind.MATERIAL, None, (SupplyKind.FASTENING,)),
        "cord": Parameter("The cord of each tape.", Kind.MATERIAL, None, (SupplyKind.CORD, SupplyKind.TRIM)),
        "below top": Parameter("From the finished top edge of the piece down to the uppermost ring.", Kind.LENGTH),
        "every": Parameter("From ring to ring.", Kind.LENGTH, "10 cm"),
        "each": Parameter("How many rings a tape has.", Kind.NUMBER, "5"),
        "tapes": Parameter("How many tapes.", Kind.NUMBER, "3"),
        "apart": Parameter(
            "From tape to tape at their lower ends; a piece that flares has them closer above.", Kind.LENGTH, "15 cm"
        ),
        "up": Parameter("How far the hem is drawn up behind.", Kind.LENGTH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts, on = facts_of(done, Taped), word_of(done.step.written, "on")
        windows = (
            Window(
                "every",
                "a space",
                done.step.mm("every"),
                CLOSEST,
                FURTHEST,
                why="closer rings lie on each other, and between wider ones the folds sag",
            ),
            Window(
                "",
                "a rise at the outermost tapes",
                facts.ups[-1],
                LEAST_UP,
                why="the hem is cut as high there already; set the tapes closer, or take fewer",
            ),
            Window(
                "up",
                "a rise",
                facts.up,
                most=facts.long * (1 - LEAST_LEFT),
                why="the cloth lies in folds on the tape; take more rings or wider spaces",
            ),
        )
        # Tied in a bow at the uppermost ring, half of what is free hangs in each end.
        free = facts.below + (facts.cord - facts.long + facts.up) / 2
        return OnCloth(tuple(_tapes(done, ledger, solved, facts)), windows, loose=(LooseEnd("up", on, "top", free),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, on, say = step.written, word_of(step.written, "on"), Phrasing(solved, room)
        counts = {key: step.amounts[key].as_number() for key in ("each", "tapes")}
        for key, least in (("each", 2), ("tapes", 1)):
            if counts[key] < least or counts[key].denominator != 1:
                what = "rings" if key == "each" else "tapes"
                headline = (
                    f"{float(counts[key]):.4g} {what} can't be sewn; they are counted {least}, {least + 1}, {least + 2}"
                )
                help_ = f"write `{key}: {max(least, round(counts[key]))}`"
                return refused(bench, step, (on,), fault_at(written, key, "FB341", headline, help=help_))
        rings, many, every = int(counts["each"]), int(counts["tapes"]), step.mm("every")
        long = every * (rings - 1)
        takes = solved.length(f"{on}.top_takes") if f"{on}.top_takes" in solved.values else Fraction(0)
        down = takes + step.mm("below top")
        fault = _not_to_tape(bench, step, say, on, down + long, many)
        if fault:
            return refused(bench, step, (on,), fault)
        up, apart = step.mm("up"), step.mm("apart")
        cord = long + TAIL
        cloth = bench.cloths[on]
        after = bench.with_cloths(cloth._replace(drawn_up=DrawnUp(up, apart * (many + 1) / 2)))
        tape, ring, line = (word_of(written, key) for key in ("tape", "rings", "cord"))
        used = (
            Used(tape, long + 2 * TURN, many, Part("use-bustle-tape")),
            Used(ring, Fraction(rings), many, Part("use-bustle-rings")),
            Used(line, cord, many, Part("use-bustle-cord")),
        )
        sewn = (
            Sewn(StitchType.LOCK, 2 * long, many, room.seam_stitch),
            Sewn(StitchType.HAND, Fraction(20), rings * many, Fraction(2), singly=STITCHES),
        )
        below = down - bench.edge(f"{on}.top").used
        upper = bench.cloth_at(on, down) / bench.cloth_at(on, down + long)
        ups = tuple(_ups(bench, on, many, apart / (bench.cloth_at(on, down + long) / 4), up))
        facts = Taped(many, apart, below, down, long, rings, up, cord, upper, ups)
        return Performed(
            step, bench, after, (on,), sewn=sewn, used=used, setup=SetUp.STRAIGHT, pinned=long * many, facts=facts
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, on = done.step.written, facts_of(done, Taped), word_of(done.step.written, "on")
        top = done.before.edge(f"{on}.top")
        values: Values = {
            "piece": Pieces((on,)),
            "seam": seam_said(done.before, (on,), say),
            "from": One(_middle_from(done, top), FROM),
            "quarter": Length(done.before.cloth_at(on, facts.down) / 4),
            "tapes": facts.many,
            "middle": flag(facts.many % 2),
            "lower": Things(tuple(Length(off) for off in facts.beside())),
            "upper": Things(tuple(Length(off * facts.upper) for off in facts.beside())),
            "below": Length(facts.below),
            "foot": Length(facts.below + facts.long),
            "long": Length(facts.long),
            "cut": Length(facts.long + 2 * TURN),
            "turn": Length(TURN, "about"),
            "rings": facts.rings,
            "every": Length(done.step.mm("every")),
            "up": Length(facts.up),
            "left": Length(facts.left[0]),
            "lefts": Things(tuple(Length(left) for left in facts.left)),
            "cord-long": Length(facts.cord),
            "tape": Supply(word_of(written, "tape")),
            "ring-name": Supply(word_of(written, "rings")),
            "cord": Supply(word_of(written, "cord")),
            "stitch": Stitch(done.sewn[0].stitch),
            "off": Length(Fraction(5), "off"),
            "hold": One("pins", ("pins", "clips")),
        }
        actions = (
            Action("bustle-tapes-middle"),
            *((Action("bustle-tapes-mark-one"),) if facts.many == 1 else MARKED),
            Action("bustle-tapes-sew", facts.many),
            Action("bustle-tapes-stitch", facts.many),
            Action("bustle-tapes-rings", facts.many),
            Action("bustle-tapes-thread", facts.many),
            *(
                (Action("bustle-tapes-draw", facts.many),)
                if facts.alike
                else (Action(name, facts.many, run=True) for name in ("bustle-tapes-draw-each", "bustle-tapes-knot"))
            ),
            Action("bustle-tapes-mark-cord", facts.many),
            Action("bustle-tapes-tuck", facts.many),
        )
        cautions = (PINS_OUT, HAND_NEEDLE, TRIP, CHILD)
        return Instructions(
            "bustle-tapes-title",
            "bustle-tapes-aim",
            actions,
            values,
            cautions,
            (Tool.PINS, Tool.HAND_NEEDLE, Tool.SMALL_SAFETY_PINS),
            ruled=("bustle-tapes-lines", "bustle-tapes-middle"),
        )


def _ups(bench: Bench, on: str, many: int, apart: Fraction, up: Fraction) -> Iterator[Fraction]:
    """How far each tape draws the hem up, so that it hangs level: from the middle of the back outwards.

    A tape draws up the cloth half way to the one nearer to the middle, where it hangs lowest. apart: as a share of a quarter
    of the way round, which is the same share at the hem.
    """
    rises = _rises(bench, on)
    for at in range((many + 1) // 2):
        nearer = max(apart * (at - Fraction(many % 2, 2)), Fraction(0))
        yield max(up - (rise_at(rises, 2 - min(nearer, Fraction(2))) - rises[2]), Fraction(0))


def _rises(bench: Bench, on: str) -> Places:
    """How much higher than behind the hem below a piece is cut, with all that was cut up above it."""
    levels = levels_of(bench)
    below = [piece for piece, over in levels.over.items() if on in over]
    lowest = max((on, *below), key=lambda piece: levels.bottoms[piece])
    chain = [bench.cloths[each].rises for each in (lowest, *levels.over[lowest])]
    front, side, back = (sum((each[at] for each in chain), Fraction(0)) for at in range(3))
    return front, side, back


def _middle_from(done: Performed, top: Edge) -> str:
    """From where the middle of the back is found: the one back gore, else the front gore where no seam lies at the side, else
    the side seam."""
    on = word_of(done.step.written, "on")
    if back_gore(done.before, on):
        return "back"
    if front_gore(done.before, on):
        return "front"
    return "seam" if done.before.ring(top) else "fold"


def _tapes(done: Performed, ledger: Ledger, solved: Solved, facts: Taped) -> Iterator[Occupant]:
    """Each tape where it lies, three quarters round from the side seam; anywhere where the ring has several seams."""
    on, tape = word_of(done.step.written, "on"), word_of(done.step.written, "tape")
    down, wide = (
        ledger.sewn_band(on, facts.down, facts.down + facts.long),
        solved.materials[tape].amounts["width"].as_length_mm(),
    )
    whole = ledger.bench.cloths[on].piece.cut_length
    if ledger.bench.strips_round(on) > 1:
        return
    for number in range(facts.many):
        middle = whole * 3 / 4 + facts.apart * (number - Fraction(facts.many - 1, 2))
        yield Occupant(on, Lies.STRIP, "a bustle tape", down, Band(middle - wide / 2, middle + wide / 2), "below top")


def _not_to_tape(bench: Bench, step: SolvedStep, say: Phrasing, on: str, low: Fraction, many: int) -> Fault | None:
    written, cloth = step.written, bench.cloths[on]
    if not cloth.ring:
        return fault_at(
            written,
            "on",
            "FB304",
            f"`{on}` is still flat, and tapes lie at the middle of the back of a ring",
            help="close the ring before this step",
        )
    if cloth.copies > 1:
        headline = f"there are {cloth.copies} of `{on}`, and one is drawn up"
        return fault_at(written, "on", "FB305", headline, help="join the copies to one ring")
    if cloth.drawn_up:
        return fault_at(written, "on", "FB302", f"`{on}` has its tapes already", help="write all tapes in one step")
    hem = cloth.piece.cut_depth - bench.edge(f"{on}.bottom").used
    if low > hem:
        return fault_at(
            written,
            "below top",
            "FB312",
            f"the tapes would end {say.length(low - hem)} below the hem of `{on}`",
            help="take fewer rings, or begin higher up",
        )
    around = bench.cloth_at(on, low) / 2
    if step.mm("apart") * (many - 1) > around:
        return fault_at(
            written,
            "apart",
            "FB312",
            f"{many} tapes take {say.length(step.mm('apart') * (many - 1))} of the back, which is {say.length(around)} wide",
            help="set them closer, or take fewer",
        )
    up, long = step.mm("up"), step.mm("every") * (step.amounts["each"].as_number() - 1)
    if not 0 < up < long:
        return fault_at(
            written,
            "up",
            "FB312",
            f"a tape {say.length(long)} long can't be drawn up by {say.length(up)}",
            help=f"write a length above 0 and below {say.length(long)}",
        )
    return None


TECHNIQUE = BustleTapes()
