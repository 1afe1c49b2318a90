"""What a record names that the garment does not have."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.amend.read_record import Measured
from furbelow.diagnose.fault import Fault, Label
from furbelow.diagnose.nearest import nearest
from furbelow.garment.solved import Solved
from furbelow.techniques.stack_layers import layers_of

ENDS = ("top", "bottom")


def unknown(solved: Solved, one: Measured) -> Fault | None:
    """FB711 for a measurement of what the garment does not have."""
    spec = solved.spec
    if one.kind in ("cloth", "elastic"):
        known = [name for name, material in spec.materials.items() if material.kind == one.kind]
        return None if one.name in known else _no_such(one.kind, one, known)
    piece, _, side = one.name.partition(".")
    if piece in spec.pieces and side in ("start", "end") and one.kind != "cut":
        headline = f"`{one.name}` is a side of `{piece}`, and no {one.kind} is measured there"
        help_ = f"give the `depth` of `cut: {piece}`, or measure `{one.kind}: {piece}.top` or `{piece}.bottom`"
        return Fault("FB711", headline, Label(one.span), help=help_)
    if piece in spec.pieces and side and one.kind == "cut":
        headline = f"a `cut` names a piece, and `{one.name}` is one of its edges"
        return Fault("FB711", headline, Label(one.span), help=f"write `cut: {piece}`")
    if one.kind == "edge":
        steps = [step.written for step in solved.steps if step.written.technique == "stack layers"]
        stacks = [getattr(step.args["as"].value, "text", "") for step in steps]
        if one.name in stacks:
            return None
        edges = [f"{name}.{end}" for name in spec.pieces for end in ENDS]
        return None if one.name in edges else _no_such("edge", one, [*edges, *stacks])
    if one.kind == "ring" and piece not in spec.pieces and (layers := layers_named(solved, one.name)):
        headline = f"`{one.name}` is a stack, and a ring is of one piece"
        each = " or ".join(f"`ring: {layer}`" for layer in layers)
        return Fault(
            "FB711", headline, Label(one.span), help=f"measure `edge: {one.name}` where it is gathered, or {each}"
        )
    if side and one.kind == "ring":
        edges = [f"{name}.{end}" for name in spec.pieces for end in ENDS]
        return None if one.name in edges else _no_such("ring", one, edges)
    return None if piece in spec.pieces else _no_such("piece", one, list(spec.pieces))


def layers_named(solved: Solved, stack: str) -> tuple[str, ...]:
    """The pieces that lie in the stack of this name, or in those in it; none where there is no such stack."""
    for step in solved.steps:
        if step.written.technique == "stack layers" and getattr(step.written.args["as"].value, "text", "") == stack:
            layers = [layer.edge for layer in layers_of(step.written)]
            named = [(edge.piece,) if edge.side else layers_named(solved, edge.piece) for edge in layers]
            return tuple(dict.fromkeys(name for names in named for name in names))
    return ()


def _no_such(thing: str, one: Measured, known: Sequence[str]) -> Fault:
    near = nearest(one.name, known)
    help_ = (
        "did you mean " + " or ".join(f"`{word}`" for word in near) + "?" if near else f"there are {', '.join(known)}"
    )
    return Fault("FB711", f"the garment has no {thing} `{one.name}`", Label(one.span), help=help_)
