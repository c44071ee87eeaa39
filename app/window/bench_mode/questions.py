"""What the bench mode asks: which film, which repair, why not; each a short numbered list."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from app.service import air_readings, bench_events, logbook, pins
from app.service.edits import Edit
from app.service.other_work import done_beside
from app.window import reasons, words
from app.window.bench_mode.choice_prompt import LINES, Asked, Line
from app.window.bench_mode.jobs import Job
from app.window.drying.event_wording import at_words, film_words
from app.window.evening.other_work_words import example, words_of_the_line
from app.window.film_events import FilmEventKind
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import rest_words
from planner.evening.advice import rest
from planner.evening.missed_closings import Missed, Remedy
from planner.evening.repairs import Repair, repairs_for
from planner.layers.finding import Mend
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Event

Make = Callable[[Callable[[Book], Edit]], None]
Ask = Callable[[Asked], None]
FILMS_ASKED = 7
STEPS_TOLD = 5


class Questions:
    """Asks, and makes the edit that the answers lead to.

    ``make`` makes an edit, ``ask`` shows a question, ``now`` is the minute
    that runs.
    """

    def __init__(self, make: Make, ask: Ask, now: Callable[[], int]) -> None:
        self._make, self._ask, self._now = make, ask, now

    # --- not this one -------------------------------------------------------------------

    def not_now(self, picture: PlanSnapshot, job: Job) -> None:
        """Ask whether a pass is for later, or why it is left out."""
        row = job.work
        if row is None:
            return
        key = row.key
        usual = (
            words.tr("it looks good without"),
            words.tr("there is no time for it"),
            words.tr("something for it is missing"),
            words.tr("not wanted on this model"),
        )
        later = Line(words.tr("Not tonight: plan it later"), "", partial(self._later, picture, key))
        reasons_ = tuple(
            Line(words.tr("Leave it out: {why}").format(why=why), "", partial(self._skip, key, why))
            for why in usual
        )
        typed = Line(words.tr("Leave it out: type why"), "", partial(self._why, key))
        name = words.capital(reasons.key_name(key))
        self._ask(
            Asked(words.tr("Not this one"), (later, *reasons_, typed), (name,)),
        )

    def _later(self, picture: PlanSnapshot, key: PassKey) -> None:
        stretch = picture.calendar.next_stretch(self._now())
        end = stretch.interval.end if stretch else self._now()
        self._make(lambda book: pins.not_before(book, key, end))

    def _why(self, key: PassKey) -> None:
        self._ask(
            Asked(
                words.tr("Why leave it out?"),
                typed=partial(self._skip, key),
                hint=words.tr("type, then Enter"),
            )
        )

    def _skip(self, key: PassKey, why: str) -> None:
        self._make(lambda book: bench_events.skip(book, key, self._now(), why))

    # --- still tacky --------------------------------------------------------------------

    def tacky(self, picture: PlanSnapshot) -> None:
        """Ask which film is still tacky."""
        now, zone = self._now(), picture.zone
        found = {}
        for moment in picture.moments:
            if moment.kind is FilmEventKind.OPENS and moment.film not in found:
                found[moment.film] = Line(
                    words.tr("{film}, {model}").format(
                        film=words.capital(film_words(moment)), model=moment.film.model
                    ),
                    words.tr("expected ready {time}").format(time=at_words(moment, zone, now)),
                    partial(self._is_tacky, moment.film),
                )
        lines = tuple(found.values())[:LINES]
        about = () if lines else (words.tr("Nothing that was laid is waited for."),)
        self._ask(Asked(words.tr("What is still tacky?"), lines, about))

    def _is_tacky(self, key: PassKey) -> None:
        self._make(lambda book: bench_events.tacky(book, key, self._now()))

    # --- went wrong ---------------------------------------------------------------------

    def wrong(self, picture: PlanSnapshot, job: Job | None) -> None:
        """Ask what went wrong: with which pass, how, and what is done about it."""
        lines = []
        if job is not None and job.work is not None and job.entry is not None:
            row = job.work
            for coat in row.coats:
                told = words.tr("The colour runs out: {coating}").format(coating=coat.coating)
                below = words.tr("what is ticked is done, the rest comes later")
                lines.append(Line(told, below, partial(self._ran_out, job, coat.coating)))
            told = words.tr("{work}, under way").format(
                work=words.capital(reasons.key_name(row.key))
            )
            lines.append(Line(told, "", partial(self.how, picture, row.key)))
        keys = _lately(picture)[: FILMS_ASKED - len(lines)]
        zone, now = picture.zone, self._now()
        for key, ended in keys:
            at = words.when(ended, zone, now)
            lines.append(
                Line(
                    words.capital(reasons.key_name(key)),
                    words.tr("done {time}").format(time=at),
                    partial(self.how, picture, key),
                )
            )
        about = () if lines else (words.tr("Nothing has been done yet."),)
        self._ask(Asked(words.tr("What went wrong?"), tuple(lines), about))

    def how(self, picture: PlanSnapshot, key: PassKey) -> None:
        """Ask how a pass went wrong."""
        name = words.capital(reasons.key_name(key))
        lines = (
            Line(
                words.tr("Dropped, or damaged"),
                "",
                partial(self._repair, picture, key, Event.DROPPED),
            ),
            Line(
                words.tr("I do not like it"),
                "",
                partial(self._repair, picture, key, Event.DISLIKED),
            ),
        )
        self._ask(Asked(words.tr("How did it go wrong?"), lines, (name,)))

    def _repair(self, picture: PlanSnapshot, key: PassKey, event: Event) -> None:
        lines = []
        for kind in repairs_for(picture.book, key):
            steps = bench_events.outline(picture.book, key, kind)
            names = [words.stage_word(step.stage) for step in steps]
            lines.append(
                Line(
                    words.capital(_repair_word(kind)),
                    _steps_told(names),
                    partial(self._mend, key, kind, event),
                )
            )
        lines = lines[: LINES - 1]
        lines.append(
            Line(
                words.tr("Leave it as it is"),
                words.tr("only noted in the logbook"),
                partial(self._note_only, key, event),
            )
        )
        about = [words.capital(reasons.key_name(key))]
        pause = rest(picture.book, key, self._now())
        if pause is not None:
            about.append(rest_words(pause, picture.zone, self._now()))
        self._ask(Asked(words.tr("What is done about it?"), tuple(lines), tuple(about)))

    def _mend(self, key: PassKey, kind: Repair, event: Event) -> None:
        self._make(lambda book: bench_events.repair(book, key, self._now(), kind, event))

    def _note_only(self, key: PassKey, event: Event) -> None:
        text = words.tr("{event}, left as it is").format(event=event.value)
        self._make(lambda book: bench_events.note(book, self._now(), text, key))

    def _ran_out(self, job: Job, coating: str) -> None:
        row = job.work
        assert row is not None
        ticked = tuple(sorted(job.ticked))
        self._make(lambda book: bench_events.ran_out(book, row.key, self._now(), coating, ticked))

    # --- partly done, out of order, notes -----------------------------------------------

    def partly(self, job: Job, whole: Callable[[], None]) -> Asked:
        """Return the question whether a pass with places not ticked is done."""
        row = job.work
        assert row is not None
        ticked = tuple(place for place in job.places if place in job.ticked)
        left = [place.replace("/", ": ") for place in job.places if place not in job.ticked]
        lines = (
            Line(words.tr("All of it is done"), "", whole),
            Line(
                words.tr("Only what is ticked; the rest comes later"),
                words.listed(left),
                partial(self._split, row.key, ticked),
            ),
        )
        told = words.tr("{done} of {count} places are ticked.").format(
            done=len(ticked), count=len(job.places)
        )
        return Asked(words.tr("Is all of it done?"), lines, (told,))

    def _split(self, key: PassKey, ticked: tuple[str, ...]) -> None:
        now = self._now()
        self._make(
            lambda book: logbook.split(
                book, key, ticked, now, air=air_readings.last_read(book, now)
            )
        )

    def out_of_order(self, book: Book, key: PassKey) -> Asked | None:
        """Return what to ask where a pass is done before its turn, else None.

        ``book`` is the one from before it was noted.
        """
        found = bench_events.out_of_order(book, key)
        if found is None:
            return None
        about = [
            words.tr("Done before: {steps}.").format(steps=reasons.step_names(key, found.before))
        ]
        about += [translated(finding.message) for finding in found.findings[:2]]
        lines = []
        for finding in found.findings[:3]:
            mend = finding.mend
            if mend is not None:
                lines.append(
                    Line(
                        translated(mend.title),
                        translated(finding.message),
                        partial(self._apply, mend),
                    )
                )
        return Asked(words.tr("Out of order"), tuple(lines), tuple(about))

    def _apply(self, mend: Mend) -> None:
        self._make(lambda book: Edit(mend.title, mend.apply(book)))

    def note(self, job: Job) -> None:
        """Ask for a line of note on the pass on screen."""
        row = job.work
        assert row is not None
        key = row.key

        def noted(text: str) -> None:
            if job.entry is not None:
                self._make(lambda book: logbook.annotate(book, key, note=text))
            else:
                self._make(lambda book: bench_events.note(book, self._now(), text, key))

        self._ask(
            Asked(
                words.tr("Note"),
                about=(words.capital(reasons.key_name(key)),),
                typed=noted,
                hint=words.tr("type, then Enter"),
            )
        )

    def other(self) -> None:
        """Ask for a line that tells what was really painted."""

        def noted(line: str) -> None:
            words_ = words_of_the_line()
            self._make(lambda book: done_beside(book, line, self._now(), words_).edit)

        self._ask(
            Asked(
                words.tr("What was painted, and on what?"),
                about=(words.tr("Planned or not, as: {line}").format(line=example()),),
                typed=noted,
                hint=words.tr("type, then Enter"),
            )
        )

    def gauge(self) -> None:
        """Ask what the gauge shows; it corrects today's air and goes into the logbook."""

        def read(text: str) -> None:
            self._make(lambda book: air_readings.noted(book, text, self._now()))

        self._ask(
            Asked(
                words.tr("What does the gauge show?"),
                about=(words.tr("Temperature in °C and humidity in %, as 21.5 48"),),
                typed=read,
                hint=words.tr("type, then Enter"),
            )
        )

    def missed(self, picture: PlanSnapshot) -> None:
        """Ask what is done about windows that have closed unmet."""
        now, zone = self._now(), picture.zone
        lines: list[Line] = []
        about: list[str] = []
        for missed in bench_events.missed(picture.book, now):
            told = words.tr("{work}: its window closed {time}.").format(
                work=words.capital(reasons.key_name(missed.key)),
                time=words.when(missed.closed, zone, now),
            )
            about.append(told)
            name = words.capital(reasons.key_name(missed.key))
            lines += [
                Line(_remedy_word(choice), name, partial(self._remedy, missed, choice))
                for choice in missed.remedies
            ]
        if not lines:
            about = about or [words.tr("No window has been missed.")]
        self._ask(Asked(words.tr("Window missed"), tuple(lines[:LINES]), tuple(about[:2])))

    def _remedy(self, missed: Missed, choice: Remedy) -> None:
        self._make(lambda book: bench_events.remedy(book, missed, choice, self._now()))


