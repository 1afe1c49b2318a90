"""Whether a teacher's own messages may be said: she may say anything her way, and leave out nothing that must be told."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from furbelow.diagnose.fault import Fault, Label
from furbelow.diagnose.nearest import nearest
from furbelow.resources import languages
from furbelow.s6_write.words.check_words import ASKED
from furbelow.s6_write.words.kept_words import all_shipped
from furbelow.s6_write.words.own_words import OwnMessage, folders_of, read_own
from furbelow.s6_write.words.pattern import Message, Pattern, over, shown, texts
from furbelow.s6_write.words.says import Says, Table, Unsayable

MOST_PARTS = 500  # of a message, with those that it refers to: they could grow out of each other without end
CAUTION = "caution"  # stands in the name of every caution, between its hyphens

_AT = ("at", "start")
# What may be asked of a value of which something else is asked already.
_TOO = {"EDGE": ("PIECE", "COUNT"), "PIECE": ("COUNT",), "COUNT": ()}


def check_own(folder: str) -> tuple[Fault, ...]:
    """Every fault in a folder of a teacher's own messages.

    Fails: FB160 for a folder that is no language, FB162 to FB165 as its files and messages are.
    """
    known, held = languages(), folders_of(folder)
    if not held:
        help_ = f"put its files into a folder within it that bears the code of the language: {', '.join(known)}"
        return (Fault("FB162", f"the folder of words {folder} has no folder for a language", help=help_),)
    faults: list[Fault] = []
    for language in held:
        if language in known:
            faults += _Own(folder, language).faults()
            continue
        headline = f"there are no words in `{language[:20]}` for {folder} to lie over"
        faults.append(Fault("FB160", headline, help=f"the languages are {', '.join(known)}"))
    return tuple(faults)


class _Own:
    """A teacher's messages of one language beside the shipped ones."""

    def __init__(self, folder: str, language: str) -> None:
        read = read_own(folder, language)
        self.read_faults = read.faults
        self.own: Mapping[str, OwnMessage] = read.value or {}
        self.shipped = all_shipped(language)
        self.table = Table(self.shipped)
        self.merged = Table({**self.shipped, **{name: self._merged(name, each) for name, each in self.own.items()}})

    def _merged(self, name: str, own: OwnMessage) -> Message:
        return over(self.shipped[name], own.message) if name in self.shipped else own.message

    def faults(self) -> Iterator[Fault]:
        yield from self.read_faults
        for name, own in self.own.items():
            if name in self.shipped:
                yield from self._message(name, own)
            else:
                yield _unknown(own.at(), "no message is called", name, self.shipped)

    def _message(self, name: str, own: OwnMessage) -> Iterator[Fault]:
        given = self._given(name)
        known = self.shipped[name].attributes
        parts = {name: (own.message.value, own.at(own.written.value))} if own.message.value else {}
        for attribute in own.written.attributes:
            called = attribute.id.name
            if called in known:
                parts[f"{name}.{called}"] = own.message.attributes[called], own.at(attribute.value)
            else:
                yield _unknown(own.at(attribute), f"`{name}` has no attribute called", called, known)
        for part, (pattern, here) in parts.items():
            if part in self.table.patterns:
                yield from self._pattern(part, pattern, here, given)
            else:
                yield Fault("FB163", f"`{part}` has no sentence of its own", here, help="write its attributes only")

    def _given(self, name: str) -> Says:
        """All that is known of the values of a message: what it and its attributes say of them."""
        parts = [part for part in self.table.patterns if part.partition(".")[0] == name]
        found = Says()
        for part in parts:
            found = found.beside(self.table.says(part))
        return found

    def _pattern(self, part: str, pattern: Pattern, here: Label, given: Says) -> Iterator[Fault]:
        if not "".join(texts(pattern)).strip():
            yield Fault("FB164", f"`{part}` says nothing", here, help="leave it out to keep the shipped sentence")
            return
        try:
            found = self.merged.says(part)
        except Unsayable as wrong:
            said = f"`{part}` refers to `{wrong.name}`, which is not there or leads back to it"
            yield Fault("FB163", said, here, help="say it in words of its own")
            return
        if found.parts > MOST_PARTS:
            headline = f"`{part}` is made of {found.parts} parts, more than {MOST_PARTS}"
            yield Fault("FB163", headline, here, help="say less in one message")
            return
        yield from self._strange(part, found, here, given)
        shipped = self.table.patterns[part]
        for lost in sorted(self.table.says(part).always - found.always):
            notes = (f"shipped: {shown(shipped)}",)
            yield Fault(
                "FB164", f"`{part}` does not always say `${lost}`", here, notes=notes, help=f"write {{ ${lost} }} in it"
            )
        if CAUTION in part.split("-") and shown(shipped) not in shown(_whatever_is_chosen(pattern, shipped)):
            notes = (f"shipped: {shown(shipped)}",)
            said = f"`{part}` does not say the whole of the caution"
            yield Fault("FB164", said, here, notes=notes, help="keep its sentence and add yours before or behind it")

    def _strange(self, part: str, found: Says, here: Label, given: Says) -> Iterator[Fault]:
        for value in sorted(found.needs - given.needs):
            yield _unknown(
                here, f"`{part}` is given no value called", f"${value}", [f"${each}" for each in given.needs]
            )
        for value in sorted((found.ever & given.needs) - given.ever):
            said = f"`${value}` chooses among sentences, and `{part}` says it"
            yield Fault("FB163", said, here, help=f"choose by it: {{ ${value} -> ... }}")
        for chooser, key in found.strange_keys(given):
            yield _unknown(here, f"`{part}` chooses by a word that {chooser} is never,", key, given.keys(chooser))
        calls = given.calls | {(too, value) for call, value in given.calls for too in _TOO.get(call, ())}
        for call, value in sorted(found.calls - calls):
            if value in given.needs or call not in _TOO:
                yield Fault(
                    "FB163", f"`{part}` asks {call} what it can't tell", here, help=f"known are {_known(calls)}"
                )
        for name in sorted(found.refers - given.refers):
            said = f"`{part}` refers to `{name}`, and the shipped message does not"
            yield Fault("FB163", said, here, help="say it in words of its own")
        for call, form, word in sorted(found.forms - self._forms()):
            yield Fault("FB163", f"`{part}` asks {call} for `{form}: {word}`, which has no words", here)

    def _forms(self) -> frozenset[tuple[str, str, str]]:
        chosen = [pair for asked in ASKED for pair in self.table.says(asked).chosen]
        return frozenset((call, form, word) for call in ("PIECE", "EDGE") for form, word in (*chosen, _AT))


def _known(calls: Iterable[tuple[str, str]]) -> str:
    return ", ".join(sorted(f"{call}(${value})" for call, value in calls)) or "no questions here"


def _whatever_is_chosen(pattern: Pattern, shipped: Pattern) -> Pattern:
    """What stands outside of choices that are not the shipped ones."""
    return tuple(part for part in pattern if isinstance(part, str) or part[0] != "choice" or part in shipped)


def _unknown(here: Label, said: str, name: str, known: Iterable[str]) -> Fault:
    near = nearest(name, known)
    return Fault("FB163", f"{said} `{name[:60]}`", here, help=f"did you mean `{near[0]}`?" if near else None)
