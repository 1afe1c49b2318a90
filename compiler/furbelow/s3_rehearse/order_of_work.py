"""The order of work with the fewest machine set-ups that the cloth allows.

Two steps may change places when no piece is in both, sewn-on pieces counted in. What is left is a precedence, and the
least number of set-ups over all orders that keep it is found exactly, by working through the sets of steps that can be
done first (dynamic programming over the ideals of the precedence).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import accumulate

from furbelow.garment.technique import NO_MACHINE, Performed

# A precedence with more sets of first steps than this, all counted, is left as written; 20 steps in 4 free chains have
# about 1,300. Many like pieces double them with each piece.
MOST_STATES = 20_000


def machine_changes(performed: Sequence[Performed]) -> tuple[bool, ...]:
    """For each step, whether the machine has to be set up anew before it."""
    changes, on = [], ""
    for done in performed:
        changes.append(done.setup not in (*NO_MACHINE, on))
        on = on if done.setup in NO_MACHINE else done.setup
    return tuple(changes)


def must_follow(performed: Sequence[Performed]) -> tuple[frozenset[int], ...]:
    """For each step, the earlier steps that must come before it: those that work on a piece it works on."""
    reach = [frozenset(piece for touched in done.touches for piece in done.after.unit(touched)) for done in performed]
    return tuple(
        frozenset(earlier for earlier in range(at) if reach[earlier] & reach[at]) for at in range(len(performed))
    )


def fewest_set_ups(performed: Sequence[Performed], *, parts_together: bool) -> tuple[int, ...]:
    """The steps by their place as written, in the order with the fewest set-ups; among equals the one as written.

    parts_together: all steps under one heading are done before the next heading's.
    """
    before = list(must_follow(performed))
    if parts_together:
        # By their place, not their words: two parts may bear one heading.
        parts = [done.step.written.part for done in performed]
        rank = list(accumulate(0 if at == 0 else int(parts[at] != parts[at - 1]) for at in range(len(parts))))
        before = [
            firsts | {other for other in range(len(performed)) if rank[other] < rank[at]}
            for at, firsts in enumerate(before)
        ]
    setups = [done.setup if done.setup not in NO_MACHINE else "" for done in performed]
    return _search(before, setups) or tuple(range(len(performed)))


def _search(before: Sequence[frozenset[int]], setups: Sequence[str]) -> tuple[int, ...] | None:
    """The cheapest order, or None where there are too many to look at.

    A state is (steps done, set-up on the machine), the steps as the bits of a number; its best is (set-ups so far, order
    so far), the smaller the better, so equal counts fall to the order nearest to the written one.
    """
    bits = [sum(1 << first for first in firsts) for firsts in before]
    layer: dict[tuple[int, str], tuple[int, tuple[int, ...]]] = {(0, ""): (0, ())}
    states = 0
    for _ in setups:
        following: dict[tuple[int, str], tuple[int, tuple[int, ...]]] = {}
        for (done, on), (cost, order) in layer.items():
            for step, firsts in enumerate(bits):
                if done >> step & 1 or firsts & ~done:
                    continue
                setup = setups[step] or on
                state = (done | 1 << step, setup)
                reached = (cost + (setup != on), (*order, step))
                if state not in following or reached < following[state]:
                    following[state] = reached
            if states + len(following) > MOST_STATES:
                return None
        states += len(following)
        layer = following
    return min(layer.values())[1]
