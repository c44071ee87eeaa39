"""The process that looks for better plans, as it is from within, and what it sends.

It says every second that it lives, and in one line what went wrong.  It is
gone as soon as the program that began it is, however that ended.
"""

from __future__ import annotations

import contextlib
import os
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import partial
from importlib import import_module
from multiprocessing.connection import Connection, wait
from multiprocessing.process import parent_process
from queue import SimpleQueue
from threading import Event, Lock, Thread
from typing import TYPE_CHECKING

from planner.schedule.optimise.effort import Effort
from planner.values.book import Book
from planner.values.message import message
from planner.values.plan import Plan

if TYPE_CHECKING:
    from planner.schedule.judge import Verdict

BEAT_SECONDS = 1.0
SEARCHING = "app.service.searching"


@dataclass(frozen=True)
class Task:
    """What is to be improved: the ``first`` plan of a book, near to the ``last`` before it."""

    book: Book
    first: Plan
    last: Plan | None = None
    seed: int = 0
    effort: Effort = field(default_factory=Effort)


@dataclass(frozen=True)
class Improved:
    """A plan that the judge accepted, with what is proven of it.

    ``cheaper`` is false where only the bounds are new.
    """

    plan: Plan
    cheaper: bool
    verdict: Verdict


@dataclass(frozen=True)
class Alive:
    """There is nothing new, and the search goes on."""


@dataclass(frozen=True)
class Ended:
    """The search has come to its end, or to a fault of which ``why`` tells."""

    why: str = ""


Told = tuple[int, object]  # of which task, counted from 0, and what is new


def run(task: Task, theirs: Connection, tasks: Connection) -> None:
    """Search, and send what comes of it through the pipe.

    Another task that comes through ``tasks`` takes the place of the one that
    is worked at; None lets the search rest until the next.
    """
    _silence()
    Thread(target=_end_with_parent, daemon=True).start()
    lock, done, newer = Lock(), Event(), Event()
    waiting: SimpleQueue[tuple[int, Task | None]] = SimpleQueue()
    waiting.put((0, task))

    def send(message: object) -> None:
        with lock:
            theirs.send(message)

    Thread(target=_beat, args=(send, done), daemon=True).start()
    Thread(target=_hear, args=(tasks, waiting, newer), daemon=True).start()
    with contextlib.suppress(BrokenPipeError, KeyboardInterrupt):
        while True:
            number, asked = waiting.get()
            newer.clear()
            if asked is None or not waiting.empty():
                continue
            why = _search(asked, newer, partial(_numbered, send, number))
            if not newer.is_set():
                send((number, Ended(why)))
    done.set()
    theirs.close()


def _numbered(send: Callable[[object], None], number: int, answer: object) -> None:
    send((number, answer))


def _search(task: Task, newer: Event, send: Callable[[object], None]) -> str:
    """Work at one task until another comes; return what went wrong, "" for nothing."""
    try:
        # The solver is loaded only here, where its absence or its fault costs nothing.
        for answer in import_module(SEARCHING).search(task, newer.is_set):
            if newer.is_set():
                break
            send(answer)
    except BrokenPipeError:
        raise
    except Exception as problem:
        return _told(problem)
    return ""


def _hear(tasks: Connection, waiting: SimpleQueue[tuple[int, Task | None]], newer: Event) -> None:
    with contextlib.suppress(EOFError, OSError):
        while True:
            task = tasks.recv()
            waiting.put(task)
            newer.set()


def _silence() -> None:
    """Let no library write between the lines of the program: faults are told by it alone."""
    with contextlib.suppress(OSError):
        nowhere = os.open(os.devnull, os.O_WRONLY)
        for stream in (1, 2):
            os.dup2(nowhere, stream)
        os.close(nowhere)


def _end_with_parent() -> None:
    """End at once where the program that began this process is gone, were it by a kill."""
    parent = parent_process()
    if parent is not None:
        wait([parent.sentinel])
        os._exit(0)


def _beat(send: Callable[[object], None], done: Event) -> None:
    with contextlib.suppress(OSError, ValueError):
        while not done.wait(BEAT_SECONDS):
            send((0, Alive()))


def _told(problem: Exception) -> str:
    """Return a fault in one line."""
    if isinstance(problem, ImportError):
        return message("its library cannot be loaded ({problem})", problem=_line(problem))
    kind = type(problem).__name__
    return message("an error within it ({kind}: {problem})", kind=kind, problem=_line(problem))


def _line(problem: Exception) -> str:
    return " ".join(str(problem).split())[:200]
