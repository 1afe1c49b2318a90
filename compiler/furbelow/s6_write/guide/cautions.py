"""The cautions that stand before the work: what can hurt someone while it is made and when it is worn.

Sources: fabrics that burn fast when washed, such as bridal illusion: 16 CFR 1610.35; net and sheer layers burned in
seconds: US Consumer Product Safety Commission, 1994; loose fit and trains: Devon and Somerset Fire and Rescue Service,
2018; the words of the label: UK SI 1985/2043, schedule 2; waist cord ends on children's clothes: EN 14682:2007 (check
the newest edition); small parts: CEN/TR 16792:2014.
"""

from __future__ import annotations

from furbelow.garment.limits import burns_fast
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.dye import CAUTIONS as DYEING
from furbelow.s6_write.guide.guide import Caution

NEAR_FLOOR = 300  # mm: a hem as low as this is trodden on from the step below; house rule, maker to confirm

LOCAL = "Local rules and the word of a licensed person, a fire officer for a stage or hall, come before this guide."
FULL = "A full skirt stands off the body and can reach a flame before you notice"


def general_cautions(rehearsal: Rehearsal) -> tuple[Caution, ...]:
    """The cautions of this garment, most serious first."""
    run, solved = rehearsal.run, rehearsal.solved
    cautions = []
    if burns_fast(solved):
        cautions.append(
            Caution(
                "flame",
                "Net and other sheer cloth catches fire in a moment and burns within seconds, more so after"
                " washing. " + FULL + ". Keep the garment away from candles, open fires, heaters, gas flames and"
                " cigarettes, while you sew it and when it is worn. Sew in a label: KEEP AWAY FROM FIRE. " + LOCAL,
            )
        )
    else:
        cautions.append(Caution("flame", FULL + ": keep clear of candles, fires and heaters. " + LOCAL))
    cautions += [
        Caution(
            "blade",
            "Shears and rotary cutters: cut away from your body, close or cover the blade each time you put it"
            " down, and keep your shoes on.",
        ),
        Caution(
            "needle",
            "Count pins and needles out and back in. Look the finished garment over for forgotten pins before"
            " anyone puts it on. Take your foot off the pedal before you thread or change a needle.",
        ),
    ]
    height = solved.values.get("waist_height")
    if height is None or height.value.as_length_mm() - max(run.drops.values()) < NEAR_FLOOR:
        cautions.append(
            Caution(
                "trip",
                "A long hem trips people on stairs and stages, and a train drags into fires. Walk up and down a"
                " stair in it before the first wearing.",
            )
        )
    if any(material.material.kind == "dye" for material in solved.materials.values()):
        cautions.append(Caution("dye", " ".join(DYEING)))
    cautions.append(
        Caution(
            "child",
            "For a child under 14: leave no cord, ribbon end or loop hanging at the waist or below the hem, and"
            " sew small parts on fast. Children's clothes and nightwear have rules of their own; ask before you sell"
            " or lend one.",
        )
    )
    return tuple(cautions)
