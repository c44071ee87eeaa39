"""The middle of the bench mode while the next job has to wait: what can be done meanwhile."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.window import reasons, words
from app.window.bench_mode.job_panel import Look, one_line
from app.window.bench_mode.jobs import Job
from app.window.bench_mode.large_text import LARGE, PLAIN, SMALL
from app.window.evening.gap_words import offer_words
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import other_words
from planner.evening.alternatives import Other
from planner.tonight import WorkRow
from planner.values.plan import BenchKind

SHOWN = 4  # of what can be done meanwhile


def waiting_face(picture: PlanSnapshot, job: Job, look: Look, *, now: int) -> QWidget:
    """Return what can be done while the next job has to wait, and what is next."""
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(look.pixels(8))
    found = list(meanwhile(picture, job, now))[:SHOWN]
    if ready_before(picture, job.row.start):
        column.addWidget(look.label(words.tr("Meanwhile you can (A):"), PLAIN, bold=True))
    elif found:
        column.addWidget(look.label(words.tr("Meanwhile:"), PLAIN, bold=True))
    else:
        told = words.tr("Nothing else is ready until then; O notes what you do nevertheless.")
        column.addWidget(look.label(told, PLAIN))
    for name, about in found:
        column.addWidget(look.label(words.capital(name), LARGE))
        if about:
            column.addWidget(look.label(about, SMALL, colour="soft"))
    at = words.clock(job.row.start, picture.zone)
    then = words.tr("At {time}: {job}").format(time=at, job=one_line(job))
    column.addSpacing(look.pixels(12))
    column.addWidget(look.label(then, PLAIN, bold=True, colour="drying_word"))
    why = _why(picture, job, now)
    if why:
        column.addWidget(look.label(why, SMALL, colour="soft"))
    column.addStretch(1)
    return holder


def ready_before(picture: PlanSnapshot, end: int) -> list[Other]:
    """Return other work that can be begun before a minute."""
    return [other for other in picture.beside.others if other.start < end]


def meanwhile(picture: PlanSnapshot, job: Job, now: int) -> Iterator[tuple[str, str]]:
    """Yield what fits into the wait, and a word about each: first what moves nothing else."""
    end = job.row.start
    told = {job.work.key} if job.work is not None else set()
    for gap in picture.gaps:
        if gap.start < end and gap.end > now:
            offers = [offer for offer in gap.offers if offer.key not in told]
            told |= {offer.key for offer in offers}
            yield from ((offer_words(offer), "") for offer in offers)
    for other in ready_before(picture, end):
        if other.key not in told:
            yield reasons.key_name(other.key), other_words(other, picture.zone, now)


def _why(picture: PlanSnapshot, job: Job, now: int) -> str:
    """Return why the next job has to wait, "" where that needs no words."""
    row = job.row
    if isinstance(row, WorkRow):
        return reasons.reason_sentence(row.reason, picture.zone, now)
    if row.kind is BenchKind.CLEAN:
        return ""
    at = words.clock(row.start, picture.zone)
    return words.tr("Not before {time}, or it would stand too long.").format(time=at)
