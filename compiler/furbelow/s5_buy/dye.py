"""Dye by weight of fibre, stock solutions, the bath, and which class of dye a fibre takes."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal, NamedTuple

from furbelow.s5_buy.out_of_range import OutOfRange, outside

DyeClass = Literal["acid", "disperse", "reactive", "direct"]

_CELLULOSE: tuple[DyeClass, ...] = ("reactive", "direct")

FIBRE_TAKES: dict[str, tuple[DyeClass, ...]] = {
    "wool": ("acid",),
    "silk": ("acid", "reactive"),
    "nylon": ("acid", "disperse"),
    "polyester": ("disperse",),
    "acetate": ("disperse",),
    "cotton": _CELLULOSE,
    "linen": _CELLULOSE,
    "viscose": _CELLULOSE,
    "polypropylene": (),
}
"""Classes a fibre takes, the usual one first.

Source: P. Burch, About the Different Types of Dyes (pburch.net), for wool, silk, cotton, linen and viscose;
textilehelp.blogspot.com, About dyes, 2009, for nylon and polyester. Acetate and polypropylene: from memory.
"""

_WHY_NOT: dict[DyeClass, str] = {
    "acid": "acid dye is for wool, silk and nylon",
    "disperse": "disperse dye is for polyester, acetate and nylon",
    "reactive": "reactive dye is for cotton, linen, viscose and silk",
    "direct": "direct dye is for cotton, linen and viscose",
}

_FIBRE_CAUTIONS: dict[tuple[str, DyeClass], str] = {
    ("polyester", "disperse"): "polyester takes deep shades only near or above the boil, with a carrier or"
    " under pressure: leave it to a licensed dyer, or buy the cloth in the colour",
    ("acetate", "disperse"): "acetate dulls in very hot baths: keep to the heat on the dye maker's sheet",
    ("wool", "acid"): "wool felts when heat changes fast or the cloth is stirred hard",
    ("silk", "reactive"): "long alkaline baths harm silk: keep to the dye maker's sheet for silk",
    ("nylon", "disperse"): "disperse dye on nylon washes out more easily than acid dye",
}


class DyeMatch(NamedTuple):
    """Whether a fibre takes a dye class; `caution` says why not, or what to mind ("" for nothing)."""

    fibre: str
    dye: DyeClass
    takes: bool
    caution: str


def match_dye(fibre: str, dye: DyeClass) -> DyeMatch:
    """Whether the fibre takes the class, with a caution where it can't or only with care.

    A fibre that is not listed is not taken to dye. Source: see FIBRE_TAKES; the cautions are common practice,
    no source.
    """
    known = FIBRE_TAKES.get(fibre)
    if known is None:
        return DyeMatch(fibre, dye, False, f"nothing is known here about dyeing {fibre}: try a swatch first")
    if dye in known:
        return DyeMatch(fibre, dye, True, _FIBRE_CAUTIONS.get((fibre, dye), ""))
    usual = f"; {fibre} takes {' or '.join(known)} dye" if known else f"; {fibre} takes no dye at home"
    return DyeMatch(fibre, dye, False, f"{fibre} stays pale or undyed: {_WHY_NOT[dye]}{usual}")


def dye_mass(fibre_mass: Fraction, depth: Fraction) -> Fraction | OutOfRange:
    """Grams of dye: `depth` is the share of the dry weight of fibre (2 % is 2/100).

    Fails: a depth below 0 or above 20 %, which no dye needs (house rule, maker to confirm).
    """
    wrong = outside("depth of shade", depth, "share", at_least=0, at_most=Fraction(20, 100))
    return wrong or fibre_mass * depth


def stock_volume(solid: Fraction, strength: Fraction) -> Fraction | OutOfRange:
    """Millilitres of a stock solution that hold `solid` grams.

    strength: grams per ml; 0.5 % is 0.5 g in 100 ml.
    Fails: a strength of 0 or less, or above 100 %.
    """
    return outside("stock strength", strength, "share", above=0, at_most=1) or solid / strength


def bath_volume(fibre_mass: Fraction, liquor: Fraction) -> Fraction | OutOfRange:
    """Millilitres of bath for a liquor ratio of 1 : `liquor`, that is so many ml for each gram of fibre.

    Fails: a ratio of 0 or less.
    """
    return outside("liquor ratio", liquor, "", above=0) or fibre_mass * liquor


def auxiliary_mass(bath_ml: Fraction, grams_per_litre: Fraction) -> Fraction | OutOfRange:
    """Grams of salt, soda or acid for the bath. Fails: a dose below 0."""
    return outside("dose", grams_per_litre, "g/l", at_least=0) or bath_ml * grams_per_litre / 1000


class Dose(NamedTuple):
    """One auxiliary: grams of it, and ml of its stock solution when there is one."""

    name: str
    mass: Fraction
    stock_ml: Fraction | None


class Auxiliary(NamedTuple):
    """What goes into the bath besides the dye: g per litre, and the strength of a stock when one is kept."""

    name: str
    grams_per_litre: Fraction
    stock_strength: Fraction | None = None


class DyeBath(NamedTuple):
    """Everything to measure: g of dye; ml of its stock, of the bath and of water to add; doses."""

    dye: Fraction
    dye_stock_ml: Fraction | None
    bath_ml: Fraction
    water_ml: Fraction
    doses: tuple[Dose, ...]


def dye_bath(
    fibre_mass: Fraction,
    depth: Fraction,
    liquor: Fraction,
    dye_strength: Fraction | None = None,
    auxiliaries: tuple[Auxiliary, ...] = (),
) -> DyeBath | OutOfRange:
    """The whole bath for `fibre_mass` grams of dry cloth.

    dye_strength: grams per ml of the dye's stock solution; None when the powder goes in as it is.
    Water is what the stocks leave of the bath; powders are taken to add no volume.
    Fails: what dye_mass, stock_volume, bath_volume and auxiliary_mass refuse; stocks larger than the bath.
    """
    dye, bath = dye_mass(fibre_mass, depth), bath_volume(fibre_mass, liquor)
    if isinstance(dye, OutOfRange):
        return dye
    if isinstance(bath, OutOfRange):
        return bath
    dye_stock = None if dye_strength is None else stock_volume(dye, dye_strength)
    if isinstance(dye_stock, OutOfRange):
        return dye_stock
    doses: list[Dose] = []
    for auxiliary in auxiliaries:
        mass = auxiliary_mass(bath, auxiliary.grams_per_litre)
        if isinstance(mass, OutOfRange):
            return mass
        strength = auxiliary.stock_strength
        stock = None if strength is None else stock_volume(mass, strength)
        if isinstance(stock, OutOfRange):
            return stock
        doses.append(Dose(auxiliary.name, mass, stock))
    stocks = (dye_stock or 0) + sum((dose.stock_ml or Fraction(0) for dose in doses), Fraction(0))
    if wrong := outside("stock solutions together", stocks, "ml", at_most=bath):
        return wrong
    return DyeBath(dye, dye_stock, bath, bath - stocks, tuple(doses))
