"""The booklet as Markdown, with its figures beside it as those of a guide."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from furbelow.s6_write.booklet.booklet import Booklet, SizedOperation
from furbelow.s6_write.booklet.compose import whose
from furbelow.s6_write.booklet.number_rows import number_rows
from furbelow.s6_write.booklet.sizes import told_of
from furbelow.s6_write.booklet.texts import each_version, with_letters
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.guide.rows import rows
from furbelow.s6_write.pages.filled_in import filled_in
from furbelow.s6_write.pages.markdown_page import Written, environment_of, escaped, files_of_figures, place_of, prose
from furbelow.s6_write.pages.prose import visible
from furbelow.s6_write.words.messages import Messages


def booklet_markdown(booklet: Booklet, words: Messages | None = None) -> str:
    """The page `booklet.md`: numbers that differ by their letters, with a table for each operation."""
    booklet, words = visible(booklet), words or Messages(booklet.language)
    words.read("pages", "booklet")

    def said(message: str, **values: str) -> str:
        return words.text(message, values)

    def only(sizes: Sequence[int], message: str) -> str:
        return told_of(message, sizes, booklet.sizes, words)

    def written(text: str) -> str:
        """A text with its letters and whose each version is, as Markdown."""
        return " / ".join(
            each_version(
                text,
                lambda said: with_letters(escaped(said), lambda at: f"**\\[{booklet.numbers[at].letter}\\]**"),
                lambda sizes, said: f"**{escaped(only(sizes, 'booklet-version'))}** {said}",
            )
        )

    def table(operation: SizedOperation) -> Written:
        head = f"| {escaped(words.text('booklet-numbers'))} | | {' | '.join(map(escaped, booklet.sizes))} |"
        lines = [head, "|" + "---|" * (2 + len(booklet.sizes))]
        for row in number_rows(operation, booklet.numbers, words):
            shown = " | ".join(escaped(value) or "–" for value in row.values)
            lines.append(f"| **\\[{row.letter}\\]** | {escaped(f'{row.what} ({row.where})')} | {shown} |")
        told = (
            [f"**{escaped(only(operation.sizes, 'booklet-only'))}**"]
            if operation.sizes and not operation.cut_for
            else []
        )
        return Written("\n\n".join([*told, *(["\n".join(lines)] if operation.numbers else [])]))

    of_sizes = booklet.drawings_of_sizes
    text = filled_in(
        environment_of(written),
        "booklet.md.j2",
        booklet=booklet,
        whose=whose(booklet, words),
        t=said,
        prose=prose,
        rows=rows,
        place=place_of,
        only=only,
        table=table,
        of_sizes=lambda figure: of_sizes.get(figure.key, ()),
    )
    return re.sub(r"\n{3,}", "\n\n", text)


def booklet_figures(booklet: Booklet) -> dict[str, bytes]:
    """Every figure of the booklet as it is on paper, and for each size where that differs, by the name that `booklet.md` links to."""
    return files_of_figures(_figures(booklet))


def _figures(booklet: Booklet) -> Iterator[Figure]:
    if booklet.cover and booklet.cover.picture:
        yield booklet.cover.picture
    yield from booklet.picture
    for operation in booklet.operations:
        yield from operation.figures
    yield from (figure for each in booklet.drawings_of_sizes.values() for _, figure in each)
    if booklet.measuring:
        yield booklet.measuring
    yield from booklet.key
