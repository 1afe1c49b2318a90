"""How to cut a section of panels that lie freely: where to chalk each, and in which order to cut them apart."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.garment.limits import is_net
from furbelow.garment.message import Length, One, Own, Supply, Things, Value, flag
from furbelow.garment.tolerance import CUT_OFF
from furbelow.s4_cut.plan import Panel, Section, tag_of
from furbelow.s4_cut.through_cuts import Through, cut_apart
from furbelow.s4_cut.uncuttable import table_of
from furbelow.s6_write.words.said_step import SaidAction, said_action
from furbelow.s6_write.words.words import Words


def panel_steps(
    section: Section, width: Fraction, marks: Mapping[str, str], cloth: str, faces: bool, words: Words
) -> tuple[list[SaidAction], list[SaidAction]]:
    """From the cloth on the table to the last panel cut; the section itself is cut off already.

    cloth: its name in the spec. faces: whether its faces differ.
    """
    words.read("cutting")
    apart = cut_apart(section.panels, section.length, width)
    net = flag(is_net(words.say.solved, cloth))
    if apart is None:
        cut = [said_action("cutting-round", {"panels": len(section.panels)}, words)]
    else:
        cut = list(_apart(apart.cuts, marks, words))
    return [_lay(section, cloth, net, faces, words), *_chalk(section, marks, net, words)], cut


def _lay(section: Section, cloth: str, net: One, faces: bool, words: Words) -> SaidAction:
    if section.length <= table_of(words.say.room):
        message = "cutting-lay" if faces else "cutting-lay-alike"
    else:
        message = "cutting-lay-beyond" if faces else "cutting-lay-alike-beyond"
    return said_action(message, {"cloth": Supply(cloth), "net": net}, words)


def _chalk(section: Section, marks: Mapping[str, str], net: One, words: Words) -> Iterator[SaidAction]:
    for panel in section.panels:
        yield said_action(
            "cutting-panel",
            {
                "mark": Own(tag_of(panel, marks)),
                "net": net,
                "near-end": _start(panel.from_end),
                "far-end": Length(panel.from_end + panel.length, "cut"),
                "near-side": _start(panel.from_edge),
                "far-side": Length(panel.from_edge + panel.width, "cut"),
                "length": Length(panel.length, "cut"),
                "width": Length(panel.width, "cut"),
                "off": Length(CUT_OFF, "off"),
            },
            words,
        )


def _apart(cuts: Sequence[Through], marks: Mapping[str, str], words: Words) -> Iterator[SaidAction]:
    """Cut after cut; what stays over beside single panels comes off last, in one step."""
    many = max((len(cut.panels) for cut in cuts), default=0)
    freed: list[Panel] = []
    for cut in cuts:
        at = Length(cut.at, "cut")
        if not cut.trims:
            away = [panel for panel in cut.panels if (panel.from_end if cut.over else panel.from_edge) >= cut.at]
            message = "cutting-part-end" if cut.over else "cutting-part-side"
            yield said_action(message, {"at": at, "marks": _marks(away, marks)}, words)
        elif len(cut.panels) == many > 1:
            yield said_action("cutting-over-end-all" if cut.over else "cutting-over-side-all", {"at": at}, words)
        elif len(cut.panels) > 1:
            message = "cutting-over-end" if cut.over else "cutting-over-side"
            yield said_action(message, {"at": at, "marks": _marks(cut.panels, marks)}, words)
        else:
            freed += [panel for panel in cut.panels if panel not in freed]
    if freed:
        yield said_action("cutting-trim", {"marks": _marks(freed, marks)}, words)


def _start(at: Fraction) -> Value:
    return Length(at, "cut") if at else 0


def _marks(panels: Sequence[Panel], marks: Mapping[str, str]) -> Things:
    return Things(tuple(Own(tag_of(panel, marks)) for panel in panels))
