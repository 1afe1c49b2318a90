"""`furbelow make` over an existing folder, killed at a random moment; and what must be true of the folder after it."""

from __future__ import annotations

import json
import os
import random
import signal
import subprocess
import sys
import time
from collections import Counter
from dataclasses import dataclass, field
from hashlib import sha256
from pathlib import Path

ROOT = Path(__file__).parents[2]
SPEC = ROOT / "specs" / "foxglove.yaml"
LIST = "furbelow.json"

Files = dict[str, bytes]


def command(spec: Path, out: Path) -> list[str]:
    return [sys.executable, "-m", "furbelow", "make", str(spec), "--size", "B", "--no-pdf", "--out", str(out)]


def quick_environment(room: Path) -> dict[str, str]:
    """The environment, with a place for compiled modules, so that each run does not compile them anew."""
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**kept, "PYTHONPYCACHEPREFIX": str(room / "compiled")}


def contents(folder: Path) -> Files:
    return {p.relative_to(folder).as_posix(): p.read_bytes() for p in sorted(folder.rglob("*")) if p.is_file()}


@dataclass
class Killing:
    """Two guides that take turns in one folder. `seen` counts in what state the kills left it."""

    room: Path
    luck: random.Random
    seen: Counter[str] = field(default_factory=Counter)

    def __post_init__(self) -> None:
        text = SPEC.read_text(encoding="utf-8")
        self.specs = (self.room / "one.yaml", self.room / "two.yaml")
        self.specs[0].write_text(text, encoding="utf-8")
        self.specs[1].write_text(text.replace("en: Foxglove", "en: Teasel").replace("depth: 18 cm", "depth: 20 cm"))
        self.sets: list[Files] = []
        self.environment = quick_environment(self.room)
        for spec in self.specs:
            clean = self.room / spec.stem
            start = time.perf_counter()
            self._run(command(spec, clean))
            self.takes = time.perf_counter() - start
            self.sets.append(contents(clean))
        self.folder = self.room / "guide"
        self.make(0)

    def _run(self, arguments: list[str]) -> None:
        subprocess.run(arguments, cwd=ROOT, env=self.environment, check=True, capture_output=True)

    def make(self, which: int) -> None:
        """The run that comes after a crash: it goes through, and nothing of the crash is left."""
        self._run(command(self.specs[which], self.folder))
        assert contents(self.folder) == self.sets[which]

    def kill_once(self, which: int) -> None:
        """Begins a make and kills it: anywhere, while it is writing passing files, or while it renames them."""
        moment = self.luck.choice(("anywhere", "writing", "renaming"))
        process = subprocess.Popen(
            command(self.specs[which], self.folder),
            cwd=ROOT,
            env=self.environment,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        if moment == "anywhere":
            time.sleep(self.luck.random() * self.takes)
        else:
            # What an earlier kill has left lies there too: the names of passing files hold the process's number.
            while process.poll() is None and not self._has_begun(process.pid, moment):
                time.sleep(0.0005)
            time.sleep(self.luck.random() * (0.03 if moment == "writing" else 0.005))
        if process.poll() is None:
            os.kill(process.pid, signal.SIGKILL)
        process.wait()
        self.seen[self.state()] += 1

    def _has_begun(self, process: int, moment: str) -> bool:
        begun = any(name.startswith(f".furbelow-{process}-") for name in os.listdir(self.folder))
        return begun and (moment == "writing" or b'"complete": false' in (self.folder / LIST).read_bytes())

    def state(self) -> str:
        """Checks the folder: each file is whole, and the list tells the truth. Says how the kill left it."""
        found = contents(self.folder)
        passing = [name for name in found if name.endswith(".part")]
        for name in passing:
            del found[name]
        listed = json.loads(found.pop(LIST))
        for name, content in found.items():
            versions = [files[name] for files in self.sets if name in files]
            assert content in versions, f"{name} is neither old nor new"
        hashes = {name: sha256(content).hexdigest() for name, content in found.items()}
        if listed["complete"]:
            assert hashes == listed["files"], "the list says complete, and the files are not those it lists"
            assert any({**found, LIST: files[LIST]} == files for files in self.sets)
            return "complete, with passing files beside" if passing else "complete"
        for name, is_now in hashes.items():
            assert is_now in (listed["files"].get(name), listed["coming"].get(name))
        return "not complete, and said so"
