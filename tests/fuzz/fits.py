"""Calls of `fit` at random: one to three choices set free, limits on cloth, cost, hours and numbers of the garment, aims."""

from __future__ import annotations

import random
from collections.abc import Callable

from tests.fuzz.garments import Garment, garment_at_random, spec_files

Made = tuple[list[str], dict[str, bytes]]


def fit_at_random(luck: random.Random, garment: Garment, who: Callable[[random.Random, Garment], Made]) -> Made:
    """Sound for most garments; some limits no garment keeps. who: for whom it is, and the files of that."""
    while not garment.choices:
        garment = garment_at_random(luck)
    names = [name for name, _ in garment.choices]
    free = luck.sample(names, min(len(names), luck.choice([1, 1, 1, 2, 3])))
    arguments, files = who(luck, garment)
    for name, value in garment.choices:
        if name not in free and luck.random() < 0.3:
            arguments += ["--set", f"{name}={value}"]
    limits = [_limit(luck, garment, free) for _ in range(luck.randrange(1, 4))]
    if luck.random() < 0.5:
        limits = [" and ".join(limits)]
    asked = [word for limit in limits for word in ("--so-that", limit)]
    if luck.random() < 0.6:
        asked += ["--for", ", then ".join(_aim(luck, garment, free) for _ in range(luck.choice([1, 1, 2])))]
    form = ["--format", luck.choice(["text", "json"])]
    return ["spec.yaml", *arguments, "--free", ",".join(free), *asked, *form], {**files, **spec_files(luck, garment)}


def _limit(luck: random.Random, garment: Garment, free: list[str]) -> str:
    cloth, sign = garment.amounts[0], luck.choice(["<=", "<=", "<=", "<"])
    kind = luck.randrange(6)
    if kind == 0:
        return f"hours {sign} {luck.randrange(2, 20)}"
    if kind == 1:
        return f"(cost {sign} {luck.randrange(10, 200)} EUR)"
    if kind == 2:
        of, name, length = luck.choice(garment.measured)
        if of == "cut":
            return f"{name}.cut_depth {luck.choice(['<=', '>='])} {int(length) + luck.randrange(-60, 61)} mm"
    if kind == 3 and len(garment.choices) > len(free):
        name, value = luck.choice([each for each in garment.choices if each[0] not in free])
        return f"{name} >= {value}"
    if kind == 4:
        return f"({cloth} + {cloth}) {sign} {luck.randrange(2, 20)} m"
    return f"{cloth} {sign} {luck.randrange(1, 12)} m"


def _aim(luck: random.Random, garment: Garment, free: list[str]) -> str:
    name = luck.choice([*free, *free, "cost", "hours", garment.amounts[0]])
    return f"{luck.choice(['most', 'least'])} {name}"
