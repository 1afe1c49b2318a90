"""Starch for a cloth of some weight, scaled from a kitchen recipe."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from furbelow.s5_buy.out_of_range import OutOfRange, outside

CUP_ML = Fraction("236.5882365")
"""US cup: 1/16 of a gallon of 231 cubic inches."""
TABLESPOON_ML = CUP_ML / 16

CAUTIONS: tuple[str, ...] = (
    "Hot starch scalds: pour the cold mix into the hot water, stir with a long spoon, keep children away.",
    "Starched net and cloth burn as readily as before: keep them from flame and hot air.",
    "Spray starch: air the room, spray away from faces, flames and the hot iron; follow the can.",
)
"""Common practice, no source."""


class StarchRecipe(NamedTuple):
    """Ml of cornflour (level spoons, not packed), of cold water to wet it and of hot water to cook it."""

    cornflour: Fraction
    cold_water: Fraction
    hot_water: Fraction

    @property
    def liquid(self) -> Fraction:
        """Ml of water together."""
        return self.cold_water + self.hot_water


KITCHEN_STARCH = StarchRecipe(TABLESPOON_ML, CUP_ML / 4, CUP_ML * 15 / 4)
"""1 tablespoon cornflour, 1/4 cup cold and 3 3/4 cups hot water.

Source: breadmoretravels.blogspot.com, August 2012.
"""


def starch_for_liquid(
    liquid_ml: Fraction, strength: Fraction = Fraction(1), recipe: StarchRecipe = KITCHEN_STARCH
) -> StarchRecipe | OutOfRange:
    """The recipe scaled to `liquid_ml` of water; strength 2 doubles the cornflour, as for a stiff petticoat.

    Fails: water or strength of 0 or less.
    """
    if wrong := outside("starch water", liquid_ml, "ml", above=0) or outside("starch strength", strength, above=0):
        return wrong
    scale = liquid_ml / recipe.liquid
    return StarchRecipe(recipe.cornflour * scale * strength, recipe.cold_water * scale, recipe.hot_water * scale)


def starch_for_cloth(
    cloth_mass: Fraction,
    ml_per_gram: Fraction,
    strength: Fraction = Fraction(1),
    recipe: StarchRecipe = KITCHEN_STARCH,
) -> StarchRecipe | OutOfRange:
    """The recipe scaled so that `cloth_mass` grams of dry cloth have `ml_per_gram` of starch to soak in.

    Fails: as starch_for_liquid.
    """
    return starch_for_liquid(cloth_mass * ml_per_gram, strength, recipe)
