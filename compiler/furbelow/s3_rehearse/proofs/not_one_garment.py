"""Every piece is used, and all of them end as one garment.

Guarantees: each piece is in a step, all pieces hang together, and like copies are joined with each other.
Cannot know: whether a piece of other cloth was forgotten in the spec altogether.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.bench import State
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-one-garment"


def prove(run: Run) -> Proof:
    final, say = run.final, run.say
    if final.spoiled:
        return Proof(CLAIM)
    faults = []
    for name, piece in run.solved.pieces.items():
        if name not in run.touched:
            faults.append(
                Fault(
                    "FB404",
                    f"the {say.piece(name)} is cut and never sewn",
                    Label(piece.piece.span, "no step works on it"),
                    help="add the steps that sew it in, or take the piece out",
                )
            )
    units: dict[str, list[str]] = {}
    for used in sorted(run.touched):
        units.setdefault(final.units[used], []).append(used)
    if len(units) > 1:
        groups = sorted(units.values(), key=lambda group: (len(group), sorted(group)))
        alone = [piece for piece in final.cloths if piece in groups[0]]
        faults.append(
            Fault(
                "FB405",
                f"the {' and the '.join(say.piece(piece) for piece in alone)}"
                f" {'is' if len(alone) == 1 else 'are'} not sewn to the rest",
                Label(run.solved.pieces[alone[0]].piece.span, "this hangs on nothing"),
                notes=(f"the work ends with {len(units)} separate things",),
                help="add the seam that joins them",
            )
        )
    for name, cloth in final.cloths.items():
        layered = any(edge.partition(".")[0] in final.unit(name) for edge in final.layered)
        if name in run.touched and cloth.copies > 1 and not layered and cloth.piece.piece.name == final.units[name]:
            faults.append(
                Fault(
                    "FB405",
                    f"the {cloth.copies} copies of the {say.piece(name)} are never sewn to each other",
                    Label(cloth.piece.piece.span, f"cut {cloth.copies} times"),
                    help=f"stack them, such as `- stack layers: {{layers: [{name}.top], as: layers_top}}`, or join them to one ring",
                )
            )
    for edge in final.edges.values():
        if "." not in edge.name and edge.copies > 1 and edge.name not in final.layered and edge.state is not State.SEWN:
            stacker = next(done for done in run.performed if edge.name in done.after.edges)
            faults.append(
                Fault(
                    "FB405",
                    f"the {edge.copies} stacks of `{edge.name}` are never sewn to each other",
                    Label(stacker.step.written.span, "stacked copy with copy"),
                    help=f"stack them, such as `- stack layers: {{layers: [{edge.name}], as: all_layers}}`",
                )
            )
    count = sum(piece.count for piece in run.solved.pieces.values())
    return Proof(CLAIM, (Part("proof-one-garment-pieces", {"pieces": count}),), tuple(faults))
