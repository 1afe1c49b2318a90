"""Join the two ends of a strip to a ring, or several panels to one ring.

What it does: sews start to end, right sides together, through every tier of the unit.
Edges before and after: start and end raw or neatened before, sewn after; top and bottom become rings.
Allowance: the seam, at start and at end of every piece it passes through.
Example: `- join ends: {of: flounce, seam: 1 cm}`
Source: bearing seams of 1 cm with a 1-2 mm stitch are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Ply, Seam, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
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
    fault_at,
    refused,
    word_of,
    words_of,
)
from furbelow.garment.tolerance import round_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.marks import tagged
from furbelow.techniques.shared.preconditions import seam_too_narrow, strips_not_joined

TAG = Fraction(100)  # below every seam and casing that may come at the top, and above the middle
EACH, ONE = "a ring each", "one ring"


class JoinEnds:
    name = "join ends"
    about = "Close a strip to a ring, or sew panels side by side to one ring."
    pictures = (Picture.PIECES, Picture.SEWN_SEAM)
    parameters = {
        "of": Parameter("The piece, or every tier of the unit, that the seam passes through.", Kind.PIECES),
        "seam": Parameter("Seam allowance at each end.", Kind.LENGTH, "1 cm"),
        "into": Parameter("A ring of each copy, or one ring of all copies.", (EACH, ONE), EACH),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return tuple(Allowance(piece, side, ("seam",)) for piece in words_of(step, "of") for side in ("start", "end"))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces = words_of(step.written, "of")
        fault = self._not_ready(bench, step, pieces) or seam_too_narrow(
            solved, Phrasing(solved, room), step, "seam", pieces
        )
        if fault:
            return refused(bench, step, pieces, fault)
        seam, first = step.mm("seam"), pieces[0]
        copies = bench.cloths[first].copies
        merged = copies if word_of(step.written, "into") == ONE else 1
        length = sum((_open_depth(bench, piece) for piece in pieces), Fraction(0))
        after = bench
        for piece in pieces:
            cloth = bench.cloths[piece]
            left = copies // merged
            after = after.with_cloths(cloth._replace(ring=True, copies=left))
            for side in ("top", "bottom"):
                edge = bench.edge(f"{piece}.{side}")
                after = after.with_edges(
                    edge._replace(
                        copies=left,
                        cloth_length=(edge.cloth_length - 2 * seam) * merged,
                        set_length=(edge.set_length - 2 * seam) * merged,
                    )
                )
            for side in ("start", "end"):
                edge = bench.edge(f"{piece}.{side}")
                after = after.with_edges(edge._replace(state=State.SEWN, used=edge.used + seam))
        closing = Seam(
            f"{first}.ends",
            tuple(f"{piece}.{side}" for piece in pieces for side in ("start", "end")),
            tuple(Ply(piece, 2) for piece in pieces),
            length,
            copies,
            seam,
            "301",
            State.NEATENED if self._neat(bench, pieces) else State.RAW,
        )
        sewn = Sewn(StitchType.LOCK, length, copies, room.seam_stitch, f"side seam of {_named(solved, pieces)}")
        return Performed(
            step,
            bench,
            after.with_seams(closing),
            pieces,
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            pinned=length * copies,
        )

    def _not_ready(self, bench: Bench, step: SolvedStep, pieces: tuple[str, ...]) -> Fault | None:
        written = step.written
        if fault := strips_not_joined(bench, written, "of", pieces):
            return fault
        for piece in pieces:
            if bench.cloths[piece].ring:
                return fault_at(
                    written,
                    "of",
                    "FB307",
                    f"`{piece}` is a ring already",
                    help=f"leave `{piece}` out, or take out the earlier step that closes it",
                )
            left_out = [other for other in bench.unit(piece) if other not in pieces]
            if left_out:
                others = " and ".join(f"`{name}`" for name in left_out)
                return fault_at(
                    written,
                    "of",
                    "FB308",
                    f"the side seam of `{piece}` passes through {others} too, sewn to it",
                    notes=("once tiers are sewn together flat, one seam closes them all",),
                    help=f"write `of: [{', '.join(bench.unit(piece))}]`",
                )
            if bench.cloths[piece].copies != bench.cloths[pieces[0]].copies:
                return fault_at(
                    written,
                    "of",
                    "FB305",
                    f"there are {bench.cloths[piece].copies} of `{piece}` and {bench.cloths[pieces[0]].copies} of"
                    f" `{pieces[0]}`",
                    help="close pieces of different counts in steps of their own",
                )
        if len({bench.units[piece] for piece in pieces}) > 1:
            return fault_at(
                written,
                "of",
                "FB309",
                "these pieces are not sewn together, so one seam can't close them",
                help="give each of them its own `join ends` step",
            )
        return None

    def _neat(self, bench: Bench, pieces: tuple[str, ...]) -> bool:
        return all(
            bench.edge(f"{piece}.{side}").state is not State.RAW for piece in pieces for side in ("start", "end")
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        pieces, seam = done.touches, done.step.mm("seam")
        copies = done.before.cloths[pieces[0]].copies
        one_ring = word_of(done.step.written, "into") == ONE
        ring = done.after.edge(f"{pieces[0]}.top")
        the, length = say.the(pieces), say.length(done.sewn[0].length)
        stitch = say.stitch(done.sewn[0].stitch)
        if one_ring and copies > 1:
            lay = f"Lay the {say.count(copies, say.piece(pieces[0]), 'pieces of the ' + say.piece(pieces[0]))} right sides together and pin the side edges, top to top."
            title = f"Sew the {say.piece(pieces[0])} together to a ring"
        else:
            lay = f"Fold {the} right sides together so that the two short ends meet, and pin them along {length}."
            title = f"Close {the} to a ring"
        if say.room.hold_with == "clips":
            lay = lay.replace("pin ", "clip ")
        if len(pieces) > 1:
            lay += " Bring the seams between the tiers exactly together, margins upwards, and pin there first."
        checked = pieces[0] if len(pieces) == 1 else pieces[-1]
        edge = done.after.edge(f"{checked}.bottom")
        round_it = say.length(edge.set_length)
        pieced = any(say.joins.get(piece, 0) for piece in pieces)
        actions = (
            OwnAction(
                lay,
                check="The strip is not twisted: it lies flat as a band." if not one_ring else "",
                remedy="If it is twisted, take one end out and turn it over." if not one_ring else "",
                chain=say.chain(copies),
            ),
            OwnAction(
                f"Sew {length}, {say.length(seam)} from the {'edge' if one_ring and copies > 1 else 'ends'}, {stitch}, a few stitches back at both ends. Fold both margins to"
                " the same side with your fingernail; either side will do.",
                check="Its margin stands on the wrong side, as those of the joins do." if pieced else "",
                chain=say.chain(copies),
            ),
            OwnAction(
                f"Measure round the {'lower ' if len(pieces) > 1 else ''}edge of {say.the(checked)}: {round_it}.",
                check=f"The ring measures {round_it} all round.",
                tolerance=f"{say.off(round_off(done.after, edge, say))} more or less",
                remedy="If it is too long, sew the seam again a little wider; if too short, unpick it and sew it narrower.",
                chain=say.chain(ring.copies),
            ),
            *tag(done, pieces, say),
        )
        return OwnInstructions(
            title, f"{the[0].upper()}{the[1:]} {'are' if len(pieces) > 1 else 'is'} closed.", actions, (PINS,)
        )


def side_seam(bench: Bench, pieces: Sequence[str], say: Phrasing) -> str:
    """The seam that marks are measured from, told apart where there are others."""
    return f"the side seam{' with the bright thread' if tagged(bench, pieces, say) else ''}"


def tag(done: Performed, pieces: Sequence[str], say: Phrasing) -> tuple[OwnAction, ...]:
    """Tying the bright thread into the side seam of a ring that has other upright seams too; nothing where it has none."""
    cloth = done.after.cloths[pieces[0]]
    if not tagged(done.after, pieces, say):
        return ()
    seam = "this seam" if done.before.cloths[pieces[0]].copies == cloth.copies else "one of these seams"
    down = min(TAG, new_length(done) / 4)
    return (
        OwnAction(
            f"Tie a bright thread into {seam}, {say.about(max(Fraction(down // 5 * 5), Fraction(20)))} below its top end. It is the side"
            " seam from which all marks are measured.",
            check="The thread lies nearer to the top edge than to the bottom edge.",
            chain=say.chain(cloth.copies),
        ),
    )


def new_length(done: Performed) -> Fraction:
    """How long the seam is that a step closed a ring with."""
    return next(seam.length for name, seam in done.after.seams.items() if done.before.seams.get(name) is not seam)


def _open_depth(bench: Bench, piece: str) -> Fraction:
    """How far a side seam runs along this piece: its cut depth less what turns and seams have taken."""
    return bench.cloths[piece].piece.cut_depth - bench.edge(f"{piece}.top").used - bench.edge(f"{piece}.bottom").used


def _named(solved: Solved, pieces: tuple[str, ...]) -> str:
    return " and ".join(f"the {solved.pieces[piece].label}" for piece in pieces)


PINS = (CautionKind.NEEDLE, "Take each pin out before it reaches the needle, and count them back into the box.")

TECHNIQUE = JoinEnds()
