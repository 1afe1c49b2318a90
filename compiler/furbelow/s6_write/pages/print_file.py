"""All guides of a class in one PDF, for a printer that prints on both sides: each begins on a page of its own sheet.

It is for paper alone. Who reads a guide with a screen reader has it by itself, with its structure.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from io import BytesIO

EACH = 50  # guides in a file: what has to be held at once does not grow with the class


def print_names(guides: int) -> tuple[str, ...]:
    """The names of the files for so many guides."""
    files = -(-guides // EACH)
    return ("print.pdf",) if files == 1 else tuple(f"print-{number}.pdf" for number in range(1, files + 1))


def print_file(documents: Iterable[tuple[str, bytes]], title: str) -> bytes:
    """The documents one after another, each with its name in the outline; the same bytes for the same documents."""
    # It reads and writes PDF, which the typesetter only writes; heavy to load, and asked for by few.
    from pikepdf import ObjectStreamMode, OutlineItem, Pdf

    whole, held = Pdf.new(), []
    with whole.open_outline() as outline:
        for name, content in documents:
            one = Pdf.open(BytesIO(content))
            held.append(one)  # its pages are copied when the whole is saved
            begins = len(whole.pages)
            whole.pages.extend(one.pages)
            outline.root.append(OutlineItem(name, begins))
            if len(whole.pages) % 2:
                _, _, wide, high = (float(edge) for edge in _box(one.pages[-1].mediabox))
                whole.add_blank_page(page_size=(wide, high))
    whole.docinfo["/Title"] = title
    written = BytesIO()
    whole.save(written, deterministic_id=True, object_stream_mode=ObjectStreamMode.generate)
    return written.getvalue()


def _box(box: object) -> Sequence[float]:
    return [float(edge) for edge in box]  # type: ignore[attr-defined]  # an array of the document
