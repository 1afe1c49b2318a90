"""The cautions that several techniques give; each is said by a message in cautions.ftl."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import Length
from furbelow.garment.technique import Caution, CautionKind
from furbelow.garment.workroom import Workroom

PINS_OUT = Caution(CautionKind.NEEDLE, "caution-pins")
CLIPS_OFF = Caution(CautionKind.NEEDLE, "caution-clips")
HAND_NEEDLE = Caution(CautionKind.NEEDLE, "caution-hand-needle")
FINGERS = Caution(CautionKind.NEEDLE, "caution-fingers")
KNIVES = Caution(CautionKind.BLADE, "caution-knives")
RIPPER = Caution(CautionKind.BLADE, "caution-ripper")
RIPPER_ROW = Caution(CautionKind.BLADE, "caution-ripper-row")
AWL = Caution(CautionKind.BLADE, "caution-awl")
ZIP_TEETH = Caution(CautionKind.NEEDLE, "caution-needle-teeth")
SHEARS = Caution(CautionKind.BLADE, "caution-shears")
# At the waist.
SAFETY_PIN = Caution(CautionKind.NEEDLE, "caution-safety-pin")
SAFETY_PIN_LAST = Caution(CautionKind.NEEDLE, "caution-safety-pin-last")
NO_FLAME_ON_ENDS = Caution(CautionKind.FLAME, "caution-no-flame-on-ends")
# On children up to 14 years each end of a waist cord may hang so far, in mm, with the garment open and drawn in: EN
# 14682:2007, of which a newer edition (2014) is in force.
CORD_OPEN, CORD_DRAWN = Fraction(140), Fraction(280)
# At the waist of jackets and tops in the United States, with the channel at its full width: ASTM F1816-18.
CORD_US = Fraction(75)
CORDS = Caution(
    CautionKind.CHILD,
    "caution-cords",
    {"open": Length(CORD_OPEN), "drawn-in": Length(CORD_DRAWN), "united-states": Length(CORD_US)},
)
TIGHT_ELASTIC = Caution(CautionKind.CHILD, "caution-tight-elastic")
LOOPS = Caution(CautionKind.CHILD, "caution-loops")
SMALL_PARTS = Caution(CautionKind.CHILD, "caution-small-parts")
STEAM = Caution(CautionKind.STEAM, "caution-steam")
ARC = Caution(CautionKind.BLADE, "caution-arc")
SHORT_BITES = Caution(CautionKind.BLADE, "caution-short-bites")
BONING = Caution(CautionKind.BLADE, "caution-boning")


def held_out(room: Workroom) -> Caution:
    """What holds an edge in this workroom is out of the way before the needle comes."""
    return CLIPS_OFF if room.hold_with == "clips" else PINS_OUT
