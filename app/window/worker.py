"""A thread beside the window's, for what takes longer than a key may wait.

It is Python's own and not one of Qt's pool: when a runnable ends before `QThreadPool.start` has
come back, the binding keeps it, with the plan in it, as long as the pool lives.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor, wait

log = logging.getLogger(__name__)


class Worker:
    """Does one job after another; what it finds out goes to the window as a signal."""

    def __init__(self) -> None:
        self._thread = ThreadPoolExecutor(max_workers=1)
        self._jobs: list[Future[None]] = []

    @property
    def busy(self) -> bool:
        """Tell whether a job runs or waits."""
        return any(not job.done() for job in self._jobs)

    def start(self, job: Callable[[], object]) -> None:
        """Do a job once all others are done; a fault in it is written to the log."""
        self._jobs = [job for job in self._jobs if not job.done()]
        self._jobs.append(self._thread.submit(_guarded, job))

    def clear(self) -> None:
        """Do no job that waits; the one that runs goes on."""
        for job in self._jobs:
            job.cancel()

    def wait(self, seconds: float | None = None) -> None:
        """Wait until none runs and none waits, no longer than so many seconds."""
        wait(self._jobs, seconds)


def _guarded(job: Callable[[], object]) -> None:
    try:
        job()
    except Exception:
        log.exception("a job in the background failed")
