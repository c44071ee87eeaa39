"""What the bench mode shows of one job."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.service.model_faces import face_of
from app.window import reasons, words
from app.window.bench_mode.jobs import KEYS_FOR_PLACES, Job
from app.window.bench_mode.large_text import LARGE, PLAIN, SMALL, Swatch, Warn, big
from app.window.bench_mode.loads import others, served
from app.window.bench_mode.place_tiles import TileFace, tiles
from app.window.message_translation import title, translated
from app.window.model_faces import FaceMark, stages_words
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import marks_of, one_first_words, taker_when
from planner.cautions import LAST_WORD, Caution
from planner.evening.advice import one_first
from planner.quantity import Load, fill
from planner.tonight import BenchRow, SheetCoat, WorkRow
from planner.values.plan import BenchKind, Cause
from planner.values.step import Stage, Tool

OTHERS_SHOWN = 4
SERVED_SHOWN = 8
CAUTIONS_SHOWN = 3
FACE = 92  # width of an outline [pixels at the usual size]
WHY_SHOWN = 2  # a wait shorter than this needs no reason [min]
# Whoever reads this knows what holds them: hands, a cup to fill, an evening that begins.
AT_THE_TABLE = (Cause.HANDS, Cause.AIRBRUSH, Cause.BENCH_TIME)


@dataclass(frozen=True)
class Look:
    """Colours and the size of everything."""

    colours: Colours
    scale: float

    def label(self, text: str, size: float, *, colour: str = "ink", bold: bool = False) -> QWidget:
        """Return words in letters of a size for the usual window."""
        return big(text, size * self.scale, self.colours, colour=colour, bold=bold)

    def pixels(self, usual: float) -> int:
        """Return a length for this window."""
        return round(usual * self.scale)


def heading(job: Job) -> str:
    """Return what is done, in a word or two."""
    row = job.row
    if isinstance(row, BenchRow):
        return _set_up_heading(row)
    name = words.capital(words.stage_word(row.stage))
    if row.pieces > 1:
        return words.tr("{stage}, part {number} of {count}").format(
            stage=name, number=row.piece, count=row.pieces
        )
    if row.key.coat > 1:
        return words.tr("{stage}, coat {coat}").format(stage=name, coat=row.key.coat)
    return name


def _set_up_heading(row: BenchRow) -> str:
    if row.kind is BenchKind.CLEAN:
        return words.tr("Clean the airbrush")
    if row.kind is BenchKind.PREPARE:
        return words.tr("Prepare the film")
    if row.kind is BenchKind.CHANGE:
        return words.tr("Change the colour")
    return words.tr("Load the airbrush")


def one_line(job: Job) -> str:
    """Return a job in one line: "Prime · Quay Tractor Heron"."""
    row = job.row
    about = row.key.model if isinstance(row, WorkRow) else row.coating or row.airbrush
    if isinstance(row, BenchRow) and row.kind is BenchKind.PREPARE and row.serves is not None:
        about = reasons.key_name(row.serves)
    return words.tr("{work} · {about}").format(work=heading(job), about=about)


def face(picture: PlanSnapshot, job: Job, look: Look, *, now: int, page: int) -> QWidget:
    """Return the whole of a job: what, on what, with what, where to take care, and its places."""
    holder = QWidget()
    whole = QVBoxLayout(holder)
    whole.setContentsMargins(0, 0, 0, 0)
    whole.setSpacing(look.pixels(12))
    line = QHBoxLayout()
    line.setSpacing(look.pixels(30))
    left = QVBoxLayout()
    left.setSpacing(look.pixels(6))
    row = job.row
    if isinstance(row, WorkRow):
        _work(left, picture, job, row, look, now)
        right: QWidget | None = _care(picture, row, look, now)
    else:
        _set_up(left, picture, row, look, now)
        right = _takers(picture, job, look)
    left.addStretch(1)
    line.addLayout(left, 55)
    if right is not None:
        line.addWidget(right, 45)
    whole.addLayout(line, 1)
    if job.places:
        whole.addWidget(_places(job, look, page))
    return holder


def _work(
    column: QVBoxLayout, picture: PlanSnapshot, job: Job, row: WorkRow, look: Look, now: int
) -> None:
    begun = job.begun
    column.addWidget(_model(picture, row, look))
    if row.title and not words.says_stage(row.title, row.stage):
        column.addWidget(look.label(title(row.title), PLAIN))
    column.addWidget(look.label(_with(picture, row, begun), PLAIN, colour="soft"))
    for coat in row.coats:
        _coat(column, picture, row, coat, look)
    waits = row.start - now >= WHY_SHOWN and not row.logged and begun is None
    if waits and row.reason.cause not in AT_THE_TABLE:
        why = reasons.reason_sentence(row.reason, picture.zone, now)
        at = words.tr("from {time}: {why}").format(
            time=words.clock(row.start, picture.zone), why=why
        )
        column.addWidget(look.label(words.capital(at), SMALL, colour="drying_word"))


def _model(picture: PlanSnapshot, row: WorkRow, look: Look) -> QWidget:
    """Return the model's outline with the ribbon of its stages, and its name."""
    shown = face_of(picture.book, row.key.project, row.key.model)
    mark = FaceMark(shown, look.colours, wide=look.pixels(FACE), ribbon=True)
    mark.setAccessibleName(stages_words(shown))
    mark.setToolTip(mark.accessibleName())
    holder = QWidget()
    line = QHBoxLayout(holder)
    line.setContentsMargins(0, 0, 0, 0)
    line.setSpacing(look.pixels(14))
    line.addWidget(mark, 0, Qt.AlignmentFlag.AlignVCenter)
    line.addWidget(look.label(row.key.model, LARGE, bold=True), 1)
    return holder


