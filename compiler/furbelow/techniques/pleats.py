"""Lay an edge in knife, box or inverted pleats.

What it does: folds the cloth of an edge in even pleats until it has the length wanted, and bastes them.
Edges before and after: the edge keeps its cloth length and state; its set length becomes the length it is meant for.
Allowance: none. The basting lies inside the seam that follows.
Example: `- pleats: {edge: skirt.top, to: yoke.bottom, kind: knife, count: 24}`
Source: pleats lie in the cloth less the line: 44 in of cloth for a 14 in waist leave 30 in, for a 20 in hip 24 in: A
    Complete Course in Dressmaking, vol. 5, 1921. Side plaits take 3 x their length, a box ruche a little less than 3 x:
    Butterick, The New Dressmaker, 1921.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.matching import EVEN
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Drawn,
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.join_ends import PINS
from furbelow.techniques.press import iron_caution
from furbelow.techniques.shared.preconditions import edge_not_ready, length_wanted

KNIFE, BOX, INVERTED = "knife", "box", "inverted"
FOLDS = {KNIFE: 2, BOX: 4, INVERTED: 4}  # how often the depth of a pleat lies under its face
FULL = Fraction(3)  # cloth for each length where pleats meet behind
SHALLOWEST = Fraction(4)  # mm: less is gathered, not pleated; house rule, maker to confirm


class Pleats:
    name = "pleats"
    about = "Lay an edge in even knife, box or inverted pleats to a given length."
    pictures = (Picture.PIECES, Picture.PLEATS)
    parameters = {
        "edge": Parameter("The edge to pleat.", Kind.EDGE),
        "to": Parameter("The edge it will be sewn to.", Kind.EDGE, ""),
        "length": Parameter("The length to pleat to, where it is not that of another edge.", Kind.LENGTH, ""),
        "kind": Parameter(
            "Knife pleats face one way; box pleats stand out; inverted pleats open inwards.",
            (KNIFE, BOX, INVERTED),
            KNIFE,
        ),
        "count": Parameter("How many pleats.", Kind.NUMBER),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, say = bench.edge(name), Phrasing(solved, room)
        length = length_wanted(bench, step, edge)
        if isinstance(length, Fault):
            return refused(bench, step, edge.pieces, length)
        kind, count = word_of(written, "kind"), step.amounts["count"].as_number()
        if count < 1 or count.denominator != 1:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "count",
                    "FB341",
                    f"{float(count):.4g} pleats can't be laid; they are counted 1, 2, 3",
                    help=f"write `count: {max(1, round(count))}`",
                ),
            )
        depth = pleat_depth(edge.cloth_length, length, kind, int(count))
        faults = _cannot_lie(step, say, edge, length, kind, depth)
        if any(fault.severity is Severity.ERROR for fault in faults):
            return refused(bench, step, edge.pieces, *faults)
        after = bench.with_edges(edge._replace(set_length=length, gathered=f"{kind} pleats", held=False))
        label = " and ".join(solved.pieces[piece].label for piece in edge.pieces)
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            tuple(faults),
            sewn=(
                Sewn(StitchType.LOCK, length, edge.copies, room.gathering_stitch, f"basting the pleats of the {label}"),
            ),
            setup=SetUp.STRAIGHT,
            pinned=length * edge.copies,
            handled=edge.cloth_length * edge.copies,
            drawn=Drawn(edge.name, length, edge.cloth_length / length, EVEN),
            facts={
                "ratio": edge.cloth_length / length,
                "length": length,
                "kind": kind,
                "count": int(count),
                "depth": depth,
            },
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        facts, edge = done.facts, done.before.edge(edge_of(done.step.written, "edge"))
        kind, count, depth, length = facts["kind"], facts["count"], facts["depth"], facts["length"]
        where = say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
        chain, pin = say.chain(edge.copies), "clip" if say.room.hold_with == "clips" else "pin"
        every, shows = say.length(edge.cloth_length / count), say.length(length / count)
        ring = done.before.ring(edge)
        mark = f"Mark {where} every {every}, {count} times" + (
            ", the first at the seam." if ring else ", from one end."
        )
        twice, deep = say.length(2 * depth), say.length(depth)
        fold = {
            KNIFE: (
                f"At each mark, mark a second line {twice} further on.",
                f"Fold at the second line and bring the fold back to the first mark, all folds facing one way; {pin} each pleat.",
            ),
            BOX: (
                f"At each mark, mark a line {say.length(length / count / 2)} to both sides.",
                f"Fold both lines to the back, {deep} deep, so that each box meets the next one; {pin} each fold.",
            ),
            INVERTED: (
                f"At each mark, mark a line {twice} to both sides.",
                f"Bring both lines to the mark between them, so that the two folds meet in front; {pin} each fold.",
            ),
        }[kind]
        actions = (
            OwnAction(
                mark,
                check=f"{count} marks, the last {every} from the {'first' if ring else 'end'}.",
                tolerance=f"{say.about(Fraction(3))} in all",
                remedy="Share what is left over among all the marks.",
                chain=chain,
            ),
            OwnAction(fold[0], chain=chain),
            OwnAction(fold[1], chain=chain),
            OwnAction(
                f"Measure the pleated edge{' all round' if ring else ''}: {say.length(length)}.",
                check=f"It is {say.length(length)} long and each pleat shows {shows}.",
                tolerance=f"{say.about(max(length / 200, Fraction(3)))} more or less",
                remedy="Too long: lay a few pleats a hair deeper. Too short: shallower. Spread it over many pleats.",
                chain=chain,
            ),
            OwnAction(
                f"Sew the pleats down {say.about(Fraction(5))} from the edge with the longest stitch, {say.length(length)};"
                " this row stays inside the seam.",
                chain=chain,
            ),
            OwnAction(
                f"Press the pleats from the top, as far as they shall stay sharp{'; lift the iron, do not drag it'}.",
                chain=chain,
            ),
        )
        aim = (
            f"{say.length(edge.cloth_length)} - {say.length(length)} = {say.length(edge.cloth_length - length)} lies in"
            f" {say.count(count, 'pleat')}, {deep} deep each."
        )
        return OwnInstructions(f"Lay {where} in {kind} pleats", aim, actions, (PINS, iron_caution(done, say)))


def pleat_depth(cloth: Fraction, length: Fraction, kind: str, count: int) -> Fraction:
    """Depth of each pleat in mm: what the cloth is longer than the line, shared among the folds behind it.

    cloth, length: of the edge flat and pleated, mm. Definition.
    """
    return (cloth - length) / (FOLDS[kind] * count)


def _cannot_lie(
    step: SolvedStep, say: Phrasing, edge: Edge, length: Fraction, kind: str, depth: Fraction
) -> list[Fault]:
    written, cloth = step.written, edge.cloth_length
    at = "to" if "to" in written.args else "length"
    if cloth <= length:
        return [
            fault_at(
                written,
                at,
                "FB314",
                f"`{edge.name}` has {say.length(cloth)} of cloth for {say.length(length)}, and nothing is left to pleat",
                help="make the piece longer, or swap the two edges",
            )
        ]
    if depth < SHALLOWEST:
        fewest = max(1, int((cloth - length) / (FOLDS[kind] * SHALLOWEST)))
        return [
            fault_at(
                written,
                "count",
                "FB342",
                f"each pleat would be {say.length(depth)} deep, and {say.length(SHALLOWEST)} is the least to fold",
                notes=(
                    f"({say.length(cloth)} - {say.length(length)}) / {FOLDS[kind]} folds / {step.amounts['count'].as_number()}",
                ),
                help=f"lay {fewest} pleats or fewer, or gather the edge",
            )
        ]
    most = FULL * length
    if cloth > most:
        severity = Severity.WARNING if kind == KNIFE else Severity.ERROR
        say_so = "they overlap and five plies lie under the seam" if kind == KNIFE else "they can't lie flat"
        return [
            fault_at(
                written,
                "edge",
                "FB343",
                f"{kind} pleats meet behind at {say.length(most)} of cloth for {say.length(length)}, and `{edge.name}` has"
                f" {say.length(cloth)}; {say_so}",
                notes=(f"3 x {say.length(length)} = {say.length(most)}",),
                help="use less cloth, or taper the pleats" if kind == KNIFE else "use less cloth, or knife pleats",
                severity=severity,
            )
        ]
    return []


TECHNIQUE = Pleats()