def _lately(picture: PlanSnapshot) -> list[tuple[PassKey, int]]:
    """Return every pass that was done, the last first, with its end."""
    found = [
        (PassKey(project.name, entry.model, entry.step, entry.coat), minute_of(entry.end))
        for project in picture.book.projects
        if project.active
        for entry in project.log
        if entry.end is not None
        and picture.laid.problem.index.get(
            PassKey(project.name, entry.model, entry.step, entry.coat)
        )
        is not None
    ]
    return sorted(found, key=lambda item: (-item[1], item[0]))


def _steps_told(names: list[str]) -> str:
    """Return the steps of a repair, counted where they are many."""
    if len(names) <= STEPS_TOLD:
        return words.listed(names)
    return words.tr("{n} steps, from {first} to {last}").format(
        n=len(names), first=names[0], last=names[-1]
    )


def _remedy_word(choice: Remedy) -> str:
    told = {
        Remedy.WAIT: words.tr("Wait until it opens again"),
        Remedy.SCUFF: words.tr("Scuff, then go on"),
        Remedy.LATE: words.tr("Do it late, with more care and time"),
        Remedy.SKIP: words.tr("Leave it out"),
    }
    return told[choice]


def _repair_word(kind: Repair) -> str:
    told = {
        Repair.AGAIN: words.tr("lay it once more"),
        Repair.TOUCH_UP: words.tr("touch up"),
        Repair.SAND: words.tr("sand and respray"),
        Repair.STRIP: words.tr("strip and start over"),
        Repair.FROSTING: words.tr("fix frosting"),
        Repair.SILVERING: words.tr("fix silvering"),
        Repair.TIDE_MARK: words.tr("lift a tide mark"),
    }
    return told[kind]
