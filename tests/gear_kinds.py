"""Books of people who own little or much: one for each kind of gear, all invented."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from small_book import NOW, small_book

from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.step import Step, Tool

__all__ = ["BRUSHES", "KINDS", "NOW", "Kind"]

BRUSHES = ("old brush", "fine brush", "wide brush")
TOOLS: dict[str, Callable[[Step], Step | None]] = {
    "both": lambda step: step,
    "no brush": lambda step: step if step.tool is Tool.AIRBRUSH else None,
    "by brush": lambda step: _instead(step, Tool.BRUSH),
    "spray can": lambda step: _instead(step, Tool.CAN),
}


@dataclass(frozen=True)
class Kind:
    """What somebody owns, and how far they have come.

    ``content`` is "steps", or what is missing of it: "no steps", "no project",
    or "aside" where the project is not active.  ``stands`` are
    the drying places that the one part takes, of the four there are.
    """

    airbrushes: int = 1
    tools: str = "both"
    content: str = "steps"
    bench_time: bool = True
    stands: int = 1
    in_stock_ml: float = 0.0
    coatings: bool = True
    dated: bool = True

    @property
    def book(self) -> Book:
        """The book."""
        of = small_book()
        project = of.projects[0]
        model = project.models[0]
        steps = tuple(one for step in model.steps if (one := TOOLS[self.tools](step)))
        parts = tuple(replace(part, stands=self.stands) for part in model.parts)
        model = replace(model, parts=parts, steps=steps if self.content != "no steps" else ())
        project = replace(
            project,
            models=(model,),
            active=self.content != "aside",
            target=project.target if self.dated else None,
        )
        owned = tuple(replace(coating, in_stock_ml=self.in_stock_ml) for coating in of.coatings)
        hours = of.bench_time
        return replace(
            of,
            coatings=owned if self.coatings else (),
            mixes=of.mixes if self.coatings else (),
            gear=Gear(airbrushes=tuple(Airbrush(name=n) for n in BRUSHES[: self.airbrushes])),
            bench_time=hours if self.bench_time else replace(hours, stretches=()),
            projects=() if self.content == "no project" else (project,),
        )


def _instead(step: Step, tool: Tool) -> Step:
    return replace(step, tool=tool) if step.tool is Tool.AIRBRUSH else step


BY_HAND = Kind(airbrushes=0, tools="by brush")
NOTHING_DONE = ("no steps", "no project", "aside")
KINDS = {
    "one airbrush": Kind(),
    "no airbrush": BY_HAND,
    "no airbrush, a spray can": Kind(airbrushes=0, tools="spray can"),
    "three airbrushes": Kind(airbrushes=3),
    "an airbrush that nobody uses": Kind(tools="by brush"),
    "no brush": Kind(tools="no brush"),
    "three airbrushes, no brush": Kind(airbrushes=3, tools="no brush"),
    "stock": Kind(in_stock_ml=50),
    "no airbrush, stock": replace(BY_HAND, in_stock_ml=50),
    "too few drying places": Kind(stands=5),
    "no airbrush, too few drying places": replace(BY_HAND, stands=5),
    "no bench time": Kind(bench_time=False),
    "no airbrush, no bench time": replace(BY_HAND, bench_time=False),
    "no date": Kind(dated=False),
    "no airbrush, no date": replace(BY_HAND, dated=False),
    **{one: Kind(content=one) for one in NOTHING_DONE},
    **{f"no airbrush, {one}": replace(BY_HAND, content=one) for one in NOTHING_DONE},
    "no airbrush, no coatings, no steps": replace(BY_HAND, coatings=False, content="no steps"),
    "nothing at all": Kind(
        airbrushes=0, content="no project", bench_time=False, coatings=False, dated=False
    ),
}
