"""Improving a plan in a process of its own, whose death costs nothing.

The process (`search_process`) gets a book and its first plan and sends back
every better plan that the judge accepts, and every bound that rises.  Nobody
waits for it: ask `Improver.news` now and then, `Improver.turn_to` gives it
another task, and `Improver.stop` ends it at once.  If it dies or falls
silent, `Improver.fault` says so in one line, and what it had sent by then
holds.
"""

from __future__ import annotations

import contextlib
import multiprocessing
import signal
import time
from collections.abc import Callable, Iterator
from queue import Empty, SimpleQueue
from threading import Thread

from app.service.search_process import BEAT_SECONDS, Ended, Improved, Task, Told, run
from planner.values.message import message

__all__ = ["Improved", "Improver", "Task", "improvements"]

POLL_SECONDS = 0.05
SILENT_SECONDS = 20.0  # of asking in vain after which it is given up
ENDS_SECONDS = 1.0  # for a process whose end of the pipe is closed to be gone


class Improver:
    """One running improvement; `stop` it, or let it come to its own end.

    Starting a process hands it the whole book, which takes as long as the
    process needs to wake up; so it is done from a thread, and nobody waits.

    Attributes
    ----------
    fault
        Why the search ended before its time, "" where it did not.
    """

    def __init__(self, task: Task) -> None:
        context = multiprocessing.get_context("spawn")
        self._mine, self._theirs = context.Pipe(duplex=False)
        self._came: SimpleQueue[Told | None] = SimpleQueue()
        their_tasks, self._tasks = context.Pipe(duplex=False)
        self._their_tasks = their_tasks
        ends = task, self._theirs, their_tasks
        self._process = context.Process(target=run, args=ends, daemon=True)
        self._number = 0  # of the task that is worked at
        self._asks: SimpleQueue[tuple[int, Task | None] | None] = SimpleQueue()
        self._stopped = False
        self._over = False  # nothing more will come
        self.fault = ""
        self._asked: float | None = None  # when news were asked for last
        self._silent = 0.0
        # No daemon: whoever ends the program while the process wakes up waits until it has,
        # and it is ended at once.
        self._starting = Thread(target=self._start)
        self._starting.start()

    def news(self) -> list[Improved]:
        """Return what has come since the last time, without waiting."""
        found: list[Improved] = []
        if not self.running:
            return found
        heard = self._starting.is_alive()
        with contextlib.suppress(Empty):
            while self.running:
                came, heard = self._came.get_nowait(), True
                if came is None:
                    self._end_with(self._why_dead())
                    break
                number, improved = came
                if number != self._number:
                    continue  # of a task that has had its turn
                if isinstance(improved, Improved):
                    found.append(improved)
                elif isinstance(improved, Ended):
                    self._end_with(improved.why)
        if self.running:
            self._listen(heard)
        return found

    @property
    def running(self) -> bool:
        """Tell whether more may come; once it is false `fault` says whether that is well."""
        return not (self._over or self._stopped)

    def turn_to(self, task: Task | None) -> None:
        """Have the process work at another task, or rest for None; nobody waits for it."""
        self._number += 1
        self._asks.put((self._number, task))

    def stop(self) -> None:
        """End the process, whatever it does; one that is waking up ends when it has."""
        self._stopped = True
        if not self._starting.is_alive():
            self._end()

    def _start(self) -> None:
        # Ctrl+C in a terminal reaches both: here it is heard, and here it is decided what ends.
        if hasattr(signal, "pthread_sigmask"):
            signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
        # No memory, too many processes, killed while it was told its task: the pipe is closed then.
        with contextlib.suppress(Exception):
            self._process.start()
        self._theirs.close()
        self._their_tasks.close()
        Thread(target=self._read, daemon=True).start()
        Thread(target=self._ask, daemon=True).start()
        if self._stopped:
            self._end()

    def _read(self) -> None:
        """Take what is sent off the pipe, so that nobody waits for half a message; None is last."""
        with contextlib.suppress(Exception):
            while True:
                self._came.put(self._mine.recv())
        self._mine.close()
        self._came.put(None)

    def _ask(self) -> None:
        """Hand tasks over, which for a large book takes longer than somebody would wait."""
        with contextlib.suppress(OSError, ValueError):
            while (other := self._asks.get()) is not None:
                self._tasks.send(other)
        self._tasks.close()

    def _listen(self, heard: bool) -> None:
        """Count how long the process says nothing; time in which nobody asked does not count."""
        now = time.monotonic()
        gap = 0.0 if self._asked is None else min(now - self._asked, BEAT_SECONDS)
        self._asked = now
        self._silent = 0.0 if heard else self._silent + gap
        if self._silent > SILENT_SECONDS:
            self._end_with(message("it no longer answers"))

    def _why_dead(self) -> str:
        with contextlib.suppress(ValueError, AssertionError):
            self._process.join(ENDS_SECONDS)
        status = self._process.exitcode
        if status is None:
            return message("its process cannot be started")
        if status < 0:
            return message("its process was ended by signal {number}", number=-status)
        return message("its process ended with status {number}", number=status)

    def _end_with(self, why: str) -> None:
        """Let go of the process; ``why`` tells of a fault, "" of an ordinary end."""
        self._over = True
        if why:
            self.fault = message(
                "the search for better plans broke off: {why}; the plan stays", why=why
            )
        self._end()

    def _end(self) -> None:
        self._asks.put(None)
        if self._process.is_alive():
            self._process.kill()
        with contextlib.suppress(ValueError, AssertionError):
            self._process.join()


def improvements(
    task: Task, seconds: float, tell: Callable[[str], None] = lambda _line: None
) -> Iterator[Improved]:
    """Yield what a process finds within some time [s], what clashes in the first plan foremost."""
    improver = Improver(task)
    until: float | None = None if task.first.unplaced else time.monotonic() + seconds
    try:
        while improver.running and (until is None or time.monotonic() < until):
            for improved in improver.news():
                until = until or time.monotonic() + seconds
                yield improved
            time.sleep(POLL_SECONDS)
        yield from improver.news()
    finally:
        improver.stop()
    if improver.fault:
        tell(improver.fault)
