"""The waist opening passes what it must pass, and the elastic stretches so far within its rating.

Guarantees: the flat casing is at least the girth to pass and its ease; the elastic, stretched to that girth, stays within
    the stretch of its material; at rest it is shorter than the waist.
Cannot know: the real girth of the wearer on the day, or how an old elastic stretches.
Source: use the larger of hip and waist: in 17 of 1,986 women and 370 of 4,082 men of a large survey the waist is larger
    (ANSUR II, Gordon et al. 2014; its waist is taken at the navel).
"""

from __future__ import annotations

from compiler.diagnostics import Fault, Label
from compiler.s3_rehearse.run import Proof, Run

CLAIM = "It goes on over the hips, and the elastic holds at the waist"


def prove(run: Run) -> Proof:
    solved, say, worn = run.solved, run.say, run.solved.spec.worn
    girth = solved.length("worn.over")
    ease = solved.length("worn.ease") if worn.ease else girth * 0
    faults, shown = [], []
    for casing in run.final.casings.values():
        if not run.sound([casing.piece]):
            continue
        piece = solved.pieces[casing.piece].piece
        if casing.length < girth + ease:
            faults.append(
                Fault("FB408",
                      f"the opening of {say.length(casing.length)} is {say.length(girth + ease - casing.length)} too small for"
                      f" {say.length(girth)} and {say.length(ease)} of ease; the garment can't be put on",
                      Label((piece.length or piece.cut_length or worn.over).span, f"this gives {say.length(casing.length)} round"),
                      (Label(worn.over.span, f"the opening must pass {say.length(girth)}"),),
                      notes=(f"{say.length(girth)} + {say.length(ease)} = {say.length(girth + ease)}",),
                      help=f"make `{casing.piece}` at least {say.length(girth + ease)} long")
            )  # fmt: skip
        if not casing.elastic:
            continue
        material = solved.materials[casing.elastic]
        needed = girth / casing.elastic_length - 1
        rated = material.amounts["stretch"].value if "stretch" in material.amounts else None
        place = next(
            done.step.step.args["length"].span
            for done in run.performed
            if done.step.step.technique == "insert elastic" and done.after.casings[casing.name].elastic
        )
        if rated is not None and needed > rated:
            faults.append(
                Fault("FB409",
                      f"the elastic of {say.length(casing.elastic_length)} must stretch {say.share(needed)} to pass"
                      f" {say.length(girth)}, and it is rated {say.share(rated)}",
                      Label(place, f"{say.length(casing.elastic_length)} at rest"),
                      (Label(material.material.span, f"rated {say.share(rated)}"),),
                      notes=(f"{say.length(girth)} / {say.length(casing.elastic_length)} - 1 = {say.share(needed)}",),
                      help=f"cut it {say.length(girth / (1 + rated))} or longer, or choose an elastic that stretches further")
            )  # fmt: skip
        waist = solved.values.get("waist_girth")
        if waist and casing.elastic_length >= waist.value.as_length_mm():
            faults.append(
                Fault("FB410",
                      f"the elastic of {say.length(casing.elastic_length)} is not shorter than the waist of"
                      f" {say.length(waist.value.as_length_mm())}; the skirt slides down",
                      Label(place, "length of the closed elastic at rest"),
                      help="make it shorter than the waist")
            )  # fmt: skip
        shown.append(
            f"{say.length(casing.length)} flat for {say.length(girth)} of body; the elastic stretches {say.share(needed)}"
            + (f" of its {say.share(rated)}" if rated is not None else "")
        )
    return Proof(CLAIM, "; ".join(shown) or "the garment has no casing", tuple(faults))
