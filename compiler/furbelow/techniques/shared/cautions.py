"""The cautions that several techniques give; each is said by a message in cautions.ftl."""

from __future__ import annotations

from furbelow.garment.technique import Caution, CautionKind

PINS_OUT = Caution(CautionKind.NEEDLE, "caution-pins")
HAND_NEEDLE = Caution(CautionKind.NEEDLE, "caution-hand-needle")
FINGERS = Caution(CautionKind.NEEDLE, "caution-fingers")
KNIVES = Caution(CautionKind.BLADE, "caution-knives")
SHEARS = Caution(CautionKind.BLADE, "caution-shears")
# At the waist.
SAFETY_PIN = Caution(CautionKind.NEEDLE, "caution-safety-pin")
SAFETY_PIN_LAST = Caution(CautionKind.NEEDLE, "caution-safety-pin-last")
NO_FLAME_ON_ENDS = Caution(CautionKind.FLAME, "caution-no-flame-on-ends")
CORDS = Caution(CautionKind.CHILD, "caution-cords")
LOOPS = Caution(CautionKind.CHILD, "caution-loops")
SMALL_PARTS = Caution(CautionKind.CHILD, "caution-small-parts")
STEAM = Caution(CautionKind.STEAM, "caution-steam")
ARC = Caution(CautionKind.BLADE, "caution-arc")
SHORT_BITES = Caution(CautionKind.BLADE, "caution-short-bites")
BONING = Caution(CautionKind.BLADE, "caution-boning")
