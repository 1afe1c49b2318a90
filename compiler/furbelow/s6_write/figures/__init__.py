"""The figures of the guide: pure geometry as SVG, in one visual language (language.py), one kind in one file.

A technique names the kinds that explain it in `pictures`; the names stand in KINDS.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace

from furbelow.garment.message import Supply
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed, Picture
from furbelow.s3_rehearse.run import Run
from furbelow.s4_cut.cut import Cutting
from furbelow.s6_write.figures.band_section import binding_strip, fitted_band, tape_round_edge
from furbelow.s6_write.figures.bias_strip import bias_strip
from furbelow.s6_write.figures.bustle_tapes import bustle_tapes
from furbelow.s6_write.figures.casing_inside import buttoned_elastic, channels
from furbelow.s6_write.figures.casing_section import band_with_channel
from furbelow.s6_write.figures.caught import caught_strip, piping
from furbelow.s6_write.figures.channel_band import channel_band
from furbelow.s6_write.figures.cutting import plan_figures
from furbelow.s6_write.figures.darts import darts
from furbelow.s6_write.figures.dipped_hem import dipped_hem
from furbelow.s6_write.figures.drawstring import drawstring
from furbelow.s6_write.figures.elastic import closed_gap, drawing_in
from furbelow.s6_write.figures.eyelets import eyelets
from furbelow.s6_write.figures.faced_edge import bagged_edge, faced_edge
from furbelow.s6_write.figures.fastening import fastening
from furbelow.s6_write.figures.finished_seam import flat_felled_seam, french_seam, lapped_seam
from furbelow.s6_write.figures.gathering import gathering
from furbelow.s6_write.figures.godets import godets
from furbelow.s6_write.figures.gores import gores
from furbelow.s6_write.figures.hang_loops import hang_loops
from furbelow.s6_write.figures.headed_row import headed_row
from furbelow.s6_write.figures.hem_section import trimmed_edge, turned_twice
from furbelow.s6_write.figures.joined_strips import joined_strips
from furbelow.s6_write.figures.layers import layers
from furbelow.s6_write.figures.legend import how_to_read as how_to_read
from furbelow.s6_write.figures.levelled import levelled
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.overlock_tail import overlock_tail
from furbelow.s6_write.figures.overview import overview as overview
from furbelow.s6_write.figures.panels import panels_in_row
from furbelow.s6_write.figures.piece_view import piece_view
from furbelow.s6_write.figures.placket import placket
from furbelow.s6_write.figures.pleats import pleats
from furbelow.s6_write.figures.pockets import patch_pocket, side_pocket
from furbelow.s6_write.figures.quarter_marks import quarter_marks
from furbelow.s6_write.figures.ring_over_ring import ring_over_ring
from furbelow.s6_write.figures.row_on_line import row_on_line
from furbelow.s6_write.figures.seam_section import neatened_margin, sewn_seam, turned_margin
from furbelow.s6_write.figures.seam_slit import seam_slit
from furbelow.s6_write.figures.shirring import shirring
from furbelow.s6_write.figures.straps import straps
from furbelow.s6_write.figures.table_marks import table_marks_figures
from furbelow.s6_write.figures.tucks import tucks
from furbelow.s6_write.figures.turned_lining import turned_lining
from furbelow.s6_write.figures.waist_finish import interfacing, petersham, sewn_elastic
from furbelow.s6_write.figures.zip_section import zip_in_seam
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.said_step import SaidStep, said_step
from furbelow.s6_write.words.words import Words
from furbelow.techniques import technique_of

# One drawing, several that stand beside sentences of their own, or none.
Kind = Callable[[Performed, Run, Words, Numbers], Figure | Iterator[Figure] | None]

KINDS: Mapping[Picture, Kind] = {
    Picture.PIECES: piece_view,
    Picture.STRIPS: joined_strips,
    Picture.PANELS: panels_in_row,
    Picture.SEWN_SEAM: sewn_seam,
    Picture.NEATENED_MARGIN: neatened_margin,
    Picture.TURNED_MARGIN: turned_margin,
    Picture.OVERLOCK_TAIL: overlock_tail,
    Picture.TURNED_TWICE: turned_twice,
    Picture.TRIMMED_EDGE: trimmed_edge,
    Picture.FRENCH_SEAM: french_seam,
    Picture.FLAT_FELLED_SEAM: flat_felled_seam,
    Picture.LAPPED_SEAM: lapped_seam,
    Picture.GATHERING: gathering,
    Picture.MATCHING_MARKS: quarter_marks,
    Picture.RING_OVER_RING: ring_over_ring,
    Picture.LAYERS: layers,
    Picture.PLEATS: pleats,
    Picture.TUCKS: tucks,
    Picture.SHIRRING: shirring,
    Picture.BAND: band_with_channel,
    Picture.CHANNEL: channel_band,
    Picture.TURNED_LINING: turned_lining,
    Picture.BINDING_STRIP: binding_strip,
    Picture.FITTED_BAND: fitted_band,
    Picture.TAPE: tape_round_edge,
    Picture.FACING: faced_edge,
    Picture.BAGGED_EDGE: bagged_edge,
    Picture.ELASTIC: drawing_in,
    Picture.CORD: drawstring,
    Picture.SLIT: placket,
    Picture.HANG_LOOPS: hang_loops,
    Picture.FASTENING: fastening,
    Picture.CLOSED_GAP: closed_gap,
    Picture.LEVELLED: levelled,
    Picture.ROW_ON_LINE: row_on_line,
    Picture.ZIP: zip_in_seam,
    Picture.SEAM_SLIT: seam_slit,
    Picture.PATCH_POCKET: patch_pocket,
    Picture.SIDE_POCKET: side_pocket,
    Picture.INTERFACING: interfacing,
    Picture.PETERSHAM: petersham,
    Picture.SEWN_ELASTIC: sewn_elastic,
    Picture.GORES: gores,
    Picture.BIAS_STRIP: bias_strip,
    Picture.HEADED_ROW: headed_row,
    Picture.STRAPS: straps,
    Picture.DARTS: darts,
    Picture.DIPPED_HEM: dipped_hem,
    Picture.BUSTLE_TAPES: bustle_tapes,
    Picture.EYELETS: eyelets,
    Picture.CHANNELS: channels,
    Picture.CAUGHT_STRIP: caught_strip,
    Picture.PIPING: piping,
    Picture.BUTTONED_ELASTIC: buttoned_elastic,
    Picture.GODETS: godets,
}


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
    drawn = [figure for name in others for figure in _drawn(KINDS[name], done, run, words, numbers())]
    if not drawn and Picture.PIECES in technique.pictures:
        drawn = list(_drawn(piece_view, done, run, words, numbers()))
    return tuple(replace(figure, key=f"step-{done.step.written.index + 1}-{figure.key}") for figure in drawn)


def _drawn(kind: Kind, done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """Each drawing with the sentences that it called while it was drawn."""
    found = kind(done, run, words, numbers)
    for figure in (found,) if isinstance(found, Figure) else found or ():
        yield replace(figure, shows=numbers.taken())


def cutting_figures(
    cutting: Cutting, solved: Solved, words: Words, name: str, chalked: Sequence[int] = (), taped: Sequence[int] = ()
) -> tuple[Figure, ...]:
    """Of a cloth by its name: its plan drawn on it, then the guide tapes on the table.

    chalked, taped: the sentences beside which they stand, one for each section, or for each section with tapes of its own.
    """
    plan, material = cutting.sheet(name).plan, solved.materials[name].material
    cloth = Supply(name)
    planned = plan_figures(plan, cutting.marks, words, cloth, f"cut-{name}", material.has_right_side)
    tapes = table_marks_figures(plan, words, cloth, f"tapes-{name}")
    return tuple(
        replace(figure, key=fit(figure.key), shows=tuple(at))
        for figures, places in ((planned, chalked), (tapes, taped))
        for figure, at in zip(figures, _shared(places, len(figures)), strict=True)
    )


def _shared(places: Sequence[int], figures: int) -> list[Sequence[int]]:
    """The places of so many figures: one for each, or where a figure shows several sections, the first of those left."""
    return [places[at : at + 1] if at < len(places) else places[-1:] for at in range(figures)]


def fit(key: str) -> str:
    """A key of a-z, 0-9 and - from the maker's name of a cloth."""
    return "".join(letter if letter.isascii() and letter.isalnum() else "-" for letter in key.lower())
