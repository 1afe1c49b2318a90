"""Loose ends clear the floor, and cords and ribbons suit whoever wears them.

Guarantees: bows, ties and cord ends, tied at the waist of the wearer, end above the floor where the height is known, else it warns; ends for a grown-up on a body
    of a child's size are refused, whoever the spec says wears it; on a child none hangs below the hem.
Cannot know: a grown-up as small as a child; the maker who knows better writes the ends that are allowed for a child.
Source: EN 14682 asks for children up to 14 years and sets limits for cords and ribbons by what the cited pages say; which
    sizes are a child's: house rule, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.lying import LooseEnd
from furbelow.garment.message import Part
from furbelow.garment.spec import Word
from furbelow.garment.technique import Performed, fault_at
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-ends"
OFF_FLOOR = Fraction(20)
# The waist of a child of about 1.35 m; without a height, hips and waist that no grown-up's size chart holds.
CHILD_WAIST_HEIGHT, CHILD_HIPS, CHILD_WAIST = Fraction(830), Fraction(800), Fraction(600)
CHILD, GROWN = "child", "grown-up"


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    for done in run.performed:
        if done.refused:
            continue
        for end in done.on_cloth.loose:
            faults += _too_small_for_them(run, done, end)
            faults += _below_the_hem(run, done, end)
            faults += _on_the_floor(run, done, end)
    return Proof(CLAIM, (Part("proof-ends-shown"),), tuple(faults))


def is_child(run: Run) -> bool:
    body = run.body
    if "waist_height" in run.solved.values:
        return run.solved.length("waist_height") < CHILD_WAIST_HEIGHT
    return (body.hips or CHILD_HIPS) < CHILD_HIPS and (body.waist or CHILD_WAIST) < CHILD_WAIST


def _worn_by(done: Performed) -> str:
    """Whom the step says its cord or ribbon is for; empty where it does not ask."""
    asked = done.step.written.args.get("for")
    return asked.value.text if asked and isinstance(asked.value, Word) else ""


def _too_small_for_them(run: Run, done: Performed, end: LooseEnd) -> Iterator[Fault]:
    if _worn_by(done) != GROWN or not is_child(run):
        return
    yield Fault(
        "FB435",
        f"ends of {run.say.length(done.step.mm(end.arg))} are for a grown-up, and {run.solved.wearer} has the measures of a"
        " child",
        Label(done.step.written.args["for"].span, "says that a grown-up wears it"),
        notes=("cords and ribbons on children's clothes catch in doors, wheels and play equipment",),
        help="write `for: child` and the ends that it allows, or use elastic",
    )


def _below_the_hem(run: Run, done: Performed, end: LooseEnd) -> Iterator[Fault]:
    """A cord or ribbon that a child wears must not hang below the hem; ties are told, for an apron's may."""
    worn_by = _worn_by(done)
    if not run.whole or not (worn_by == CHILD if worn_by else is_child(run)):
        return
    hangs, hem = (run.hangs if end.side == "top" else run.drops)[end.piece], max(run.drops.values())
    below = hangs + end.long - hem
    if below <= 0:
        return
    say = run.say
    yield fault_at(
        done.step.written,
        end.arg,
        "FB348",
        f"ends of {say.length(end.long)} hang from {say.length(hangs)} down to {say.length(hangs + end.long)} and the hem is at"
        f" {say.length(hem)}; on a child none may hang below it",
        notes=("EN 14682:2007, children up to 14 years; a newer edition is in force",),
        help="use elastic there" if hangs >= hem else f"make them {say.length(below)} shorter or more",
        severity=Severity.ERROR if worn_by else Severity.WARNING,
        needs=below,
    )


def _on_the_floor(run: Run, done: Performed, end: LooseEnd) -> Iterator[Fault]:
    if "waist_height" not in run.solved.values or not run.whole:
        return
    hangs = (run.hangs if end.side == "top" else run.drops)[end.piece]
    floor = run.solved.length("waist_height") - run.body.top
    if hangs + end.long <= floor - OFF_FLOOR:
        return
    say = run.say
    yield Fault(
        "FB434",
        f"ends of {say.length(end.long)} hang from {say.length(hangs)} down to {say.length(hangs + end.long)}, and the floor"
        f" is at {say.length(floor)}; they trip",
        Label(done.step.written.args[end.arg].span),
        help=f"make them {say.length(hangs + end.long - (floor - OFF_FLOOR))} shorter or more",
        needs=hangs + end.long - floor,
        severity=Severity.WARNING,
    )
