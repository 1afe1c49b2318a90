"""The language of a guide: which one is meant, whether it has words, and what the maker has not told in it."""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Severity, Staged
from furbelow.diagnose.nearest import nearest
from furbelow.garment.spec import Spec, Word
from furbelow.resources import languages
from furbelow.s1_read.read_spec import read_spec

_NAMED = 6  # untold texts in the headline; the note names all


def in_language(spec: Spec, meant: Word | None) -> Staged[Spec]:
    """The spec with the maker's texts in a language. meant: by whoever says it first; else that of the spec.

    Fails: FB160 for a language that has no words.
    Warns: FB161, once, of texts that stay in another language.
    """
    word = meant or spec.written_in
    known = languages()
    if word is not None and word.text not in known:
        return Staged(None, (_unknown(word, known),))
    if word is None or word.text == spec.language:
        return Staged(spec, _untold(spec))
    # Its faults were told when it was first read.
    again = read_spec((spec.file, spec.source.encode()), language=word.text).value
    return Staged(again, _untold(again) if again else ())


def _unknown(word: Word, known: tuple[str, ...]) -> Fault:
    near = nearest(word.text, known)
    meant = f"did you mean `{near[0]}`? " if near else ""
    headline = f"there are no words for a guide in `{word.text[:20]}`"
    return Fault("FB160", headline, Label(word.span), help=f"{meant}the languages are {', '.join(known)}")


def _untold(spec: Spec) -> tuple[Fault, ...]:
    if not spec.untold:
        return ()
    names = list(dict.fromkeys(word.text for word in spec.untold))
    more = f" and {len(names) - _NAMED} more" if len(names) > _NAMED else ""
    said = f"the guide is in `{spec.language}`, and the spec does not tell {', '.join(names[:_NAMED])}{more} in it"
    notes = (f"not told: {', '.join(names)}",) if more else ()
    help_ = "write such a text by language, as in `about: {en: flounce, de: Volant}`"
    return (Fault("FB161", said, Label(spec.untold[0].span), notes=notes, help=help_, severity=Severity.WARNING),)
