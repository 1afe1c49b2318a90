"""What must stay hidden is shorter than what covers it, by the clearance asked.

Guarantees: the drop of each piece under `worn: hidden` and its clearance do not pass the lowest edge of the garment. Of
    stacked layers none ends below those outside it; where one does that is not to be hidden, it warns, and
    where a layer ends above a margin that it is to cover, or a loop inside hangs below the hem.
Cannot know: how the skirt swings, or a body whose back is longer than its front.
Source: an underskirt is 1 in shorter than the outer one: Ingalls, Text-Book on Domestic Art, 1911.
"""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.lying import Covered, LooseEnd
from furbelow.garment.message import Length, Part, Pieces, Things
from furbelow.garment.technique import Performed, fault_at
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-hidden"


def prove(run: Run) -> Proof:
    solved, say = run.solved, run.say
    hidden, faults = solved.spec.worn.hidden, []
    shown: list[Part] = []
    if not run.whole:
        return Proof(CLAIM)
    if not run.sound(run.final.cloths):
        return Proof(CLAIM)
    for piece, clearance in hidden.items():
        # What is to hang level with the hem may be the outermost itself, as the first of several layers that step up.
        level = [other for other in hidden if not solved.length(f"worn.hidden.{other}")]
        covers = {other: drop for other, drop in run.drops.items() if other not in hidden or other in level}
        longest = max(covers, key=lambda other: covers[other])
        # In front, at the sides and behind: a hem may dip.
        places = zip(run.bottom_at(longest), run.bottom_at(piece), strict=True)
        left = min(over - under for over, under in places)
        asked = solved.length(f"worn.hidden.{piece}")
        # Both depths are rounded up by themselves, so one step of the declared rounding may be lost between them.
        if left < asked - solved.slack:
            faults.append(
                Fault(
                    "FB411",
                    f"the {say.piece(piece)} ends {say.length(abs(left))} {'above' if left >= 0 else 'below'} the hem, and"
                    f" {say.length(asked)} is asked, {say.length(asked - left)} more",
                    Label(clearance.span, "the clearance asked"),
                    (
                        Label(solved.pieces[piece].piece.span, f"hangs {say.length(run.drops[piece])} from the top"),
                        Label(solved.pieces[longest].piece.span, f"hangs {say.length(covers[longest])} from the top"),
                    ),
                    notes=(
                        f"{say.length(covers[longest])} - {say.length(run.drops[piece])} = "
                        f"{'-' if left < 0 else ''}{say.length(abs(left))}"
                        if left == covers[longest] - run.drops[piece]
                        else f"where the hem rises most it is {say.length(min(run.bottom_at(longest)))} from the top",
                    ),
                    help=f"make `{piece}` {say.length(asked - left)} shallower",
                )
            )
        shown.append(Part("proof-hidden-above", {"piece": Pieces((piece,)), "left": Length(left)}))
    for done in run.performed:
        for covered in done.on_cloth.covered if not done.refused else ():
            faults += _bare(run, done, covered)
        for loop in done.on_cloth.inside if not done.refused else ():
            faults += _loop_shows(run, done, loop)
    for layers in _stacks(run):
        faults += _hanging_out(run, layers)
        if len({run.ends[piece] for piece in layers}) > 1:
            ends = Things(tuple(Length(run.ends[each]) for each in layers))
            shown.append(Part("proof-hidden-layers", {"ends": ends}))
    return Proof(CLAIM, tuple(shown), tuple(faults))


def _bare(run: Run, done: Performed, covered: Covered) -> Iterator[Fault]:
    """A margin that hangs lower than what is to lie over it."""
    piece, _, side = covered.edge.partition(".")
    level = {"top": run.hangs[piece], "bottom": run.drops[piece]}.get(side, run.ends[piece])
    over = max(covered.by, key=lambda each: run.ends[each])
    if run.ends[over] >= level:
        return
    say = run.say
    yield fault_at(
        done.step.written,
        covered.arg,
        "FB320",
        f"the margin at `{covered.edge}` hangs {say.length(level)} from the top and the {say.piece(over)} ends"
        f" {say.length(level - run.ends[over])} above it; nothing covers it",
        help=f"make `{over}` {say.length(level - run.ends[over])} deeper or more",
        severity=Severity.WARNING,
    )


def _loop_shows(run: Run, done: Performed, loop: LooseEnd) -> Iterator[Fault]:
    """What hangs inside and ends below all that could hide it."""
    say, hangs = run.say, (run.hangs if loop.side == "top" else run.drops)[loop.piece]
    hem = max(run.drops.values())
    below = hangs + loop.long - hem
    if below <= 0:
        return
    yield fault_at(
        done.step.written,
        loop.arg,
        "FB349",
        f"a loop hangs {say.length(loop.long)} and the garment ends {say.length(hem - hangs)} below it; it would show",
        help=f"make the loops {say.length(2 * below)} shorter or more",
        severity=Severity.WARNING,
        needs=below,
    )


def _stacks(run: Run) -> Iterator[list[str]]:
    """The layers of each stack that lies in no other, outermost first."""
    for name, edge in run.final.edges.items():
        if "." not in name and name not in run.final.layered and len(edge.plies) > 1:
            yield list(dict.fromkeys(edge.pieces))


def _hanging_out(run: Run, layers: list[str]) -> Iterator[Fault]:
    say, pieces = run.say, run.solved.pieces
    for at, inner in enumerate(layers[1:], 1):
        outer = max(layers[:at], key=lambda piece: run.ends[piece])
        over = run.ends[inner] - run.ends[outer]
        if over > run.solved.slack and inner not in run.solved.spec.worn.hidden:
            piece = pieces[inner].piece
            yield Fault(
                "FB418",
                f"the {say.piece(inner)} lies under the {say.piece(outer)} and ends {say.length(over)} below it",
                Label(
                    (piece.depth or piece.cut_depth or piece.cloth).span,
                    f"ends {say.length(run.ends[inner])} from the top",
                ),
                (Label(pieces[outer].piece.span, f"ends {say.length(run.ends[outer])} from the top"),),
                notes=("a stack lists its layers from the outside in",),
                help=f"make `{inner}` {say.length(over)} shallower, or list it before `{outer}` in the stack",
                severity=Severity.WARNING,
            )
