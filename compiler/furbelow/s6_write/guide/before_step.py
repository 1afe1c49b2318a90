"""What is set right at the machine before a step begins: the stitch of the step before, a bobbin that runs out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from furbelow.garment.message import Length, Stitch
from furbelow.garment.technique import Performed, SetUp
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.words.messages import Said
from furbelow.s6_write.words.words import Words


def before_step(performed: Sequence[Performed], at: int, shopping: ShoppingList, words: Words) -> Iterator[Said]:
    """The actions before the step at that place among the performed ones."""
    if performed[at].setup is SetUp.STRAIGHT and _at_zigzag(performed[:at]):
        yield words.action("machine-straight", {"stitch": Stitch(words.say.room.seam_stitch)})
    yield from _fresh_bobbins(shopping, at, words)


def _at_zigzag(before: Sequence[Performed]) -> bool:
    sewn = [done.setup for done in before if done.setup in (SetUp.ZIGZAG, SetUp.STRAIGHT)]
    return bool(sewn) and sewn[-1] is SetUp.ZIGZAG


def _fresh_bobbins(shopping: ShoppingList, at: int, words: Words) -> Iterator[Said]:
    if shopping.bobbins is None or words.say.room.bobbin is None:
        return
    for fresh in shopping.bobbins.fresh:
        if fresh.rows.step != at:
            continue
        sewn = fresh.rows.before + fresh.piece - 1
        yield words.action(
            "bobbin-fresh-within" if sewn else "bobbin-fresh",
            {
                "sewn": sewn,
                "rows": fresh.rows.all,
                "left": Length(fresh.left, "thread_left"),
                "full": Length(words.say.room.bobbin, "buy"),
            },
        )
    spare = [inside.changes for inside in shopping.bobbins.inside if inside.rows.step == at]
    if spare:
        yield words.action("bobbin-spare", {"spare": max(spare)})
