"""The guides of a class, one after another as they are finished, and at the end what is for all: a page, one order."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence

from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Severity
from furbelow.order.chain import Planned, plan_proved, prove, prove_each
from furbelow.order.make_one import Finished, MadeGuide, make_one
from furbelow.order.order import Order
from furbelow.order.shelf import Shelf, folder_names
from furbelow.order.whose import whose
from furbelow.s4_cut.plan_cache import PLANS_FILE, KeptPlans
from furbelow.s5_buy.class_order import Garment, class_order
from furbelow.s6_write.pages.class_files import class_files
from furbelow.s6_write.pages.class_page import Made, Missing, class_page, class_words

Unread = Mapping[int, tuple[str, ...]]  # why a row of the class file could not be read, by its line
EVERY_ROW: Unread = {}  # was read

_NAMED = 5  # of the folders of leavers


def make_class(
    orders: Sequence[Order], named: str, shelf: Shelf, unread: Unread = EVERY_ROW, *, with_pdf: bool = True
) -> Iterator[Finished]:
    """A guide for each wearer in a folder of their own; whoever can't be given one is named as missing on the page.

    named: what the class is called, where its file says so. unread: the rows of the class that are no order.
    """
    return Making(orders, shelf, with_pdf).finished(named, unread)


class Making:
    """Guides that are made one after another, and what is known of them all so far."""

    def __init__(self, orders: Sequence[Order], shelf: Shelf, with_pdf: bool) -> None:
        self.orders, self.shelf, self.with_pdf = orders, shelf, with_pdf
        self.folders = folder_names(order.wearer for order in orders)
        self.garments: dict[int, Garment] = {}
        self.made: list[Made] = []
        self.missing: list[Missing] = []
        # What is for all is told in the language that most of the guides are in.
        languages = Counter(order.spec.language for order in orders)
        self.language = max(languages, key=languages.__getitem__, default="")
        self.spec = next((order.spec for order in orders if order.spec.language == self.language), None)

    def finished(self, named: str, unread: Unread = EVERY_ROW, *, are_sizes: bool = False) -> Iterator[Finished]:
        """Each guide, then the page for all where there is any. are_sizes: the bodies are nobody's, so they may be told."""
        for number, (order, proved) in enumerate(prove_each(self.orders), 1):
            place = self.shelf.below(self.folders[order.wearer])
            one = make_one(order, place, proved, with_pdf=self.with_pdf)
            if one.guide is None:
                # Of a person the page says no reason but one of the files: it would tell all about a body.
                told = [fault for fault in one.faults if are_sizes or fault.code.startswith("FB65")]
                self.missing.append(Missing(whose(order), reasons(told)))
            else:
                self.garments[number] = Garment(*self._told_to_all(order, one.guide))
                self.made.append(Made(number, whose(order), place.folder.name, tuple(one.guide.files)))
            yield one
        if self.garments:
            yield self._for_all(named, unread, are_sizes)

    def _told_to_all(self, order: Order, guide: MadeGuide) -> Planned:
        """The same garment, the maker's texts in the language of all."""
        if self.spec is None or order.spec.language == self.language:
            return guide.planned
        plans = KeptPlans(guide.files[PLANS_FILE])
        again = plan_proved(prove(order._replace(spec=self.spec)), plans.planner)
        return again.value or guide.planned

    def _for_all(self, named: str, unread: Unread, are_sizes: bool) -> Finished:
        ordered = class_order(self.garments)
        words = class_words(ordered)
        of_number = words.text("class-of", {"number": len(self.orders)})
        of_all = words.text("class-every-size") if are_sizes else named or of_number
        nameless = [Missing(words.text("class-line", {"line": line}), why) for line, why in unread.items()]
        sizes = [self.orders[each.number - 1].size for each in self.made] if are_sizes else []
        page = class_page(ordered, of_all, self.made, [*self.missing, *nameless], sizes, words, with_pdf=self.with_pdf)
        faults = self.shelf.put(class_files(page, ordered, words))
        told = () if faults else self._leavers()
        return Finished(of_all, None if faults else self.shelf.folder / "index.html", (*faults, *told))

    def _leavers(self) -> tuple[Fault, ...]:
        left = self.shelf.others(self.folders.values())
        if not left:
            return ()
        named = ", ".join(left[:_NAMED]) + (f" and {len(left) - _NAMED} more" if len(left) > _NAMED else "")
        headline = f"{self.shelf.folder} still holds guides for nobody in this run: {named}"
        help_ = "take the folders away if nobody needs them; they tell measures of who has left"
        return (Fault("FB656", headline, help=help_, severity=Severity.WARNING),)


def unread_rows(faults: Iterable[Fault], file: str | None) -> Unread:
    """The rows of a class file that could not be read. faults: all that reading told."""
    rows: dict[int, list[Fault]] = {}
    for fault in faults:
        if fault.is_error and fault.primary is not None and fault.primary.span.file == file:
            rows.setdefault(fault.primary.span.start_line, []).append(fault)
    return {line: reasons(told) for line, told in sorted(rows.items())}


def reasons(faults: Iterable[Fault]) -> tuple[str, ...]:
    """What kept a guide from being made. Not the headlines: they say measures, and the page is for all to see."""
    return tuple(dict.fromkeys(CODES[fault.code] for fault in faults if fault.is_error))
