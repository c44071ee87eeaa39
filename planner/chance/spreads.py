"""How far minutes, drying, sessions and mishaps go astray: learned, else assumed."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

import numpy as np

from planner.chance.assumptions import REDONE, assumed
from planner.chance.draws import Draws, Floats
from planner.chance.session_record import held_and_lost
from planner.pace.minutes import PASS_SD, PERSON_SD, STAGE_SD, Estimate, Work, pace_levels
from planner.values.book import Book
from planner.values.plan import PassKey
from planner.values.project import Event
from planner.values.step import Stage

USUAL_PERSON = Estimate(0.0, PERSON_SD**2)


class Rate(NamedTuple):
    """A share as a Beta distribution: how often it was so, and how often not."""

    yes: float
    no: float

    @property
    def mean(self) -> float:
        """The share to be expected."""
        return self.yes / (self.yes + self.no)


def _usual(share: float, worth: str) -> Rate:
    weight = assumed(worth)
    return Rate(share * weight, (1 - share) * weight)


@dataclass(frozen=True)
class Spreads:
    """The law that a simulation draws from.

    Attributes
    ----------
    person
        This person against the planned minutes [ln].
    stages
        A stage and tool against the planned minutes, drawn towards the person [ln].
    lost
        Share of sessions that do not take place.
    redone
        Share of passes done over again, by stage.
    scale
        Factor on the spread of minutes and drying that kept and missed
        forecasts have taught; 1 is as learned and assumed.
    """

    person: Estimate = USUAL_PERSON
    stages: Mapping[Work, Estimate] = field(default_factory=dict)
    lost: Rate = field(default_factory=lambda: _usual(assumed("session lost"), "sessions' worth"))
    redone: Mapping[Stage, Rate] = field(default_factory=dict)
    scale: float = 1.0

    def minutes_factor(self, draws: Draws, work: Work, key: PassKey) -> Floats:
        """Return factors on the planned minutes of a pass, one a run.

        Person, stage and pass are drawn one below the other, so that whoever
        is slow is slow at everything.
        """
        own = self.stages.get(work, Estimate(self.person.mean, STAGE_SD**2))
        pull = min(1.0, own.variance / STAGE_SD**2)
        person = draws.normal("person") * math.sqrt(self.person.variance)
        stage = draws.normal("stage", *work) * math.sqrt(own.variance)
        one = draws.normal("pass", *key) * PASS_SD
        return _factors(own.mean + self.scale * (pull * person + stage + one))

    def setup_factor(self, draws: Draws, *name: object) -> Floats:
        """Return factors on the minutes of a load, cleaning or preparation."""
        person = draws.normal("person") * math.sqrt(self.person.variance)
        one = draws.normal("set-up", *name) * assumed("set-up")
        return _factors(self.person.mean + self.scale * (person + one))

    def drying(self, draws: Draws, coating: str, key: PassKey) -> Floats:
        """Return how far each film lies from likely [s.d.]; above 0 is slower."""
        room, bottle = assumed("room share"), assumed("bottle share")
        drawn = math.sqrt(room) * draws.normal("room")
        drawn = drawn + math.sqrt(bottle) * draws.normal("bottle", coating)
        own = math.sqrt(1 - room - bottle) * draws.normal("film", coating, *key)
        return self.scale * (drawn + own)

    def lost_share(self, draws: Draws) -> Floats:
        """Return the share of sessions that is lost in each run."""
        return draws.stream("lost share").beta(self.lost.yes, self.lost.no, draws.runs)

    def redone_share(self, stage: Stage) -> float:
        """Return the share of passes of a stage that are done over again."""
        rate = self.redone.get(stage)
        return REDONE.get(stage, assumed("redone")) if rate is None else rate.mean


def _factors(values: Floats) -> Floats:
    """Return e to the power of each, kept within a tenth and ten times."""
    return np.exp(np.minimum(np.maximum(values, -math.log(10)), math.log(10)))


def spreads_of(book: Book, now: int, scale: float = 1.0) -> Spreads:
    """Return what a book's logbook and diary say, upon what is assumed."""
    person, stages = pace_levels(book)
    return Spreads(person, stages, _lost(book, now), _redone(book), scale)


def _lost(book: Book, now: int) -> Rate:
    """Return the share of sessions that do not take place, as the logbook has it."""
    usual = _usual(assumed("session lost"), "sessions' worth")
    held, lost = held_and_lost(book, now)
    return Rate(usual.yes + lost, usual.no + held)


def _redone(book: Book) -> dict[Stage, Rate]:
    """Return how often passes of each stage came out wrong, as the diary has it."""
    done: Counter[Stage] = Counter()
    wrong: Counter[Stage] = Counter()
    for project in book.projects:
        stages = {
            (model.name, step.id): step.stage for model in project.models for step in model.steps
        }
        done.update(stages[entry.model, entry.step] for entry in project.log if entry.end)
        wrong.update(
            stages[one.model, one.step]
            for one in project.diary
            if one.event in (Event.DISLIKED, Event.DROPPED) and (one.model, one.step) in stages
        )
    found = {}
    for stage in done | wrong:
        usual = _usual(max(1e-6, REDONE.get(stage, assumed("redone"))), "passes' worth")
        found[stage] = Rate(usual.yes + wrong[stage], usual.no + max(0, done[stage] - wrong[stage]))
    return found