def _care(picture: PlanSnapshot, row: WorkRow, look: Look, now: int) -> QWidget | None:
    """Return what the marks of the work ask for, and its cautions; None where there is nothing."""
    marks = marks_of(row, picture.beside, picture.zone, now)
    if not marks and not row.cautions:
        return None
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(look.pixels(6))
    for told in marks:
        column.addWidget(look.label(told, SMALL, colour="drying_word", bold=True))
    for caution in row.cautions[:CAUTIONS_SHOWN]:
        column.addWidget(_caution(caution, look))
    if row.cautions:
        column.addWidget(look.label(words.tr(LAST_WORD), SMALL, colour="soft"))
    column.addStretch(1)
    return holder


def _with(picture: PlanSnapshot, row: WorkRow, begun: int | None) -> str:
    """Return tool and minutes, and when it was begun."""
    told = words.tr("{tool} · {length}").format(
        tool=words.capital(words.tool_word(row.tool)), length=words.span(row.minutes)
    )
    if begun is None:
        return told
    at = words.clock(begun, picture.zone)
    return words.tr("{told} · begun {time}").format(told=told, time=at)


def _coat(
    column: QVBoxLayout, picture: PlanSnapshot, row: WorkRow, coat: SheetCoat, look: Look
) -> None:
    """Add a coating: swatch and name, and the mix in parts and drops."""
    column.addWidget(_named(coat.coating, coat.swatch, row.tool, row.stage, look))
    passes = (picture.laid.of(row.key),)
    mixed = fill(picture.book, coat.coating, passes, row.airbrush)
    for told in recipe_lines(mixed, stirred=bool(coat.portions)):
        column.addWidget(look.label(told, PLAIN))


def _named(coating: str, swatch: str, tool: Tool, stage: Stage, look: Look) -> QWidget:
    holder = QWidget()
    line = QHBoxLayout(holder)
    line.setContentsMargins(0, 0, 0, 0)
    line.setSpacing(look.pixels(14))
    mark = Swatch(look.colours, look.scale, swatch, tool, stage)
    line.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
    line.addWidget(look.label(coating, LARGE), 1)
    return holder


def recipe_lines(mixed: Load | None, *, stirred: bool) -> list[str]:
    """Return how a cup is filled: parts, drops and millilitres."""
    if mixed is None:
        return []
    lines = [
        words.fill(
            words.tr("{parts:g} × {coating}: {drops}"),
            parts=measure.parts,
            coating=measure.coating,
            drops=_drops(measure.drops),
        )
        for measure in mixed.measures
        if stirred
    ]
    whole = words.tr("about {ml:.1f} ml in all")
    if not mixed.complete:
        whole = words.tr("at least {ml:.1f} ml: some places have no area")
    elif mixed.least_fill:
        whole = words.tr("{ml:.1f} ml: less does not spray")
    told = words.fill(whole, ml=mixed.ml)
    if mixed.fills > 1:
        form = words.tr("{whole}, in {n} fills of {each:.1f} ml; the drops are for one")
        told = words.fill(form, n=mixed.fills, each=mixed.each_ml, whole=told)
    if not stirred:
        drops = _drops(mixed.measures[0].drops)
        told = words.tr("{drops}, {whole}").format(drops=drops, whole=told)
    return [*lines, told]


def _drops(number: int) -> str:
    return words.count(max(1, number), words.tr("{n} drop"), words.tr("{n} drops"))


