"""One PDF of all guides, for a printer that prints on both sides."""

from __future__ import annotations

from io import BytesIO

import pikepdf
from furbelow.s6_write.pages.print_file import EACH, print_file, print_names
from hypothesis import given, settings
from hypothesis import strategies as st


def document(pages: int, wide: int) -> bytes:
    made, written = pikepdf.new(), BytesIO()
    for _ in range(pages):
        made.add_blank_page(page_size=(wide, 800))
    made.save(written)
    return written.getvalue()


@settings(max_examples=20, deadline=None)
@given(st.lists(st.integers(1, 5), min_size=1, max_size=6))
def test_each_document_begins_on_a_sheet_of_its_own(pages: list[int]) -> None:
    documents = [(f"{at} somebody", document(number, 500 + at)) for at, number in enumerate(pages)]
    whole = pikepdf.open(BytesIO(print_file(documents, "all")))
    begins = 0
    with whole.open_outline() as outline:
        assert [item.title for item in outline.root] == [name for name, _ in documents]
    for at, number in enumerate(pages):
        assert begins % 2 == 0  # a right-hand page, counted from 0
        for page in whole.pages[begins : begins + number]:
            assert float(page.mediabox[2]) == 500 + at
        begins += number + number % 2
    assert len(whole.pages) == begins
    assert print_file(documents, "all") == print_file(documents, "all")


def test_a_large_class_has_several_files() -> None:
    assert print_names(1) == print_names(EACH) == ("print.pdf",)
    assert print_names(EACH + 1) == ("print-1.pdf", "print-2.pdf")
