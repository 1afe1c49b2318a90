"""One booklet made for all sizes of a spec, once each of them is proved and planned."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from furbelow.diagnose.fault import Fault, Staged, has_errors
from furbelow.garment.phrasing import Phrasing
from furbelow.named import NamedTuple
from furbelow.order.chain import Planned, guide_of, plan_proved, prove_each
from furbelow.order.make_one import Finished
from furbelow.order.order import Order
from furbelow.order.shelf import Shelf
from furbelow.order.whose import whose
from furbelow.s4_cut.plan_cache import PLANS_FILE, KeptPlans
from furbelow.s6_write.booklet.booklet import Booklet
from furbelow.s6_write.booklet.compose import booklet, drawn_of
from furbelow.s6_write.booklet.tables import widths
from furbelow.s6_write.booklet.texts import without_letters
from furbelow.s6_write.folder import SetKind
from furbelow.s6_write.guide.in_languages import languages_beside
from furbelow.s6_write.guide.material_lines import material_rows, materials_table
from furbelow.s6_write.guide.unmeasured import unmeasured
from furbelow.s6_write.pages.booklet_files import PAGE, booklet_files
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.pages.prose import each_text
from furbelow.s6_write.pages.shopping_page import shopping_markdown
from furbelow.s6_write.pages.unset_letters import unset_letters
from furbelow.s6_write.picture import picture_of
from furbelow.s6_write.words.words import Words


class Sound(NamedTuple):
    """A size that can be made as it is planned."""

    order: Order
    planned: Planned
    words: Words


def make_booklet(
    orders: Sequence[Order],
    shelf: Shelf,
    *,
    with_pdf: bool = True,
    with_measures: bool = True,
    languages: Sequence[str] = (),
) -> Finished:
    """The booklet, put on the shelf. orders: one for each size, in the order of the spec. Where a size is not sound, nothing
    is written. languages: all that it is made in, each in a folder beside the others.
    """
    of_all = ", ".join(order.wearer for order in orders)
    made = booklet_made(orders, shelf.kept_plans(), with_pdf=with_pdf, with_measures=with_measures, languages=languages)
    if made.value is None:
        return Finished(of_all, None, made.faults)
    kept_out = shelf.put(made.value, SetKind.BOOKLET)
    return Finished(of_all, None if kept_out else shelf.folder / PAGE, (*made.faults, *kept_out))


def booklet_made(
    orders: Sequence[Order],
    kept: bytes = b"",
    *,
    with_pdf: bool = True,
    with_measures: bool = True,
    languages: Sequence[str] = (),
) -> Staged[Mapping[str, bytes]]:
    """The files of the booklet by name. kept, with_measures, languages: as for a guide."""
    plans = KeptPlans(kept)
    sound: list[Sound] = []
    faults: list[Fault] = []
    for order, proved in prove_each(orders):
        planned = plan_proved(proved, plans.planner)
        faults += (fault for fault in planned.faults if fault not in faults)
        if planned.value is not None:
            words = Words(order.spec.language, Phrasing(planned.value.rehearsal.solved, order.room))
            sound.append(Sound(order, planned.value, words))
    if len(sound) < len(orders):
        return Staged(None, tuple(faults))
    order, _, words = sound[0]
    beside = languages_beside(order.spec.language, languages, PAGE)
    told = replace(booklet_of(sound, with_measures=with_measures), languages=beside)
    look = look_of(order.room)
    faults += unset_letters(
        each_text(told, without_letters), order.spec, look.font if look else None, with_pdf=with_pdf
    )
    if has_errors(faults):
        return Staged(None, tuple(faults))
    files = booklet_files(told, words, look, with_pdf=with_pdf)
    rows = [row for each in sound for row in material_rows(each.planned.shopping, each.order.size, each.words)]
    lists = [shopping_markdown(each.planned.shopping, told.title, whose(each.order), each.words) for each in sound]
    bought = {"shopping.md": "\n".join(lists).encode("utf-8"), "materials.csv": materials_table(rows, words)}
    return Staged({**files, **bought, PLANS_FILE: plans.as_file()}, tuple(faults))


def booklet_of(sound: Sequence[Sound], *, with_measures: bool = True) -> Booklet:
    """The booklet as a value, before it is a page."""
    guides = {each.order.size: guide_of(each.planned, whose(each.order), marked=True) for each in sound}
    drawn = sound[drawn_of(tuple(guides))]
    picture = picture_of(drawn.planned.rehearsal.run, drawn.words)
    if not with_measures:
        guides = {size: unmeasured(guide, sound[0].order.spec) for size, guide in guides.items()}
        picture = ()  # what it says in words tells the waist
    cut = widths([(each.planned.cutting, each.words) for each in sound])
    return booklet(guides, cut, picture, sound[0].words)
