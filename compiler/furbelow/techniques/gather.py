"""Gather an edge to a shorter length.

What it does: draws the cloth of an edge together, by two rows of long stitches or by a pleating attachment.
Edges before and after: the edge keeps its cloth length and state; its set length becomes the length it is meant for.
Allowance: none. The rows lie inside the seam that follows.
Example: `- gather: {edge: flounce.top, to: upper.bottom}`
Source: two rows 5 mm apart in the longest stitch, without backstitch, with long tails: common practice, no source.
    An attachment set to every stitch and depth mark 6 takes cloth to about half: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import limits
from furbelow.garment.attachment import mark_for
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.matching import EVEN, cloth_marks, divisions
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Parameter,
    Performed,
    Sewn,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.measure_text import show_decimal
from furbelow.techniques.join_ends import PINS, side_seam
from furbelow.techniques.shared.preconditions import edge_not_ready, length_wanted

BEST, ROWS, HAND, ATTACHMENT = "best", "two rows by machine", "two rows by hand", "pleating attachment"
TAIL = Fraction(100)  # thread left hanging at each end of a row
FIRST_ROW = Fraction(4)  # from the edge; the second lies the row spacing further in
LONGEST_RUN = Fraction(1500)  # of flat cloth: a longer thread breaks when it is pulled; house rule, maker to confirm
TRY = Fraction(500)  # strip to try the attachment on


class Gather:
    name = "gather"
    about = "Draw an edge together to the length of another edge, or to a given length."
    pictures = ("pieces", "gathering")
    parameters = {
        "edge": Parameter("The edge to gather.", "edge"),
        "to": Parameter("The edge it will be sewn to.", "edge", ""),
        "length": Parameter("The length to gather to, where it is not that of another edge.", "length", ""),
        "method": Parameter(
            "How to gather; best takes what the workroom has and the cloth can take.",
            (BEST, ROWS, HAND, ATTACHMENT),
            BEST,
        ),
        "behind": Parameter("Share of the cloth that is gathered into the back half.", "number", "50%"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        length = length_wanted(bench, step, edge)
        if isinstance(length, Fault):
            return refused(bench, step, edge.pieces, length)
        ratio = edge.cloth_length / length
        behind = step.amounts["behind"].value
        if not 0 < behind < 1:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "behind",
                    "FB313",
                    f"{say.share(behind)} of the cloth can't lie in the back half",
                    help="write a share between 0% and 100%, such as 60%",
                ),
            )
        method = self._method(word_of(written, "method"), room, edge, ratio)
        faults = self._limits(step, solved, room, edge, length, method)
        if any(fault.severity is Severity.ERROR for fault in faults):
            return refused(bench, step, edge.pieces, *faults)
        after = bench.with_edges(edge._replace(set_length=length, gathered=method, held=False))
        label = " and ".join(solved.pieces[piece].label for piece in edge.pieces)
        rows = 1 if method == ATTACHMENT else 2
        kind = "101" if method == HAND else "301"  # a hand running stitch has one thread, as 101 does
        sewn = tuple(
            Sewn(kind, edge.cloth_length, edge.copies, room.gathering_stitch, f"gathering the {label}")
            for _ in range(rows)
        )
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            tuple(faults),
            sewn=sewn,
            setup={ROWS: "straight stitch", HAND: "hand", ATTACHMENT: ATTACHMENT}[method],
            handled=edge.cloth_length * edge.copies,
            # The tails of both rows are wound together, at both ends of each run.
            thread_ends=0 if method == ATTACHMENT else 2 * runs_of(edge.cloth_length, length) * edge.copies,
            facts={
                "ratio": ratio,
                "method": method,
                "length": length,
                "behind": behind,
                "marks": cloth_marks(edge.cloth_length, divisions(length), behind),
            },
        )

    def _method(self, asked: str, room: Workroom, edge: Edge, ratio: Fraction) -> str:
        if asked != BEST:
            return asked
        # An attachment pleats one ply well, and only so far in one pass.
        fits = limits.ATTACHMENT_LEAST <= ratio <= limits.ATTACHMENT_MOST
        if room.gather_with == ATTACHMENT and not (fits and sum(ply.copies for ply in edge.plies) == 1):
            return ROWS
        return room.gather_with

    def _limits(
        self, step: SolvedStep, solved: Solved, room: Workroom, edge: Edge, length: Fraction, method: str
    ) -> list[Fault]:
        say, written, ratio = Phrasing(solved, room), step.written, edge.cloth_length / length
        at = "to" if "to" in written.args else "length"
        if ratio < 1:
            return [
                fault_at(
                    written,
                    at,
                    "FB314",
                    f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(length)},"
                    f" {say.length(length - edge.cloth_length)} too little to gather",
                    notes=(
                        f"{say.length(edge.cloth_length)} / {say.length(length)} = {say.ratio(ratio)}; a gather needs 1 or more",
                    ),
                    help="make the piece longer, or swap the two edges",
                )
            ]
        faults = []
        for piece in edge.pieces:
            cloth = solved.pieces[piece].piece.cloth.text
            most = limits.fullest(solved, cloth)
            if ratio > most:
                faults.append(
                    fault_at(
                        written,
                        "edge",
                        "FB315",
                        f"`{edge.name}` would be gathered {say.ratio(ratio)} to 1, and `{cloth}` takes {say.ratio(most)} to 1",
                        notes=(f"{say.length(edge.cloth_length)} / {say.length(length)} = {say.ratio(ratio)}",),
                        help=f"use less fullness, or write a larger `gathers` in the material `{cloth}` if a swatch shows more",
                    )
                )
        if not faults and method == ATTACHMENT and ratio > limits.ATTACHMENT_MOST:
            faults.append(
                fault_at(
                    written,
                    "method",
                    "FB316",
                    f"a pleating attachment takes cloth {say.ratio(limits.ATTACHMENT_MOST)} to 1 in one pass,"
                    f" and `{edge.name}` wants {say.ratio(ratio)} to 1",
                    help="write `method: two rows by machine`",
                )
            )
        return faults

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        facts, written = done.facts, done.step.written
        length, method = facts["length"], facts["method"]
        ring = done.before.ring(edge)
        where = _side(say, edge)
        target = _side(say, done.before.edge(edge_of(written, "to"))) if "to" in written.args else ""
        cloth, short, chain = say.length(edge.cloth_length), say.length(length), say.chain(edge.copies)
        marks = facts["marks"]
        parts = len(marks)
        stretch, named = say.length(length / parts), "eighth" if parts == 8 else "quarter"
        layers = sum(ply.copies for ply in edge.plies)
        hold = f"Hold all {layers} layers together, edges level, and work through all of them." if layers > 1 else ""
        seam = side_seam(done.before, edge.pieces, say)
        start = seam if ring else "the left end"
        if facts["behind"] == EVEN:
            folds = "in half and in half again" + (", and once more" if parts == 8 else "")
            mark = Action(
                f"Fold {where} {folds}, {f'from {seam}' if ring else 'end to end'}, and mark the folds: every"
                f" {say.length(edge.cloth_length / parts)} of flat cloth.",
                chain=chain,
            )
        else:
            mark = Action(
                f"Mark {where} at {listed([say.length(at) for at in marks[1:]])} from {start},"
                " measured on the flat cloth.",
                check=f"{say.share(facts['behind'])} of the cloth lies in the back half, the {'seam' if ring else 'ends'}"
                " at the middle of the back.",
                remedy="If the front is the fuller one, the marks were laid from the wrong place: measure from the"
                f" {'seam' if ring else 'ends'} again.",
                chain=chain,
            )
        actions = [Action(hold)] if hold else []
        actions.append(mark)
        if method == ATTACHMENT:
            actions += [
                Action(_setting(say, facts["ratio"])),
                Action(
                    f"Try it on a spare strip {say.length(TRY)} long.",
                    check=f"It comes out {say.length(TRY / facts['ratio'])} long.",
                    tolerance=say.length(TRY / facts["ratio"] * limits.EASE_SHARE),
                    remedy="If it is longer, set the depth a little deeper; if shorter, a little shallower. Try again.",
                ),
                Action(
                    f"Pleat {where}, {say.about(FIRST_ROW)} from the cut edge, right side up, {cloth} in one go.",
                    chain=chain,
                ),
            ]
        else:
            by_hand = method == HAND
            spacing = say.about(say.room.row_spacing)
            in_quarters = runs_of(edge.cloth_length, length) > 1
            runs = f"in {parts} runs, one from each mark to the next" if in_quarters else "in one run"
            pulled = "both threads" if by_hand else "both bobbin threads"
            actions += [
                Action(
                    f"Thread a hand needle with a double thread for running stitches of about {spacing}."
                    if by_hand
                    else f"Set the longest stitch of your machine, {show_decimal(say.room.gathering_stitch, 1)} mm or near it, and"
                    " loosen the top tension a little. Write down how both stood before."
                ),
                Action(
                    f"Sew a row {say.about(FIRST_ROW)} from the cut edge, {runs}. Do not sew back, and leave"
                    f" {say.about(TAIL)} of thread hanging at both ends of each run.",
                    chain=chain,
                ),
                Action(
                    f"Sew a second row the same way, {say.about(FIRST_ROW + say.room.row_spacing)} from the cut edge,"
                    f" {spacing} from the first.",
                    check="The two rows run side by side and do not cross.",
                    chain=chain,
                ),
                Action(
                    f"At one end of {'each run' if in_quarters else 'the rows'}, put a pin across and wind the thread tails"
                    " round it in a figure of eight.",
                    chain=chain,
                ),
                Action(
                    f"At the other end pull {pulled} together until each {named} measures {stretch}. Wind these tails round"
                    " a pin too.",
                    chain=chain,
                ),
            ]
        short_by = say.length(length * limits.EASE_SHARE)
        actions.append(
            Action(
                f"Measure the gathered edge{' all round' if ring else ''}: {short}.",
                check=f"It is {short} long" + (f", the length of {target}." if target else "."),
                tolerance=f"up to {short_by} short in all: the flat edge is eased in when you pin",
                remedy=f"More than {short_by} short: let the gathers out. Too long: pull the gathers closer.",
                chain=chain,
            )
        )
        actions.append(Action(f"Spread the gathers evenly with your fingers, {named} by {named}.", chain=chain))
        if method == ROWS:
            actions.append(Action("Set the stitch and the tension back for seams."))
        aim = f"{cloth} of cloth lies in {short}: {say.ratio(facts['ratio'])} to 1."
        if layers > 1 and len(edge.pieces) == 1:
            title = f"Gather the {layers} layers of the {say.piece(edge.pieces[0])} as one"
        else:
            title = f"Gather {where}"
        blunt = (("needle", "Sewing by hand: use a thimble, and park the needle in a cushion, never in your clothes."),)
        return Instructions(title, aim, tuple(actions), blunt if method == HAND else (PINS,) if method == ROWS else ())


def runs_of(cloth_length: Fraction, length: Fraction) -> int:
    """In how many runs, one beside the other, an edge is gathered to this length: one, or one from mark to mark."""
    return divisions(length) if cloth_length > LONGEST_RUN else 1


def knots_of(edge: Edge) -> int:
    """How many knots the thread tails of a gathered edge take: one at each end of each row, by hand one for both rows."""
    rows = {ROWS: 2, HAND: 1}.get(edge.gathered, 0)
    return 2 * rows * runs_of(edge.cloth_length, edge.set_length) * edge.copies


def _setting(say: Phrasing, ratio: Fraction) -> str:
    """How to set the attachment: by the workroom's swatches, or else from the mark that is known to halve most cloth."""
    mark = mark_for(say.room.lever_takes, ratio)
    fit = "Fit the pleating attachment"
    if mark is not None:
        return (
            f"{fit}, set to pleat at every stitch, depth at mark {show_decimal(mark, 1)}, with the stitch length of your"
            f" swatches: they say that this takes the cloth to 1/{say.ratio(ratio)}."
        )
    if abs(ratio - 2) < Fraction(1, 10):
        return f"{fit}. Set it to pleat at every stitch, depth at mark 6: that takes the cloth to about half."
    return (
        f"{fit}, set to pleat at every stitch, and begin at depth mark 6, which takes the cloth to about half; here it"
        f" should take it to 1/{say.ratio(ratio)}."
    )


def _side(say: Phrasing, edge: Edge) -> str:
    """The edge in words; a stack is always of top edges."""
    return say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")


TECHNIQUE = Gather()
