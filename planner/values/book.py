"""The whole of what is planned, with every reference checked on construction."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property, lru_cache
from typing import Annotated

from planner.values.bench_time import BenchTime
from planner.values.coating import THINNERS, Coating, State
from planner.values.drying_card import MOST_CARDS, DryingCard
from planner.values.field import Field, Value
from planner.values.gear import Cleaned, Gear
from planner.values.message import message
from planner.values.mix import Mix, film_of_mix
from planner.values.model import Model
from planner.values.project import Logged, Observed, Pin, Project
from planner.values.refusal import Refused, demand, demand_known, unknown
from planner.values.room import Room
from planner.values.sequence import Sequence
from planner.values.step import Stage, Step, Tool
from planner.values.supplies import Supplies
from planner.values.wishes import Pace, Preferences


@dataclass(frozen=True, kw_only=True)
class Book(Value):
    """Contents of a bench book, or of an exchange file.

    Raises
    ------
    Refused
        If two things share a name, or something names a coating, place,
        step or location that is not there; the place is the full path.

    ``cleaned`` are facts beside the projects' logs: airbrushes belong to none.
    """

    coatings: Annotated[tuple[Coating, ...], Field(unique="name")] = ()
    mixes: Annotated[tuple[Mix, ...], Field(unique="name")] = ()
    room: Room
    bench_time: BenchTime
    gear: Gear = field(default_factory=Gear)
    projects: Annotated[tuple[Project, ...], Field(unique="name")] = ()
    sequences: Annotated[tuple[Sequence, ...], Field(unique="name")] = ()
    supplies: Supplies = field(default_factory=Supplies)
    preferences: Preferences = field(default_factory=Preferences)
    pace: Pace = field(default_factory=Pace)
    cleaned: tuple[Cleaned, ...] = ()
    drying_cards: tuple[DryingCard, ...] = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        self._check_mixes()
        for index, reading in enumerate(self.room.readings):
            self._check_location(reading.location, f"room.readings[{index}].location")
        self._check_cards()
        for at, project in enumerate(self.projects):
            _check_facts(project, f"projects[{at}]")
            for position, model in enumerate(project.models):
                refused = _refusal(_Asked(self, model))
                if refused is not None:
                    raise refused.under(f"projects[{at}].models[{position}]")

    def coating(self, name: str) -> Coating:
        """Return the coating, or the film-forming one of the mix, called ``name``."""
        for coating in self.coatings:
            if coating.name == name:
                return coating
        mix = self.mix(name)
        if mix is None:
            raise KeyError(name)
        return film_of_mix(mix, {coating.name: coating for coating in self.coatings})

    def mix(self, name: str) -> Mix | None:
        """Return the mix called ``name``, or None."""
        return next((mix for mix in self.mixes if mix.name == name), None)

    def life_of(self, name: str) -> int | None:
        """Return how long a coating or mix can be used once mixed [min]; None is for ever."""
        mix = self.mix(name)
        names = [portion.coating for portion in mix.portions] if mix else [name]
        lives = [self.coating(name).pot_life_minutes for name in names]
        if mix:
            lives.append(mix.life_minutes)
        return min((life for life in lives if life is not None), default=None)

    def project(self, name: str) -> Project:
        """Return the project called ``name``; `KeyError` if there is none."""
        for project in self.projects:
            if project.name == name:
                return project
        raise KeyError(name)

    def _check_mixes(self) -> None:
        bottled = {coating.name: coating for coating in self.coatings}
        for index, mix in enumerate(self.mixes):
            place = f"mixes[{index}]"
            if mix.name in bottled:
                raise Refused(
                    f"{place}.name", message('"{mix}" is a coating; rename one', mix=mix.name)
                )
            for at, portion in enumerate(mix.portions):
                here = f"{place}.portions[{at}].coating"
                demand_known(portion.coating, bottled, "coating", here)
            demand(
                bottled[mix.portions[0].coating].family not in THINNERS,
                f"{place}.portions[0].coating",
                "is a thinner; put the coating that forms the film first",
            )

    def _check_cards(self) -> None:
        demand(
            len(self.drying_cards) <= MOST_CARDS,
            "drying_cards",
            message("has more than {most} cards; throw old ones away", most=MOST_CARDS),
        )
        known = [*(coating.name for coating in self.coatings), *(mix.name for mix in self.mixes)]
        for index, card in enumerate(self.drying_cards):
            here = f"drying_cards[{index}]"
            demand_known(card.coating, known, "coating", f"{here}.coating")
            demand(
                self.coating(card.coating).family not in THINNERS,
                f"{here}.coating",
                "is a thinner and forms no film; name a coating or a mix",
            )
            self._check_location(card.location, f"{here}.location")

    def _check_location(self, name: str, place: str) -> None:
        known = [location.name for location in self.room.locations]
        if name:
            demand_known(name, known, "location", place)

    def check_model(self, model: Model) -> None:
        """Raise `Refused`, its place seen from the model, if a name in it is not there."""
        for index, step in enumerate(model.steps):
            here = f"steps[{index}]"
            self._check_location(step.dries_in, f"{here}.dries_in")
            for at, name in enumerate(step.or_in):
                self._check_location(name, f"{here}.or_in[{at}]")
            self._check_applications(model, step, here)
            for at, reference in enumerate(step.touches):
                _check_reference(model, reference, f"{here}.touches[{at}]")
            _check_order(model, step, here)
            demand(
                step.tool is not Tool.AIRBRUSH or bool(self.gear.airbrushes),
                f"{here}.tool",
                "is an airbrush, but gear.airbrushes is empty; add one or use a brush",
            )

    def _check_applications(self, model: Model, step: Step, here: str) -> None:
        known = [*(c.name for c in self.coatings), *(m.name for m in self.mixes)]
        covered: dict[str, int] = {}
        for at, application in enumerate(step.applications):
            spot = f"{here}.applications[{at}]"
            demand_known(application.coating, known, "coating", f"{spot}.coating")
            demand(
                self.coating(application.coating).family not in THINNERS,
                f"{spot}.coating",
                "is a thinner and forms no film; name a coating or a mix",
            )
            self._check_life(model, step, application.coating, here)
            for number, reference in enumerate(application.places):
                _check_reference(model, reference, f"{spot}.places[{number}]")
                for name in model.places(reference):
                    if name in covered:
                        raise Refused(
                            f"{spot}.places[{number}]",
                            message(
                                '"{name}" gets a coat from applications[{get}] as well; '
                                "make a step of each",
                                name=name,
                                get=covered.get(name),
                            ),
                        )
                    covered[name] = at

    def _check_life(self, model: Model, step: Step, coating: str, here: str) -> None:
        life = self.life_of(coating)
        parts = {ref.partition("/")[0] for ref in step.references()}
        colours = {application.coating for application in step.applications}
        takes = step.least_piece or step.attended(step.minutes.of(len(parts), len(colours)))
        if not (life is None or takes <= life):
            raise Refused(
                f"{here}.minutes",
                message(
                    'takes {takes} min, but "{coating}" can be used for {life} min; make '
                    "two steps of it, or mix less at a time",
                    takes=takes,
                    coating=coating,
                    life=life,
                ),
            )


@dataclass(frozen=True, eq=False)
class _Asked:
    """A model of a book; equal to the same model beside the same things to name.

    It keeps both alive, so that an identity is never given out twice.
    """

    book: Book
    model: Model

    @cached_property
    def _key(self) -> tuple[object, ...]:
        book = self.book
        kept = (self.model, book.coatings, book.mixes, book.gear)
        return (*map(id, kept), *(location.name for location in book.room.locations))

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Asked) and self._key == other._key

    def __hash__(self) -> int:
        return hash(self._key)


@lru_cache(maxsize=512)
def _refusal(asked: _Asked) -> Refused | None:
    """Return why a model is refused, or None; an edit elsewhere asks no model again."""
    try:
        asked.book.check_model(asked.model)
    except Refused as refused:
        return refused
    return None


def _check_reference(model: Model, reference: str, place: str) -> None:
    try:
        model.places(reference)
    except KeyError:
        known = [part.name for part in model.parts]
        known += [f"{part.name}/{spot.name}" for part in model.parts for spot in part.places]
        raise Refused(place, unknown("place", reference, known)) from None


def _check_order(model: Model, step: Step, here: str) -> None:
    by_id = {other.id: other for other in model.steps}
    for at, name in enumerate(step.after):
        demand_known(name, by_id, "step", f"{here}.after[{at}]")
    for at, gate in enumerate(step.gates):
        spot = f"{here}.gates[{at}]"
        demand_known(gate.after, by_id, "step", f"{spot}.after")
        earlier = by_id[gate.after]
        for number, window in enumerate(gate.windows):
            for end in ("opens", "closes"):
                mark = getattr(window, end)
                asks_film = mark is not None and isinstance(mark.state, State)
                if asks_film and not earlier.applications:
                    raise Refused(
                        f"{spot}.windows[{number}].{end}.state",
                        message(
                            'step "{after}" lays no film that could be {mark}; give minutes',
                            after=gate.after,
                            mark=mark and mark.state,
                        ),
                    )
    if step.stage is Stage.JOIN:
        parts = {name.partition("/")[0] for name in step.references()}
        demand(len(parts) >= 2, f"{here}.touches", "a join needs at least two parts")


def _check_facts(project: Project, place: str) -> None:
    coats = {(model.name, step.id): step.coats for model in project.models for step in model.steps}
    models = [model.name for model in project.models]
    facts: list[tuple[str, Pin | Logged | Observed]] = [
        *((f"{place}.pins[{index}]", pin) for index, pin in enumerate(project.pins)),
        *((f"{place}.log[{index}]", entry) for index, entry in enumerate(project.log)),
        *((f"{place}.observed[{index}]", seen) for index, seen in enumerate(project.observed)),
    ]
    for here, fact in facts:
        demand_known(fact.model, models, "model", f"{here}.model")
        known = [step for model, step in coats if model == fact.model]
        demand_known(fact.step, known, "step", f"{here}.step")
        most = coats[fact.model, fact.step]
        if not (fact.coat is None or fact.coat <= most):
            raise Refused(
                f"{here}.coat",
                message(
                    'is {coat}, but "{step}" has {most}', coat=fact.coat, step=fact.step, most=most
                ),
            )
        if isinstance(fact, Pin) and fact.beside is not None:
            names = ["/".join(known) for known in coats]
            demand_known(fact.beside, names, "step", f"{here}.beside")
