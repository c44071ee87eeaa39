"""The build record: what was done when, with what, how long it took, what to do differently."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from itertools import groupby
from pathlib import Path
from zoneinfo import ZoneInfo

from app.service import wording
from app.service.document import (
    Block,
    Document,
    DocumentTable,
    Figure,
    Heading,
    ListItems,
    Paragraph,
)
from app.service.model_faces import face_of
from app.service.model_outlines import outline_svg
from app.service.photo_data import Damaged, bare
from app.service.run_sheet_text import mix_text
from app.service.starter_stock import swatch_of
from planner.evening import film_brake
from planner.passes import Pass, expand
from planner.values.book import Book
from planner.values.message import message, row, told
from planner.values.moment import minute_of, zone_named
from planner.values.project import Event, Happened, Logged, Project
from planner.values.refusal import Refused, unknown
from planner.values.step import Stage
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
WORK_HEAD = (
    *(message("time"), message("model"), message("work"), message("laid")),
    *(message("minutes"), message("air"), message("used"), message("note")),
)
LAID = 3  # the column of `WORK_HEAD` that a coat's swatch stands in
MOST_TOLD = 20  # of pieces of work that took longer


@dataclass(frozen=True)
class RecordEntry:
    """One line of the logbook with the pass that it is about."""

    project: Project
    fact: Logged
    pass_: Pass

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
        Paragraph(
            message(
                "Build record as of {day} {time}.",
                day=wording.day(now, zone),
                time=wording.clock_time(now, zone),
            )
        )
    ]
    if not chosen:
        blocks.append(Paragraph(message("Nothing has been logged yet.")))
    for project in chosen:
        if len(chosen) > 1:
            blocks.append(Heading(2, project.name))
        level = 2 if len(chosen) == 1 else 3
        blocks += _Record(book, project, zone, photos, level).blocks()
    title = chosen[0].name if len(chosen) == 1 else message("Build record")
    return Document(title, tuple(blocks))


class _Record:
    """One project's part of the record."""

    def __init__(
        self, book: Book, project: Project, zone: ZoneInfo, photos: Path, level: int
    ) -> None:
        self.book, self.project, self.zone, self.photos = book, project, zone, photos
        self.level = level
        passes = {pass_.key: pass_ for model in project.models for pass_ in expand(project, model)}
        self.left = len(passes) - len(project.log)
        by_name = {(key.model, key.step, key.coat): pass_ for key, pass_ in passes.items()}
        self.entries = [
            RecordEntry(project, fact, by_name[fact.model, fact.step, fact.coat])
            for fact in sorted(project.log, key=lambda fact: (fact.start, fact.model, fact.step))
        ]

    def blocks(self) -> Iterator[Block]:
        """Yield everything that is told of the project."""
        if self.project.note.strip():
            yield Paragraph(self.project.note)
        yield DocumentTable(
            message("The project"), (message("what"), message("how it was")), tuple(self._facts())
        )
        yield from self._faces()
        if self.entries:
            yield Heading(self.level, message("What was done"))
            for on, group in groupby(self.entries, lambda entry: self._on(entry.fact.start)):
                yield from self._day(on, list(group))
            yield from self._materials()
        yield from self._seen()
        yield from self._diary()
        yield Heading(self.level, message("What to do differently"))
        lessons = tuple(self._lessons())
        yield ListItems(lessons) if lessons else Paragraph(message("Nothing was noted."))

    def _faces(self) -> Iterator[Block]:
        """Yield each model as it looks by its logbook, and how far it is."""
        for model in self.project.models:
            face = face_of(self.book, self.project.name, model.name)
            caption = message(
                "{model}: {done} of {n} steps done",
                model=model.name,
                done=face.done,
                n=len(face.ribbon),
            )
            yield Figure(outline_svg(face), "image/svg+xml", caption, small=True)

    def _facts(self) -> Iterator[tuple[str, str]]:
        models = [
            f"{model.name} ({model.scale})" if model.scale else model.name
            for model in self.project.models
        ]
        yield message("models"), "; ".join(models)
        if self.entries:
            yield message("begun"), self._moment(self.entries[0].fact.start)
            ends = [entry.fact.end for entry in self.entries if entry.fact.end]
            if ends:
                yield message("last work"), self._moment(max(ends))
        if self.project.target:
            yield message("date to keep"), wording.date_of(self.project.target)
        whole = sum(entry.minutes or 0 for entry in self.entries)
        evenings = len({self._on(entry.fact.start) for entry in self.entries})
        if evenings == 1:
            yield message("work"), message("{hours} on 1 day", hours=_hours(whole))
        else:
            yield message("work"), message("{hours} on {n} days", hours=_hours(whole), n=evenings)
        by_stage: Counter[Stage] = Counter()
        for entry in self.entries:
            by_stage[entry.pass_.step.stage] += entry.minutes or 0
        if by_stage:
            stages = [
                row((stage, _hours(minutes)), " ") for stage, minutes in by_stage.most_common()
            ]
            yield message("of it"), row(stages, "; ")
        reckoned = sum(entry.fact.minutes is None for entry in self.entries)
        if reckoned:
            yield (
                message("reckoned"),
                message("1 entry from start to end")
                if reckoned == 1
                else message("{n} entries from start to end", n=reckoned),
            )
        if len(self.entries) == 1:
            done = message("1 coat or piece of work, {left} not logged", left=self.left)
        else:
            done = message(
                "{n} coats and pieces of work, {left} not logged",
                n=len(self.entries),
                left=self.left,
            )
        yield message("done"), done

    def _day(self, on: date, entries: list[RecordEntry]) -> Iterator[Block]:
        minutes = sum(entry.minutes or 0 for entry in entries)
        day = wording.day(minute_of(entries[0].fact.start), self.zone)
        yield Heading(
            self.level + 1, message("{day}, {hours} of work", day=day, hours=_hours(minutes))
        )
        head, rows = _told(WORK_HEAD, [self._row(entry) for entry in entries])
        yield DocumentTable(
            message("Work of {day}", day=wording.date_of(on)),
            head,
            rows,
            tuple(self._colour(entry) for entry in entries),
            LAID,
        )
        for entry in entries:
            for name in entry.fact.photos:
                yield self._photo(
                    name,
                    message(
                        "{model}, {work}, {day}",
                        model=entry.fact.model,
                        work=_work(entry),
                        day=wording.day(minute_of(entry.fact.start), self.zone),
                    ),
                )

    def _colour(self, entry: RecordEntry) -> str:
        """Return the colour of the first coat that an entry laid, "" where it laid none."""
        return next((swatch_of(self.book, name) for _, name in entry.pass_.films), "")

    def _row(self, entry: RecordEntry) -> tuple[str, ...]:
        fact = entry.fact
        minutes: str = str(entry.minutes)
        if entry.minutes is None:
            minutes = message("under way")
        elif fact.planned not in (None, entry.minutes):
            minutes = message(
                "{minutes} (planned {planned})", minutes=entry.minutes, planned=fact.planned
            )
        air = [
            message("{c:g} °C", c=fact.temperature_c) if fact.temperature_c is not None else "",
            message("{rh:g} % RH", rh=fact.humidity_pct) if fact.humidity_pct is not None else "",
        ]
        return (
            wording.clock_time(minute_of(fact.start), self.zone),
            fact.model,
            row((_work(entry), entry.pass_.step.tool)),
            row(_laid(entry.pass_), "; "),
            minutes,
            row(filter(None, air)),
            row(
                (
                    message("{ml:g} ml {coating}", ml=round(used.ml, 2), coating=used.coating)
                    for used in fact.used
                ),
                "; ",
            ),
            row(filter(None, [*self._marks(fact), fact.note]), "; "),
        )

    def _marks(self, fact: Logged) -> Iterator[str]:
        for line in film_brake.marks(self.project, fact):
            yield row((line.event, line.text), ": ")

    def _materials(self) -> Iterator[Block]:
        """Yield coats and mixes as they were used."""
        coats: Counter[str] = Counter()
        for entry in self.entries:
            coats.update({coating for _, coating in entry.pass_.films})
        used: defaultdict[str, float] = defaultdict(float)
        for entry in self.entries:
            for other in entry.fact.used:
                used[other.coating] += other.ml
        rows = []
        for name in dict.fromkeys([*coats, *used]):
            mix = self.book.mix(name)
            known = mix is not None or any(coating.name == name for coating in self.book.coatings)
            family: str = self.book.coating(name).family if known else ""
            mixed = message("mix {mix}", mix=mix_text(mix.portions)) if mix else ""
            said = row(filter(None, [family, mixed]), "; ")
            amount = message("{ml:g} ml", ml=round(used[name], 2)) if name in used else ""
            rows.append((name, said, str(coats[name] or ""), amount))
        if rows:
            head = (
                message("coating or mix"),
                message("what it is"),
                message("coats"),
                message("used"),
            )
            yield Heading(self.level, message("Coats and mixes"))
            colours = tuple(swatch_of(self.book, name) for name, *_ in rows)
            yield DocumentTable(message("As they were used"), head, tuple(rows), colours)

    def _seen(self) -> Iterator[Block]:
        rows = tuple(
            (
                self._moment(seen.at),
                f"{seen.model}/{seen.step}",
                row((seen.state,)),
                message("yes") if seen.reached else message("not yet"),
            )
            for seen in sorted(self.project.observed, key=lambda seen: seen.at)
        )
        if rows:
            yield Heading(self.level, message("Looks at films"))
            head = (message("when"), message("film"), message("state"), message("reached"))
            yield DocumentTable(message("How far films had come"), head, rows)

    def _diary(self) -> Iterator[Block]:
        rows = tuple(
            (self._moment(event.at), row((event.event,)), _about(event), event.text)
            for event in sorted(self.project.diary, key=lambda event: event.at)
        )
        if rows:
            yield Heading(self.level, message("Diary"))
            head = (message("when"), message("what"), message("about"), message("in words"))
            yield DocumentTable(message("What happened"), head, rows)

    def _lessons(self) -> Iterator[str]:
        for event in sorted(self.project.diary, key=lambda event: event.at):
            if event.event in LESSONS:
                about = _about(event)
                yield row(filter(None, [event.event, about, event.text]), ": ")
        longer = [
            (entry.fact.minutes - entry.fact.planned, entry)
            for entry in self.entries
            if entry.fact.minutes is not None
            and entry.fact.planned is not None
            and entry.fact.minutes >= LONGER * entry.fact.planned
            and entry.fact.minutes - entry.fact.planned >= LEAST_LONGER
        ]
        for _, entry in sorted(longer, key=lambda other: -other[0])[:MOST_TOLD]:
            yield message(
                "{model}, {work} took {minutes} min where {planned} were planned",
                model=entry.fact.model,
                work=_work(entry),
                minutes=entry.fact.minutes,
                planned=entry.fact.planned,
            )

    def _photo(self, name: str, caption: str) -> Block:
        try:
            data = (self.photos / Path(name).name).read_bytes()
        except OSError:
            return Paragraph(
                message(
                    "Photo {photo} is missing from {folder}.", photo=name, folder=self.photos.name
                )
            )
        suffix = kind_of(data) or ""
        if suffix not in MEDIA:
            return Paragraph(
                message("Photo {photo} is of a kind that a page cannot show.", photo=name)
            )
        try:
            return Figure(bare(data, suffix), MEDIA[suffix], caption)
        except Damaged as problem:
            return Paragraph(
                message("Photo {photo} {problem}.", photo=name, problem=told(str(problem)))
            )

    def _on(self, moment: datetime) -> date:
        return moment.astimezone(self.zone).date()

    def _moment(self, moment: datetime) -> str:
        minute = minute_of(moment)
        return row((wording.day(minute, self.zone), wording.clock_time(minute, self.zone)), " ")


