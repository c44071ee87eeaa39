"""Hypothesis strategies for whole books, shared by the tests of every layer.

`books()` draws small sound books: a few models with parts on and off holders,
places on both sides, coats of several families, masks, turns, joins, decals
and washes with closing gates, and bench time in one of several time zones.
Their working orders keep the definitions (no coat on a covered place, turns
before the underside), so that a planner can be held to them.  Books with
every field in use are in ``rich_books``.  Everything is invented.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime, timedelta

from hypothesis import strategies as st

from planner.passes import expand
from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish, Mark, Window
from planner.values.gear import Airbrush, Gear
from planner.values.mix import Mix, Portion
from planner.values.model import Material, Model, Part, Place, Side
from planner.values.moment import minute_of
from planner.values.project import Logged, Pin, Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import (
    Application,
    Bound,
    Gate,
    Minutes,
    Role,
    Stage,
    Step,
    Tool,
    Trait,
)
from planner.values.wishes import USUAL_ORDER, Preferences

SINCE = date(2031, 2, 24)  # rules count from here
NOW = datetime(2031, 3, 3, 17, 0, tzinfo=UTC)  # a Monday
NOW_MINUTE = minute_of(NOW)
ZONES = ("UTC", "Europe/Warsaw", "America/New_York", "Australia/Lord_Howe")
DEMO_COATINGS = (
    Coating(name="grey primer", family=Family.SOLVENT_LACQUER, dry_film_um=15),
    Coating(name="sand", family=Family.WATERBORNE_ACRYLIC, swatch="#c8b482"),
    Coating(name="green", family=Family.WATERBORNE_ACRYLIC, swatch="#5a6b3c"),
    Coating(name="enamel brown", family=Family.ALKYD_ENAMEL, finish=Finish.SATIN),
    Coating(name="gloss clear", family=Family.WATERBORNE_ACRYLIC, finish=Finish.GLOSS),
    Coating(name="matte clear", family=Family.WATERBORNE_ACRYLIC),
    Coating(name="dark oil", family=Family.ARTISTS_OIL),
    Coating(name="decal sheet", family=Family.DECAL),
    Coating(name="plastic cement", family=Family.SOLVENT_CEMENT),
    Coating(name="water thinner", family=Family.WATER_THINNER),
)
BASES = ("grey primer", "sand", "green", "faded sand")
MIXES = (
    Mix(
        name="faded sand",
        portions=(Portion(coating="sand", parts=3), Portion(coating="water thinner", parts=2)),
        life_minutes=180,
    ),
)


@dataclass
class _Order:
    """A working order while it is drawn: which units are there, and which lie turned."""

    draw: st.DrawFn
    parts: tuple[Part, ...]
    steps: list[Step] = field(default_factory=list)
    units: list[list[Part]] = field(default_factory=list)
    turned: set[str] = field(default_factory=set)  # names of units' first parts
    glossed: list[str] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.units = [[part] for part in self.parts]

    def add(self, stage: Stage, minutes: Minutes, /, **rest: object) -> Step:
        step = Step(id=f"s{len(self.steps) + 1}", stage=stage, minutes=minutes, **rest)  # type: ignore[arg-type]
        self.steps.append(step)
        return step

    def minutes(self, least: int = 3, most: int = 25) -> Minutes:
        per_part = self.draw(st.integers(0, 4))
        return Minutes(fixed=self.draw(st.integers(least, most)), per_part=per_part)

    def free(self, unit: list[Part]) -> bool:
        return any(part.holder for part in unit)

    def reachable(self) -> list[str]:
        """Return places that one step may work on together as things lie now."""
        every = [
            (f"{part.name}/{place.name}", place.side, unit)
            for unit in self.units
            for part in unit
            for place in part.places
        ]
        down = [name for name, side, unit in every if self._lies(unit) and side is Side.UNDER]
        if down:
            return down
        return [name for name, side, unit in every if side is Side.TOP or self.free(unit)]

    def _lies(self, unit: list[Part]) -> bool:
        return unit[0].name in self.turned

    def some(self, names: list[str], most: int = 3) -> tuple[str, ...]:
        return tuple(
            self.draw(st.lists(st.sampled_from(names), min_size=1, max_size=most, unique=True))
        )

    def coat(self, places: tuple[str, ...]) -> Step:
        draw = self.draw
        stage, coatings = draw(
            st.sampled_from(
                [
                    (Stage.BASE, BASES),
                    (Stage.CAMO, BASES),
                    (Stage.DETAIL, ("sand", "green", "enamel brown")),
                    (Stage.VARNISH, ("gloss clear",)),
                ]
            )
        )
        tool = draw(st.sampled_from([Tool.AIRBRUSH, Tool.AIRBRUSH, Tool.BRUSH, Tool.CAN]))
        coats = draw(st.integers(1, 2))
        coating = draw(st.sampled_from(coatings))
        split = tool is Tool.BRUSH and draw(st.booleans())
        if stage is Stage.VARNISH:
            self.glossed.extend(name for name in places if name not in self.glossed)
        return self.add(
            stage,
            self.minutes(20, 40) if split else self.minutes(),
            applications=(Application(places=places, coating=coating, coats=coats),),
            tool=tool,
            split_least=10 if split else None,
            role=Role.SEAL if stage is Stage.VARNISH else None,
        )

    # -- blocks: each leaves the order sound ------------------------------------------------

    def block_coat(self) -> None:
        self.coat(self.some(self.reachable()))

    def block_mask(self) -> None:
        unit_of = {part.name: part for part in self.parts}
        reach = self.reachable()
        roomy = [
            name
            for name in reach
            if sum(other.partition("/")[0] == name.partition("/")[0] for other in reach) > 1
        ]
        if not roomy:
            return
        covered = self.draw(st.sampled_from(roomy))
        part = unit_of[covered.partition("/")[0]]
        beside = [name for name in reach if name.partition("/")[0] == part.name and name != covered]
        self.add(Stage.MASK, self.minutes(), touches=(covered,), tool=Tool.HAND)
        self.coat(self.some(beside))
        self.add(Stage.UNMASK, Minutes(fixed=3), touches=(covered,), tool=Tool.HAND)

    def block_wash(self) -> None:
        places = self.some(self.reachable(), most=2)
        wash = self.add(
            Stage.OIL_WASH,
            self.minutes(5, 15),
            applications=(Application(places=places, coating="dark oil"),),
        )
        mark = Mark(minutes=self.draw(st.integers(60, 120)))
        written = Gate(
            after=wash.id,
            windows=(Window(opens=Mark(minutes=10), closes=mark),),
            closing=Bound.END,
        )
        gates = self.draw(st.sampled_from([(), (written,)]))
        self.add(Stage.WIPE, Minutes(fixed=6), touches=places, tool=Tool.CLOTH, gates=gates)

    def block_decal(self) -> None:
        reach = [name for name in self.glossed if name in self.reachable()]
        if not reach:
            return
        places = self.some(reach, most=1)
        decal = self.add(
            Stage.DECAL,
            self.minutes(5, 20),
            applications=(Application(places=places, coating="decal sheet"),),
            tool=Tool.HAND,
        )
        gate = Gate(after=decal.id, windows=(Window(closes=Mark(minutes=75)),), closing=Bound.END)
        self.add(Stage.PRESS, Minutes(fixed=4), touches=places, tool=Tool.BRUSH, gates=(gate,))

    def block_turn(self) -> None:
        """Turn one unit that has an underside, paint there, turn it back."""
        units = [
            unit
            for unit in self.units
            if not self.free(unit)
            and any(place.side is Side.UNDER for part in unit for place in part.places)
        ]
        if not units:
            return
        unit = self.draw(st.sampled_from(units))
        self.add(Stage.TURN, Minutes(fixed=1), touches=(unit[0].name,), tool=Tool.HAND)
        self.turned.add(unit[0].name)
        self.coat(self.some(self.reachable()))
        self.add(Stage.TURN, Minutes(fixed=1), touches=(unit[0].name,), tool=Tool.HAND)
        self.turned.discard(unit[0].name)

    def block_join(self) -> None:
        if len(self.units) < 2:
            return
        first, second = self.draw(st.permutations(self.units))[:2]
        faces = (first[0], second[-1])
        glued = self.draw(st.booleans())
        self.add(
            Stage.JOIN,
            Minutes(fixed=self.draw(st.integers(3, 15))),
            applications=(
                Application(
                    places=tuple(f"{part.name}/{part.places[0].name}" for part in faces),
                    coating="plastic cement",
                ),
            )
            if glued
            else (),
            touches=() if glued else tuple(part.name for part in faces),
            tool=Tool.HAND,
            scraped=glued,
            helper=False,
        )
        self.units = [unit for unit in self.units if unit not in (first, second)]
        self.units.append(first + second)


BLOCKS = (
    _Order.block_coat,
    _Order.block_coat,
    _Order.block_mask,
    _Order.block_wash,
    _Order.block_decal,
    _Order.block_turn,
    _Order.block_join,
)


@st.composite
def parts(draw: st.DrawFn, name: str) -> Part:
    """Draw a part with one to three places, the last perhaps underneath."""
    count = draw(st.integers(1, 3))
    under = count > 1 and draw(st.booleans())
    return Part(
        name=name,
        places=tuple(
            Place(
                name=f"area {number}",
                side=Side.UNDER if under and number == count else Side.TOP,
                area_cm2=draw(st.sampled_from([0.0, 2.5, 40.0])),
            )
            for number in range(1, count + 1)
        ),
        holder=draw(st.sampled_from(["", "", "skewer"])),
        stands=draw(st.integers(1, 2)),
        material=draw(st.sampled_from(Material)),
    )


@st.composite
def models(draw: st.DrawFn, name: str = "cart", most_blocks: int = 4) -> Model:
    """Draw a model whose working order keeps the definitions."""
    names = ("hull", "panel", "wheels")[: draw(st.integers(1, 3))]
    drawn = tuple(draw(parts(part)) for part in names)
    order = _Order(draw, drawn)
    order.block_coat()
    for block in draw(st.lists(st.sampled_from(BLOCKS), max_size=most_blocks)):
        block(order)
    steps = list(order.steps)
    if len(steps) > 1 and draw(st.booleans()):
        at = draw(st.integers(1, len(steps) - 1))
        steps[at] = replace(steps[at], after=(steps[draw(st.integers(0, at - 1))].id,))
    return Model(name=name, parts=drawn, steps=tuple(steps))


@st.composite
def bench_times(draw: st.DrawFn) -> BenchTime:
    """Draw evenings of two to four hours on most days, quiet nights, perhaps a short slot."""
    start = draw(st.sampled_from(["18:00", "18:30", "19:15"]))
    end = draw(st.sampled_from(["20:30", "21:30", "22:30"]))
    rule = draw(
        st.sampled_from(["FREQ=DAILY", "FREQ=WEEKLY;BYDAY=MO,TU,TH,SA", "FREQ=DAILY;INTERVAL=2"])
    )
    stretches = [Recurring(rule=rule, since=SINCE, start=start, end=end)]
    if draw(st.booleans()):
        stretches.append(Recurring(rule="FREQ=DAILY", since=SINCE, start="07:00", end="07:20"))
    quiet = Recurring(
        rule="FREQ=DAILY",
        since=SINCE,
        start=draw(st.sampled_from(["21:00", "22:00"])),
        end="08:00",
    )
    return BenchTime(
        zone=draw(st.sampled_from(ZONES)),
        stretches=tuple(stretches),
        skipped=draw(st.sampled_from([(), (date(2031, 3, 4),)])),
        quiet=draw(st.sampled_from([(), (quiet,)])),
    )


@st.composite
def rooms(draw: st.DrawFn) -> Room:
    """Draw one location with constant air or a daily profile."""
    temperature = draw(st.integers(16, 27))
    humidity = draw(st.integers(30, 70))
    noon = AirPoint(at="12:00", temperature_c=temperature + 3, humidity_pct=humidity - 5)
    night = AirPoint(at="03:00", temperature_c=temperature, humidity_pct=humidity)
    profile = draw(st.sampled_from([(night,), (night, noon)]))
    places = draw(st.integers(6, 40))
    return Room(locations=(Location(name="bench", drying_places=places, workdays=profile),))


@st.composite
def logs(draw: st.DrawFn, project: Project) -> tuple[Logged, ...]:
    """Draw facts: the first passes of one model done one after another before `NOW`."""
    model = draw(st.sampled_from(project.models))
    passes = expand(project, model)
    done = draw(st.integers(0, min(3, len(passes))))
    entries = []
    for number, pass_ in enumerate(passes[:done]):
        start = NOW - timedelta(hours=30 * (done - number))
        end: datetime | None = start + timedelta(minutes=pass_.minutes)
        if number == done - 1 and draw(st.booleans()):
            start, end = NOW - timedelta(minutes=2), None
        key = pass_.key
        entries.append(Logged(model=key.model, step=key.step, coat=key.coat, start=start, end=end))
    return tuple(entries)


@st.composite
def books(
    draw: st.DrawFn,
    *,
    most_models: int = 3,
    most_blocks: int = 4,
    most_projects: int = 2,
    logged: bool = False,
    pinned: bool = False,
    wished: bool = False,
) -> Book:
    """Draw a small sound book.

    ``logged`` lets the first passes of a model be facts from before `NOW`;
    ``pinned`` lets one step be wished for a date (which may be impossible).
    ``wished`` adds other marks of steps, a pilot, wishes for "not before" and
    "beside", a day to begin, a warm box to choose and another order of cost.
    """
    projects = []
    for number in range(draw(st.integers(1, most_projects))):
        count = draw(st.integers(1, most_models))
        drawn = tuple(draw(models(f"cart {index + 1}", most_blocks)) for index in range(count))
        project = Project(
            name=f"batch {number + 1}",
            models=drawn,
            target=draw(st.sampled_from([None, date(2031, 3, 5), date(2031, 3, 20)])),
            weight=draw(st.integers(1, 3)),
        )
        if logged:
            project = replace(project, log=draw(logs(project)))
        if pinned:
            model = draw(st.sampled_from(drawn))
            step = draw(st.sampled_from(model.steps)).id
            day = date(2031, 3, 6) + timedelta(days=draw(st.integers(0, 6)))
            pin = Pin(model=model.name, step=step, on=day)
            project = replace(project, pins=draw(st.sampled_from([(), (pin,)])))
        project = draw(_marked(project))
        projects.append(draw(_wished(project)) if wished else project)
    room = draw(rooms())
    if wished:
        warm = AirPoint(at="00:00", temperature_c=38, humidity_pct=25)
        box = Location(name="warm box", drying_places=draw(st.integers(4, 20)), workdays=(warm,))
        room = replace(room, locations=(*room.locations, box))
    names = ("fine brush", "wide brush")[: draw(st.integers(1, 2))]
    return Book(
        coatings=DEMO_COATINGS,
        mixes=MIXES,
        room=room,
        bench_time=draw(bench_times()),
        gear=Gear(airbrushes=tuple(Airbrush(name=name) for name in names)),
        projects=tuple(projects),
        preferences=Preferences(order=tuple(draw(st.permutations(USUAL_ORDER))))
        if wished
        else Preferences(),
    )


@st.composite
def _marked(draw: st.DrawFn, project: Project) -> Project:
    """Draw steps that smell, or that go on alone once they are set going, for a project."""
    models = []
    for model in project.models:
        steps = list(model.steps)
        for at in draw(st.sets(st.integers(0, len(steps) - 1), max_size=3)):
            traits = draw(st.sets(st.sampled_from([Trait.SMELLS, Trait.HANDS_FREE]), min_size=1))
            steps[at] = replace(steps[at], traits=tuple(sorted(traits)))
        models.append(replace(model, steps=tuple(steps)))
    return replace(project, models=tuple(models))


@st.composite
def _wished(draw: st.DrawFn, project: Project) -> Project:
    """Draw marks of steps and wishes for a project; they may be impossible together."""
    marked = []
    for model in project.models:
        steps = list(model.steps)
        at = draw(st.integers(0, len(steps) - 1))
        traits = draw(st.lists(st.sampled_from(Trait), unique=True, max_size=2))
        or_in = ("warm box",) if steps[at].applications and draw(st.booleans()) else ()
        steps[at] = replace(steps[at], traits=tuple(traits), or_in=or_in)
        marked.append(replace(model, steps=tuple(steps)))
    pins = []
    first, last = marked[0], marked[-1]
    if draw(st.booleans()):
        later = NOW + timedelta(days=draw(st.integers(0, 5)))
        pins.append(Pin(model=first.name, step=first.steps[0].id, not_before=later))
    target = f"{first.name}/{first.steps[0].id}"
    mine = f"{last.name}/{last.steps[-1].id}"
    if draw(st.booleans()) and mine != target:
        pins.append(Pin(model=last.name, step=last.steps[-1].id, beside=target))
    return replace(
        project,
        models=tuple(marked),
        pins=(*project.pins, *pins),
        pilot=draw(st.sampled_from(["", first.name])),
        begins=draw(st.sampled_from([None, date(2031, 3, 5)])),
    )
