"""How many cutting plans a fit makes, and how long it takes, beside planning every garment of the grid.

Run: python -m tests.benchmarks.fit
"""

from __future__ import annotations

import time

from furbelow.fit.fit import fit

from tests.demos.demos import order

CASES = (
    ("larkspur", "M", "fullness", ("net <= 5.2 m",), ""),
    ("larkspur", "M", "fullness", ("net <= 4.6 m",), ""),
    ("larkspur", "M", "fullness,layers", ("net <= 9 m", "cost <= 45 EUR"), ""),
    ("larkspur", "M", "layers,fullness", ("hours <= 8",), ""),
    ("larkspur", "M", "layers,fullness", ("net <= 9 m",), "least cost"),
    ("larkspur", "M", "fullness", ("net <= 3 m", "cost <= 20 EUR"), ""),
    ("foxglove", "C", "fullness,slip_length", ("batiste <= 1.1 m",), "most slip_length, most fullness"),
    ("larkspur", "M", "fullness,skirt_length,layers", ("net <= 1 m",), ""),
    ("larkspur", "M", "fullness,skirt_length,layers", ("net <= 9 m",), "least cost"),
    ("marigold", "16", "fullness", ("lawn <= 2.6 yd",), ""),
)


def main() -> None:
    for name, size, free, limits, aim in CASES:
        start = time.process_time()
        found = fit(order(name, size), free, limits, aim).value
        seconds = time.process_time() - start
        assert found is not None
        chosen = found.best or found.nearest
        said = ", ".join(f"{key} {value.show()}" for key, value in chosen.choices.items()) if chosen else "none"
        print(
            f"{name} {size}, {free}, {' and '.join(limits)}{f', {aim}' if aim else ''}:"
            f" {'' if found.best else 'none; nearest '}{said}; {found.planned} plans and {found.ruled_out} bounds"
            f" of {found.grid} garments, {found.unsure} not reached, {seconds:.2f} s"
        )


if __name__ == "__main__":
    main()
