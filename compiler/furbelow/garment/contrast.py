"""Whether colours can be told apart, and the nearest ones that can.

Source: W3C, Web Content Accessibility Guidelines 2.2, relative luminance and contrast ratio; for distances between colours
B. Ottosson, A perceptual color space for image processing (OKLab), 2020.
"""

from __future__ import annotations

from collections.abc import Iterable

WORDS, LINES = 4.5, 3.0  # WCAG 2.2, success criteria 1.4.3 and 1.4.11
_STEP = 0.004  # of lightness: about one of the 256 that a screen tells
_PALER = (1.0, 0.8, 0.6, 0.4, 0.2, 0.0)  # shares of its colourfulness, for what a screen can't show

Triple = tuple[float, float, float]


def contrast(one: str, other: str) -> float:
    """From 1 to 21, of colours such as `#8d2f38`."""
    return _apart(_luminance(one), _luminance(other))


def _apart(one: float, other: float) -> float:
    return (max(one, other) + 0.05) / (min(one, other) + 0.05)


def _luminance(colour: str) -> float:
    red, green, blue = _linear(colour)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _linear(colour: str) -> Triple:
    parts = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return red, green, blue


def nearest_that_passes(colour: str, others: Iterable[tuple[str, float]]) -> str | None:
    """The colour of the same hue, as little lighter or darker as will do, and paler where it must; None where none does.

    others: colours that it has to be told from, each with the least contrast.
    """
    asked = tuple((_luminance(other), least) for other, least in others)
    light, green_red, blue_yellow = _oklab(colour)
    for away in range(round(1 / _STEP) + 1):
        for tried in dict.fromkeys((light - away * _STEP, light + away * _STEP)):
            if -_STEP < tried < 1 + _STEP:
                near = _shown((min(max(tried, 0), 1), green_red, blue_yellow))
                luminance = _luminance(near)
                if all(_apart(luminance, other) >= least for other, least in asked):
                    return near
    return None


def _oklab(colour: str) -> Triple:
    red, green, blue = _linear(colour)
    long = (0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue) ** (1 / 3)
    middle = (0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue) ** (1 / 3)
    short = (0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue) ** (1 / 3)
    return (
        0.2104542553 * long + 0.7936177850 * middle - 0.0040720468 * short,
        1.9779984951 * long - 2.4285922050 * middle + 0.4505937099 * short,
        0.0259040371 * long + 0.7827717662 * middle - 0.8086757660 * short,
    )


def _shown(lab: Triple) -> str:
    """As a screen shows it: as colourful as it can."""
    light, a, b = lab
    for share in _PALER:
        parts = _in_light((light, a * share, b * share))
        if all(-0.001 <= part <= 1.001 for part in parts):
            break
    return "#" + "".join(f"{round(255 * _encoded(min(max(part, 0), 1))):02x}" for part in parts)


def _in_light(lab: Triple) -> Triple:
    light, a, b = lab
    long = (light + 0.3963377774 * a + 0.2158037573 * b) ** 3
    middle = (light - 0.1055613458 * a - 0.0638541728 * b) ** 3
    short = (light - 0.0894841775 * a - 1.2914855480 * b) ** 3
    return (
        4.0767416621 * long - 3.3077115913 * middle + 0.2309699292 * short,
        -1.2684380046 * long + 2.6097574011 * middle - 0.3413193965 * short,
        -0.0041960863 * long - 0.7034186147 * middle + 1.7076147010 * short,
    )


def _encoded(part: float) -> float:
    return float(12.92 * part if part <= 0.0031308 else 1.055 * part ** (1 / 2.4) - 0.055)
