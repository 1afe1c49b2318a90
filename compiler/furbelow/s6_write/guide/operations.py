"""The work itself: each step of the spec as an operation, under the heading of its part."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.hours import in_fives
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.figures import figures_for
from furbelow.s6_write.guide.before_step import before_step
from furbelow.s6_write.guide.guide import Caution, GuideStep, Operation, Part
from furbelow.s6_write.guide.own_pictures import own_figures
from furbelow.s6_write.guide.reasons import numbers_of
from furbelow.s6_write.guide.stops import stops
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.words.said_step import SaidStep
from furbelow.s6_write.words.words import Words


def operations(
    rehearsal: Rehearsal, told: Sequence[SaidStep], shopping: ShoppingList, words: Words, letters: Mapping[int, str]
) -> tuple[Part, ...]:
    """told: the performed steps as they are said; letters: of each by its place in the spec."""
    parts: list[tuple[str, list[Operation]]] = []
    run = rehearsal.run
    stop = stops(rehearsal, shopping, words)
    for at, (done, said) in enumerate(zip(run.performed, told, strict=True)):
        if not said.actions:
            continue
        minutes = in_fives(shopping.minutes[at])
        before = tuple(before_step(run.performed, told, at, shopping, words))
        steps = tuple(GuideStep(number, *action[1:]) for number, action in enumerate((*before, *said.actions), 1))
        copies = max(step.copies for step in steps)
        operation = Operation(
            key=f"step-{done.step.written.index + 1}",
            letter=letters[done.step.written.index],
            title=said.title,
            aim=said.aim,
            minutes=words.said(duration(minutes)) if minutes else "",
            cautions=tuple(Caution(kind, text) for kind, text in said.cautions),
            figures=(
                *figures_for(done, run, words, len(before) + 1),
                *own_figures(f"step-{done.step.written.index + 1}", done.step.written.pictures),
            ),
            steps=steps,
            tip=done.step.written.tip,
            stop=stop[at],
            why=numbers_of(done, rehearsal.solved),
            number=said.number,
            all_of_it=words.text("all-of-it", {"copies": copies}) if copies > 1 else "",
        )
        heading = done.step.written.part or words.text("part")
        if not parts or parts[-1][0] != heading:
            parts.append((heading, []))
        parts[-1][1].append(operation)
    return tuple(Part(title, tuple(done)) for title, done in parts)
