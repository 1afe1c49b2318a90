"""Every technique goes the whole way to a guide: planned, bought and written, in these garments."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.make_one import make_guide
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.techniques import techniques

from tests.techniques.small import spec_text

OWN = """\
techniques:
  shell edge:
    about: Draw a hem into small shells by hand.
    works on: edge
    lengths: {turn: 6 mm}
    takes: [turn, turn]
    leaves: hemmed
    stitch: {type: 101, length: 3 mm}
    do: ["Turn {edge} twice by {turn} and draw it into shells, {length}."]
"""

SUPPLIES = "  starch: {kind: starch, about: liquid starch}\n  red: {kind: dye, about: red dye}\n"
SUPPLIES += (
    "  zip: {kind: zip, about: dress zip, length: 22 cm, price: 2 EUR}\n  petersham: {kind: trim, width: 25 mm}\n"
)
SUPPLIES += "  ring: {kind: fastening, about: small ring}\n"
SUPPLIES += "  agent: {kind: other, about: agent against fire, sold by: 1000 ml, price: 18 EUR}\n"
SUPPLIES += "  narrow_elastic: {kind: elastic, width: 6 mm, stretch: 100%}\n"
SUPPLIES += "  eyelet: {kind: fastening, width: 8 mm, price: 0.10 EUR}\n"
SUPPLIES += "  fusible: {kind: interfacing, width: 90 cm, price: 3 EUR/m}\n"

GARMENTS: Mapping[str, tuple[str, str]] = {
    "a skirt with a placket": (
        """skirt: {from: lawn, length: 240 cm, depth: 50 cm, piecing: {seam: 1 cm, shortest: 30 cm, most joins: 2}}
        flounce: {from: lawn, length: 360 cm, depth: 20 cm, piecing: {seam: 1 cm, shortest: 30 cm, most joins: 3}}
        ruche: {from: net, length: 480 cm, depth: 5 cm, piecing: {seam: 1 cm, shortest: 30 cm, most joins: 4}}
        placket: {from: lawn, length: 40 cm, depth: 3 cm}
        waistband: {from: lawn, length: waist_girth + 1 cm + 3 cm, depth: 3 cm}""",
        """- join strips: {of: [skirt, flounce, ruche]}
        - neaten: {seam: [skirt.joins, flounce.joins]}
        - french seam: {of: skirt}
        - flat felled seam: {of: flounce}
        - join ends: {of: ruche}
        - rolled hem: {edge: flounce.top, by: hand}
        - edge with trim: {edge: flounce.bottom, trim: beading, turn up: 5 mm}
        - ribbon threading: {edge: flounce.bottom, ribbon: ribbon}
        - neaten: {edge: skirt.bottom}
        - tucks: {edge: skirt.bottom, depth: 1 cm, count: 3, from edge: 6 cm}
        - boning channel: {piece: skirt, above hem: 15 cm, tape: tape, bone: bone}
        - ruche: {strip: ruche, on: skirt, above hem: 20 cm}
        - ruched heading: {edge: flounce.top, to: skirt.bottom, heading: 15 mm, lap: 12 mm}
        - placket: {edge: skirt.top, strip: placket, slit: 20 cm}
        - pleats: {edge: skirt.top, length: waistband.length, kind: box, count: 12}
        - hang loops: {edge: skirt.top, tape: ribbon}
        - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
        - fastening: {edge: skirt.top, by: button and buttonhole, count: 2}
        - press: {piece: skirt}""",
    ),
    "an apron": (
        """apron: {from: lawn, length: 60 cm, depth: 50 cm}
        lining: {from: lawn, length: 60 cm, depth: 50 cm}
        waistband: {from: lawn, length: 60 cm, depth: 4 cm}
        tie: {from: lawn, count: 2, length: 60 cm, depth: 4 cm}""",
        """- bagged lining: {piece: apron, lining: lining, leave open: top}
        - stack layers: {layers: [apron.top, {edge: lining.top, right side: in}], as: apron_top}
        - fitted waistband: {band: waistband, to: apron_top, fasten: ties, overlap: 0 cm}
        - tie ends: {tie: tie, to: waistband}""",
    ),
    "a circular skirt on a cord": (
        """skirt: {from: net, count: 2, length: 60 cm, depth: 40 cm}
        yoke: {from: lawn, length: 120 cm, depth: 15 cm}
        facing: {from: net, length: 280 cm, depth: 4 cm, piecing: {seam: 1 cm, shortest: 20 cm, most joins: 3}}""",
        """- ring cut: {piece: skirt, hem: 140 cm}
        - join ends: {of: skirt, into: one ring}
        - french seam: {of: yoke}
        - folded casing: {edge: yoke.top, depth: 2 cm, gap: 3 cm}
        - neaten: {edge: yoke.bottom}
        - lapped seam: {edge: yoke.bottom, over: skirt.top}
        - join strips: {of: facing}
        - join ends: {of: facing}
        - facing: {edge: skirt.bottom, with: facing.bottom}
        - drawstring: {cord: cord, into: yoke.top, ends: 5 cm}""",
    ),
    "a skirt eased on to its yoke": (
        """yoke: {from: lawn, length: 120 cm, depth: 18 cm}
        skirt: {from: lawn, length: 123 cm, depth: 45 cm}""",
        """- french seam: {of: yoke}
        - french seam: {of: skirt}
        - ease in: {edge: skirt.top, to: yoke.bottom}
        - attach: {edge: skirt.top, to: yoke.bottom, seam: 1 cm}
        - neaten: {seam: skirt.top}
        - narrow hem: {edge: skirt.bottom}
        - folded casing: {edge: yoke.top, depth: 24 mm}
        - insert elastic: {elastic: elastic, into: yoke.top, length: waist_girth - 8 cm}
        - close gap: {of: yoke.top}""",
    ),
    "a skirt with a zip": (
        """skirt: {from: lawn, length: 116 cm, depth: 60 cm}
        pocket: {from: lawn, length: 15 cm, depth: 16 cm}
        bag: {from: net, count: 2, length: 14 cm, depth: 24 cm}
        waistband: {from: lawn, length: waist_girth + 1 cm + 3 cm, depth: 3 cm}""",
        """- neaten: {edge: skirt.start}
        - neaten: {edge: skirt.end}
        - join ends: {of: skirt, seam: 2 cm, open: 20 cm, open at hem: 15 cm, gap: 14 cm, gap below top: 24 cm}
        - side pocket: {bag: bag, in: skirt.ends}
        - patch pocket: {pocket: pocket, on: skirt, below top: 10 cm, from start: 30 cm}
        - zip: {in: skirt.ends, zip: zip, way: lapped}
        - gather: {edge: skirt.top, length: waist_girth + 1 cm}
        - interface: {piece: waistband, with: fusible, cover: half}
        - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
        - narrow hem: {edge: skirt.bottom}
        - slit: {in: skirt.ends}""",
    ),
    "a skirt on petersham with a slip on elastic": (
        """skirt: {from: lawn, length: 116 cm, depth: 60 cm}
        cuff: {from: net, length: 116 cm, depth: 20 cm}""",
        """- neaten: {edge: skirt.start}
        - neaten: {edge: skirt.end}
        - join ends: {of: skirt, seam: 2 cm, open: 20 cm}
        - zip: {in: skirt.ends, zip: zip}
        - gather: {edge: skirt.top, length: waist_girth + 1 cm}
        - petersham: {edge: skirt.top, ribbon: petersham}
        - fastening: {edge: skirt.top, by: hook and eye}
        - join ends: {of: cuff}
        - neaten: {edge: skirt.bottom}
        - attach: {edge: cuff.top, to: skirt.bottom}
        - sewn elastic: {edge: cuff.bottom, elastic: elastic, length: 90 cm}""",
    ),
    "a gored skirt": (
        """gore: {from: lawn, count: 6, length: 20 cm, depth: 60 cm}
        strap: {from: lawn, count: 2, length: 40 cm, depth: 15 mm}""",
        """- gores: {piece: gore, hem: 40 cm}
        - join ends: {of: gore, into: one ring}
        - neaten: {seam: gore.ends}
        - narrow hem: {edge: gore.bottom}
        - sewn elastic: {edge: gore.top, elastic: elastic, length: waist_girth - 8 cm}
        - straps: {strap: strap, to: gore.top}""",
    ),
    "a wrap skirt of gores": (
        """skirt: {from: lawn, count: 5, length: 22 cm, depth: 60 cm}
        waistband: {from: lawn, length: 110 cm, depth: 3 cm}
        tie: {from: lawn, count: 2, length: 90 cm, depth: 3 cm}""",
        """- gores: {piece: skirt, hem: 40 cm}
        - join panels: {of: skirt, seam: 15 mm}
        - neaten: {seam: skirt.ends}
        - narrow hem: {edge: skirt.start}
        - narrow hem: {edge: skirt.end}
        - narrow hem: {edge: skirt.bottom}
        - fitted waistband: {band: waistband, to: skirt.top, overlap: 0 cm, fasten: ties}
        - tie ends: {tie: tie, to: waistband}""",
    ),
    "a skirt with godets": (
        """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
        godet: {from: lawn, count: 6, length: 5 mm, depth: 25 cm, grain: across}""",
        """- join ends: {of: skirt, seam: 1 cm}
        - neaten: {seam: skirt.ends}
        - gores: {piece: godet, hem: 30 cm, sides: both slanting}
        - godets: {piece: godet, in: skirt.bottom, hem: 15 mm}
        - neaten: {seam: godet.ends}
        - narrow hem: {edge: skirt.bottom}
        - sewn elastic: {edge: skirt.top, elastic: elastic, length: waist_girth - 8 cm}""",
    ),
    "a skirt with a train": (
        """skirt: {from: lawn, length: 240 cm, depth: 90 cm}""",
        """- join ends: {of: skirt, seam: 1 cm}
        - neaten: {seam: skirt.ends}
        - dipped hem: {edge: skirt.bottom, front: 30 cm, side: 20 cm}
        - narrow hem: {edge: skirt.bottom}
        - bustle tapes: {on: skirt, tape: tape, rings: ring, cord: cord, below top: 15 cm, each: 6, up: 30 cm}
        - sewn elastic: {edge: skirt.top, elastic: elastic, length: waist_girth - 8 cm}""",
    ),
    "a darted skirt": (
        """skirt: {from: lawn, length: 112 cm, depth: 60 cm}
        waistband: {from: lawn, length: 83 cm, depth: 3 cm}""",
        """- neaten: {edge: skirt.start}
        - neaten: {edge: skirt.end}
        - join ends: {of: skirt, seam: 2 cm, open: 20 cm}
        - zip: {in: skirt.ends, zip: zip}
        - darts: {edge: skirt.top, length: 80 cm, count: 8}
        - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
        - narrow hem: {edge: skirt.bottom}""",
    ),
    "a skirt of unequal gores on a yoke": (
        """yoke: {from: lawn, count: 3, length: 37 cm, depth: 15 cm}
        skirt: {from: lawn, count: 6, length: 22 cm, depth: 60 cm, grain: across}""",
        """- ring cut: {piece: yoke, hem: 44 cm}
        - join ends: {of: yoke, into: one ring}
        - neaten: {seam: yoke.ends}
        - gores: {piece: skirt, hem: 38 cm, front: 30 cm, back: 24 cm, back hem: 48 cm, backs: 2}
        - join ends: {of: skirt, into: one ring}
        - neaten: {seam: skirt.ends}
        - attach: {edge: skirt.top, to: yoke.bottom}
        - neaten: {seam: skirt.top}
        - narrow hem: {edge: skirt.bottom}
        - sewn elastic: {edge: yoke.top, elastic: elastic, length: waist_girth - 8 cm}""",
    ),
    "a shirred skirt": (
        """skirt: {from: lawn, length: 130 cm, depth: 60 cm}
        flounce: {from: lawn, length: 180 cm, depth: 15 cm, piecing: {seam: 1 cm, shortest: 20 cm, most joins: 2}}
        strip: {from: lawn, length: 180 cm, depth: 8 mm}""",
        """- join strips: {of: flounce}
        - bias strip: {piece: strip}
        - neaten: {seam: flounce.joins}
        - join ends: {of: skirt, seam: 1 cm}
        - join ends: {of: flounce, seam: 1 cm}
        - join ends: {of: strip, seam: 1 cm}
        - bound edge: {seam: skirt.ends, tape: tape}
        - neaten: {seam: flounce.ends}
        - shell edge: {edge: skirt.top}
        - binding strip: {strip: strip, edge: flounce.bottom}
        - gather: {edge: flounce.top, to: skirt.bottom}
        - attach: {edge: flounce.top, to: skirt.bottom, seam: 1 cm}
        - neaten: {seam: flounce.top}
        - turn seam: {seam: flounce.top}
        - shirring: {edge: skirt.top, length: waist_girth - 4 cm, with: fine_elastic}""",
    ),
    "a cartridge pleated skirt on elastic": (
        """yoke: {from: net, length: 110 cm, depth: 12 cm}
        skirt: {from: net, length: 330 cm, depth: 50 cm, piecing: {seam: 1 cm, shortest: 20 cm, most joins: 3}}
        band: {from: lawn, length: 110 cm, depth: 25 mm}""",
        """- join strips: {of: skirt}
        - join ends: {of: skirt}
        - join ends: {of: yoke}
        - join ends: {of: band}
        - deep hem: {edge: skirt.bottom, depth: 5 cm, turn under: 5 mm}
        - cartridge pleats: {edge: skirt.top, to: yoke.bottom}
        - band casing: {band: band, to: yoke.top}
        - insert elastic: {elastic: elastic, into: band, length: waist_girth - 10 cm}
        - close gap: {of: band}""",
    ),
    "a petticoat whose lining is turned in": (
        """layer: {from: net, count: 2, length: 280 cm, depth: 45 cm}
        lining: {from: lawn, length: 132 cm, depth: 40 cm}
        band: {from: lawn, length: 120 cm, depth: 4 cm}""",
        """- join ends: {of: layer}
        - stack layers: {layers: [layer.top], as: pair}
        - gather: {edge: pair, length: 124 cm, tails: knotted on both faces}
        - join ends: {of: lining}
        - neaten: {seam: lining.ends, tails: turned back and caught}
        - narrow hem: {edge: lining.bottom}
        - gather: {edge: lining.top, length: 124 cm}
        - neaten: {edge: [band.start, band.end]}
        - join ends: {of: band}
        - channel band: {band: band, as: band_edge, channel: 24 mm}
        - turned lining: {lining: lining.top, band: band_edge, to: pair}
        - insert elastic: {elastic: elastic, into: band, length: waist_girth - 10 cm, cut: long}
        - close gap: {of: band}
        - starch: {piece: layer, with: starch, dry: on a form}""",
    ),
    "a skirt on a cord out of its band": (
        """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
        waistband: {from: lawn, length: 120 cm, depth: 25 mm}""",
        """- eyelets: {in: waistband, as: metal eyelets, with: eyelet, backing: fusible}
        - neaten: {edge: [skirt.start, skirt.end]}
        - join ends: {of: skirt, gap: 12 cm, gap below top: 20 cm}
        - close gap: {of: skirt.ends}
        - narrow hem: {edge: skirt.bottom}
        - join ends: {of: waistband}
        - band casing: {band: waistband, to: skirt.top}
        - drawstring: {cord: cord, into: waistband, ends: 5 cm}""",
    ),
    "a child's skirt on elastic that buttons": (
        """skirt: {from: lawn, length: 120 cm, depth: 40 cm}
        band: {from: lawn, length: 120 cm, depth: 27 mm}""",
        """- french seam: {of: skirt}
        - narrow hem: {edge: skirt.bottom}
        - neaten: {edge: [band.start, band.end]}
        - join ends: {of: band}
        - band casing: {band: band, to: skirt.top, gap in: seam}
        - adjustable elastic: {elastic: elastic, into: band, length: waist_girth - 8 cm}
        - flame retardant: {piece: skirt, with: agent, takes: 1.5}""",
    ),
    "a skirt with a piped and ruffled seam": (
        """yoke: {from: lawn, length: 120 cm, depth: 18 cm}
        skirt: {from: lawn, length: 120 cm, depth: 45 cm}
        frill: {from: lawn, length: 130 cm, depth: 6 cm}
        cover: {from: lawn, length: 120 cm, depth: 16 mm}""",
        """- french seam: {of: yoke}
        - french seam: {of: skirt}
        - french seam: {of: frill}
        - rolled hem: {edge: frill.bottom}
        - gather: {edge: frill.top, to: yoke.bottom}
        - bias strip: {piece: cover}
        - join ends: {of: cover}
        - piping: {strip: cover, cord: cord, in: yoke.bottom}
        - catch in: {strip: frill.top, in: yoke.bottom}
        - attach: {edge: skirt.top, to: yoke.bottom}
        - neaten: {seam: skirt.top}
        - narrow hem: {edge: skirt.bottom}
        - folded casing: {edge: yoke.top, depth: 25 mm}
        - insert elastic: {elastic: elastic, into: yoke.top, length: waist_girth - 8 cm}
        - close gap: {of: yoke.top}""",
    ),
    "a skirt with a placket in its seam": (
        """skirt: {from: lawn, length: 116 cm, depth: 60 cm}
        strip: {from: lawn, length: 42 cm, depth: 3 cm}
        waistband: {from: lawn, length: waist_girth + 3 cm, depth: 3 cm}""",
        """- neaten: {edge: [skirt.start, skirt.end]}
        - join ends: {of: skirt, seam: 2 cm, open: 20 cm}
        - placket: {edge: skirt.top, strip: strip, in: skirt.ends}
        - gather: {edge: skirt.top, length: waistband.length}
        - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm}
        - narrow hem: {edge: skirt.bottom}""",
    ),
    "a skirt on three rows of elastic": (
        """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
        band: {from: lawn, length: 120 cm, depth: 32 mm}""",
        """- french seam: {of: skirt}
        - narrow hem: {edge: skirt.bottom}
        - join ends: {of: band}
        - band casing: {band: band, to: skirt.top}
        - divide casing: {of: band, channels: 3}
        - insert elastic: {elastic: narrow_elastic, into: band, length: waist_girth - 8 cm}
        - close gap: {of: band}""",
    ),
    "a hemmed petticoat": (
        """slip: {from: lawn, length: 120 cm, depth: 60 cm}
        row: {from: net, length: 240 cm, depth: 15 cm, piecing: {seam: 1 cm, shortest: 20 cm, most joins: 2}}
        frill: {from: net, length: 240 cm, depth: 10 cm, piecing: {seam: 1 cm, shortest: 20 cm, most joins: 2}}""",
        """- french seam: {of: slip}
        - join strips: {of: [row, frill]}
        - join ends: {of: row}
        - join ends: {of: frill}
        - headed row: {edge: frill.top, on: slip, above hem: 14 cm}
        - gather: {edge: row.top, length: 120 cm}
        - sew on: {edge: row.top, on: slip, above hem: 30 cm}
        - level waist: {edge: slip.top, front: 106 cm, side: 105 cm, back: 103 cm}
        - narrow hem: {edge: slip.bottom}
        - folded casing: {edge: slip.top, depth: 25 mm}
        - insert elastic: {elastic: elastic, into: slip.top, length: waist_girth - 8 cm}
        - close gap: {of: slip.top}
        - dye: {piece: slip, with: red}
        - starch: {piece: slip, with: starch, by: spray}""",
    ),
}


@pytest.mark.parametrize("name", GARMENTS)
def test_a_garment_goes_the_whole_way(name: str) -> None:
    pieces, steps = GARMENTS[name]
    text = spec_text(pieces, steps, own=OWN, materials=SUPPLIES).replace("rounding: 0 mm", "rounding: 5 mm")
    read = read_spec(("garment.yaml", text.encode()))
    assert read.value is not None, [fault.headline for fault in read.faults]
    body = size_body(read.value, "M")
    assert body.value is not None
    made = make_guide(Order(read.value, "size M", body.value, {}, Workroom(neaten_with="overlocker")), with_pdf=False)
    assert made.value is not None, [f"{fault.code} {fault.headline}" for fault in made.faults if fault.is_error]
    guide = json.loads(made.value.files["guide.json"])
    said = [step for part in guide["parts"] for operation in part["operations"] for step in operation["steps"]]
    assert len(said) > len(read.value.steps)
    assert not [step for step in said if re.search(r"None|Fraction|\{", step["text"])]


def test_the_garments_use_every_technique() -> None:
    steps = "\n".join(steps for _, steps in GARMENTS.values())
    assert set(re.findall(r"- ([a-z ]+): \{", steps)) == {*techniques(), "shell edge"}
