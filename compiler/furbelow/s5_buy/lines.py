"""One line of the shopping list for each material: what the work needs of it, and what to buy."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.garment.message import Part, piece_said
from furbelow.garment.solved import Solved, SolvedMaterial
from furbelow.garment.spec import SupplyKind
from furbelow.garment.technique import Used
from furbelow.measure.units import LENGTH
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.offers import offered
from furbelow.s5_buy.shop_units import in_steps, with_spare
from furbelow.s5_buy.shopping import Line, Unit, each_once
from furbelow.s5_buy.thread import ThreadNeed, reel_length, reels_to_buy


def line_of(rehearsal: Rehearsal, cutting: Cutting, material: SolvedMaterial, thread: ThreadNeed) -> Line | None:
    """The line of a material; None where nothing of it is used."""
    if material.material.kind is SupplyKind.CLOTH:
        return _cloth(rehearsal.solved, cutting, material)
    if material.material.kind is SupplyKind.THREAD:
        return _thread(material, thread)
    used = [use for done in rehearsal.run.performed for use in done.used if use.material == material.material.name]
    if not used:
        return None
    match material.material.kind:
        case SupplyKind.STARCH | SupplyKind.OTHER:
            return _in_packets(material, used, Unit.VOLUME)
        case SupplyKind.DYE:
            return _in_packets(material, used, Unit.MASS)._replace(fibres=_dyed(rehearsal, material))
        case SupplyKind.ZIP | SupplyKind.FASTENING:
            return _singly(material, used)
    return _by_length(material, used)


def _cloth(solved: Solved, cutting: Cutting, material: SolvedMaterial) -> Line | None:
    name = material.material.name
    if name not in cutting.sheets:
        return None
    offers = tuple(offered(sheet) for sheet in cutting.sheets[name])
    placement = tuple(piece_said(piece.name) for piece in solved.pieces.values() if piece.piece.cloth.text == name)
    return Line(material, offers[0].need, offers[0].bought, Unit.LENGTH, offers[0].cost, placement, offers)


def _thread(material: SolvedMaterial, thread: ThreadNeed) -> Line:
    reel, price, placement = reel_length(material), material.amounts.get("price"), (Part("use-seams"),)
    if reel is None:
        return Line(material, thread.total, thread.total, Unit.LENGTH, None, placement)
    reels = Fraction(reels_to_buy(thread.total, reel, thread.reels_at_once).reels)
    cost = price.value * reels if price else None
    return Line(material, thread.total, reels, Unit.REELS, cost, placement, reel=reel)


def _in_packets(material: SolvedMaterial, used: list[Used], unit: Unit) -> Line:
    """What is sold in bottles or packets: the price is that of one."""
    sold, price = material.amounts.get("sold_by"), material.amounts.get("price")
    need = _with_spare(material, used)
    bought = in_steps(need, sold, unit.dims)
    cost = price.value * (bought / sold.value if sold else 1) if price else None
    return Line(material, need, bought, unit, cost, _uses(used))


def _singly(material: SolvedMaterial, used: list[Used]) -> Line:
    """What is counted: the price is that of one, or of a packet of as many as it is sold by."""
    line = _in_packets(material, used, Unit.PIECES)
    if "sold_by" in material.amounts:
        return line
    price, bought = material.amounts.get("price"), Fraction(ceil(line.need))
    return line._replace(bought=bought, cost=price.value * bought if price else None)


def _dyed(rehearsal: Rehearsal, dye: SolvedMaterial) -> tuple[str, ...]:
    """The fibres of what this dye is for."""
    solved = rehearsal.solved
    steps = (done for done in rehearsal.run.performed for use in done.used if use.material == dye.material.name)
    cloths = (solved.pieces[piece].piece.cloth.text for done in steps for piece in done.touches)
    return tuple(dict.fromkeys(solved.materials[cloth].material.fibre for cloth in cloths))


def _by_length(material: SolvedMaterial, used: list[Used]) -> Line:
    price = material.amounts.get("price")
    need = _with_spare(material, used)
    bought = in_steps(need, material.amounts.get("sold_by"), LENGTH)
    return Line(material, need, bought, Unit.LENGTH, price.value * bought if price else None, _uses(used))


def _uses(used: list[Used]) -> tuple[Part, ...]:
    return each_once(use.what for use in used)


def _with_spare(material: SolvedMaterial, used: list[Used]) -> Fraction:
    taken = sum((use.amount * use.copies for use in used), Fraction(0))
    return with_spare(taken, material.amounts.get("spare"))
