"""Full weathered vehicle, with every dispute of the trade as a choice."""

from __future__ import annotations

from planner.sequences.built_in.glazing import masked, off_glazing
from planner.sequences.built_in.writing import (
    CHIPPING,
    CHIPS,
    DECALS,
    FIXER,
    GLOSS,
    GLOSS_CAN,
    GLUE,
    GRAPHITE,
    HULL,
    MATTE,
    MATTE_CAN,
    METAL_EDGES,
    OIL_WASH,
    PIGMENTS,
    PRIMER,
    PRIMER_CAN,
    WASHED_DRY,
    by_tools,
    colour,
    decals,
    join,
    lay,
    look_over,
    looked_over,
    metal_edges,
    oil_wash,
    tool_options,
    wash_parts,
    washed,
    work,
)
from planner.values.sequence import Colour, Option, Sequence, SequenceStep
from planner.values.step import Minutes, Role, Stage, Tool, Trait

OIL, FILTER, DECALS_ON = "oil wash", "filter", "decals"
WASH_FIRST, WASH_LATER = "wash before decals", "wash after decals"
CHIPS_FIRST, CHIPS_LATER = "chips before wash", "chips after wash"
SPONGE, FLUID = "chips by sponge", "chips by fluid"
GLOSS_UNDER, FLAT_UNDER = "gloss under the wash", "flat under the wash"
ONE, TWO, THREE = "one colour", "two colours", "three colours"
LOOSE, FIXED = "pigments left loose", "pigments fixed"

COLOURS: tuple[Colour, ...] = (
    PRIMER,
    PRIMER_CAN,
    colour("undercoat", "waterborne acrylic, light rust", "shows where the base is chipped"),
    CHIPPING,
    colour("base colour", "waterborne acrylic, sand"),
    colour("base colour (spray can)", "solvent lacquer, sand in a can"),
    colour("second colour", "waterborne acrylic, olive green"),
    colour("third colour", "waterborne acrylic, red brown"),
    colour("running gear", "waterborne acrylic, dark grey"),
    colour("tools", "waterborne acrylic, leather brown"),
    CHIPS,
    GLOSS,
    GLOSS_CAN,
    DECALS,
    colour("filter", "ochre filter, 1 : 19"),
    OIL_WASH,
    GLUE,
    MATTE,
    MATTE_CAN,
    GRAPHITE,
    PIGMENTS,
    FIXER,
)

OPTIONS: tuple[Option, ...] = (
    *tool_options(),
    washed(),
    looked_over(),
    Option(name=ONE, usual=True, choice="camouflage"),
    Option(name=TWO, choice="camouflage", note="freehand over the base"),
    Option(name=THREE, choice="camouflage", note="freehand, one after the other"),
    Option(name=SPONGE, usual=True, choice="chipping", note="dabbed on, small and dark"),
    Option(name=FLUID, choice="chipping", note="rubbed through the base; rub within the hour"),
    Option(name="no chips", choice="chipping"),
    Option(name=CHIPS_FIRST, usual=True, choice="chips and wash", note="the wash tones them down"),
    Option(name=CHIPS_LATER, choice="chips and wash", note="they stay crisp"),
    Option(name=DECALS_ON, usual=True, note="over gloss, pressed, sealed"),
    Option(name=WASH_LATER, usual=True, choice="wash and decals", note="dirt on markings too"),
    Option(name=WASH_FIRST, choice="wash and decals", note="markings stay clean"),
    Option(name=FILTER, note="a thin tint that draws the colours together"),
    Option(name=OIL, usual=True, note="edges and recesses; must be wiped within the hour"),
    Option(name=GLOSS_UNDER, usual=True, choice="under the wash", note="it runs and wipes clean"),
    Option(name=FLAT_UNDER, choice="under the wash", note="it grips, as grime"),
    Option(name=METAL_EDGES, note="graphite, after the matte clear, which would dull it"),
    Option(name="pigments", usual=True, note="dust and dry mud, after the matte clear"),
    Option(name=LOOSE, usual=True, choice="pigments held", note="not to be handled"),
    Option(name=FIXED, choice="pigments held", note="stands handling; darkens a little"),
)


