"""What is pressed takes the heat, or is told to be pressed cooler.

Guarantees: a piece is pressed no hotter than all that it is sewn to takes; where a trim, tape or layer melts at the heat
    that the cloth itself would want, it warns, and the guide sets the iron for the coolest.
Cannot know: what a label says; a fibre that the spec does not name is pressed as one that melts.
Source: the dots of ISO 3758.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.heat import coolest, dots_for
from furbelow.garment.message import Part
from furbelow.garment.technique import SetUp
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-heat"
MELTS = 1  # dots: what takes no more melts under a hotter iron


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    for done in run.performed:
        if done.refused or done.setup is not SetUp.IRON:
            continue
        for piece in done.touches:
            cloth = run.solved.pieces[piece].piece.cloth.text
            cool = coolest(run.solved, done.before, piece)
            own, least = (dots_for(run.solved.materials[name].material.fibre) for name in (cloth, cool))
            fibre = run.solved.materials[cool].material.fibre
            if own > MELTS and least == MELTS and fibre:
                faults.append(
                    Fault(
                        "FB432",
                        f"the {run.say.piece(piece)} is pressed with the {fibre} `{cool}` on it, which takes {least} dot of heat"
                        f" where `{cloth}` takes {own}",
                        Label(done.step.written.span, "pressed here"),
                        (Label(run.solved.materials[cool].material.span, "this melts"),),
                        help="press before it is sewn on, or press all of it at one dot",
                        severity=Severity.WARNING,
                    )
                )
    return Proof(CLAIM, (Part("proof-heat-shown"),), tuple(faults))
