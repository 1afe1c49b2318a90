"""The figures of the guide: pure geometry as SVG, in one visual language (language.py), one kind in one file.

A technique names the kinds that explain it in `pictures`; the names stand in KINDS.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from functools import cache
from importlib import import_module

from furbelow.garment.message import Supply
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed, Picture
from furbelow.s3_rehearse.run import Run
from furbelow.s4_cut.cut import Cutting
from furbelow.s6_write.figures.cutting import plan_figures
from furbelow.s6_write.figures.legend import how_to_read as how_to_read
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.overview import overview as overview
from furbelow.s6_write.figures.table_marks import table_marks_figures
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.said_step import SaidStep, said_step
from furbelow.s6_write.words.words import Words
from furbelow.techniques import technique_of

# One drawing, several that stand beside sentences of their own, or none.
Kind = Callable[[Performed, Run, Words, Numbers], Figure | Iterator[Figure] | None]

# The function that draws each kind, in its file. A garment needs a dozen of them; to load all, with the techniques that
# they draw, would take longer than to draw them.
KINDS: Mapping[Picture, str] = {
    Picture.PIECES: "piece_view.piece_view",
    Picture.STRIPS: "joined_strips.joined_strips",
    Picture.PANELS: "panels.panels_in_row",
    Picture.SEWN_SEAM: "seam_section.sewn_seam",
    Picture.NEATENED_MARGIN: "seam_section.neatened_margin",
    Picture.TURNED_MARGIN: "seam_section.turned_margin",
    Picture.OVERLOCK_TAIL: "overlock_tail.overlock_tail",
    Picture.TURNED_TWICE: "hem_section.turned_twice",
    Picture.TRIMMED_EDGE: "hem_section.trimmed_edge",
    Picture.FRENCH_SEAM: "finished_seam.french_seam",
    Picture.FLAT_FELLED_SEAM: "finished_seam.flat_felled_seam",
    Picture.LAPPED_SEAM: "finished_seam.lapped_seam",
    Picture.GATHERING: "gathering.gathering",
    Picture.MATCHING_MARKS: "quarter_marks.quarter_marks",
    Picture.RING_OVER_RING: "ring_over_ring.ring_over_ring",
    Picture.LAYERS: "layers.layers",
    Picture.PLEATS: "pleats.pleats",
    Picture.TUCKS: "tucks.tucks",
    Picture.SHIRRING: "shirring.shirring",
    Picture.BAND: "casing_section.band_with_channel",
    Picture.CHANNEL: "channel_band.channel_band",
    Picture.TURNED_LINING: "turned_lining.turned_lining",
    Picture.BINDING_STRIP: "band_section.binding_strip",
    Picture.FITTED_BAND: "band_section.fitted_band",
    Picture.TAPE: "band_section.tape_round_edge",
    Picture.FACING: "faced_edge.faced_edge",
    Picture.BAGGED_EDGE: "faced_edge.bagged_edge",
    Picture.ELASTIC: "elastic.drawing_in",
    Picture.CORD: "drawstring.drawstring",
    Picture.SLIT: "placket.placket",
    Picture.HANG_LOOPS: "hang_loops.hang_loops",
    Picture.FASTENING: "fastening.fastening",
    Picture.CLOSED_GAP: "elastic.closed_gap",
    Picture.LEVELLED: "levelled.levelled",
    Picture.ROW_ON_LINE: "row_on_line.row_on_line",
    Picture.ZIP: "zip_section.zip_in_seam",
    Picture.SEAM_SLIT: "seam_slit.seam_slit",
    Picture.PATCH_POCKET: "pockets.patch_pocket",
    Picture.SIDE_POCKET: "pockets.side_pocket",
    Picture.INTERFACING: "waist_finish.interfacing",
    Picture.PETERSHAM: "waist_finish.petersham",
    Picture.SEWN_ELASTIC: "waist_finish.sewn_elastic",
    Picture.GORES: "gores.gores",
    Picture.BIAS_STRIP: "bias_strip.bias_strip",
    Picture.HEADED_ROW: "headed_row.headed_row",
    Picture.STRAPS: "straps.straps",
    Picture.DARTS: "darts.darts",
    Picture.DIPPED_HEM: "dipped_hem.dipped_hem",
    Picture.BUSTLE_TAPES: "bustle_tapes.bustle_tapes",
    Picture.EYELETS: "eyelets.eyelets",
    Picture.CHANNELS: "casing_inside.channels",
    Picture.CAUGHT_STRIP: "caught.caught_strip",
    Picture.PIPING: "caught.piping",
    Picture.BUTTONED_ELASTIC: "casing_inside.buttoned_elastic",
    Picture.GODETS: "godets.godets",
}


@cache
def kind_of(picture: Picture) -> Kind:
    """What draws a kind of figure; its file is loaded when it is asked for."""
    file, _, function = KINDS[picture].partition(".")
    found: Kind = getattr(import_module(f"{__name__}.{file}"), function)
    return found


def figures_for(
    done: Performed, run: Run, words: Words, first: int | None = None, said: SaidStep | None = None
) -> tuple[Figure, ...]:
    """The figures of one step, those of its technique in order; none where the step has nothing to do.

    The pieces before and after are shown only where nothing else of the step is.

    first: the number of the step's first sentence in its operation, from which the callouts count; without it there are
        none.
    said: the step in these words, where it is said already.
    """
    technique = technique_of(done.step.written)
    actions = (said or said_step(done, words)).actions
    if not actions:
        return ()

    def numbers() -> Numbers:
        return Numbers(actions, first, marked=words.marked)

    others = [name for name in technique.pictures if name is not Picture.PIECES]
    drawn = [figure for name in others for figure in _drawn(kind_of(name), done, run, words, numbers())]
    if not drawn and Picture.PIECES in technique.pictures:
        drawn = list(_drawn(kind_of(Picture.PIECES), done, run, words, numbers()))
    return tuple(replace(figure, key=f"{done.key}-{figure.key}") for figure in drawn)


def _drawn(kind: Kind, done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """Each drawing with the sentences that it called while it was drawn."""
    found = kind(done, run, words, numbers)
    for figure in (found,) if isinstance(found, Figure) else found or ():
        yield replace(figure, shows=numbers.taken())


def cutting_figures(
    cutting: Cutting,
    solved: Solved,
    words: Words,
    name: str,
    chalked: Mapping[int, int] = {},
    taped: Mapping[int, int] = {},
) -> tuple[Figure, ...]:
    """Of a cloth by its name: its plan drawn on it, then the guide tapes on the table.

    chalked, taped: the numbers of the sentences that mark a section and lay its tapes, by its number; a drawing stands beside
    that of its first section.
    """
    plan, material = cutting.sheet(name).plan, solved.materials[name].material
    cloth = Supply(name)
    planned = plan_figures(plan, cutting.marks, words, cloth, f"cut-{name}", material.has_right_side)
    tapes = table_marks_figures(plan, words, cloth, f"tapes-{name}")
    return tuple(
        replace(figure, key=fit(figure.key), shows=(places[section],) if section in places else ())
        for figures, places in ((planned, chalked), (tapes, taped))
        for section, figure in figures.items()
    )


def fit(key: str) -> str:
    """A key of a-z, 0-9 and - from the maker's name of a cloth."""
    return "".join(letter if letter.isascii() and letter.isalnum() else "-" for letter in key.lower())
