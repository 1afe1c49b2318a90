"""Jobs done by a cluster of Dask's, for who makes thousands of guides: `furbelow[cluster]`.

What a job is made from is sent to a worker and what it made comes back; files are written here alone. So a job whose worker
is lost is done by another one, and nothing is written twice or half.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator
from typing import Any, TypeVar

_Job = TypeVar("_Job")
_Done = TypeVar("_Done")

_TRIES = 3  # workers that may be lost over one job
_EACH = 4  # jobs in hand for each thread of the cluster: what waits does not grow with the number of jobs
_WAIT = 30  # seconds for the scheduler to answer


class NoCluster(Exception):
    """There is no library for it, or nobody answers at the address."""


class Cluster:
    """The workers behind a scheduler's address, such as tcp://10.0.0.5:8786. They have the same furbelow installed."""

    writes_there = False

    def __init__(self, address: str) -> None:
        try:
            import distributed
        except ImportError as missing:
            raise NoCluster("install furbelow[cluster] to work with a cluster") from missing
        connect: Any = distributed.Client  # which has no types
        try:
            self._client = connect(address, timeout=_WAIT, set_as_default=False)
        except (OSError, ValueError) as error:
            raise NoCluster(f"no scheduler answers at {address}: {str(error).lower()[:120]}") from error

    def each(self, do: Callable[[_Job], _Done], jobs: Iterable[_Job]) -> Iterator[_Done]:
        """What was made of each job, in their order."""
        waiting: deque[Any] = deque()
        hands = max(1, sum(self._client.nthreads().values()))
        for job in jobs:
            # Not told apart by its content: an equal job is another one.
            waiting.append(self._client.submit(do, job, pure=False, retries=_TRIES))
            if len(waiting) >= _EACH * hands:
                yield waiting.popleft().result()
        while waiting:
            yield waiting.popleft().result()

    def end(self) -> None:
        self._client.close(timeout=_WAIT)
