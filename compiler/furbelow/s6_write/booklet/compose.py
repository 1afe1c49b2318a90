"""The booklet of the guides of all sizes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from furbelow.garment.message import Own
from furbelow.s6_write.booklet.appendix import appendix
from furbelow.s6_write.booklet.booklet import Booklet, SizedPart, SizedRow, WayToCut
from furbelow.s6_write.booklet.cutting import all_bare, ways_to_cut
from furbelow.s6_write.booklet.operations import sized_parts
from furbelow.s6_write.booklet.sized import Sized
from furbelow.s6_write.booklet.sizes import told_of
from furbelow.s6_write.booklet.tables import at_a_glance, bought, cutting_time, measures, plans, tools_of
from furbelow.s6_write.booklet.texts import Letters, Version, grouped, skeleton, versions, versions_of
from furbelow.s6_write.guide.cautions import sitting_last
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.guide import Caution, Figure, Guide, ProofLine, Term
from furbelow.s6_write.guide.left_out import left_out, letters_before
from furbelow.s6_write.words.holes import bare
from furbelow.s6_write.words.messages import Messages


def drawn_of(sizes: Sequence[str]) -> int:
    """The size that drawings are of: the one in the middle."""
    return len(sizes) // 2


def booklet(
    guides: Mapping[str, Guide], widths: Sequence[SizedRow], picture: Sequence[Figure], words: Messages
) -> Booklet:
    """One booklet of the guides of all sizes, composed with their numbers marked.

    guides: by size, in the order of the spec. widths: see `widths`. picture: of the garment, in the size that is drawn.
    """
    words.read("booklet", "pages")
    sizes, each = tuple(guides), tuple(guides.values())
    drawn = drawn_of(sizes)
    sized = Sized(sizes, drawn, words, Letters(len(sizes)))
    one = each[drawn]
    ways = ways_to_cut(each)
    sat = [sitting_last(guide.sittings) for guide in each]
    parts = _with_skip(ways, sized_parts([guide.parts for guide in each], sized, sat), words)
    tools, sized_tools = tools_of([[tool.name for tool in guide.tools] for guide in each])
    told = Booklet(
        title=one.title,
        sizes=sizes,
        drawn=drawn,
        about=one.about,
        picture=tuple(_drawn_for(figure, sizes[drawn], words) for figure in picture),
        glance=at_a_glance(each),
        cutting=cutting_time(each),
        plans=plans(each),
        measuring=all_bare(one.measuring),
        measures=measures(each),
        materials=bought(each),
        widths=tuple(widths),
        tools=_each_once(tools),
        sized_tools=sized_tools,
        cautions=_cautions(each),
        ways=ways,
        parts=parts,
        numbers=tuple(sized.letters.numbers),
        key=all_bare(one.key),
        terms=_terms([guide.terms for guide in each]),
        afterwards=_terms([guide.afterwards for guide in each]),
        proofs=tuple(ProofLine(claim, "") for claim in _each_once([[p.claim for p in guide.proofs] for guide in each])),
        notes=one.notes,
        rounding=bare(one.rounding),
        language=one.language,
        paper=one.paper,
        imprint=all_bare(one.imprint),
        cover=one.cover,
    )
    if one.with_reasons:
        told = replace(told, **appendix(each)._asdict(), reasons_in=one.reasons_in, with_reasons=True)
    return replace(told, content_key=content_key(told))


def _with_skip(ways: Sequence[WayToCut], parts: Sequence[SizedPart], words: Messages) -> tuple[SizedPart, ...]:
    """The parts, the first work behind a letter that no size needs saying so."""
    words.read("guide")
    cut = [operation.letter for way in ways for operation in way.cut]
    work = [operation.letter for part in parts for operation in part.operations]
    skipped = left_out(letters_before(work[-1]), {*cut, *work}, words)
    return tuple(
        replace(
            part,
            operations=tuple(replace(each, skipped=skipped.get(each.letter, "")) for each in part.operations),
        )
        for part in parts
    )


def whose(booklet: Booklet, words: Messages) -> str:
    """ "Sizes XS to XL"."""
    words.read("booklet")
    return told_of("booklet-whose", range(len(booklet.sizes)), booklet.sizes, words)


def _drawn_for(figure: Figure, size: str, words: Messages) -> Figure:
    told = words.text("booklet-drawn-for", {"size": Own(size)})
    return replace(figure, caption=" ".join(filter(None, (figure.caption, told))))


def _each_once(each: Sequence[Sequence[str]]) -> tuple[str, ...]:
    """The lines of all sizes, in the order of the first that has each; one that is not everybody's says whose it is."""
    alike: dict[tuple[str, ...], dict[int, str]] = {}
    for at, lines in enumerate(each):
        for line in lines:
            alike.setdefault(skeleton(line), {})[at] = bare(line)
    return tuple(_meaning(said, len(each)) for said in alike.values())


def _cautions(each: Sequence[Guide]) -> tuple[Caution, ...]:
    kinds = {bare(caution.text): caution.kind for guide in each for caution in guide.cautions}
    lines = [[bare(caution.text) for caution in guide.cautions] for guide in each]
    return tuple(Caution(kinds[versions_of(line)[0].text], line) for line in _each_once(lines))


def _terms(each: Sequence[Sequence[Term]]) -> tuple[Term, ...]:
    """Words with what they mean; where the sizes have other meanings, each says whose it is."""
    meanings: dict[str, dict[int, str]] = {}
    for at, terms in enumerate(each):
        for term in terms:
            meanings.setdefault(bare(term.word), {})[at] = bare(term.meaning)
    return tuple(Term(word, _meaning(said, len(each))) for word, said in meanings.items())


def _meaning(said: Mapping[int, str], sizes: int) -> str:
    groups = grouped(said, lambda meaning: meaning)
    if len(groups) == 1 and len(said) == sizes:
        return next(iter(said.values()))
    return versions(Version(tuple(group), said[group[0]]) for group in groups)
