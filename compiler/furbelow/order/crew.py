"""Many like jobs, done one after another here or by several processes beside this one, with the results in their order.

No more is taken in hand than there are hands twice over, so what waits does not grow with the number of jobs.
"""

from __future__ import annotations

import os
import sys
from collections import deque
from collections.abc import Callable, Iterable, Iterator
from contextlib import suppress
from typing import TYPE_CHECKING, Protocol, TypeVar

if TYPE_CHECKING:  # who works alone loads none of it
    from concurrent.futures import Future, ProcessPoolExecutor

_Job = TypeVar("_Job")
_Done = TypeVar("_Done")

EACH = 4  # jobs that a process is worth starting for: it takes as long as one of them to get ready
_TRIES = 3  # at a job whose process was lost


class Crew(Protocol):
    """Who does the jobs. writes_there: whether files may be written by whoever does the job, on the disk of this machine."""

    writes_there: bool

    def each(self, do: Callable[[_Job], _Done], jobs: Iterable[_Job]) -> Iterator[_Done]:
        """What was made of each job, in their order."""
        ...

    def end(self) -> None:
        """Nothing more is asked; what is not begun is left, and what is in hand is done when this returns."""
        ...


class Alone:
    """This process itself."""

    writes_there = True

    def each(self, do: Callable[[_Job], _Done], jobs: Iterable[_Job]) -> Iterator[_Done]:
        return map(do, jobs)

    def end(self) -> None:
        return


class Workers:
    """So many processes on this machine. A job whose process was lost is given to another one."""

    writes_there = True

    def __init__(self, number: int) -> None:
        self.number = number
        self._pool = self._started()

    def each(self, do: Callable[[_Job], _Done], jobs: Iterable[_Job]) -> Iterator[_Done]:
        waiting: deque[tuple[_Job, Future[_Done]]] = deque()
        for job in jobs:
            waiting.append((job, self._pool.submit(do, job)))
            if len(waiting) >= 2 * self.number:
                yield self._first(do, waiting)
        while waiting:
            yield self._first(do, waiting)

    def _first(self, do: Callable[[_Job], _Done], waiting: deque[tuple[_Job, Future[_Done]]]) -> _Done:
        from concurrent.futures.process import BrokenProcessPool

        for _ in range(_TRIES - 1):
            try:
                done = waiting[0][1].result()
            except BrokenProcessPool:
                # All that waited is lost with the pool. A job is a function of itself, so it may be done again.
                self.end()
                self._pool = self._started()
                again = [(job, self._pool.submit(do, job)) for job, _ in waiting]
                waiting.clear()
                waiting.extend(again)
            else:
                waiting.popleft()
                return done
        return waiting.popleft()[1].result()

    def end(self) -> None:
        self._pool.shutdown(cancel_futures=True)

    def _started(self) -> ProcessPoolExecutor:
        from concurrent.futures import ProcessPoolExecutor
        from multiprocessing import get_context

        context = get_context("fork" if _may_fork() else "spawn")
        return ProcessPoolExecutor(self.number, mp_context=context, initializer=_ready)


def _may_fork() -> bool:
    """Whether a process may be a copy of this one, with all that is loaded, which takes longer than two guides to load anew.

    Only while this is the one thread here: what another one holds locked would stay locked in the copy for ever.
    """
    if sys.platform != "linux":  # others tell no threads, or have libraries that bear no copy
        return False
    with suppress(OSError):
        return len(os.listdir("/proc/self/task")) == 1
    return False


def _ready() -> None:
    """In a worker: Ctrl-C is for the command, which then ends it."""
    import signal

    signal.signal(signal.SIGINT, signal.SIG_IGN)


def hands(asked: int | None, jobs: int) -> int:
    """How many processes to work with: as asked, else what the machine has and the jobs are worth."""
    if asked is not None:
        return min(asked, max(jobs, 1))
    with suppress(AttributeError):  # not on every system
        return max(1, min(len(os.sched_getaffinity(0)), jobs // EACH))
    return max(1, min(os.cpu_count() or 1, jobs // EACH))


def crew_of(number: int) -> Crew:
    """So many processes. Each has the typesetter work in one thread: several share what is at hand all the time, which takes
    a sixth more of processor time and 10 MB, and the other cores have processes of their own.
    """
    os.environ.setdefault("RAYON_NUM_THREADS", "1")  # read when it sets its first document, in workers too
    return Alone() if number < 2 else Workers(number)
