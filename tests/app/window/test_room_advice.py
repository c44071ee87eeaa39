"""The Room view says of a coating what plan and run sheet hold against it: one voice."""

from __future__ import annotations

from dataclasses import replace

from small_book import NOW, ZONE, small_book

from app.window.room.drying_times import coating_times
from planner.air import Fitness, fitness
from planner.cure import Cure
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.room import AirPoint
from planner.values.step import Tool


def damp(tool: Tool) -> Book:
    """Return the small book with a lacquer primer laid by a tool, in 82 % RH."""
    book = small_book()
    coatings = tuple(
        replace(coating, family=Family.SOLVENT_LACQUER)
        if coating.name == "grey primer"
        else coating
        for coating in book.coatings
    )
    (project,) = book.projects
    (model,) = project.models
    steps = tuple(replace(step, tool=tool) if step.id == "prime" else step for step in model.steps)
    point = AirPoint(at="00:00", temperature_c=21, humidity_pct=82)
    bench = replace(book.room.locations[0], workdays=(point,), weekends=())
    return replace(
        book,
        coatings=coatings,
        room=replace(book.room, locations=(bench,)),
        projects=(replace(project, models=(replace(model, steps=steps),)),),
    )


def told(book: Book) -> Fitness:
    """Return the Room's word on the primer."""
    times = coating_times(book, Cure(book.room, ZONE), book.room.locations[0].name, NOW)
    return next(fitness(time.advice) for time in times if time.coating.name == "grey primer")


def test_sprayed_lacquer_is_not_now_and_brushed_it_may_be_laid() -> None:
    """82 % RH is too damp to spray lacquer: common practice, no source."""
    assert told(damp(Tool.AIRBRUSH)) is Fitness.NO_GO
    assert told(damp(Tool.BRUSH)) is Fitness.GO
