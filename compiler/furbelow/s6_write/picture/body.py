"""The form itself: a trunk and two legs, without more."""

from __future__ import annotations

from collections.abc import Iterator
from math import pi

from furbelow.s6_write.picture.form import ABOVE, Form
from furbelow.s6_write.picture.tints import FORM, FORM_LINE
from furbelow.s6_write.picture.view import HIGH, WIDE, View, area, line

FORK = 70.0  # the legs part so far below the hips
FOOT = 0.93  # of the way to the floor: no feet are drawn
SLIM = 0.42  # by how much the form is narrower at the foot
THIN = 8


def body(form: Form, view: View) -> Iterator[str]:
    fork = form.hip_depth + FORK
    low = max(fork + 50, min(form.floor * FOOT, (HIGH - 60 - view.waist) / view.scale))
    side = pi / 2 - view.turn  # the widest place as it is seen

    def down_to(depth: float) -> float:
        return view.spot(0, 0, depth).y

    steps = range(-int(ABOVE), int(fork), 15)
    outer = [view.spot(side, form.radius(down), down)[:2] for down in steps]
    for share in (0.25, 0.5, 0.75, 1.0):
        across = form.radius(fork) * (1 - SLIM * share**0.8)
        outer.append((view.spot(side, across, 0).x, down_to(fork + (low - fork) * share)))
    # From the side one leg hides the other.
    inner = []
    if abs(view.turn % pi) < 0.1:
        inner = [
            (WIDE / 2 + (8 + 33 * share) * view.scale, down_to(fork + (low - fork) * share))
            for share in (1.0, 0.5, 0.0)
        ]
    lid = [view.spot(side + pi * step / 12, form.radius(-ABOVE), -ABOVE)[:2] for step in range(13)]
    left, between = _mirrored(outer), _mirrored(inner)
    yield area([*lid[::-1], *outer[1:], *inner, *between[::-1], *left[::-1]], FORM)
    for path in (outer, left, inner, between, lid):
        if path:
            yield line(path, FORM_LINE, THIN)


def _mirrored(points: list[tuple[float, float]]) -> list[tuple[float, float]]:
    return [(WIDE - x, y) for x, y in points]