def _told(
    head: tuple[str, ...], rows: list[tuple[str, ...]]
) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """Return a table without the columns in which nothing stands."""
    kept = [at for at in range(len(head)) if at <= LAID or any(row[at] for row in rows)]
    return (
        tuple(head[at] for at in kept),
        tuple(tuple(row[at] for at in kept) for row in rows),
    )


def _work(entry: RecordEntry) -> str:
    step = entry.pass_.step
    title = row((step.stage,))
    if step.title:
        title = message("{stage}: {title}", stage=step.stage, title=step.title)
    if step.coats > 1:
        return message("{work}, coat {coat}", work=title, coat=entry.fact.coat)
    return title


def _laid(pass_: Pass) -> Iterator[str]:
    by_coating: dict[str, list[str]] = defaultdict(list)
    for place, coating in pass_.films:
        by_coating[coating].append(place)
    for coating, places in by_coating.items():
        yield message("{coating} on {places}", coating=coating, places=", ".join(places))


def _about(event: Happened) -> str:
    return "/".join(filter(None, [event.model, event.step]))


def _hours(minutes: int) -> str:
    """Return worked time to the minute: "1 h 25 min"."""
    hours, rest = divmod(minutes, 60)
    if not hours:
        return message("{minutes} min", minutes=rest)
    if not rest:
        return message("{hours} h", hours=hours)
    return message("{hours} h {minutes} min", hours=hours, minutes=rest)
