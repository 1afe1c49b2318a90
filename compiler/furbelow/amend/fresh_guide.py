"""The guide from here on: first what to do about the measurements, then the steps that are left, under their own letters."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from furbelow.amend.amended import BEFORE_CUTTING, Amended
from furbelow.amend.each_copy_once import each_copy_once, with_banner
from furbelow.amend.report import correction_steps, in_step, words_of
from furbelow.order.chain import Planned, guide_of
from furbelow.order.whose import whose
from furbelow.s6_write.guide.cautions import each_once
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.guide import Guide, Operation, Part, Sitting
from furbelow.s6_write.guide.letters import CORRECTIONS
from furbelow.s6_write.pages.files import files_of, guide_files
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.words import Words


def amended_files(amended: Amended, *, with_pdf: bool = True) -> Mapping[str, bytes]:
    """The files of the fresh guide; all of them, cutting and shopping too, where nothing is cut yet."""
    if amended.start == BEFORE_CUTTING:
        now = amended.now
        return files_of(_guide(amended, now, None), *now, with_pdf=with_pdf)
    words = Messages(amended.order.spec.language, amended.order.room.words)
    return guide_files(fresh_guide(amended), words, look_of(amended.order.room), with_pdf=with_pdf)


def fresh_guide(amended: Amended) -> Guide:
    """The steps still to do. Those of copies with their own numbers have a letter more: F2 of copy 1 is Fa2."""
    start, words = max(amended.start, 0), words_of(amended)
    guide = _guide(amended, amended.together, start)
    order = [done.key for done in amended.now.rehearsal.run.performed]
    before, apart = {*order[:start], *amended.joined}, set(order[: amended.meet])
    lengths = _own_lengths(amended, words)
    others = _operations(_guide(amended, amended.now, start))
    copies = {copy: _operations(_guide(amended, planned, start)) for copy, planned in amended.copies.items()}
    shown: dict[str, Sequence[Operation]] = {}
    parts = []
    for part in guide.parts:
        left = [operation for operation in part.operations if operation.key not in before]
        for operation in left:
            shown[operation.letter] = (operation,)
            if operation.key in apart:
                own = {copy: told[operation.key] for copy, told in copies.items() if operation.key in told}
                told = lengths.get(operation.key, {})
                shown[operation.letter] = each_copy_once(others[operation.key], own, amended.count, told, words)
            elif operation.key in lengths:
                shown[operation.letter] = (with_banner(operation, lengths[operation.key].values()),)
        if left:
            parts.append(Part(part.title, tuple(one for operation in left for one in shown[operation.letter])))
    first = Operation(
        key="as-measured",
        letter=CORRECTIONS,
        title=words.text("amend-title"),
        aim=words.text("amend-aim"),
        minutes="",
        cautions=(),
        figures=(),
        steps=correction_steps(amended),
        tip="",
        stop="",
    )
    sittings = tuple(_plan(guide.sittings, first, shown))
    guide = replace(
        guide,
        wearer=words.text("amend-wearer", {"whose": guide.wearer}),
        materials=(),
        cutting=(),
        cut=(),
        parts=each_once((Part(words.text("amend-part"), (first,)), *parts), sittings),
        sittings=sittings,
        content_key="",
    )
    return replace(guide, content_key=content_key(guide))


def _own_lengths(amended: Amended, words: Words) -> Mapping[str, Mapping[int, str]]:
    """By the key of an operation in which edges no longer fit, for each copy what is said of them there; 0 for all copies."""
    found: dict[str, dict[int, str]] = {}
    for copy, one in amended.shared:
        of = found.setdefault(amended.now.rehearsal.run.performed[one.at].key, {})
        of[copy or 0] = " ".join(filter(None, (of.get(copy or 0), in_step(one, words))))
    return found


def _guide(amended: Amended, planned: Planned, begun: int | None) -> Guide:
    return guide_of(planned, whose(amended.order), for_some=True, begun=begun)


def _plan(plan: Sequence[Sitting], first: Operation, shown: Mapping[str, Sequence[Operation]]) -> Iterator[Sitting]:
    """The plan of sittings with what is to be put right before all else, and with the operations of single copies.

    shown: by the letter of an operation what stands in its place.
    """
    for number, sitting in enumerate(plan):
        names = [(one.letter, one.title) for letter, _ in sitting.work for one in shown.get(letter, ())]
        yield replace(sitting, work=(*([] if number else [(first.letter, first.title)]), *names))


def _operations(guide: Guide) -> Mapping[str, Operation]:
    return {operation.key: operation for part in guide.parts for operation in part.operations}
