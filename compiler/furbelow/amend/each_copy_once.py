"""An operation told once for each group of copies with the same numbers: each copy is in exactly one of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from furbelow.garment.message import Own, Things, Values, flag
from furbelow.garment.tags import copy_letter
from furbelow.named import NamedTuple
from furbelow.s6_write.guide.guide import GuideStep, Operation
from furbelow.s6_write.guide.letters import letter_of_copy
from furbelow.s6_write.guide.operations import run_said
from furbelow.s6_write.words.words import Words


class Group(NamedTuple):
    """Copies of which an operation says the same. own: whether their numbers are others than those of the copies not told apart."""

    operation: Operation
    copies: tuple[int, ...]
    own: bool

    @property
    def rest(self) -> tuple[int, ...]:
        """0 where the copies that are not told apart are among them."""
        return () if self.own else (0,)


def with_banner(operation: Operation, said: Iterable[str]) -> Operation:
    """The operation with more said above its sentences."""
    more = dict.fromkeys(filter(None, (operation.all_of_it, *said)))
    return replace(operation, all_of_it=" ".join(more))


def each_copy_once(
    plain: Operation, own: Mapping[int, Operation], count: int, lengths: Mapping[int, str], words: Words
) -> Sequence[Operation]:
    """The operation for the copies that are not told apart, and for those that are.

    plain: as it is for the first. own: as it is for each of the others. count: how many copies there are. lengths: by the copy
    what its banner says of edges that no longer fit; 0 for those that are not told apart.
    """
    if not own:
        return (with_banner(plain, lengths.values()),)
    here = max(step.copies for step in plain.steps)
    here = here if 1 < here <= count else count  # pieces of several numbers may be told apart
    groups = _grouped(plain, {copy: told for copy, told in own.items() if copy <= here}, here)
    if len(groups) == 1:
        return (with_banner(groups[0].operation, lengths.values()),)
    told = [
        with_banner(_told(group, here, words), (lengths.get(copy, "") for copy in (*group.copies, *group.rest)))
        for group in groups
    ]
    # The time is that of all copies together, and the work ends with the last of them: both stand once.
    return tuple(
        replace(
            operation,
            minutes=operation.minutes if operation is told[0] else "",
            stop=operation.stop if operation is told[-1] else "",
        )
        for operation in told
    )


def _grouped(plain: Operation, own: Mapping[int, Operation], count: int) -> Sequence[Group]:
    rest = tuple(copy for copy in range(1, count + 1) if copy not in own)
    groups = [Group(plain, rest, own=False)] if rest else []
    for copy, operation in sorted(own.items()):
        same = next((at for at, group in enumerate(groups) if group.operation.steps == operation.steps), None)
        if same is None:
            groups.append(Group(operation, (copy,), own=True))
        else:
            groups[same] = groups[same]._replace(copies=tuple(sorted((*groups[same].copies, copy))))
    return groups


def _told(group: Group, count: int, words: Words) -> Operation:
    operation, copies, first = group.operation, group.copies, group.copies[0]
    letters = Things(tuple(Own(copy_letter(copy)) for copy in copies))
    title: Values = {"title": Own(operation.title), "count": len(copies), "letters": letters, "own": flag(group.own)}
    told = replace(
        operation,
        title=words.text("amend-copies-title", title),
        all_of_it=_banner(operation, letters, len(copies), words),
        steps=tuple(_ticked(operation.steps, copies, count, words)),
    )
    if not group.own:
        return told
    return replace(
        told,
        key=f"{operation.key}-copy-{first}",
        letter=letter_of_copy(operation.letter, first),
        figures=tuple(replace(figure, key=f"{figure.key}-copy-{first}") for figure in operation.figures),
    )


def _banner(operation: Operation, letters: Things, count: int, words: Words) -> str:
    if not operation.all_of_it or count == 1:
        return ""
    runs = flag(any(step.until for step in operation.steps))
    return words.text("amend-some-of-it", {"letters": letters, "count": count, "runs": runs})


def _ticked(steps: Sequence[GuideStep], copies: Sequence[int], count: int, words: Words) -> Iterator[GuideStep]:
    """The sentences that are done on each copy, with the boxes of these alone."""
    for step in steps:
        if step.copies != count:
            yield step
            continue
        chain = step.chain
        if step.until:
            chain = run_said(step.number, step.until, len(copies), words) if len(copies) > 1 else ""
        yield replace(step, chain=chain, copies=len(copies), only=tuple(copies))
