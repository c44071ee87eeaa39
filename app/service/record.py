"""The build record: what was done when, with what, how long it took, what to do differently."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from itertools import groupby
from pathlib import Path
from zoneinfo import ZoneInfo

from app.service import words
from app.service.document import Block, Document, Figure, Heading, Items, Paragraph, Table
from app.service.paper import mix_text
from app.service.photo_data import Damaged, bare
from planner.passes import Pass, expand
from planner.values.book import Book
from planner.values.moment import minute_of, zone_named
from planner.values.project import Event, Happened, Logged, Project
from planner.values.refusal import Refused, unknown
from storage.photos import kind_of

# Media types of the kinds that browsers show (RFC 2046; IANA's list for the rest).
MEDIA = {
    "jpg": "image/jpeg",
    "png": "image/png",
    "gif": "image/gif",
    "webp": "image/webp",
    "bmp": "image/bmp",
}
LESSONS = frozenset(Event) - {Event.NOTE, Event.SKIPPED}
LONGER, LEAST_LONGER = 1.5, 10  # times what was planned, and minutes more, that are worth telling
MOST_TOLD = 20  # of pieces of work that took longer


@dataclass(frozen=True)
class Entry:
    """One line of the logbook with the pass that it is about."""

    project: Project
    fact: Logged
    one: Pass

    @property
    def minutes(self) -> int | None:
        """Minutes of work: as written, else from start to end; None while under way."""
        if self.fact.minutes is not None or self.fact.end is None:
            return self.fact.minutes
        return minute_of(self.fact.end) - minute_of(self.fact.start)


def build_record(book: Book, now: int, photos: Path, *, only: str = "") -> Document:
    """Return the record of one project, or of every project with something to tell.

    Parameters
    ----------
    photos
        Folder of the book's photos; what is not there is said.
    only
        Name of the project; empty for all.

    Raises
    ------
    Refused
        If no project is called so.
    """
    names = [project.name for project in book.projects]
    if only and only not in names:
        raise Refused("project", unknown("project", only, names))
    chosen = [
        project
        for project in book.projects
        if (project.name == only if only else project.log or project.diary)
    ]
    zone = zone_named(book.bench_time.zone)
    blocks: list[Block] = [
        Paragraph(f"Build record as of {words.day(now, zone)} {words.clock_time(now, zone)}.")
    ]
    if not chosen:
        blocks.append(Paragraph("Nothing has been logged yet."))
    for project in chosen:
        if len(chosen) > 1:
            blocks.append(Heading(2, project.name))
        level = 2 if len(chosen) == 1 else 3
        blocks += _Record(book, project, zone, photos, level).blocks()
    title = chosen[0].name if len(chosen) == 1 else "Build record"
    return Document(title, tuple(blocks))


class _Record:
    """One project's part of the record."""

    def __init__(
        self, book: Book, project: Project, zone: ZoneInfo, photos: Path, level: int
    ) -> None:
        self.book, self.project, self.zone, self.photos = book, project, zone, photos
        self.level = level
        passes = {one.key: one for model in project.models for one in expand(project, model)}
        self.left = len(passes) - len(project.log)
        by_name = {(key.model, key.step, key.coat): one for key, one in passes.items()}
        self.entries = [
            Entry(project, fact, by_name[fact.model, fact.step, fact.coat])
            for fact in sorted(project.log, key=lambda fact: (fact.start, fact.model, fact.step))
        ]

    def blocks(self) -> Iterator[Block]:
        """Yield everything that is told of the project."""
        if self.project.note.strip():
            yield Paragraph(self.project.note)
        yield Table("The project", ("what", "how it was"), tuple(self._facts()))
        if self.entries:
            yield Heading(self.level, "What was done")
            for on, group in groupby(self.entries, lambda entry: self._on(entry.fact.start)):
                yield from self._day(on, list(group))
            yield from self._materials()
        yield from self._seen()
        yield from self._diary()
        yield Heading(self.level, "What to do differently")
        lessons = tuple(self._lessons())
        yield Items(lessons) if lessons else Paragraph("Nothing was noted.")

    def _facts(self) -> Iterator[tuple[str, str]]:
        models = [
            f"{model.name} ({model.scale})" if model.scale else model.name
            for model in self.project.models
        ]
        yield "models", "; ".join(models)
        if self.entries:
            yield "begun", self._moment(self.entries[0].fact.start)
            ends = [entry.fact.end for entry in self.entries if entry.fact.end]
            if ends:
                yield "last work", self._moment(max(ends))
        if self.project.target:
            yield "date to keep", self.project.target.isoformat()
        whole = sum(entry.minutes or 0 for entry in self.entries)
        evenings = len({self._on(entry.fact.start) for entry in self.entries})
        yield "work", f"{_hours(whole)} on {words.count(evenings, 'day')}"
        by_stage: Counter[str] = Counter()
        for entry in self.entries:
            by_stage[entry.one.step.stage.value] += entry.minutes or 0
        if by_stage:
            stages = [f"{stage} {_hours(minutes)}" for stage, minutes in by_stage.most_common()]
            yield "of it", "; ".join(stages)
        reckoned = sum(entry.fact.minutes is None for entry in self.entries)
        if reckoned:
            yield "reckoned", f"{words.count(reckoned, 'entry', 'entries')} from start to end"
        done = words.count(len(self.entries), "coat or piece of work", "coats and pieces of work")
        yield "done", f"{done}, {self.left} not logged"

    def _day(self, on: date, entries: list[Entry]) -> Iterator[Block]:
        minutes = sum(entry.minutes or 0 for entry in entries)
        day = words.day(minute_of(entries[0].fact.start), self.zone)
        yield Heading(self.level + 1, f"{day}, {_hours(minutes)} of work")
        yield Table(
            f"Work of {on.isoformat()}",
            ("time", "model", "work", "laid", "minutes", "air", "used", "note"),
            tuple(self._row(entry) for entry in entries),
        )
        for entry in entries:
            for name in entry.fact.photos:
                yield self._photo(name, f"{entry.fact.model}, {_work(entry)}: {name}")

    def _row(self, entry: Entry) -> tuple[str, ...]:
        fact = entry.fact
        planned = f" (planned {fact.planned})" if fact.planned is not None else ""
        minutes = "under way" if entry.minutes is None else f"{entry.minutes}{planned}"
        air = [
            f"{fact.temperature_c:g} °C" if fact.temperature_c is not None else "",
            f"{fact.humidity_pct:g} % RH" if fact.humidity_pct is not None else "",
        ]
        return (
            words.clock_time(minute_of(fact.start), self.zone),
            fact.model,
            f"{_work(entry)}, {entry.one.step.tool.value}",
            "; ".join(_laid(entry.one)),
            minutes,
            ", ".join(filter(None, air)),
            "; ".join(f"{round(used.ml, 2):g} ml {used.coating}" for used in fact.used),
            fact.note,
        )

    def _materials(self) -> Iterator[Block]:
        """Yield coats and mixes as they were used."""
        coats: Counter[str] = Counter()
        for entry in self.entries:
            coats.update({coating for _, coating in entry.one.films})
        used: defaultdict[str, float] = defaultdict(float)
        for entry in self.entries:
            for one in entry.fact.used:
                used[one.coating] += one.ml
        rows = []
        for name in dict.fromkeys([*coats, *used]):
            mix = self.book.mix(name)
            known = mix is not None or any(one.name == name for one in self.book.coatings)
            family = self.book.coating(name).family.value if known else ""
            mixed = f"mix {mix_text(mix.portions)}" if mix else ""
            said = "; ".join(filter(None, [family, mixed]))
            amount = f"{round(used[name], 2):g} ml" if name in used else ""
            rows.append((name, said, str(coats[name] or ""), amount))
        if rows:
            head = ("coating or mix", "what it is", "coats", "used")
            yield Heading(self.level, "Coats and mixes")
            yield Table("As they were used", head, tuple(rows))

    def _seen(self) -> Iterator[Block]:
        rows = tuple(
            (
                self._moment(seen.at),
                f"{seen.model}/{seen.step}",
                seen.state.value,
                "yes" if seen.reached else "not yet",
            )
            for seen in sorted(self.project.observed, key=lambda seen: seen.at)
        )
        if rows:
            yield Heading(self.level, "Looks at films")
            yield Table("How far films had come", ("when", "film", "state", "reached"), rows)

    def _diary(self) -> Iterator[Block]:
        rows = tuple(
            (self._moment(one.at), one.event.value, _about(one), one.text)
            for one in sorted(self.project.diary, key=lambda one: one.at)
        )
        if rows:
            yield Heading(self.level, "Diary")
            yield Table("What happened", ("when", "what", "about", "in words"), rows)

    def _lessons(self) -> Iterator[str]:
        for one in sorted(self.project.diary, key=lambda one: one.at):
            if one.event in LESSONS:
                about = _about(one)
                yield ": ".join(filter(None, [one.event.value, about, one.text]))
        longer = [
            (entry.fact.minutes - entry.fact.planned, entry)
            for entry in self.entries
            if entry.fact.minutes is not None
            and entry.fact.planned is not None
            and entry.fact.minutes >= LONGER * entry.fact.planned
            and entry.fact.minutes - entry.fact.planned >= LEAST_LONGER
        ]
        for _, entry in sorted(longer, key=lambda one: -one[0])[:MOST_TOLD]:
            work = f"{entry.fact.model}, {_work(entry)}"
            yield f"{work} took {entry.fact.minutes} min where {entry.fact.planned} were planned"

    def _photo(self, name: str, caption: str) -> Block:
        try:
            data = (self.photos / Path(name).name).read_bytes()
        except OSError:
            return Paragraph(f"Photo {name} is missing from {self.photos.name}.")
        suffix = kind_of(data) or ""
        if suffix not in MEDIA:
            return Paragraph(f"Photo {name} is of a kind that a page cannot show.")
        try:
            return Figure(bare(data, suffix), MEDIA[suffix], caption)
        except Damaged as problem:
            return Paragraph(f"Photo {name} {problem}.")

    def _on(self, moment: datetime) -> date:
        return moment.astimezone(self.zone).date()

    def _moment(self, moment: datetime) -> str:
        minute = minute_of(moment)
        return f"{words.day(minute, self.zone)} {words.clock_time(minute, self.zone)}"


def _work(entry: Entry) -> str:
    step = entry.one.step
    title = f"{step.stage.value}: {step.title}" if step.title else step.stage.value
    return f"{title}, coat {entry.fact.coat}" if step.coats > 1 else title


def _laid(one: Pass) -> Iterator[str]:
    by_coating: dict[str, list[str]] = defaultdict(list)
    for place, coating in one.films:
        by_coating[coating].append(place)
    for coating, places in by_coating.items():
        yield f"{coating} on {', '.join(places)}"


def _about(one: Happened) -> str:
    return "/".join(filter(None, [one.model, one.step]))


def _hours(minutes: int) -> str:
    """Return worked time to the minute: "1 h 25 min"."""
    hours, rest = divmod(minutes, 60)
    if not hours:
        return f"{rest} min"
    return f"{hours} h {rest} min" if rest else f"{hours} h"
