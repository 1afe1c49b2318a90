"""The cautions that several techniques give; each is said by a message in cautions.ftl."""

from __future__ import annotations

from furbelow.garment.technique import Caution, CautionKind

PINS_OUT = Caution(CautionKind.NEEDLE, "caution-pins")
HAND_NEEDLE = Caution(CautionKind.NEEDLE, "caution-hand-needle")
FINGERS = Caution(CautionKind.NEEDLE, "caution-fingers")
KNIVES = Caution(CautionKind.BLADE, "caution-knives")
SHEARS = Caution(CautionKind.BLADE, "caution-shears")
