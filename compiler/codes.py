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
    # read: quantities
    "FB120": "a quantity can't be read",
    # solve: formulas
    "FB201": "a formula can't be read",
    "FB202": "a formula can't be worked out",
}
