"""A guide made for one body: its files by name, and the garment that they tell of."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path

from furbelow.diagnose.fault import Fault, Staged, has_errors
from furbelow.named import NamedTuple
from furbelow.order.chain import Planned, guide_of, plan_proved, prove
from furbelow.order.order import Order
from furbelow.order.shelf import Shelf
from furbelow.order.whose import whose
from furbelow.s4_cut.plan_cache import PLANS_FILE, KeptPlans
from furbelow.s6_write.folder import SetKind
from furbelow.s6_write.guide.in_languages import languages_beside
from furbelow.s6_write.guide.unmeasured import unmeasured
from furbelow.s6_write.pages.files import files_of
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.pages.own_font import own_font
from furbelow.s6_write.pages.page import html
from furbelow.s6_write.pages.unset_letters import unset_letters
from furbelow.s6_write.words.messages import Messages


class MadeGuide(NamedTuple):
    planned: Planned
    files: Mapping[str, bytes]


class Page(NamedTuple):
    html: str
    plans: bytes  # to be kept for the next


class Finished(NamedTuple):
    """A guide that stands on the shelf, with its page; or what kept it from it, and `page` is None."""

    whose: str
    page: Path | None
    faults: tuple[Fault, ...]
    unchanged: bool = False  # it stood there already


def make_one(
    order: Order,
    shelf: Shelf,
    *,
    with_pdf: bool = True,
    with_measures: bool = True,
    shown: bool = False,
    languages: Sequence[str] = (),
) -> Finished:
    """The guide for one body, put on the shelf. shown: with the plan for who shows the work. languages: see `make_guide`."""
    made = make_guide(
        order, with_pdf=with_pdf, with_measures=with_measures, kept=shelf.kept_plans(), languages=languages
    )
    if made.value is None:
        return Finished(order.wearer, None, made.faults)
    files = {**made.value.files, **(_demonstration(order, made.value.planned) if shown else {})}
    kept_out = shelf.put(files, SetKind.GUIDE)
    page = None if kept_out else shelf.folder / "guide.html"
    return Finished(order.wearer, page, (*made.faults, *kept_out))


def _demonstration(order: Order, found: Planned) -> Mapping[str, bytes]:
    from furbelow.s6_write.guide.demonstration import demonstration
    from furbelow.s6_write.pages.demonstration_page import demonstration_html

    # Each part may be shown by itself, so each says its cautions.
    guide = replace(guide_of(found, whose(order), for_some=True), of_person=not order.size)
    plan, words = demonstration(*found, guide)
    page = demonstration_html(plan, guide, words, look_of(order.room))
    return {"demonstration.html": page.encode("utf-8")}


def make_guide(
    order: Order,
    *,
    with_pdf: bool = True,
    with_measures: bool = True,
    kept: bytes = b"",
    languages: Sequence[str] = (),
) -> Staged[MadeGuide]:
    """The files of the guide. Their text is the same for the same order, whatever the machine.

    with_measures: whether they may tell measures of the body.
    kept: the cutting plans of an earlier run, as its `plans.json` holds them; they save time and change nothing.
    languages: all that the guide is made in, each in a folder beside the others.
    """
    plans = KeptPlans(kept)
    planned = plan_proved(prove(order), plans.planner)
    found = planned.value
    if found is None:
        return Staged(None, planned.faults)
    beside = languages_beside(order.spec.language, languages, "guide.html")
    guide = replace(guide_of(found, whose(order)), of_person=not order.size, languages=beside)
    if not with_measures:
        guide = unmeasured(guide, order.spec)
    faults = (*planned.faults, *unset_letters(guide, order.spec, own_font(order.room.font), with_pdf=with_pdf))
    if has_errors(faults):
        return Staged(None, faults)
    files = files_of(guide, *found, with_pdf=with_pdf)
    return Staged(MadeGuide(found, {**files, PLANS_FILE: plans.as_file()}), faults)


def make_page(order: Order, kept: bytes = b"") -> Staged[Page]:
    """The guide for the screen alone."""
    plans = KeptPlans(kept)
    planned = plan_proved(prove(order), plans.planner)
    if planned.value is None:
        return Staged(None, planned.faults)
    words, look = Messages(order.spec.language, order.room.words), look_of(order.room)
    page = html(guide_of(planned.value, whose(order)), words, look)
    return Staged(Page(page, plans.as_file()), planned.faults)
