"""What the logbook teaches, shown with its numbers and applied when a person agrees."""

from __future__ import annotations

from dataclasses import dataclass, replace

from app.service.edits import Edit
from planner.cure import Cure
from planner.pace.bottle import FASTEST, SLOWEST
from planner.pace.drying import DryingLine, learned_drying
from planner.pace.minutes import PaceLine, Work, learned_minutes, rescaled
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.message import called, message
from planner.values.moment import moment_of, zone_named
from planner.values.refusal import Refused, demand
from planner.values.step import Stage, Tool
from planner.values.wishes import Learned, Pace

LEAST_DOUBT, MOST_DOUBT = 1.05, 4.0  # no film is known better than a label's minute: assumed


@dataclass(frozen=True)
class Lesson:
    """All that the logbook teaches: minutes of work, and drying times."""

    minutes: tuple[PaceLine, ...]
    drying: tuple[DryingLine, ...]

    @property
    def sure_minutes(self) -> tuple[PaceLine, ...]:
        """The lines that differ from the estimate for certain enough."""
        return tuple(line for line in self.minutes if line.estimate.sure)

    @property
    def sure_drying(self) -> tuple[DryingLine, ...]:
        """The coatings that dry otherwise than the book reckons, for certain enough."""
        return tuple(line for line in self.drying if line.sure)


def learned(book: Book, now: int, *, cure: Cure | None = None) -> Lesson:
    """Return what the logbook teaches by ``now``."""
    return Lesson(learned_minutes(book), learned_drying(book, now, cure=cure))


def apply_minutes(book: Book, stage: Stage, tool: Tool, now: int) -> Edit:
    """Rescale the minutes of a stage and tool in steps that are not begun.

    What is noted from now on teaches how far off the new minutes are.

    Raises
    ------
    Refused
        If the logbook says nothing of them.
    """
    work = Work(stage, tool)
    line = next((minute for minute in learned_minutes(book) if minute.work == work), None)
    if line is None:
        raise Refused(
            "stage",
            message(
                'the logbook has no minutes of "{stage}" by {tool} yet', stage=stage, tool=tool
            ),
        )
    return _with_minutes(book, line, now)


def _with_minutes(book: Book, line: PaceLine, now: int) -> Edit:
    work, factor = line.work, round(line.estimate.factor, 2)
    changed = rescaled(book, work, factor)
    since = moment_of(now, zone_named(book.bench_time.zone))
    whole = round(min(10.0, max(0.1, line.agreed * factor)), 3)
    fresh = Learned(stage=work.stage, tool=work.tool, factor=whole, since=since)
    others = tuple(
        learned for learned in book.pace.learned if Work(learned.stage, learned.tool) != work
    )
    name = called(
        "minutes of {stage} by {tool}: × {factor:g}",
        stage=work.stage,
        tool=work.tool,
        factor=factor,
    )
    return Edit(name, replace(changed, pace=Pace(learned=(*others, fresh))))


def apply_drying(book: Book, coating: str, now: int) -> Edit:
    """Reckon with the drying of a coating as it was seen in this room.

    Its level and its doubt become what was learned; its slope, too, where
    films in other warmth than 23 °C told of that.

    Raises
    ------
    Refused
        If nobody has looked at a film of it.
    """
    line = next(
        (
            drying_line
            for drying_line in learned_drying(book, now)
            if drying_line.coating == coating
        ),
        None,
    )
    if line is None:
        raise Refused(
            "coating", message('no film of "{coating}" was looked at yet', coating=coating)
        )
    return _with_drying(book, line)


def _with_drying(book: Book, line: DryingLine) -> Edit:
    coating = line.coating
    factor = round(min(SLOWEST, max(FASTEST, line.estimate.factor)), 2)
    doubt = round(min(MOST_DOUBT, max(LEAST_DOUBT, line.figures.doubt)), 2)

    def taught(old: Coating) -> Coating:
        if old.name != coating:
            return old
        slope = line.figures.slope.mean if line.figures.tells_slope else old.steeper_kj_mol
        steeper = round(min(60.0, max(-20.0, slope)), 1)
        return replace(old, slowness=factor, doubt=doubt, steeper_kj_mol=steeper)

    coatings = tuple(taught(other) for other in book.coatings)
    return Edit(
        called("drying of {coating}: × {factor:g}", coating=coating, factor=factor),
        replace(book, coatings=coatings),
    )


def apply_all(book: Book, now: int) -> Edit:
    """Apply everything that is certain enough, as one edit.

    Raises
    ------
    Refused
        If nothing is.
    """
    lesson = learned(book, now)
    sure = [*lesson.sure_minutes, *lesson.sure_drying]
    demand(bool(sure), "pace", "nothing is certain enough yet; the logbook needs more entries")
    for line in lesson.sure_minutes:
        book = _with_minutes(book, line, now).book
    for drying_line in lesson.sure_drying:
        book = _with_drying(book, drying_line).book
    return Edit(called("pace: {n} lessons applied", n=len(sure)), book)
