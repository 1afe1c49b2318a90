"""The drawings of several sizes as one: drawn for one of them, with letters in the place of the numbers that differ."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from html import unescape

from furbelow.garment.message import Own
from furbelow.s6_write.booklet.booklet import SizedFigure, SizedNumber
from furbelow.s6_write.booklet.sized import Sized
from furbelow.s6_write.booklet.sizes import told_of
from furbelow.s6_write.booklet.texts import grouped, letters_in, skeleton, with_letters
from furbelow.s6_write.figures.language import GROUND, INK, SIZE
from furbelow.s6_write.figures.pen import number as tenths
from furbelow.s6_write.figures.pen import width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.holes import SENTENCE, Hole, bare, hole, parted

_TEXT = re.compile(r'<text x="(-?\d+)" y="(-?\d+)"([^>]*) textLength="(\d+)"([^>]*)>([^<]*)</text>')
_SPLIT = re.compile("(\0[0-9]+\0)")
_BOXED = 3.0  # units of black on either side of a letter
Renumbered = Mapping[tuple[int, int], int]


def drawings(
    each: Mapping[int, Sequence[Figure]],
    letter: str,
    numbers: Renumbered,
    sized: Sized,
    shown: dict[tuple[int, str], str],
) -> tuple[tuple[SizedFigure, ...], dict[int, str]]:
    """The drawings of an operation, and for sentences that a drawing of another one shows already, where that stands.

    letter: of the operation. numbers: what a sentence of a size is called in the booklet. shown: where each size has seen
    what is like a drawing; what is shown here is added.
    """
    by_key: dict[str, dict[int, Figure]] = {}
    for at, of_size in each.items():
        for figure in of_size:
            by_key.setdefault(figure.key, {})[at] = _renumbered(figure, at, numbers)
    found: list[SizedFigure] = []
    drawn_at: dict[int, str] = {}
    for of_sizes in by_key.values():
        place = _shown_to_all(of_sizes, shown) if len(of_sizes) == len(each) else None
        if place:
            drawn_at.setdefault(_beside(of_sizes), place)
            continue
        for version, group in enumerate(grouped(of_sizes, _kind_of), 1):
            figures = {at: of_sizes[at] for at in group}
            drawing = _drawn(figures, tuple(each), version, sized)
            found.append(drawing)
            # Its letters are those of this operation: another one has other numbers under them.
            if not any(map(letters_in, drawing.said)):
                for at, figure in figures.items():
                    shown.setdefault((at, figure.like), f"{letter}{_beside(figures)}")
    return tuple(found), drawn_at


def _beside(figures: Mapping[int, Figure]) -> int:
    """The first sentence that one of them shows."""
    return min((number for figure in figures.values() for number in figure.shows), default=1)


def _shown_to_all(figures: Mapping[int, Figure], shown: Mapping[tuple[int, str], str]) -> str | None:
    """Where every size has seen what is like its drawing, if that is one place: who needs a drawing is sent nowhere."""
    places = {shown.get((at, figure.like)) if figure.like else None for at, figure in figures.items()}
    return places.pop() if len(places) == 1 else None


def _kind_of(figure: Figure) -> tuple[object, ...]:
    """What drawings have in common that can be one: all their words, and the sentences that they call."""
    written = tuple(skeleton(each[6]) for each in _TEXT.finditer(figure.svg))
    return written, skeleton(figure.alt), skeleton(figure.caption), figure.shows


def _renumbered(figure: Figure, at: int, numbers: Renumbered) -> Figure:
    """The numbers of sentences as the booklet has them."""

    def called(text: str) -> str:
        return called_anew(text, at, numbers)

    svg = _TEXT.sub(lambda text: _line(text, called(text[6])) if SENTENCE in text[6] else text[0], figure.svg)
    shows = tuple(numbers.get((at, each), each) for each in figure.shows)
    return replace(figure, svg=svg, alt=called(figure.alt), caption=called(figure.caption), shows=shows)


def called_anew(text: str, at: int, numbers: Renumbered) -> str:
    """A text of a size with the numbers of sentences as the booklet has them; the others stay marked."""
    return "".join(part if isinstance(part, str) else _called(part, at, numbers) for part in parted(text))


def _called(part: Hole, at: int, numbers: Renumbered) -> str:
    if part.kind != SENTENCE:
        return hole(*part)
    return str(numbers.get((at, int(part.shown)), part.shown))


def _drawn(figures: Mapping[int, Figure], whose: Sequence[int], version: int, sized: Sized) -> SizedFigure:
    """figures: of sizes whose drawings differ in nothing but numbers and proportions. whose: the sizes of the operation."""
    plain = {at: _bare(figure, version) for at, figure in figures.items()}
    first = figures.get(sized.drawn) or figures[min(figures, key=lambda at: abs(at - sized.drawn))]
    drawn_for = next(at for at, figure in figures.items() if figure is first)
    alike = len({(figure.svg, figure.alt, figure.caption) for figure in plain.values()}) == 1
    some = len(figures) < len(whose)
    if alike and not some:
        return SizedFigure(plain[drawn_for])
    letters = sized.letters
    lines = {at: [text[6] for text in _TEXT.finditer(figure.svg)] for at, figure in figures.items()}
    # First, for it tells its numbers in their order.
    alternative = letters.lettered({at: figure.alt for at, figure in figures.items()})
    written = [letters.lettered(dict(zip(lines, row, strict=True))) for row in zip(*lines.values(), strict=True)]
    rows = iter(written)
    svg = _TEXT.sub(lambda text: _written(text, next(rows), letters.numbers), first.svg)
    alt = with_letters(alternative, lambda number: letters.numbers[number].letter)
    caption = letters.lettered({at: figure.caption for at, figure in figures.items()})
    told = [told_of("booklet-drawn-of", tuple(figures), sized.names, sized.words)] if some else []
    told += [] if alike else [sized.words.text("booklet-drawn-for", {"size": Own(sized.names[drawn_for])})]
    drawn = replace(
        plain[drawn_for], svg=svg, alt=" ".join([*told, alt]), caption=" ".join(filter(None, (caption, *told)))
    )
    said = tuple(unescape(text) for text in written) + (alternative,)
    own = tuple((sized.names[at], figure) for at, figure in plain.items())
    return SizedFigure(drawn, own, said)


def _bare(figure: Figure, version: int) -> Figure:
    """The drawing as the guide of its size has it. version: of those with its key."""
    key = figure.key if version == 1 else f"{figure.key}-{version}"
    svg, alt, caption, heading, like = map(bare, (figure.svg, figure.alt, figure.caption, figure.heading, figure.like))
    return replace(figure, key=key, svg=svg, alt=alt, caption=caption, heading=heading, like=like)


def _line(drawn: re.Match[str], words: str) -> str:
    """A line of words in the middle of the one that was drawn."""
    x, y, looks, length, more, before = drawn.groups()
    wide = _wide(words, looks)
    left = int(x) + (int(length) - round(wide * 10)) / 2 if bare(words) != bare(before) else int(x)
    return f'<text x="{round(left)}" y="{y}"{looks} textLength="{tenths(wide)}"{more}>{words}</text>'


def _written(drawn: re.Match[str], words: str, numbers: Sequence[SizedNumber]) -> str:
    """A line of words as it was drawn, with each letter white in a black box."""
    parts = [part for part in _SPLIT.split(with_letters(words, lambda number: f"\0{number}\0")) if part]
    if not any(part[0] == "\0" for part in parts):
        return _line(drawn, words)
    x, y, looks, length, more, _ = drawn.groups()
    wide = [_wide(part, looks) if part[0] != "\0" else _box_wide(numbers[int(part[1:-1])].letter) for part in parts]
    # A number alone stands in the middle of its place; in a line of words it begins where they began.
    left = int(x) / 10 + (int(length) / 10 - wide[0]) / 2 if len(parts) == 1 else int(x) / 10
    found = []
    for part, width in zip(parts, wide, strict=True):
        if part[0] != "\0":
            # A reader drops the spaces at the ends.
            words = part.strip()
            begins = left + _wide(part[: len(part) - len(part.lstrip())], looks)
            inside = tenths(_wide(words, looks))
            found += (
                [f'<text x="{tenths(begins)}" y="{y}"{looks} textLength="{inside}"{more}>{words}</text>']
                if words
                else []
            )
        else:
            found.append(_boxed(numbers[int(part[1:-1])].letter, left, int(y) / 10))
        left += width
    return "".join(found)


def _boxed(letter: str, left: float, base: float) -> str:
    wide = _box_wide(letter)
    top, high = base - SIZE * 0.86, SIZE * 1.14
    box = f"M{tenths(left)} {tenths(top)}h{tenths(wide)}v{tenths(high)}h-{tenths(wide)}z"
    inside = width_of(letter, True)
    return (
        f'<path d="{box}" fill="{INK}"/><text x="{tenths(left + _BOXED)}" y="{tenths(base)}" font-size="{tenths(SIZE)}"'
        f' font-weight="600" fill="{GROUND}" textLength="{tenths(inside)}" lengthAdjust="spacingAndGlyphs">{letter}</text>'
    )


def _box_wide(letter: str) -> float:
    return width_of(letter, True) + 2 * _BOXED


def _wide(words: str, looks: str) -> float:
    return width_of(unescape(words), "font-weight" in looks)
