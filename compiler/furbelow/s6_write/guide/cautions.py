"""The cautions that stand before the work: what can hurt someone while it is made and when it is worn.

Sources: fabrics that burn fast when washed, such as bridal illusion: 16 CFR 1610.35; which light cloth is tested at all:
section 1610.1(d), from memory; that finishes against fire wash out: common practice, no source; net and sheer layers burned in
seconds: US Consumer Product Safety Commission, 1994; loose fit and trains: Devon and Somerset Fire and Rescue Service,
2018; the words of the label: UK SI 1985/2043, schedule 2; waist cord ends on children's clothes: EN 14682:2007 (check
the newest edition); small parts: CEN/TR 16792:2014.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from furbelow.garment.limits import Burns, burns
from furbelow.garment.technique import CautionKind
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s6_write.guide.guide import Caution, Operation, Part, Sitting
from furbelow.s6_write.words.words import Words

NEAR_FLOOR = 300  # mm: a hem as low as this is trodden on from the step below; house rule, maker to confirm


_FLAME = {
    Burns.SHEER: "caution-garment-flame-sheer",
    Burns.LIGHT: "caution-garment-flame-light",
    Burns.OTHER: "caution-garment-flame",
}


def general_cautions(rehearsal: Rehearsal, words: Words) -> tuple[Caution, ...]:
    """The cautions of this garment, most serious first."""
    words.read("cautions")
    return tuple(Caution(kind, words.text(message)) for kind, message in _cautions(rehearsal))


class ToldOnce:
    """The cautions that a reader has read so far."""

    def __init__(self) -> None:
        self._told: set[Caution] = set()

    def is_new(self, caution: Caution) -> bool:
        """Whether it was not read before; from now on it was."""
        new = caution not in self._told
        self._told.add(caution)
        return new

    def rest(self) -> None:
        """The work may be put away: who goes on another day has not read what was told before."""
        self._told = set()


def sitting_last(sittings: Sequence[Sitting]) -> set[str]:
    """The letters of the operations behind which a sitting ends."""
    return {sitting.work[-1][0] for sitting in sittings if sitting.work}


def each_once(parts: Sequence[Part], sittings: Sequence[Sitting]) -> tuple[Part, ...]:
    """The parts with each caution before the first operation alone that it concerns between two places where the work may be
    put away: told again and again, it is passed over.
    """
    told, sat = ToldOnce(), sitting_last(sittings)

    def first(operation: Operation) -> Operation:
        new = tuple(filter(told.is_new, operation.cautions))
        if operation.stop or operation.letter in sat:
            told.rest()
        return replace(operation, cautions=new)

    return tuple(replace(part, operations=tuple(map(first, part.operations))) for part in parts)


def _cautions(rehearsal: Rehearsal) -> Iterator[tuple[CautionKind, str]]:
    run, solved = rehearsal.run, rehearsal.solved
    yield CautionKind.FLAME, _FLAME[burns(solved)]
    yield CautionKind.BLADE, "caution-garment-blades"
    clips = run.room.hold_with == "clips"
    yield CautionKind.NEEDLE, "caution-garment-needles-clips" if clips else "caution-garment-needles"
    height = solved.values.get("waist_height")
    if height is None or height.value.as_length_mm() - max(run.drops.values()) < NEAR_FLOOR:
        yield CautionKind.TRIP, "caution-garment-hem"
    yield CautionKind.CHILD, "caution-garment-child"