def _colours() -> tuple[SequenceStep, ...]:
    """Prime, colours and what is picked out; chipping fluid belongs under the base."""
    return (
        wash_parts(),
        *masked(*_prime_and_base()),
        *_colours_over_base(),
    )


def _prime_and_base() -> tuple[SequenceStep, ...]:
    return (
        *by_tools(
            "prime",
            Stage.PRIME,
            "Prime",
            "primer",
            can="primer (spray can)",
            brushed_coats=1,
            gates=(WASHED_DRY,),
        ),
        *look_over(),
        *by_tools(
            "undercoat",
            Stage.BASE,
            "Undercoat that chips will show",
            "undercoat",
            brushed_coats=1,
            needs=(FLUID,),
        ),
        lay(
            "chipping-fluid",
            Stage.CHIP_FLUID,
            "Chipping fluid, thin",
            "chipping fluid",
            minutes=Minutes(fixed=2, per_part=4),
            needs=(FLUID, ONE),
        ),
        lay(
            "chipping-fluid-hull",
            Stage.CHIP_FLUID,
            "Chipping fluid, thin",
            "chipping fluid",
            HULL,
            minutes=Minutes(fixed=2, per_part=4),
            needs=(FLUID,),
            unless=(ONE,),
        ),
        *by_tools(
            "base",
            Stage.BASE,
            "Base colour",
            "base colour",
            can="base colour (spray can)",
            unless=(FLUID,),
        ),
        *by_tools(
            "base-to-chip",
            Stage.BASE,
            "Base colour over the fluid, two thin coats",
            "base colour",
            sprayed_coats=2,
            needs=(FLUID,),
            in_one_go=True,
        ),
    )


def _colours_over_base() -> tuple[SequenceStep, ...]:
    return (
        work(
            "chip-rub",
            Stage.CHIP_RUB,
            "Wet the base, rub chips through it, rinse off leftover fluid",
            minutes=Minutes(fixed=2, per_part=5),
            needs=(FLUID, ONE),
            tool=Tool.BRUSH,
        ),
        *by_tools(
            "second",
            Stage.CAMO,
            "Second colour",
            "second colour",
            HULL,
            brushed_coats=1,
            needs=(TWO,),
        ),
        *by_tools(
            "second-of-three",
            Stage.CAMO,
            "Second colour",
            "second colour",
            HULL,
            brushed_coats=1,
            needs=(THREE,),
        ),
        *by_tools(
            "third",
            Stage.CAMO,
            "Third colour",
            "third colour",
            HULL,
            brushed_coats=1,
            needs=(THREE,),
        ),
        work(
            "chip-rub-hull",
            Stage.CHIP_RUB,
            "Wet the colours, rub chips through them, rinse off leftover fluid",
            HULL,
            minutes=Minutes(fixed=2, per_part=5),
            needs=(FLUID,),
            unless=(ONE,),  # no colour is laid over finished chips
            tool=Tool.BRUSH,
        ),
        lay(
            "running-gear",
            Stage.DETAIL,
            "Wheels and tracks",
            "running gear",
            "wheels",
            "tracks",
            "running gear",
            minutes=Minutes(fixed=2, per_part=15),
            split_least=5,
        ),
        lay(
            "tools",
            Stage.DETAIL,
            "Tools and stowage",
            "tools",
            "tools",
            "stowage",
            minutes=Minutes(fixed=2, per_part=12),
            split_least=5,
        ),
    )


def _chips(id_: str, choice: str) -> SequenceStep:
    return lay(
        id_,
        Stage.CHIP,
        "Sponge chips along edges",
        "chips",
        HULL,
        minutes=Minutes(fixed=3, per_part=7),
        needs=(SPONGE, choice),
        tool=Tool.SPONGE,
    )


