"""One fold of cloth that is squeezed from both sides: how deep it stands and how hard it pushes back.

A thin strip whose ends are pushed together bends to Euler's elastica. Source: Love, A Treatise on the Mathematical Theory of
Elasticity, 4th ed. 1927, articles 262 and 263; the loads by tip angle are tabled in Timoshenko and Gere, Theory of Elastic
Stability, 2nd ed. 1961, section 2.7.
"""

from __future__ import annotations

from bisect import bisect
from functools import cache
from math import asin, pi, sqrt

from furbelow.named import NamedTuple

_STEPS, _LARGEST = 180, 0.905  # moduli that are tabled; beyond the last the sides of a fold would touch


class Fold(NamedTuple):
    """tip: the steepest angle of the cloth against the ring. load: against that at which it began to fold.

    deep: half the depth of the fold for each length of cloth in it.
    """

    tip: float
    load: float
    deep: float


FLAT = Fold(0.0, 1.0, 0.0)


def folded(fullness: float) -> Fold:
    """The fold of cloth that is `fullness` times as long as the line that it stands on."""
    known, folds = _table()
    if fullness <= known[0]:
        return FLAT
    if fullness >= known[-1]:
        return folds[-1]
    high = bisect(known, fullness)
    start, end, a, b = known[high - 1], known[high], folds[high - 1], folds[high]
    t = (fullness - start) / (end - start)
    return Fold(a.tip + (b.tip - a.tip) * t, a.load + (b.load - a.load) * t, a.deep + (b.deep - a.deep) * t)


def elastica(modulus: float) -> tuple[float, Fold]:
    """Fullness and fold of the elastica whose steepest angle is 2 asin(modulus)."""
    first, second = _integrals(modulus)
    return 1 / (2 * second / first - 1), Fold(2 * asin(modulus), (2 * first / pi) ** 2, modulus / (2 * first))


@cache
def _table() -> tuple[tuple[float, ...], tuple[Fold, ...]]:
    """Fullness, from none up, and the fold of each."""
    known, folds = zip(*(elastica(_LARGEST * step / _STEPS) for step in range(1, _STEPS + 1)), strict=True)
    return (1.0, *known), (FLAT, *folds)


def _integrals(modulus: float) -> tuple[float, float]:
    """The complete elliptic integrals K and E, by the arithmetic-geometric mean. Source: NIST DLMF 19.8."""
    a, b, c, total, power = 1.0, sqrt(1 - modulus * modulus), modulus, modulus * modulus / 2, 1.0
    while c > 1e-12:
        a, b, c = (a + b) / 2, sqrt(a * b), (a - b) / 2
        total += power * c * c
        power *= 2
    first = pi / (2 * a)
    return first, first * (1 - total)
