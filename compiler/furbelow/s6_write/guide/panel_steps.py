"""How to cut a section of panels that lie freely: where to chalk each, and in which order to cut them apart."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.tolerance import CUT_OFF
from furbelow.s4_cut.plan import Panel, Section
from furbelow.s4_cut.through_cuts import Through, cut_apart

Told = tuple[str, str, str, str]  # action, check, tolerance, remedy

END, EDGE = "the cut end", "the near side"


def panel_steps(
    section: Section, width: Fraction, letters: Mapping[str, str], cloth: str, faces: bool, say: Phrasing
) -> tuple[list[Told], list[Told]]:
    """From the cloth on the table to the last panel cut; the section itself is cut off already."""
    side = "wrong side up" if faces else "either face up"
    table = say.room.table_length
    beyond = ""
    if table is not None and section.length > table:
        beyond = (
            " Where the table ends, chalk a line across and write on it how far it is from the cut end: then draw the"
            " cloth on and measure on from that line."
        )
    told: list[Told] = [
        (
            f"Lay the {cloth} flat on the table, {side}, a cut end at your left and a side that had a selvedge near you: the near side.{beyond}",
            "It lies without a crease and without pull.",
            "",
            "",
        )
    ]
    for panel in section.panels:
        end, edge = panel.from_end + panel.length, panel.from_edge + panel.width
        told.append(
            (
                f"Chalk {_name(panel, letters)} with a ruler: {_stretch(panel.from_end, end, say)} from {END},"
                f" {_stretch(panel.from_edge, edge, say)} from {EDGE}.",
                f"It is {say.cut(panel.length)} long on both sides and {say.cut(panel.width)} wide at both ends.",
                say.off(CUT_OFF),
                "Measure again from the end and the edge, never from panel to panel.",
            )
        )
    apart = cut_apart(section.panels, section.length, width)
    if apart is None:
        return told, [
            (
                "Cut round each panel along its chalk with shears, the outermost first.",
                f"{say.count(len(section.panels), 'panel')} cut. No straight cut from side to side parts them all.",
                "",
                "",
            )
        ]
    return told, _apart(apart.cuts, letters, say)


def _apart(cuts: Sequence[Through], letters: Mapping[str, str], say: Phrasing) -> list[Told]:
    """Cut after cut; what stays over beside single panels comes off last, in one step."""
    told: list[Told] = []
    many = max((len(cut.panels) for cut in cuts), default=0)
    freed: list[Panel] = []
    for cut in cuts:
        where = f"{say.cut(cut.at)} from {END if cut.over else EDGE}"
        if not cut.trims:
            away = [panel for panel in cut.panels if (panel.from_end if cut.over else panel.from_edge) >= cut.at]
            comes = "comes" if len(away) == 1 else "come"
            told.append(
                (f"Cut straight through along the line {where}: {_names(away, letters)} {comes} away.", "", "", "")
            )
        elif len(cut.panels) > 1:
            beside = "the panels" if len(cut.panels) == many else _names(cut.panels, letters)
            told.append(
                (f"Cut straight through along the line {where}: what lies beside {beside} stays over.", "", "", "")
            )
        else:
            freed += [panel for panel in cut.panels if panel not in freed]
    if freed:
        told.append((f"Cut off what stays over beside {_names(freed, letters)}, along the chalk.", "", "", ""))
    return told


def _stretch(start: Fraction, end: Fraction, say: Phrasing) -> str:
    return f"{say.cut(start) if start else 0} to {say.cut(end)}"


def _name(panel: Panel, letters: Mapping[str, str]) -> str:
    return f"{letters[panel.strip]}{panel.copy}"


def _names(panels: Sequence[Panel], letters: Mapping[str, str]) -> str:
    return listed([_name(panel, letters) for panel in panels])
