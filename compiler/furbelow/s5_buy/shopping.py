"""The shopping list of a garment: what each material needs, what to buy of it, and what all of it costs."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Literal, NamedTuple

from furbelow.garment.message import Part, piece_said
from furbelow.garment.solved import SolvedMaterial
from furbelow.garment.technique import Performed, Sewn
from furbelow.measure.units import CURRENCIES, VOLUME
from furbelow.s3_rehearse.order_of_work import machine_changes
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.bobbins import BobbinPlan, BobbinWork, Rows, plan_bobbins
from furbelow.s5_buy.cost import CostLine, CostTable, PriceSuggestion, cost_table, suggest_price
from furbelow.s5_buy.hours import Pace, TimeTable, Work, time_for
from furbelow.s5_buy.offers import Offered, in_steps, offered, with_spare
from furbelow.s5_buy.out_of_range import OutOfRange
from furbelow.s5_buy.thread import SeamRun, ThreadNeed, reels_to_buy, thread_for_seams

THREAD_WASTE = Fraction(3, 20)  # waste of 15 to 20 %: Technical Bulletin on thread consumption, American & Efird, 2008


Unit = Literal["length", "volume", "reels"]


class Line(NamedTuple):
    """One material on the list. `need` and `bought` in mm, ml or pieces as `unit` says; cost None without a price."""

    material: SolvedMaterial
    need: Fraction
    bought: Fraction
    unit: Unit
    cost: Fraction | None
    placement: tuple[Part, ...]  # where it goes
    offers: tuple[Offered, ...] = ()  # of a cloth, the chosen width first

    @property
    def name(self) -> str:
        return self.material.material.name


class ShoppingList(NamedTuple):
    """Times in minutes: `minutes` of each performed step, in their order, and of the cutting."""

    lines: tuple[Line, ...]
    thread: ThreadNeed
    bobbins: BobbinPlan | None  # None where the workroom does not say what a bobbin holds
    minutes: tuple[Fraction, ...]
    cutting_minutes: Fraction
    time: TimeTable
    currency: str
    costs: CostTable | None
    price: PriceSuggestion | None


def buy(rehearsal: Rehearsal, cutting: Cutting) -> ShoppingList:
    """The list for one garment: cloth by its plan, trims and elastic by the steps, thread by the seams."""
    run, solved, room = rehearsal.run, rehearsal.solved, rehearsal.run.room
    joins = cutting.joins
    runs = [seam for done in run.performed for seam in _runs(done, joins)]
    counted = thread_for_seams(runs, THREAD_WASTE)
    assert isinstance(counted, ThreadNeed)  # the waste is ours and in range
    lines = [line for material in solved.materials.values() if (line := _line(rehearsal, cutting, material, counted))]
    pace = Pace(sewing_other=room.sewing_speed * 60, pin_spacing=room.pin_spacing)
    works = _works(run.performed, joins)
    sections = [section for cloth in cutting.sheets for section in cutting.sheet(cloth).plan.sections]
    cut_work = Work(
        cut=sum((_cut_length(cutting, cloth) for cloth in cutting.sheets), Fraction(0)),
        sections=len(sections),
        tags=sum(len(section.pieces) for section in sections),
    )
    time = time_for((*works, cut_work), pace)
    assert isinstance(time, TimeTable)  # pace comes from a checked workroom
    currency = next((unit for line in lines if (unit := _currency(line.material))), room.currency)
    costs, price = None, None
    if room.hourly_rate is not None:
        priced = [CostLine(line.name, Fraction(1), line.cost) for line in lines if line.cost is not None]
        table = cost_table(priced, time.hours, room.hourly_rate)
        if isinstance(table, CostTable):
            costs = table
            suggested = suggest_price(table.total, room.margin, "cost")
            price = suggested if isinstance(suggested, PriceSuggestion) else None
    minutes = tuple(_minutes(work, pace) for work in works)
    bobbins = _bobbins(run.performed, joins, room.bobbin)
    return ShoppingList(tuple(lines), counted, bobbins, minutes, _minutes(cut_work, pace), time, currency, costs, price)


def _minutes(work: Work, pace: Pace) -> Fraction:
    time = time_for((work,), pace)
    return Fraction(0) if isinstance(time, OutOfRange) else time.minutes


def _copies(sewn: Sewn, joins: Mapping[str, int]) -> int:
    return joins.get(sewn.joins_of, 0) if sewn.joins_of else sewn.copies


def _runs(done: Performed, joins: Mapping[str, int]) -> list[SeamRun]:
    return [
        SeamRun(sewn.kind, sewn.length, _copies(sewn, joins), sewn.stitch) for sewn in done.sewn if _copies(sewn, joins)
    ]


def _bobbins(
    performed: tuple[Performed, ...], joins: Mapping[str, int], capacity: Fraction | None
) -> BobbinPlan | None:
    """Before which rows of which step a fresh bobbin goes in."""
    if capacity is None:
        return None
    work = []
    for at, done in enumerate(performed):
        runs = _runs(done, joins)
        rows, before = sum(run.passes for run in runs), 0
        for run in runs:
            one = thread_for_seams((run._replace(passes=1),), Fraction(0))
            if isinstance(one, ThreadNeed):
                work.append(BobbinWork(Rows(at, before, rows), one.bobbin, run.passes))
            before += run.passes
    plan = plan_bobbins(work, capacity)
    return plan if isinstance(plan, BobbinPlan) else None


def _works(performed: tuple[Performed, ...], joins: Mapping[str, int]) -> list[Work]:
    """The work of each step; a set-up counts where the machine was set up differently before."""
    works = []
    for done, changes in zip(performed, machine_changes(performed), strict=True):
        seams = tuple((sewn.kind, sewn.length) for sewn in done.sewn for _ in range(_copies(sewn, joins)))
        pressed = done.handled if done.setup == "iron" else Fraction(0)
        works.append(
            Work(
                seams, int(changes), done.pinned, done.handled - pressed, pressed=pressed, thread_ends=done.thread_ends
            )
        )
    return works


def _cut_length(cutting: Cutting, cloth: str) -> Fraction:
    """How far the shears go: over the width once a section, along every lane, and over it at every segment.

    Round a panel that lies freely they go once, and the chalk before them.
    """
    plan = cutting.sheet(cloth).plan
    return sum(
        (
            plan.usable_width
            + sum((section.length + lane.depth * len(lane.segments) for lane in section.lanes), Fraction(0))
            + sum((2 * (panel.length + panel.width) for panel in section.panels), Fraction(0))
            for section in plan.sections
        ),
        Fraction(0),
    )


def _line(rehearsal: Rehearsal, cutting: Cutting, material: SolvedMaterial, thread: ThreadNeed) -> Line | None:
    solved, name, kind = rehearsal.solved, material.material.name, material.material.kind
    sold = material.amounts.get("sold_by")
    price = material.amounts.get("price")
    used = [use for done in rehearsal.run.performed for use in done.used if use.material == name]
    if kind == "cloth":
        if name not in cutting.sheets:
            return None
        offers = tuple(offered(sheet) for sheet in cutting.sheets[name])
        placement = tuple(piece_said(piece.name) for piece in solved.pieces.values() if piece.piece.cloth.text == name)
        return Line(material, offers[0].need, offers[0].bought, "length", offers[0].cost, placement, offers)
    if kind == "thread":
        reel = material.amounts.get("reel")
        need, placement = thread.total, (Part("use-seams"),)
        if reel is None:
            return Line(material, need, need, "length", None, placement)
        order = reels_to_buy(need, reel.as_length_mm(), thread.reels_at_once)
        reels = Fraction(0) if isinstance(order, OutOfRange) else Fraction(order.reels)
        return Line(material, need, reels, "reels", price.value * reels if price else None, placement)
    if not used:
        return None
    placement = each_once(use.what for use in used)
    spare = material.amounts.get("spare")
    if kind in ("starch", "dye"):
        need = with_spare(sum((use.amount * use.copies for use in used), Fraction(0)), spare)
        bought = in_steps(need, sold, VOLUME)
        cost = price.value * (bought / sold.value if sold else 1) if price else None
        return Line(material, need, bought, "volume", cost, placement)
    need = with_spare(sum((use.amount * use.copies for use in used), Fraction(0)), spare)
    return _priced(material, need, in_steps(need, sold), "length", price.value if price else None, placement)


def each_once(placements: Iterable[Part]) -> tuple[Part, ...]:
    told: list[Part] = []
    for placement in placements:
        if placement not in told:
            told.append(placement)
    return tuple(told)


def _priced(
    material: SolvedMaterial,
    need: Fraction,
    bought: Fraction,
    unit: Unit,
    price: Fraction | None,
    placement: tuple[Part, ...],
) -> Line:
    return Line(material, need, bought, unit, None if price is None else price * bought, placement)


def _currency(material: SolvedMaterial) -> str:
    price = material.amounts.get("price")
    return next((base for base, _ in price.dims if base in CURRENCIES), "") if price else ""
