"""What of the compiler a user can reach: a walk from the entry points along the names that code uses.

Loaded by name only, and so begun at like entry points: verbs, techniques, proofs and proof-like folders that list
themselves, and the kinds of figures. A name of a module counts where it is imported from there; a method counts where any attribute of its name is
used, so the walk may believe too much reached, and never too little.
"""

from __future__ import annotations

import ast
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

from furbelow.s6_write import figures

ROOT = Path(__file__).parents[1]
COMPILER = ROOT / "compiler"

# Found by listing a folder, and what is asked of each there.
LISTED = {
    "furbelow.verbs.": {"add"},
    "furbelow.techniques.": {"TECHNIQUE"},
    "furbelow.s3_rehearse.proofs.": {"prove", "CLAIM"},
    "furbelow.upkeep.": set[str](),  # each is a command of its own for contributors
}
# Begun from outside: the commands of pyproject.toml.
STARTED = (("furbelow.__main__", ""),)
# Methods that a library calls by their names.
CALLED_FOR_US = {
    "do_GET", "log_message", "handle_error",  # http.server
    "handle_data", "handle_starttag", "handle_endtag",  # html.parser
    "load_bytecode", "dump_bytecode",  # jinja2
    "format_help", "format_usage",  # argparse
}  # fmt: skip


@dataclass
class Definition:
    """A function, class, method or module constant. uses: names it uses plainly; attributes: after a dot."""

    module: str
    name: str  # of a method with its class before it
    line: int
    uses: set[str] = field(default_factory=set)
    attributes: set[str] = field(default_factory=set)
    calls: set[tuple[str, str]] = field(default_factory=set)  # (module alias, name) as in kinds.kind_of_amount
    owner: str = ""


@dataclass
class Module:
    name: str
    definitions: dict[str, Definition] = field(default_factory=dict)
    imports: dict[str, tuple[str, str]] = field(default_factory=dict)  # local name -> module and name there
    body: Definition = field(default_factory=lambda: Definition("", "", 0))


@cache
def modules() -> dict[str, Module]:
    found = {}
    for path in sorted((COMPILER / "furbelow").rglob("*.py")):
        name = ".".join(path.relative_to(COMPILER).with_suffix("").parts).removesuffix(".__init__")
        found[name] = _module(name, ast.parse(path.read_text(encoding="utf-8")))
    return found


def _module(name: str, tree: ast.Module) -> Module:
    module = Module(name, body=Definition(name, "", 0))
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("furbelow"):
            for alias in node.names:
                module.imports[alias.asname or alias.name] = (node.module, alias.name)
    for node in tree.body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            _define(module, node)
        elif isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None:
            targets = node.targets if isinstance(node, ast.Assign) else [node.target]
            for target in targets:
                if isinstance(target, ast.Name):
                    _record(module.definitions.setdefault(target.id, Definition(name, target.id, node.lineno)), [node])
                else:
                    _record(module.body, [node])
        else:
            _record(module.body, [node])
    return module


def _define(module: Module, node: ast.FunctionDef | ast.ClassDef) -> None:
    whole = module.definitions.setdefault(node.name, Definition(module.name, node.name, node.lineno))
    if isinstance(node, ast.FunctionDef):
        _record(whole, [node])
        return
    _record(whole, [*node.bases, *node.keywords, *node.decorator_list])
    for part in node.body:
        if isinstance(part, ast.FunctionDef) and not part.name.startswith("__"):
            method = Definition(module.name, f"{node.name}.{part.name}", part.lineno, owner=node.name)
            module.definitions[method.name] = method
            _record(method, [part])
        else:
            _record(whole, [part])


def _record(definition: Definition, nodes: Iterable[ast.AST]) -> None:
    for node in (inner for each in nodes for inner in ast.walk(each)):
        if isinstance(node, ast.Name):
            definition.uses.add(node.id)
        elif isinstance(node, ast.Attribute):
            definition.attributes.add(node.attr)
            if isinstance(node.value, ast.Name):
                definition.calls.add((node.value.id, node.attr))
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value.isidentifier():
            definition.attributes.add(node.value)  # getattr(say, how), and annotations in quotes
            definition.uses.add(node.value)
        elif isinstance(node, ast.MatchClass):
            definition.attributes.update(node.kwd_attrs)


def _drawn() -> Iterator[tuple[str, str]]:
    """What draws each kind of figure: loaded when a garment has one, by the table that names its file and function."""
    for named in figures.KINDS.values():
        file, _, function = named.partition(".")
        yield f"{figures.__name__}.{file}", function


class Walk:
    """The modules loaded and the definitions reached from the entry points."""

    def __init__(self) -> None:
        self.loaded: set[str] = set()
        self.reached: set[tuple[str, str]] = set()
        self.attributes: set[str] = set(CALLED_FOR_US)
        self._open: list[Definition] = []
        for folder, asked in LISTED.items():
            for name in (name for name in modules() if name.startswith(folder)):
                self._load(name)
                for each in asked:
                    self._reach(name, each)
        for module, name in (*STARTED, *_commands(), *_drawn()):
            self._reach(module, name)
        self._run()

    def _load(self, name: str) -> None:
        if name in self.loaded or name not in modules():
            return
        self.loaded.add(name)
        self._load(name.rpartition(".")[0])
        self._open.append(modules()[name].body)

    def _reach(self, module: str, name: str) -> None:
        self._load(module)
        if module in modules() and name in modules()[module].definitions and (module, name) not in self.reached:
            self.reached.add((module, name))
            self._open.append(modules()[module].definitions[name])
        elif module in modules() and name in modules()[module].imports:  # handed on
            self._reach(*modules()[module].imports[name])

    def _run(self) -> None:
        while True:
            while self._open:
                self._follow(self._open.pop())
            for name in self.loaded:
                for definition in modules()[name].definitions.values():
                    if (
                        definition.owner
                        and (name, definition.owner) in self.reached
                        and definition.name.rpartition(".")[2] in self.attributes
                    ):
                        self._reach(name, definition.name)
            if not self._open:
                return

    def _follow(self, definition: Definition) -> None:
        self.attributes |= definition.attributes
        imports = modules()[definition.module].imports
        for used in definition.uses:
            self._reach(definition.module, used)
            if used in imports:
                module, name = imports[used]
                self._load(f"{module}.{name}")
                self._reach(module, name)
        for base, name in definition.calls:
            if base in imports:
                self._reach(".".join(imports[base]), name)


def _commands() -> Iterator[tuple[str, str]]:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    for command in project["scripts"].values():
        module, _, name = command.partition(":")
        yield module, name


@cache
def walked() -> Walk:
    return Walk()


def unreached() -> Iterator[str]:
    """Every module and every public definition that the walk did not come to."""
    walk = walked()
    for name, module in modules().items():
        if name not in walk.loaded:
            yield name
            continue
        for definition in module.definitions.values():
            bare = definition.name.rpartition(".")[2]
            if not bare.startswith("_") and (name, definition.name) not in walk.reached:
                yield f"{name}.{definition.name}"


def unreached_imports(path: Path) -> Iterator[str]:
    """What a file of tests takes from the compiler and the walk did not come to."""
    walk = walked()
    for module, name in _module("", ast.parse(path.read_text(encoding="utf-8"))).imports.values():
        known = modules().get(module)
        if known is None or f"{module}.{name}" in walk.loaded:
            continue
        if name in known.definitions and (module, name) not in walk.reached:
            yield f"{module}.{name}"
