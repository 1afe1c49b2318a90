"""The register of fault codes: one line of meaning each.

FB1 read, FB2 solve, FB3 steps of the rehearsal, FB4 proofs, FB5 cut, FB6 buy and write.
A code once released keeps its meaning; a code that falls out of use is not given again.
"""

CODES: dict[str, str] = {
    # read: the file
    "FB101": "the file is not text in UTF-8",
    "FB102": "the file is larger than 1 MiB",
    "FB103": "the file is nested deeper than 40 levels",
    "FB104": "the file is not well-formed YAML",
    "FB105": "a key stands twice in one place",
    "FB106": "an anchor, an alias or a merge key is used",
    "FB107": "a tag is used",
    "FB108": "the file holds more than one document",
    "FB109": "the file is empty",
    "FB110": "a key is not a plain word",
    "FB111": "the file holds more keys and values than a spec can need",
    "FB112": "the file can't be opened",
    # read: quantities
    "FB120": "a quantity can't be read",
    "FB121": "a quantity measures the wrong thing",
    "FB122": "a quantity is outside what can be",
    # read: keys and values
    "FB130": "a key is unknown",
    "FB131": "a key is missing",
    "FB132": "a value has the wrong form",
    "FB133": "a value is not one of the allowed words",
    "FB134": "there are too many or too few",
    "FB135": "a text is empty or too long",
    "FB136": "a row of the steps does not hold one technique",
    "FB137": "a technique is unknown",
    # read: names
    "FB140": "a name can't be used in formulas",
    "FB141": "a name stands for two things",
    "FB142": "a piece is unknown",
    "FB143": "a material is unknown, or is no cloth",
    "FB144": "an edge or stack is unknown",
    "FB145": "an edge has no such side",
    # read: rosters
    "FB150": "the heading of a roster can't be used",
    "FB151": "a row of a roster can't be used",
    # solve: formulas
    "FB201": "a formula can't be read",
    "FB202": "a formula can't be worked out",
    # solve: the equations of a spec
    "FB203": "a formula uses a name that nothing fixes",
    "FB204": "a value is fixed twice",
    "FB205": "a size is fixed by nothing",
    "FB206": "values are worked out from each other in a circle",
    "FB207": "a value measures the wrong thing",
    "FB208": "a value is too small, or not whole where it must be",
    "FB209": "a finished and a cut size that are both written do not agree",
    # solve: the body and the choices
    "FB210": "a body measure is missing",
    "FB211": "a body measure lies outside its range",
    "FB212": "a choice lies outside its range",
    "FB213": "a choice lies between its steps",
    "FB214": "the spec has no such size",
    "FB215": "the spec has no such choice",
    "FB216": "a rule of the maker does not hold",
    "FB217": "a size gives a measure that the spec does not ask for",
    "FB218": "no number has the name that is asked about",
    # techniques
    "FB330": "a technique is given neither or both of two ways to say where it works",
    "FB331": "a trimmed margin does not fit inside what closes over it",
    "FB332": "a French seam is sewn in thick cloth",
    "FB333": "a gathered edge is where flat cloth is needed",
    "FB334": "a fold or lap has too little or too much cloth for its stitching",
    "FB335": "a raw edge of a ravelling cloth would lie open",
    "FB336": "a tape or binding does not fit its edge",
    "FB337": "a technique needs the number of joins, which the cutting plan gives later",
    "FB338": "an edge can't be rolled",
    "FB339": "the workroom lacks the machine that a step asks for",
    "FB340": "a method that works along the length is asked for at a short edge",
}