def _clear(
    id_: str,
    title: str,
    role: Role,
    *,
    needs: tuple[str, ...] = (),
    unless: tuple[str, ...] = (),
    flat: bool = False,
) -> tuple[SequenceStep, ...]:
    """Write a clear coat all over, gloss or flat."""
    sheen = "matte" if flat else "gloss"
    return by_tools(
        id_,
        Stage.VARNISH,
        title,
        f"{sheen} clear",
        can=f"{sheen} clear (spray can)",
        brushed_coats=1,
        needs=needs,
        unless=unless,
        role=role,
    )


def _markings() -> tuple[SequenceStep, ...]:
    """Clear coats, decals and washes in either order."""
    early = (OIL, WASH_FIRST)
    grip = "Matte clear, so that the wash grips"
    filter_ = lay(
        "filter",
        Stage.FILTER,
        "Filter all over, hardly more than damp",
        "filter",
        minutes=Minutes(fixed=3, per_part=4),
        needs=(FILTER,),
        traits=(Trait.SMELLS,),
    )
    return (
        *_clear(
            "early-bed", "Gloss clear below the wash", Role.BARRIER, needs=(*early, GLOSS_UNDER)
        ),
        *_clear("early-grip", grip, Role.BARRIER, needs=(*early, FLAT_UNDER), flat=True),
        *oil_wash("early-wash", needs=early),
        *_clear("bed", "Gloss clear below the decals", Role.DECAL_BED, needs=(DECALS_ON,)),
        *decals(HULL),
        *_clear("seal", "Gloss clear over the decals", Role.SEAL, needs=(DECALS_ON,)),
        *_clear(
            "wash-bed",
            "Gloss clear below the wash",
            Role.BARRIER,
            needs=(OIL, WASH_LATER, GLOSS_UNDER),
            unless=(DECALS_ON,),
        ),
        *_clear("grip", grip, Role.BARRIER, needs=(OIL, WASH_LATER, FLAT_UNDER), flat=True),
        *_clear(
            "filter-bed",
            "Gloss clear below the filter",
            Role.BARRIER,
            needs=(FILTER,),
            unless=(DECALS_ON, OIL),
        ),
        *_clear(
            "filter-bed-late",
            "Gloss clear between wash and filter",
            Role.BARRIER,
            needs=(FILTER, OIL, WASH_FIRST),
            unless=(DECALS_ON,),
        ),
        filter_,
        *oil_wash("oil-wash", needs=(OIL, WASH_LATER)),
    )


def _ending() -> tuple[SequenceStep, ...]:
    """Join, matte clear, pigments."""
    return (
        join(),
        *masked(
            *by_tools(
                "matte",
                Stage.MATTE,
                "Matte clear over everything",
                "matte clear",
                can="matte clear (spray can)",
                brushed_coats=1,
                role=Role.FINAL,
                look_in=30,
            ),
            again="-again",
        ),
        metal_edges(HULL),
        lay(
            "pigments",
            Stage.PIGMENT,
            "Dust and dry mud low down",
            "pigments",
            minutes=Minutes(fixed=3, per_part=7),
            needs=("pigments",),
            share=0.25,
        ),
        lay(
            "fix-pigments",
            Stage.PIGMENT,
            "Let fixer creep into the pigments",
            "pigment fixer",
            minutes=Minutes(fixed=2, per_part=3),
            needs=("pigments", FIXED),
            share=0.25,
            traits=(Trait.SMELLS,),
        ),
    )


WEATHERED = Sequence(
    name="full weathered vehicle",
    note="Everything a weathered vehicle may get; the order that painters dispute is yours.",
    colours=COLOURS,
    options=OPTIONS,
    steps=off_glazing(
        (
            *_colours(),
            _chips("chips", CHIPS_FIRST),
            *_markings(),
            _chips("late-chips", CHIPS_LATER),
            *_ending(),
        )
    ),
)
