"""The appendix on demand: what was proved of each size, its measurements, and where the numbers come from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from furbelow.named import NamedTuple
from furbelow.s6_write.booklet.booklet import SizedRow
from furbelow.s6_write.booklet.texts import Version, grouped, versions
from furbelow.s6_write.guide.guide import Guide, ProofLine
from furbelow.s6_write.words.holes import bare


class Appendix(NamedTuple):
    proofs: tuple[ProofLine, ...]
    facts: tuple[SizedRow, ...]
    reasons: tuple[SizedRow, ...]


def appendix(each: Sequence[Guide]) -> Appendix:
    """each: the guides of all sizes. A text that is not the same for all says for which sizes each of its versions is."""
    facts = [{fact.name: (fact.label, fact.value, "") for fact in guide.facts} for guide in each]
    reasons = [
        {reason.name: (reason.label, reason.value, reason.sum or reason.told) for reason in guide.reasons}
        for guide in each
    ]
    return Appendix(tuple(_proved(each)), tuple(_rows(facts)), tuple(_rows(reasons)))


def _proved(each: Sequence[Guide]) -> Iterable[ProofLine]:
    shown: dict[str, dict[int, str]] = {}
    for at, guide in enumerate(each):
        for proof in guide.proofs:
            shown.setdefault(bare(proof.claim), {})[at] = bare(proof.shown)
    for claim, said in shown.items():
        yield ProofLine(versions([Version(tuple(said), claim)]) if len(said) < len(each) else claim, in_versions(said))


def _rows(each: Sequence[Mapping[str, tuple[str, str, str]]]) -> Iterable[SizedRow]:
    """A row for each name. each: of every size, by the names: what it is called, its value, and what stands below."""
    for name in dict.fromkeys(name for told in each for name in told):
        said = {at: told[name] for at, told in enumerate(each) if name in told}
        label, _, _ = next(iter(said.values()))
        values = tuple(bare(said[at][1]) if at in said else "" for at in range(len(each)))
        below = in_versions({at: bare(told[2]) for at, told in said.items()})
        yield SizedRow(bare(label), values, below, name)


def in_versions(said: Mapping[int, str]) -> str:
    """A text of sizes, by their places: one where it is the same for all that have it, else a version for each group."""
    groups = grouped(said, lambda text: text)
    if len(groups) == 1:
        return next(iter(said.values()))
    return versions(Version(tuple(group), said[group[0]]) for group in groups)
