"""The warm box of a first plan: which coats may dry in it.

Alkyd enamel, oil and two-pack films take days, and a clear coat keeps tape,
decals and washes waiting; these may go into the box, each only where the plan
gains by it.  What dries within minutes stays on the bench.
"""

from __future__ import annotations

from dataclasses import replace

from app.service.edits import Edit
from planner.values.book import Book
from planner.values.book_changes import with_models, with_projects, with_steps
from planner.values.coating import Family
from planner.values.message import called, message
from planner.values.model import Material, Model
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location, Movement
from planner.values.step import Stage, Step

WARM_BOX = Location(  # a warm box of the trade: common practice, no source
    name="warm box",
    drying_places=2,
    workdays=(AirPoint(at="00:00", temperature_c=35, humidity_pct=30),),
    movement=Movement.BOX,
)
HOTTEST_C = 40.0  # hard styrene keeps its shape; common practice, no source
GAIN_C = 3.0  # a box that is hardly warmer than the room is of no use; assumed
SLOW = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL, Family.TWO_PACK})


def sane(book: Book, box: Location) -> bool:
    """Tell whether a box is warmer than the bench, and never so warm that styrene may bend."""
    most = max(point.temperature_c for point in _points(box))
    bench = max(point.temperature_c for point in _points(book.room.locations[0]))
    return bench + GAIN_C <= most <= HOTTEST_C


def offered(book: Book, project: str, name: str = WARM_BOX.name) -> Book:
    """Return the book with the box as another place for the slow coats of a project.

    ``name`` is what the book calls it.

    Without a box, or with one that is not `sane`, it is the same book.
    """
    box = next((location for location in book.room.locations if location.name == name), None)
    if box is None or not sane(book, box):
        return book
    return _with_box(book, box.name, {project})


def offer(book: Book, location: str) -> Edit:
    """Let the slow coats of every active project dry in a location, too.

    Raises
    ------
    Refused
        If it is no warmer than the usual place, or so warm that styrene may
        bend; or if no step would dry there that does not already.
    """
    box = next(other for other in book.room.locations if other.name == location)
    if not sane(book, box):
        raise Refused(
            "location",
            message(
                '"{place}" must be {gain:g} °C warmer than the usual place, {most:g} °C at most',
                place=location,
                gain=GAIN_C,
                most=HOTTEST_C,
            ),
        )
    changed = _with_box(
        book, location, {project.name for project in book.projects if project.active}
    )
    if changed == book:
        raise Refused("location", message("no slow coat is left that could dry there as well"))
    return Edit(called("slow coats may dry in {place}", place=location), changed)


def _with_box(book: Book, box: str, projects: set[str]) -> Book:
    families = _families(book)

    def changed(home: Project) -> Project:
        if home.name not in projects:
            return home
        return with_models(home, lambda model: _model(model, box, families))

    return with_projects(book, changed)


def _model(model: Model, box: str, families: dict[str, Family]) -> Model:
    if any(part.material is not Material.STYRENE for part in model.parts):
        return model  # others soften earlier, and nobody was asked
    return with_steps(model, lambda step: _step(step, box, families))


def _step(step: Step, box: str, families: dict[str, Family]) -> Step:
    slow = any(families.get(application.coating) in SLOW for application in step.applications)
    clear = step.stage is Stage.VARNISH and bool(step.applications)
    if not (slow or clear) or box in (step.dries_in, *step.or_in):
        return step
    return replace(step, or_in=(*step.or_in, box))


def _families(book: Book) -> dict[str, Family]:
    """Return the family of every coating, and of every mix by its first portion."""
    found = {coating.name: coating.family for coating in book.coatings}
    for mix in book.mixes:
        found[mix.name] = found[mix.portions[0].coating]
    return found


def _points(location: Location) -> tuple[AirPoint, ...]:
    return (*location.workdays, *location.weekends)