def _set_up(
    column: QVBoxLayout, picture: PlanSnapshot, row: BenchRow, look: Look, now: int
) -> None:
    minutes = words.tr("{airbrush} · {length}").format(
        airbrush=words.capital(row.airbrush) or words.tr("By hand"), length=words.span(row.minutes)
    )
    column.addWidget(look.label(minutes, PLAIN, colour="soft"))
    if row.start - now >= WHY_SHOWN:
        at = words.tr("Not before {time}, or it would stand too long.").format(
            time=words.clock(row.start, picture.zone)
        )
        if row.kind is not BenchKind.CLEAN:
            column.addWidget(look.label(at, PLAIN, colour="drying_word"))
    if row.kind is BenchKind.PREPARE and row.serves is not None:
        before = words.tr("before {work}").format(work=reasons.key_name(row.serves))
        column.addWidget(look.label(before, LARGE, bold=True))
    if not row.coating:
        return
    column.addWidget(_named(row.coating, row.swatch, Tool.AIRBRUSH, Stage.BASE, look))
    keys = served(picture, row.airbrush, row.coating, row.start)
    passes = tuple(picture.laid.of(key) for key in keys)
    mixed = fill(picture.book, row.coating, passes, row.airbrush)
    for told in recipe_lines(mixed, stirred=bool(row.portions)):
        column.addWidget(look.label(told, PLAIN))
    if keys:
        column.addWidget(look.label(words.tr("For"), SMALL, colour="soft"))
        for key in keys[:SERVED_SHOWN]:
            column.addWidget(look.label(words.capital(reasons.short_name(key)), SMALL + 3))
        if len(keys) > SERVED_SHOWN:
            more = words.tr("and {n} more").format(n=len(keys) - SERVED_SHOWN)
            column.addWidget(look.label(more, SMALL + 3))
    first = one_first(picture.book, keys, now, cure=picture.cure)
    if first is not None:
        told = one_first_words(first, picture.zone, now)
        column.addWidget(_warned(told, look))


def _takers(picture: PlanSnapshot, job: Job, look: Look) -> QWidget | None:
    """Return what else takes the colour that is loaded; None where nothing is."""
    row = job.row
    if not isinstance(row, BenchRow) or not row.coating:
        return None
    keys = served(picture, row.airbrush, row.coating, row.start)
    found = others(picture, row.coating, keys)
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(look.pixels(8))
    column.addWidget(look.label(words.tr("What else takes this colour?"), PLAIN, bold=True))
    if not found:
        column.addWidget(look.label(words.tr("Nothing else in any project."), PLAIN))
    for colour_taker in found[:OTHERS_SHOWN]:
        parts = tuple(dict.fromkeys(place.partition("/")[0] for place in colour_taker.places))
        told = words.tr("{when}: {work} ({parts})").format(
            when=taker_when(colour_taker, picture.zone, picture.now),
            work=reasons.short_name(colour_taker.key),
            parts=words.listed(parts),
        )
        column.addWidget(look.label(told, SMALL + 3))
    if len(found) > OTHERS_SHOWN:
        rest = words.tr("and {n} more").format(n=len(found) - OTHERS_SHOWN)
        column.addWidget(look.label(rest, SMALL + 3))
    column.addStretch(1)
    return holder


def _places(job: Job, look: Look, page: int) -> QWidget:
    """Return one page of places as tiles, each with its key."""
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(look.pixels(4))
    count = len(job.places)
    form = words.tr("{done} of {count} places")
    if count == 1:
        form = words.tr("{done} of 1 place")
    told = form.format(done=len(job.ticked & set(job.places)), count=count)
    if count > KEYS_FOR_PLACES:
        told = words.tr("{told} · {more}").format(told=told, more=words.tr("0: the other places"))
    column.addWidget(look.label(told, SMALL, colour="soft"))
    shown = job.places[page * KEYS_FOR_PLACES : (page + 1) * KEYS_FOR_PLACES]
    following = next((place for place in job.places if place not in job.ticked), "")
    row = job.work
    assert row is not None
    swatches = {place: coat.swatch for coat in row.coats for place in coat.places}
    faces = []
    for number, place in enumerate(shown, start=1):
        part, _, spot = place.partition("/")
        faces.append(
            TileFace(
                key=str(number),
                name=spot or part,
                part=part if spot else "",
                on=place in job.ticked,
                following=place == following,
                swatch=swatches.get(place, ""),
                tool=row.tool,
                stage=row.stage,
            )
        )
    column.addWidget(tiles(look.colours, look.scale, faces))
    return holder


def _caution(caution: Caution, look: Look) -> QWidget:
    return _warned(translated(caution.text), look)


def _warned(told: str, look: Look) -> QWidget:
    holder = QWidget()
    line = QHBoxLayout(holder)
    line.setContentsMargins(0, 0, 0, 0)
    line.setSpacing(look.pixels(8))
    line.addWidget(Warn(look.colours, look.scale), 0, Qt.AlignmentFlag.AlignTop)
    line.addWidget(look.label(told, SMALL), 1)
    return holder
