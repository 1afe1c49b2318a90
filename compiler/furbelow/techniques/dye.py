"""Dye a piece, or the garment as it is by then, or a trim before it is sewn on.

What it does: weighs the dye by the dry cloth or trim and dyes all of it in one bath.
Edges before and after: unchanged.
Allowance: none; cloth that shrinks is washed before it is cut.
Example: `- dye: {piece: [upper, flounce], with: red, depth: 2%}`
Source: dye by weight of fibre, textilecalculation.blogspot.com, December 2014; which dye for which fibre, see
    garment/dyeing.py; the order of the work common practice, no source. The dye maker's sheet comes before all of it.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.bench import Bench
from furbelow.garment.dyeing import DEEPEST, FIBRE_TAKES, dye_mass
from furbelow.garment.limits import dry_weight, trim_weight
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Number, Part, Pieces, Supply, Values, Weight
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Material, Step, SupplyKind
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
    Tool,
    Used,
    fault_at,
    refused,
    word_of,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.preconditions import no_length

CAUTIONS = (
    Caution(CautionKind.DYE, "dye-caution-powder"),
    Caution(CautionKind.STEAM, "dye-caution-bath"),
)
# Minutes that the cloth is turned in the bath: of 30 to 40 on the sheets of acid dyes (published 2010s), the longer.
IN_THE_BATH = Fraction(40)
TOOLS = (Tool.SCALE, Tool.DYE_PAN, Tool.GLOVES)


class Dye:
    name = "dye"
    about = "Dye pieces in one bath, the dye weighed by the cloth."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The piece or pieces to dye.", Kind.PIECES, ""),
        "trim": Parameter(
            "A trim to dye before it is sewn on, one of the materials.", Kind.MATERIAL, "", supplies=(SupplyKind.TRIM,)
        ),
        "length": Parameter("How much of the trim is dyed.", Kind.LENGTH, ""),
        "with": Parameter("The dye, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.DYE,)),
        "depth": Parameter("How much dye to the weight of the dry cloth; the dye's sheet says it.", Kind.NUMBER, "2%"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces = words_of(step.written, "piece") if "piece" in step.written.args else ()
        depth = step.amounts["depth"].as_number()
        trim = word_of(step.written, "trim") if "trim" in step.written.args else ""
        if fault := _nothing_to_dye(step, pieces, trim):
            return refused(bench, step, pieces, fault)
        faults = (*_depth(step.written, depth, room), *_fibres(step.written, pieces, trim, solved))
        if any(fault.severity is Severity.ERROR for fault in faults):
            return refused(bench, step, pieces, *faults)
        used = tuple(
            Used(
                word_of(step.written, "with"),
                dye_mass(dry_weight(solved, piece), depth),
                solved.pieces[piece].count,
                Part("use-dye", {"piece": Pieces((piece,))}),
            )
            for piece in pieces
        )
        if trim:
            grams = dye_mass(trim_weight(solved, trim, step.mm("length")), depth)
            used = (*used, Used(word_of(step.written, "with"), grams, 1, Part("use-dye-trim", {"trim": Supply(trim)})))
        return Performed(step, bench, bench, pieces, faults=faults, used=used, setup=SetUp.TABLE, tended=IN_THE_BATH)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        cloth = [dry_weight(say.solved, piece) * say.solved.pieces[piece].count for piece in done.touches]
        trim = word_of(done.step.written, "trim") if "trim" in done.step.written.args else ""
        if trim:
            cloth.append(trim_weight(say.solved, trim, done.step.mm("length")))
        grams = sum((use.amount * use.copies for use in done.used), Fraction(0))
        values: Values = {
            "pieces": Pieces(done.touches),
            "dye": Supply(word_of(done.step.written, "with")),
            "grams": Number(Fraction(ceil(grams * 10), 10), 1),
            "cloth": Weight(sum(cloth, Fraction(0))),
        }
        actions = ("dye-weigh", "dye-wet", "dye-bath", "dye-try", "dye-turn", "dye-rinse", "dye-dry")
        if trim and not done.touches:
            dyed = done.step.mm("length")
            said: Values = {
                **values,
                "trim": Supply(trim),
                "length": Length(dyed, "buy"),
                "needed": Length(say.needs.get(trim, dyed), "buy"),
            }
            only = (
                "dye-weigh-trim",
                "dye-wet-trim",
                "dye-bath-trim",
                "dye-try-trim",
                "dye-turn-trim",
                "dye-rinse-trim",
            )
            dry = Action("dye-dry-trim")
            bathed = (*map(Action, only), dry)
            return Instructions("dye-title-trim", "dye-aim-trim", bathed, said, CAUTIONS, (*TOOLS, Tool.BOARD))
        return Instructions("dye-title", "dye-aim", tuple(map(Action, actions)), values, CAUTIONS, TOOLS)


def _depth(step: Step, depth: Fraction, room: Workroom) -> tuple[Fault, ...]:
    if depth <= 0:
        return (fault_at(step, "depth", "FB313", "no dye is taken: `depth` is 0", help="write a share such as 2%"),)
    if depth > DEEPEST:
        shown, most = (f"{float(share * 100):.3g}%" for share in (depth, DEEPEST))
        headline = f"`depth` is {shown} of the cloth's weight, and no dye gets deeper above {most}"
        help_ = f"write {most} or less, as the dye's sheet says"
        return (fault_at(step, "depth", "FB313", headline, help=help_, severity=Severity.WARNING),)
    return ()


def _nothing_to_dye(step: SolvedStep, pieces: tuple[str, ...], trim: str) -> Fault | None:
    if bool(pieces) == bool(trim):
        said = "both a piece and a trim" if trim else "nothing"
        help_ = "name `piece`, or `trim` with its `length`; each has a bath of its own"
        return fault_at(step.written, None, "FB313", f"this bath is given {said} to dye", help=help_)
    if trim and "length" not in step.written.args:
        help_ = "write its `length`, such as `layers * skirt.length`"
        return fault_at(step.written, "trim", "FB313", f"how much of `{trim}` is dyed is not said", help=help_)
    return no_length(step, "length") if trim else None


def _fibres(step: Step, pieces: tuple[str, ...], trim: str, solved: Solved) -> tuple[Fault, ...]:
    """One fault for each cloth that the dye does not take on, or that nothing is known of."""
    dye = solved.materials[word_of(step, "with")].material
    cloths = dict.fromkeys((*(solved.pieces[piece].piece.cloth.text for piece in pieces), *((trim,) if trim else ())))
    found = (_fibre(step, dye, solved.materials[cloth].material) for cloth in cloths)
    return tuple(fault for fault in found if fault is not None)


def _fibre(step: Step, dye: Material, cloth: Material) -> Fault | None:
    takes = FIBRE_TAKES.get(cloth.fibre)
    if takes is None:
        headline = f"`{cloth.name}` is of {cloth.fibre}, and nothing is known here about dyeing it"
        return fault_at(step, _worked_on(step), "FB356", headline, help="dye a swatch first", severity=Severity.WARNING)
    if not takes:
        headline = f"`{cloth.name}` is of {cloth.fibre}, which takes no dye at home"
        return fault_at(step, _worked_on(step), "FB355", headline, help="buy the cloth in the colour wanted")
    if dye.dye_class is not None and dye.dye_class not in takes:
        good_for = " and ".join(fibre for fibre, classes in FIBRE_TAKES.items() if dye.dye_class in classes)
        return fault_at(
            step,
            "with",
            "FB355",
            f"`{cloth.name}` is of {cloth.fibre}, and `{dye.name}` is {dye.dye_class} dye: it would stay pale",
            notes=(f"{dye.dye_class} dye is for {good_for}",),
            help=f"take {' or '.join(takes)} dye for {cloth.fibre}",
        )
    return None


def _worked_on(step: Step) -> str:
    return "trim" if "trim" in step.args else "piece"


TECHNIQUE = Dye()
