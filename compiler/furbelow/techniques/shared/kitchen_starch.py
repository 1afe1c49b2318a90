"""Starch cooked from cornflour, scaled from a kitchen recipe."""

from __future__ import annotations

from fractions import Fraction

from furbelow.named import NamedTuple

CUP_ML = Fraction("236.5882365")
"""US cup: 1/16 of a gallon of 231 cubic inches."""
TABLESPOON_ML = CUP_ML / 16


class StarchRecipe(NamedTuple):
    """Ml of cornflour (level spoons, not packed), of cold water to wet it and of hot water to cook it."""

    cornflour: Fraction
    cold_water: Fraction
    hot_water: Fraction

    @property
    def liquid(self) -> Fraction:
        """Ml of water together."""
        return self.cold_water + self.hot_water

    def for_liquid(self, liquid_ml: Fraction) -> StarchRecipe:
        """The recipe scaled to so much water."""
        scale = liquid_ml / self.liquid
        return StarchRecipe(*(part * scale for part in self))


KITCHEN_STARCH = StarchRecipe(TABLESPOON_ML, CUP_ML / 4, CUP_ML * 15 / 4)
"""1 tablespoon cornflour, 1/4 cup cold and 3 3/4 cups hot water.

Source: breadmoretravels.blogspot.com, August 2012.
"""
