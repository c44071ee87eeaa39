"""Books of one model for tests of what may lie on what; everything is invented."""

from __future__ import annotations

from datetime import date

from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.gear import Airbrush, Gear
from planner.values.mix import Mix
from planner.values.model import Material, Model, Part, Place, Side
from planner.values.project import Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Gate, Minutes, Role, Stage, Step, Tool

F, M, G = Family, Finish.MATTE, Finish.GLOSS
COATINGS = (
    Coating(name="grey primer", family=F.WATERBORNE_ACRYLIC, swatch="#8c8c8a"),
    Coating(name="black primer", family=F.WATERBORNE_ACRYLIC, swatch="#141414"),
    Coating(name="white primer", family=F.WATERBORNE_ACRYLIC, swatch="#f4f4f4"),
    Coating(name="acrylic", family=F.WATERBORNE_ACRYLIC, swatch="#6b7a4a"),
    Coating(name="pale yellow", family=F.WATERBORNE_ACRYLIC, swatch="#f2e08a"),
    Coating(name="gloss wash", family=F.WATERBORNE_ACRYLIC, finish=G, swatch="#332a20"),
    Coating(name="gloss clear", family=F.WATERBORNE_ACRYLIC, finish=G, swatch="#f2f2ee"),
    Coating(name="matte clear", family=F.WATERBORNE_ACRYLIC, swatch="#f2f2ee"),
    Coating(name="lacquer", family=F.SOLVENT_LACQUER, swatch="#6b7a4a"),
    Coating(name="gloss lacquer", family=F.SOLVENT_LACQUER, finish=G, swatch="#f2f2ee"),
    Coating(name="matte lacquer", family=F.SOLVENT_LACQUER, swatch="#f2f2ee"),
    Coating(name="enamel", family=F.ALKYD_ENAMEL, swatch="#6b7a4a"),
    Coating(name="gloss enamel", family=F.ALKYD_ENAMEL, finish=G, swatch="#6b7a4a"),
    Coating(name="oil", family=F.ARTISTS_OIL, swatch="#302010"),
    Coating(name="two-pack clear", family=F.TWO_PACK, finish=G, swatch="#f2f2ee"),
    Coating(name="ink", family=F.ALCOHOL_INK, swatch="#203060"),
    Coating(name="decal sheet", family=F.DECAL, finish=G, swatch="#ffffff"),
    Coating(name="fluid", family=F.CHIPPING_FLUID, finish=Finish.SATIN),
    Coating(name="powder", family=F.PIGMENT, swatch="#9a8060"),
    Coating(name="pencil", family=F.GRAPHITE, swatch="#505050"),
    Coating(name="cement", family=F.SOLVENT_CEMENT),
    Coating(name="white glue", family=F.WHITE_GLUE),
    Coating(name="water", family=F.WATER_THINNER),
    Coating(name="spirit", family=F.WHITE_SPIRIT),
    Coating(name="strong thinner", family=F.LACQUER_THINNER),
    Coating(name="alcohol", family=F.ALCOHOL_THINNER),
)


def part(
    name: str = "hull",
    *places: str,
    under: tuple[str, ...] = (),
    holder: str = "stick",
    material: Material = Material.STYRENE,
    stressed: bool = False,
) -> Part:
    """Return a part with top places and places on its underside."""
    tops = tuple(Place(name=place) for place in places or ("deck",))
    return Part(
        name=name,
        places=(*tops, *(Place(name=place, side=Side.UNDER) for place in under)),
        holder=holder,
        material=material,
        stressed=stressed,
    )


def coat(
    stage: Stage,
    coating: str,
    *places: str,
    name: str = "",
    role: Role | None = None,
    coats: int = 1,
    tool: Tool = Tool.BRUSH,
    gates: tuple[Gate, ...] = (),
) -> Step:
    """Return a step that lays one coating."""
    return Step(
        id=name or f"{stage}-{coating}".replace(" ", "-"),
        stage=stage,
        applications=(Application(places=places or ("hull",), coating=coating, coats=coats),),
        tool=tool,
        minutes=Minutes(fixed=5),
        role=role,
        gates=gates,
    )


def work(stage: Stage, *places: str, name: str = "") -> Step:
    """Return a step that lays no film."""
    return Step(
        id=name or str(stage).replace(" ", "-"),
        stage=stage,
        touches=places or ("hull",),
        tool=Tool.HAND,
        minutes=Minutes(fixed=5),
    )


def book_of(
    *steps: Step,
    parts: tuple[Part, ...] = (),
    mixes: tuple[Mix, ...] = (),
    more: tuple[Coating, ...] = (),
) -> Book:
    """Return a book with one project of one model with these steps."""
    air = (AirPoint(at="00:00", temperature_c=21, humidity_pct=50),)
    evenings = Recurring(
        rule="FREQ=WEEKLY;BYDAY=TU,TH", since=date(2031, 3, 4), start="19:30", end="21:30"
    )
    model = Model(name="tender", parts=parts or (part(),), steps=steps)
    return Book(
        coatings=(*COATINGS, *more),
        mixes=mixes,
        room=Room(locations=(Location(name="bench", drying_places=6, workdays=air),)),
        bench_time=BenchTime(zone="Europe/Warsaw", stretches=(evenings,)),
        gear=Gear(airbrushes=(Airbrush(name="fine brush"),)),
        projects=(Project(name="yard", models=(model,)),),
    )


def steps_of(book: Book) -> tuple[Step, ...]:
    """Return the steps of the only model."""
    return book.projects[0].models[0].steps
