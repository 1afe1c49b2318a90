"""No raw edge of a ravelling cloth is left.

Guarantees: every edge of every piece of a cloth marked `ravels: yes` ends neatened, hemmed, sewn or enclosed.
Cannot know: whether the cloth ravels as the spec says, or how well the edge was neatened.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment import mends
from furbelow.garment.bench import State
from furbelow.garment.message import Part, Pieces, Things, edge_said
from furbelow.garment.spec import ArgValue, EdgeName, Word
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-no-raw-edge"
FOLDS, FOLDED = "fold ends", Fraction(10)  # the number by which ends are folded in, and what is usual


def prove(run: Run) -> Proof:
    if not run.whole:
        return Proof(CLAIM)
    faults, finished = [], 0
    may_stay: list[Pieces] = []
    for name, edge in run.final.edges.items():
        piece, _, side = name.partition(".")
        if not side or piece not in run.touched or not run.sound([piece]) or name in run.final.layered:
            continue
        if edge.state is not State.RAW:
            finished += 1
        elif not run.ravels(piece):
            may_stay.append(edge_said(edge))
        else:
            cloth = run.solved.pieces[piece].piece
            mend = _mend(run, piece, side)
            faults.append(
                Fault(
                    "FB402",
                    f"the {side} edge of the {run.say.piece(piece)} is still raw at the end, and `{cloth.cloth.text}` ravels",
                    Label(cloth.span, f"its {side} edge is never hemmed, neatened or sewn in"),
                    (Label(run.solved.materials[cloth.cloth.text].material.span, "this cloth ravels"),),
                    help=mend.help,
                    change=mend.change,
                )
            )
    shown = [Part("proof-edges-finished", {"edges": finished})]
    if may_stay:
        shown.append(Part("proof-edges-stay-raw", {"edges": Things(tuple(may_stay))}))
    return Proof(CLAIM, tuple(shown), tuple(faults))


def _mend(run: Run, piece: str, side: str) -> mends.Mend:
    """How this edge is finished: hemmed, or sewn to the other end; on a flat garment folded in with its strip, or hemmed
    before anything else is done to its piece."""
    name, first = f"{piece}.{side}", next((done for done in run.performed if piece in done.touches), run.performed[-1])
    if side in ("start", "end"):
        folds = next((done.step.written for done in run.performed if _folds_ends(done, piece)), None)
        if folds:
            return mends.write(folds, FOLDS, run.say.within(FOLDED, least=True))
        if any(run.final.cloths[other].ring for other in run.final.unit(piece)):
            row = f"join ends: {{of: {piece}}}"
            return mends.after(run.performed[-1].step.written, row, f"add a step such as `- {row}`")
        row = f"narrow hem: {{edge: {name}}}"
        return mends.before(first.step.written, row, f"put `- {row}` before the first step on `{piece}`")
    row = f"narrow hem: {{edge: {name}}}"
    return mends.after(run.performed[-1].step.written, row, f"add a step such as `- {row}`")


def _folds_ends(done: Performed, piece: str) -> bool:
    """Whether this step sews the piece on as a strip whose ends it can fold in."""
    named = (arg.value for name, arg in done.step.written.args.items() if name != "edge")
    return FOLDS in done.step.amounts and any(str(value).partition(".")[0] == piece for value in map(_name, named))


def _name(value: ArgValue) -> str:
    return value.text if isinstance(value, Word) else str(value) if isinstance(value, EdgeName) else ""
