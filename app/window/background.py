"""Background work that may not stop at once: a window lets go of it and does not wait."""

from __future__ import annotations

from typing import Final

from app.window.worker import Worker

GRACE_SECONDS: Final = 0.4  # work that hears that nobody wants it ends within this, as a rule
_LET_GO: Final[list[Worker]] = []


def rested(worker: Worker) -> Worker:
    """Return the worker once it is at rest, or another one where it goes on for too long."""
    worker.clear()
    worker.wait(GRACE_SECONDS)
    if not worker.busy:
        return worker
    _LET_GO.append(worker)
    return Worker()


def still_runs() -> bool:
    """Tell whether something that was let go of has not ended yet."""
    _LET_GO[:] = [worker for worker in _LET_GO if worker.busy]
    return bool(_LET_GO)
