"""`furbelow words`: the sentences of guides, for who says them her own way and who brings them into a language."""

from __future__ import annotations

import argparse
from collections.abc import Mapping

from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

_EPILOG = """\
examples:
  furbelow words                    the languages, and the files of messages
  furbelow words --list gather      what is said of gathering, and what each message must tell
  furbelow words --missing fr       what French has not said yet
  furbelow words --check my-words   whether your own sentences can be said

A sentence of your own stands in a file of any name in a folder for its language, such as my-words/en/mine.ftl, and the
workroom names the folder: `words: my-words`.
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "words",
        parents=parents[:1],
        help="show the sentences of guides, and check sentences of your own",
        epilog=_EPILOG,
    )
    what = parser.add_mutually_exclusive_group()
    what.add_argument("--list", metavar="FILE", help="the messages of a technique, or of another file of messages")
    what.add_argument("--missing", metavar="CODE", help="what a language lacks, as English messages")
    what.add_argument("--check", metavar="FOLDER", help="whether the messages of a folder can be said")
    parser.add_argument("--language", metavar="CODE", default="en", help="the language of --list")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_words)


def _words(options: argparse.Namespace) -> int:
    if options.list is not None:
        return _list(options, options.list, options.language)
    if options.missing is not None:
        return _missing(options, options.missing)
    if options.check is not None:
        return _check(options, options.check)
    from furbelow.resources import languages, words_files

    if options.format == "json":
        _print_json(options, {"languages": languages(), "files": words_files("en")})
    else:
        print(f"languages: {', '.join(languages())}\nfiles: {', '.join(words_files('en'))}")
    return DONE


def _print_json(options: argparse.Namespace, told: Mapping[str, object]) -> None:
    from furbelow.verbs.reading import Reader

    Reader(options).print_json(told)


def _list(options: argparse.Namespace, name: str, language: str) -> int:
    from furbelow.diagnose.nearest import nearest
    from furbelow.resources import languages, words_files
    from furbelow.s6_write.words.tell_words import listed

    if language not in languages():
        said = f"there are no words in {language[:20]!r}, only in {', '.join(languages())}"
        raise Unread(by_call=True, said=said)
    files, file = words_files(language), name.replace(" ", "-")
    if file not in files:
        near = nearest(file, files)
        help_ = f"did you mean {near[0]}?" if near else "`furbelow words` names all"
        raise Unread(by_call=True, said=f"no file of messages is called {name[:60]!r}; {help_}")
    told = listed(file, language)
    if options.format == "json":
        _print_json(options, {"language": language, "file": file, "messages": told})
    else:
        print(told, end="")
    return DONE


def _missing(options: argparse.Namespace, language: str) -> int:
    from furbelow.s6_write.words.tell_words import missing

    lacking = list(missing(language))
    if options.format == "json":
        _print_json(options, {"language": language, "missing": lacking})
    else:
        print("\n".join(lacking or [f"{language}: nothing is missing"]))
    return SPEC_AT_FAULT if lacking else DONE


def _check(options: argparse.Namespace, folder: str) -> int:
    import os

    from furbelow.s6_write.words.check_own import check_own
    from furbelow.verbs.reading import Reader

    if not os.path.isdir(folder):
        raise Unread(by_call=True, said=f"{folder} is no folder")
    reader = Reader(options)
    faults = check_own(folder)
    reader.tell_of_files(faults)
    if options.format == "json":
        reader.print_json({"folder": folder})
    elif not faults:
        print(f"{folder}: sound")
    return SPEC_AT_FAULT if faults else DONE
