"""What must stay hidden is shorter than what covers it, by the clearance asked.

Guarantees: the drop of each piece under `worn: hidden` and its clearance do not pass the lowest edge of the garment.
Cannot know: how the skirt swings, or a body whose back is longer than its front.
Source: an underskirt is 1 in shorter than the outer one: Ingalls, Text-Book on Domestic Art, 1911.
"""

from __future__ import annotations

from compiler.diagnostics import Fault, Label
from compiler.s3_rehearse.run import Proof, Run

CLAIM = "The lining stays hidden"


def prove(run: Run) -> Proof:
    solved, say = run.solved, run.say
    hidden, faults, shown = solved.spec.worn.hidden, [], []
    if not run.whole:
        return Proof(CLAIM, "not asked: the pieces do not hang together")
    if not run.sound(run.final.cloths):
        return Proof(CLAIM, "not asked: a step before it was refused")
    for piece, clearance in hidden.items():
        covers = {other: drop for other, drop in run.drops.items() if other not in hidden}
        longest = max(covers, key=lambda other: covers[other])
        left = covers[longest] - run.drops[piece]
        asked = solved.length(f"worn.hidden.{piece}")
        # Both depths are rounded up by themselves, so one step of the declared rounding may be lost between them.
        if left < asked - solved.rounding:
            faults.append(
                Fault("FB411",
                      f"the {say.piece(piece)} ends {say.length(abs(left))} {'above' if left >= 0 else 'below'} the hem, and"
                      f" {say.length(asked)} is asked, {say.length(asked - left)} more",
                      Label(clearance.span, "the clearance asked"),
                      (Label(solved.pieces[piece].piece.span, f"hangs {say.length(run.drops[piece])} from the top"),
                       Label(solved.pieces[longest].piece.span, f"hangs {say.length(covers[longest])} from the top")),
                      notes=(f"{say.length(covers[longest])} - {say.length(run.drops[piece])} = "
                             f"{'-' if left < 0 else ''}{say.length(abs(left))}",),
                      help=f"make `{piece}` {say.length(asked - left)} shallower")
            )  # fmt: skip
        shown.append(f"the {say.piece(piece)} ends {say.length(left)} above the hem")
    return Proof(CLAIM, "; ".join(shown), tuple(faults))
