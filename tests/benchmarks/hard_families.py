"""A harder family of invented batches, beside the one of `families`: about 20 steps a vehicle.

Its branches join, its drying places bind, a change between kinds of paint is
dear, windows close in mid-evening, and every vehicle has a date.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from random import Random

from families import COLOURS, HANDLED, SINCE, SLOW, batch

from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish, Mark, State, StateTime, Window
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model, Part, Place
from planner.values.project import Project
from planner.values.room import Room
from planner.values.step import Application, Bound, Gate, Minutes, Role, Stage, Step, Tool

ROOMS = (4, 5, 6, 8)  # drying places
HELD_AFTER = 300  # minutes until a film of the harder family may be held
SOON_SHUT = (45, 60, 90)  # minutes after which a coat must have come, or wait for the next day
DUE_DAYS = (21, 28, 35, 49)


def hard_batch(vehicles: int, seed: int) -> Book:
    """Return a batch in which more binds at once; all of it invented.

    Body, running gear and side panels are painted apart and joined late; a film
    may be held after five hours only and keeps one of 4 to 8 drying places
    until then; lacquers and acrylics are sprayed in turns, and a change
    between them costs more than one within them, though less than cleaning
    and loading; windows close in mid-evening; each vehicle has a date and a
    weight; every third seed has a second airbrush.
    """
    random = Random(7000 * vehicles + seed)
    models = tuple(_assembly(number + 1, random) for number in range(vehicles))
    names = ("airbrush", "second airbrush") if seed % 3 == 2 else ("airbrush",)
    plain = batch(1, 0)
    bench = replace(plain.room.locations[0], drying_places=random.choice(ROOMS))
    airbrushes = tuple(
        Airbrush(
            name=name,
            load_minutes=5,
            change_same_family=4,
            change_other_family=11,
            clean_minutes=8,
            idle_limit_minutes=30,
        )
        for name in names
    )
    return replace(
        plain,
        coatings=_hard_coatings(),
        room=Room(locations=(bench,)),
        gear=Gear(airbrushes=airbrushes),
        projects=(Project(name="batch", models=models),),
    )


def _hard_coatings() -> tuple[Coating, ...]:
    def made(name: str, family: Family, finish: Finish = Finish.MATTE) -> Coating:
        times = tuple(StateTime(state=state, minutes=HANDLED) for state in State)
        held = {State.DRY_TO_HANDLE, State.PRINT_FREE, State.SOLVENT_SAFE, State.DRY_THROUGH}
        times = tuple(
            replace(time, minutes=HELD_AFTER) if time.state in held else time for time in times
        )
        return Coating(name=name, family=family, finish=finish, times=times)

    lacquer, acrylic = Family.SOLVENT_LACQUER, Family.WATERBORNE_ACRYLIC
    return (
        made("primer", lacquer),
        made("lacquer clear", lacquer, Finish.GLOSS),
        *(made(colour, acrylic) for colour in COLOURS),
        made("tyre black", acrylic),
        made("matte clear", acrylic),
        made("dark oil", Family.ARTISTS_OIL),
        made("decal sheet", Family.DECAL),
        made("glue", Family.WHITE_GLUE),
    )


def _assembly(number: int, random: Random) -> Model:
    base, second, inside = random.sample(COLOURS, 3)
    body, gear, panels = _Branch("body", random), _Branch("gear", random), _Branch("panels", random)
    body.spray("prime", Stage.PRIME, "primer", wait=0)
    body.spray("base", Stage.BASE, base)
    body.spray("camo", Stage.CAMO, second, shut=random.choice(SOON_SHUT))
    body.spray("clear", Stage.VARNISH, "lacquer clear")
    body.hand("decals", Stage.DECAL, "decal sheet", random.randint(25, 50))
    gear.spray("prime", Stage.PRIME, "primer", wait=0)
    gear.spray("tyres", Stage.BASE, "tyre black")
    gear.hand("hubs", Stage.DETAIL, base, random.randint(15, 40))
    panels.spray("prime", Stage.PRIME, "primer", wait=0)
    panels.spray("inside", Stage.BASE, inside)
    panels.spray("outside", Stage.BASE, base)
    body.join("panels", (*panels.last, *body.last), "glue")
    body.join("gear", (*gear.last, *body.last), "glue")
    body.hand("wash", Stage.OIL_WASH, "dark oil", random.randint(10, 20))
    body.wipe(random.randint(8, 15))
    body.spray("matte", Stage.MATTE, "matte clear", wait=720)
    body.hand("last", Stage.DETAIL, second, random.randint(15, 40))
    parts = tuple(
        Part(
            name=name,
            places=(Place(name="all over", area_cm2=60), Place(name="seam", area_cm2=1)),
            holder="skewer",
        )
        for name in ("body", "gear", "panels")
    )
    due = SINCE + timedelta(days=random.choice(DUE_DAYS))
    steps = (*gear.steps, *panels.steps, *body.steps)
    weight = random.choice((1, 1, 3))
    return Model(name=f"vehicle {number:02d}", parts=parts, steps=steps, target=due, weight=weight)


class _Branch:
    """Steps on one part, each waiting for the one before."""

    def __init__(self, part: str, random: Random) -> None:
        self.part, self.random = part, random
        self.steps: list[Step] = []

    @property
    def last(self) -> tuple[str, ...]:
        """The id of the last step, if any."""
        return tuple(step.id for step in self.steps[-1:])

    def spray(
        self, name: str, stage: Stage, coating: str, *, wait: int | None = None, shut: int = 0
    ) -> None:
        """Spray a coat; with ``shut`` within so many minutes of the last, or after a day."""
        minutes = self.random.randint(8, 30)
        self._coat(name, stage, coating, minutes, Tool.AIRBRUSH, self._gates(wait, shut))

    def hand(self, name: str, stage: Stage, coating: str, minutes: int) -> None:
        """Work by brush."""
        self._coat(name, stage, coating, minutes, Tool.BRUSH, self._gates(None, 0))

    def wipe(self, minutes: int) -> None:
        """Wipe back what was just laid, done within the hour."""
        window = Window(opens=Mark(minutes=10), closes=Mark(minutes=60))
        gate = Gate(after=self.last[0], windows=(window,), closing=Bound.END)
        self.steps.append(
            Step(
                id=f"{self.part}-wipe",
                stage=Stage.WIPE,
                touches=(f"{self.part}/all over",),
                tool=Tool.CLOTH,
                minutes=Minutes(fixed=round(SLOW * minutes)),
                gates=(gate,),
            )
        )

    def join(self, other: str, after: tuple[str, ...], glue: str) -> None:
        """Glue another part on, whose last step and whose own are done."""
        self.steps.append(
            Step(
                id=f"join-{other}",
                stage=Stage.JOIN,
                applications=(Application(places=(f"{other}/seam",), coating=glue),),
                touches=(f"{self.part}/seam",),
                minutes=Minutes(fixed=10),
                after=after,
            )
        )

    def _gates(self, wait: int | None, shut: int) -> tuple[Gate, ...]:
        if not self.last or self.steps[-1].stage is Stage.JOIN:
            return ()
        opens = self.random.choice((20, 60, 120, 240, 720)) if wait is None else wait
        windows: tuple[Window, ...] = (Window(opens=Mark(minutes=opens)),)
        if shut:
            windows = (
                Window(opens=Mark(minutes=20), closes=Mark(minutes=shut)),
                Window(opens=Mark(minutes=1440)),
            )
        return (Gate(after=self.last[0], windows=windows),)

    def _coat(
        self,
        name: str,
        stage: Stage,
        coating: str,
        minutes: int,
        tool: Tool,
        gates: tuple[Gate, ...],
    ) -> None:
        varnish = stage in (Stage.VARNISH, Stage.MATTE)
        places = (f"{self.part}/all over",)
        self.steps.append(
            Step(
                id=f"{self.part}-{name}",
                stage=stage,
                applications=(Application(places=places, coating=coating),),
                tool=tool,
                minutes=Minutes(fixed=round(SLOW * minutes)),
                gates=gates,
                role=Role.SEAL if varnish else None,
            )
        )
