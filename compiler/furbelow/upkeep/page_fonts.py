"""The fonts of page and paper: `python -m furbelow.upkeep.page_fonts` writes them anew beside the shipped ones.

Each shipped font is cut down to the letters of the Latin scripts. For the page it is put into the style sheet itself
(`page.css`), so that a page looks and breaks its lines as it does on any other machine, and still fetches nothing. For paper
it is a file of its own: the typesetter takes a third less time to shape words by its short tables, and letters that it lacks
come from the whole font. The licence of the fonts reserves the names of the originals, so the cut ones bear names of their
own. Needs `fonttools[woff]`, which only those who contribute have.
"""

from __future__ import annotations

import base64
import io

from furbelow.resources import template

# the font it is cut from -> family, weight; the family without its space begins the name of the file for paper
FACES = {
    "SourceSans3-Regular.ttf": ("Furbelow Text", 400),
    "SourceSans3-SemiBold.ttf": ("Furbelow Text", 600),
    "Literata-SemiBold.ttf": ("Furbelow Title", 600),
}
# Latin with its accents, general punctuation, fractions, currency, the arrows and signs of reckoning.
LETTERS = (
    *range(0x20, 0x7F),
    *range(0xA0, 0x180),
    *range(0x2010, 0x2027),
    *(0x2032, 0x2033, 0x2044, 0x20AC, 0x2116, 0x2122),
    *range(0x2150, 0x215F),
    *(0x2190, 0x2191, 0x2192, 0x2193, 0x2212, 0x2248, 0x2264, 0x2265),
)
# Kerning, marks over letters, and figures of one width for the columns of numbers.
FEATURES = ["kern", "mark", "mkmk", "ccmp", "locl", "tnum"]
# On paper ff, fi and their like are one shape where the font has it.
PAPER_FEATURES = [*FEATURES, "liga"]


def page_css() -> str:
    """The `@font-face` rules, one a line, the same bytes for the same fonts."""
    return "".join(_rule(file, family, weight) for file, (family, weight) in FACES.items())


def paper_fonts() -> dict[str, bytes]:
    """The files for paper by their names, each with its licence, the same bytes for the same fonts."""
    found = {}
    for file, (family, _) in FACES.items():
        (whole, _, style), name = file.partition("-"), family.replace(" ", "")
        found[f"{name}-{style}"] = _cut(file, family, PAPER_FEATURES)
        found[f"{name}-OFL.txt"] = template(f"fonts/{whole}-OFL.txt").read_bytes()
    return found


def _rule(file: str, family: str, weight: int) -> str:
    data = base64.b64encode(_cut(file, family, FEATURES, "woff2")).decode("ascii")
    return (
        f'@font-face {{ font-family: "{family}"; font-weight: {weight}; '
        f'src: url("data:font/woff2;base64,{data}") format("woff2"); }}\n'
    )


def _cut(file: str, family: str, features: list[str], flavor: str | None = None) -> bytes:
    from fontTools.subset import Options, Subsetter
    from fontTools.ttLib import TTFont

    font = TTFont(template(f"fonts/{file}"), recalcTimestamp=False)
    options = Options(layout_features=features, hinting=False, name_IDs=[0, 1, 2, 4, 6, 13, 14], notdef_outline=True)
    cut = Subsetter(options)
    cut.populate(unicodes=LETTERS)
    cut.subset(font)
    for record in font["name"].names:
        if record.nameID in (1, 4, 6):
            record.string = family.replace(" ", "") if record.nameID == 6 else family
    font.flavor = flavor
    written = io.BytesIO()
    font.save(written)
    return written.getvalue()


if __name__ == "__main__":
    template("fonts/page.css").write_text(page_css(), encoding="ascii")
    for name, written in paper_fonts().items():
        template(f"fonts/{name}").write_bytes(written)
