"""The guides of a class, one after another as they are finished, and at the end what is for all: a page, one order.

First everybody is planned, then all cloth is cut together, and then each guide is written from its share: no guide can say
otherwise than the cutting for all. Where nothing has changed since an earlier run, nothing is done.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cache, partial
from hashlib import sha256
from itertools import chain

from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Severity
from furbelow.named import NamedTuple
from furbelow.order.chain import prove, solved
from furbelow.order.class_list import NEW, ClassList, as_file, leavers, numbered, read_class_list
from furbelow.order.content_key import key_of, key_of_order, key_of_share
from furbelow.order.crew import Alone, Crew
from furbelow.order.make_one import Finished
from furbelow.order.order import Order
from furbelow.order.pupil import (
    Asked,
    HowMade,
    PlannedPupil,
    ToPlan,
    WrittenPupil,
    made_pupil,
    plan_pupil,
    put_pupil,
    sent,
    write_pupil,
)
from furbelow.order.read_order import UnreadRows
from furbelow.order.shelf import REGISTER, Shelf, folder_names
from furbelow.order.whose import whose
from furbelow.s4_cut.parts import in_parts
from furbelow.s5_buy.class_cutting import ClassCutting, Garment, class_cutting, cut_apart
from furbelow.s5_buy.class_order import class_order
from furbelow.s5_buy.class_shares import Shares
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.folder import SetKind
from furbelow.s6_write.guide.guide import Caution, SizeBeside
from furbelow.s6_write.guide.worked import since
from furbelow.s6_write.made_in_turn import Key, MadeInTurn, Make
from furbelow.s6_write.pages.class_cutting import cutting_names
from furbelow.s6_write.pages.class_files import class_files, cutting_files
from furbelow.s6_write.pages.class_page import ClassPage, Made, Missing, class_page, class_words
from furbelow.s6_write.pages.files import PDF
from furbelow.s6_write.pages.lessons import Pupil
from furbelow.s6_write.pages.print_file import EACH, print_file, print_names
from furbelow.s6_write.pages.teacher_page import teacher_files
from furbelow.s6_write.words.words import Words

Seen = Callable[[int], None]

_NAMED = 5  # of the folders of leavers


class Together(NamedTuple):
    """How guides of several are made. recut: all is planned to be cut anew, for nothing is cut yet.

    dismiss: who has left is taken out of the folder. part: of a class, the others of which are elsewhere.
    apart: each guide buys and cuts alone, and only the order is one. in_one: with one PDF of all guides.
    """

    each: HowMade = HowMade()
    recut: bool = False
    dismiss: bool = False
    part: bool = False
    apart: bool = False
    in_one: bool = False


PLAIN = Together()


class Making:
    """Guides that are made one after another as they are asked for, and what is known of them all so far.

    One for each wearer of a class or each row of a table of orders, in a folder of their own, from what is bought and cut
    together; or one for each size of a spec, which nobody buys or cuts together. Who can't be given one is named as missing
    on the page for all.

    of: a class, a table of orders or a range of sizes. named: what the class is called, where its file says so.
    unread: the rows that are no order. seen: hears how many are planned, before the first guide is written.
    """

    def __init__(
        self,
        orders: Sequence[Order],
        shelf: Shelf,
        of: SetKind,
        named: str = "",
        unread: UnreadRows = (),
        *,
        crew: Crew | None = None,
        how: Together = PLAIN,
        seen: Seen = lambda planned: None,
    ) -> None:
        self.orders, self.shelf, self.crew, self.how, self.seen = orders, shelf, crew or Alone(), how, seen
        self.named, self.unread = named, unread
        self.kind = SetKind.PART if how.part else of
        self.are_sizes = of is SetKind.SIZES
        self.of_several = of is SetKind.ORDERS  # specs, so that no text of one stands for all
        self.folders = folder_names(order.wearer for order in orders)
        self.garments: dict[int, Garment] = {}
        self.lists: dict[int, ShoppingList] = {}
        self.made: list[Made] = []
        self.pupils: list[Pupil] = []
        self.missing: list[Missing] = []
        self.keys: dict[str, str] = {}  # what each guide was made from, by its folder
        # One after another, for those of a large class would fill the memory; None while the cutting is planned.
        self.jobs: Callable[[], Iterator[Asked]] | None = None
        # What is for all is told in the language that most of the guides are in.
        languages = Counter(order.spec.language for order in orders)
        self.language = max(languages, key=languages.__getitem__, default="")

    @property
    def apart(self) -> bool:
        """Whether each guide cuts alone."""
        return self.are_sizes or self.how.apart

    def complete(self) -> int | None:
        """How many guides of this run lie whole on the shelf; None where none was begun. Whoever writes has to be done."""
        if self.jobs is None:
            return None
        return sum(asked.shelf.stands(asked.made_from) is not None for asked in self.jobs())

    def __iter__(self) -> Iterator[Finished]:
        named, unread = self.named, self.unread
        kept = read_class_list(self.shelf.read(REGISTER), str(self.shelf.folder / REGISTER))
        earlier = kept.value or NEW
        with_numbers = numbered(self.orders, earlier)
        if with_numbers.value is None:
            yield Finished(named, None, with_numbers.faults)
            return
        self.orders = with_numbers.value
        made_from = key_of(self.kind, named, unread, self.how, *map(key_of_order, self.orders))
        if (standing := self._standing(made_from, earlier)) is not None:
            yield from standing
            return
        gone, told = self._dismissed(leavers(self.orders, earlier)) if self.how.dismiss else (set[str](), ())
        planned = list(self._planned())
        # Not only hers: whoever has other files would make others' guides from them too.
        if elsewhere := [fault for each in planned for fault in each.faults if fault.code == "FB660"]:
            yield Finished(named, None, (*told, elsewhere[0]))
            return
        cautions = dict.fromkeys(caution for each in planned for caution in each.cautions)
        if not self.garments:
            yield from (self._is_missing(order, each.faults) for order, each in zip(self.orders, planned, strict=True))
            return
        if several := _currencies(self.garments.values()):
            yield Finished(named, None, (*told, several))
            return
        room = self.orders[0].room
        lots = () if self.how.recut or self.apart else earlier.lots
        shared = cut_apart(self.garments) if self.apart else class_cutting(self.garments, room, lots)
        numbers = {name: number for name, number in earlier.numbers.items() if name not in gone}
        now = ClassList(
            {**numbers, **{order.wearer: order.number for order in self.orders}},
            () if self.apart else shared.lots,
            max(earlier.last, *(order.number for order in self.orders)),
            work=earlier.work,
        )
        # Before the first guide: so that whatever ends this run, the next one cuts and numbers alike.
        if kept_out := self.shelf.put({REGISTER: as_file(now)}, self.kind, beside=True):
            yield Finished(named, None, (*kept.faults, *kept_out))
            return
        yield from self._guides(planned, shared, earlier)
        if self.made:
            work = {made.folder: pupil.work for made, pupil in zip(self.made, self.pupils, strict=True)}
            now = now._replace(made=self.keys, work=work)
            whole = "" if self.missing else made_from
            page = self._for_all(named, unread, shared, tuple(cautions), now, whole)
            yield page._replace(faults=(*kept.faults, *told, *page.faults))

    def _standing(self, made_from: str, earlier: ClassList) -> list[Finished] | None:
        """All guides as they stand, where nothing has changed since they were made."""
        if self.how.recut or self.how.dismiss or not earlier.made or self.shelf.stands(made_from) is None:
            return None
        for folder in self.folders.values():
            key = earlier.made.get(folder)
            if key is None or self.shelf.below(folder).stands(key) is None:
                return None
        pages = [(order.wearer, self.shelf.folder / self.folders[order.wearer] / "guide.html") for order in self.orders]
        pages.append((earlier.named, self.shelf.folder / "index.html"))
        return [Finished(whose, page, (), unchanged=True) for whose, page in pages]

    def _planned(self) -> Iterator[PlannedPupil]:
        jobs = (
            ToPlan(sent(order, self.language), self.shelf.below(self.folders[order.wearer]).kept_plans())
            for order in self.orders
        )
        for at, (order, each) in enumerate(zip(self.orders, self.crew.each(plan_pupil, jobs), strict=True), 1):
            if each.garment is not None:
                self.garments[order.number] = each.garment
            self.seen(at)
            yield each._replace(garment=None)

    def _guides(self, planned: Sequence[PlannedPupil], shared: ClassCutting, earlier: ClassList) -> Iterator[Finished]:
        """Each guide from the spec to the disk, one after another."""
        shares = None if self.apart else Shares(shared.cutting)
        self.jobs = lambda: (
            self._asked(order, each, shares, earlier)
            for order, each in zip(self.orders, planned, strict=True)
            if order.number in self.garments
        )
        written = self._written(self.jobs)
        for order, each in zip(self.orders, planned, strict=True):
            if order.number not in self.garments:
                yield self._is_missing(order, each.faults)
                continue
            one = next(written)
            faults = (*each.faults, *one.faults)
            # Whose guide is kept out is cut for all the same.
            self.lists[order.number] = one.shopping or self.garments[order.number].shopping
            if not one.files:
                yield self._is_missing(order, faults)
                continue
            folder = self.folders[order.wearer]
            self.keys[folder] = one.made_from
            under = (order.spec.title, order.notes) if self.of_several else ()
            self.made.append(Made(order.number, whose(order), folder, one.files, tuple(filter(None, under))))
            work = since(one.work, () if self.how.recut else earlier.work.get(folder, ()))
            self.pupils.append(Pupil(order.number, whose(order), order.notes, work, order.spec.language))
            page = self.shelf.folder / folder / "guide.html"
            yield Finished(order.wearer, page, faults, unchanged=one.unchanged)

    def _written(self, jobs: Callable[[], Iterator[Asked]]) -> Iterator[WrittenPupil]:
        """Each guide on the shelf: put there by whoever makes it, or from here where those are on other machines."""
        if self.crew.writes_there:
            yield from self.crew.each(write_pupil, jobs())
            return
        for job, made in zip(jobs(), self.crew.each(made_pupil, jobs()), strict=True):
            yield put_pupil(job, made)

    def _asked(self, order: Order, planned: PlannedPupil, shares: Shares | None, earlier: ClassList) -> Asked:
        share = None if shares is None else shares.of(order.number, self.garments[order.number].pieces)
        beside = self._beside(order) if self.are_sizes else ()
        key = key_of(key_of_order(order), self.how.each, "" if share is None else key_of_share(share), beside)
        folder = self.folders[order.wearer]
        work = earlier.work.get(folder, ()) if earlier.made.get(folder) == key else ()
        return Asked(sent(order), self.how.each, self.shelf.below(folder), key, planned.plans, share, beside, work)

    def _beside(self, order: Order) -> tuple[SizeBeside, ...]:
        """All sizes that are made, with the way to each guide from the folder of this one."""
        return tuple(replace(each, page="") if each.size == order.size else each for each in self._sizes("../"))

    def _sizes(self, way: str) -> Iterator[SizeBeside]:
        """way: to the folder of all."""
        for each in self.orders:
            if each.number in self.garments:
                yield SizeBeside(each.size, f"{way}{self.folders[each.wearer]}/guide.html")

    def _is_missing(self, order: Order, faults: Iterable[Fault]) -> Finished:
        # Why, is told to who makes the class, and never on a page for all: it would tell all about a body.
        faults = tuple(faults)
        self.missing.append(Missing(whose(order), reasons(faults) if self.are_sizes else ()))
        return Finished(order.wearer, None, faults)

    def _for_all(
        self,
        named: str,
        unread: UnreadRows,
        shared: ClassCutting,
        cautions: tuple[Caution, ...],
        now: ClassList,
        made_from: str,
    ) -> Finished:
        numbers_made = [each.number for each in self.made]
        made = [order for order in self.orders if order.number in numbers_made]
        first = next((order for order in made if order.spec.language == self.language), made[0])
        numbers = solved(first).value
        assert numbers is not None  # a guide was made of it
        ordered = class_order(self.garments, shared, numbers, first.room, self.lists, of_several=self.of_several)
        words = class_words(ordered)
        of_number = words.text("class-of", {"number": len(self.orders)})
        of_all = words.text("class-every-size") if self.are_sizes else named or of_number
        nameless = [Missing(words.text("class-line", {"line": line})) for line in unread]
        proved = [prove(order).value for order in made] if self.are_sizes else []
        with_pdf = self.how.each.with_pdf
        page = class_page(
            ordered,
            of_all,
            self.made,
            [*self.missing, *nameless],
            {order.size: each for order, each in zip(made, proved, strict=False) if each is not None},
            words,
            cutting=cutting_names(len(in_parts(ordered.cutting))),
            with_pdf=with_pdf,
            prints=print_names(len(self.made)) if self.how.in_one else (),
            languages=self.how.each.languages,
            beside=tuple(self._sizes("")) if self.are_sizes else (),
        )
        is_class = not (self.are_sizes or self.of_several)
        gone = {number: name for name, number in now.numbers.items()}
        sheets = teacher_files(ordered, of_all, self.pupils, gone, words) if is_class else {}
        cutting, keys = cutting_files(page, ordered, cautions, words, with_pdf=with_pdf)
        small = {**class_files(page, ordered, words), **sheets, REGISTER: as_file(now._replace(named=of_all))}
        files: dict[str, Make] = {name: partial(bytes, content) for name, content in small.items()}
        if self.how.in_one:
            # Of a part the PDF is asked for twice, by itself and in the file that has all in one.
            cutting = {name: cache(make) if name in keys else make for name, make in cutting.items()}
            keys = {name: cache(key) for name, key in keys.items()}
            prints, of_prints = self._prints([(cutting[name], key) for name, key in keys.items()], page, words)
            files |= prints
            keys |= of_prints
        files |= cutting
        faults = self.shelf.put(MadeInTurn(files, keys), self.kind, made_from)
        told = () if faults else self._others()
        return Finished(of_all, None if faults else self.shelf.folder / "index.html", (*faults, *told))

    def _prints(
        self, cutting: Sequence[tuple[Make, Key]], page: ClassPage, words: Words
    ) -> tuple[Mapping[str, Make], Mapping[str, Key]]:
        """All guides to print, the cutting for all before them; of a class that fills several files it is printed alone.

        cutting: how the PDF of each part is made, and the key of what it is made from.
        """
        names = print_names(len(self.made))
        first = cutting if len(names) == 1 and not self.apart else ()
        called, title = words.text("class-cutting"), f"{page.title}, {page.whose}"

        def guides(at: int) -> Iterator[tuple[str, bytes]]:
            for each in self.made[at * EACH : (at + 1) * EACH]:
                yield f"{each.number} {each.whose}", self.shelf.below(each.folder).whole(PDF)

        def made(at: int) -> bytes:
            return print_file(chain(((called, make()) for make, _ in first), guides(at)), title)

        def key(at: int) -> str:
            bound = [(whose, sha256(content).digest()) for whose, content in guides(at)]
            return key_of(title, called, [key() for _, key in first], bound)

        return (
            {name: partial(made, at) for at, name in enumerate(names)},
            {name: partial(key, at) for at, name in enumerate(names)},
        )

    def _dismissed(self, left: Mapping[str, int]) -> tuple[set[str], tuple[Fault, ...]]:
        """Who has left and whose folder is gone, and what was kept there. Their cut pieces stay in the plan, as spare."""
        gone: set[str] = set()
        faults: list[Fault] = []
        for name, folder in zip(left, folder_names(left).values(), strict=True):
            kept = self.shelf.below(folder).clear() if folder not in self.folders.values() else ()
            faults += kept
            if not kept:
                gone.add(name)
        return gone, tuple(faults)

    def _others(self) -> tuple[Fault, ...]:
        left = self.shelf.others(self.folders.values())
        if not left:
            return ()
        named = ", ".join(left[:_NAMED]) + (f" and {len(left) - _NAMED} more" if len(left) > _NAMED else "")
        headline = f"{self.shelf.folder} still holds guides for nobody in this run: {named}"
        help_ = "give --dismiss to take out who has left; their guides tell measures"
        return (Fault("FB656", headline, help=help_, severity=Severity.WARNING),)


def _currencies(garments: Iterable[Garment]) -> Fault | None:
    """FB219 where what is bought for all has prices that can't be added."""
    several = sorted({each.shopping.currency for each in garments if each.shopping.currency})
    if len(several) < 2:
        return None
    said = f"the orders are priced in {' and '.join(several)}, and one list for the shop can't add them"
    return Fault("FB219", said, help="put the orders of each currency into a table of their own")


def reasons(faults: Iterable[Fault]) -> tuple[str, ...]:
    """What kept a guide from being made. Not the headlines: they say measures, and the page is for all to see."""
    return tuple(dict.fromkeys(CODES[fault.code] for fault in faults if fault.is_error))
