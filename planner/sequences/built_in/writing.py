"""Short ways to write the steps, colours and options that several sequences share."""

from __future__ import annotations

from typing import Any

from planner.values.coating import Mark, Window
from planner.values.sequence import EVERY, Colour, Option, SequenceStep
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

RUNNING = "wheels; tracks; running gear"
HULL = f"{EVERY} but {RUNNING}; tools; base"
WASH_FIRST, LOOK_OVER, METAL_EDGES = "wash first", "look over the primer", "metal edges"
WASHED_DRY = Gate(after="wash-parts", windows=(Window(opens=Mark(minutes=60)),))
"""Water has left seams and recesses: assumed [min]."""
AIRBRUSH, BRUSH, CAN = "airbrush", "brush", "spray can"
TOOLS = (AIRBRUSH, BRUSH, CAN)
_TOOL_OF = {AIRBRUSH: Tool.AIRBRUSH, BRUSH: Tool.BRUSH, CAN: Tool.CAN}
SPRAYED, BRUSHED = Minutes(fixed=2, per_part=3), Minutes(fixed=3, per_part=10)
_WORK = {AIRBRUSH: SPRAYED, BRUSH: BRUSHED, CAN: Minutes(fixed=3, per_part=2)}
"""A coat all over a part of a small vehicle, by tool: assumed."""


def lay(
    id_: str,
    stage: Stage,
    title: str,
    colour: str,
    *places: str,
    minutes: Minutes,
    needs: tuple[str, ...] = (),
    unless: tuple[str, ...] = (),
    coats: int = 1,
    share: float | None = None,
    **rest: object,
) -> SequenceStep:
    """Write a step that lays one colour, everywhere where no places are named."""
    coat = Application(places=places or (EVERY,), coating=colour, coats=coats, share=share)
    told: dict[str, Any] = rest
    step = Step(id=id_, stage=stage, title=title, applications=(coat,), minutes=minutes, **told)
    return SequenceStep(step=step, needs=needs, unless=unless)


def work(
    id_: str,
    stage: Stage,
    title: str,
    *places: str,
    minutes: Minutes,
    needs: tuple[str, ...] = (),
    unless: tuple[str, ...] = (),
    **rest: object,
) -> SequenceStep:
    """Write a step that lays nothing, everywhere where no places are named."""
    told: dict[str, Any] = rest
    step = Step(
        id=id_, stage=stage, title=title, touches=places or (EVERY,), minutes=minutes, **told
    )
    return SequenceStep(step=step, needs=needs, unless=unless)


def by_tools(
    id_: str,
    stage: Stage,
    title: str,
    colour: str,
    *places: str,
    can: str = "",
    brushed_coats: int = 2,
    sprayed_coats: int = 1,
    needs: tuple[str, ...] = (),
    unless: tuple[str, ...] = (),
    role: Role | None = None,
    look_in: int | None = None,
    in_one_go: bool = False,
    share: float | None = None,
    gates: tuple[Gate, ...] = (),
) -> tuple[SequenceStep, ...]:
    """Write a coat three times, for airbrush, brush and spray can; one of them is there.

    ``can`` is the colour in a can; without it, what a can cannot do is brushed.
    ``in_one_go``: it is rubbed soon, so that it is not broken off half done.
    """
    made = []
    for tool in (AIRBRUSH, BRUSH, CAN):
        hand = BRUSH if tool == CAN and not can else tool
        made.append(
            lay(
                f"{id_}-{tool.split()[-1]}",
                stage,
                title,
                can if hand == CAN else colour,
                *places,
                minutes=_WORK[hand],
                needs=(*needs, tool),
                unless=unless,
                coats=brushed_coats if hand == BRUSH else sprayed_coats,
                tool=_TOOL_OF[hand],
                role=role,
                traits=(Trait.SMELLS,) if hand == CAN else (),
                look_in=look_in,
                split_least=10 if hand == BRUSH and not in_one_go else None,
                share=share,
                gates=gates,
            )
        )
    return tuple(made)


def washed() -> Option:
    """Return the choice of washing before the primer."""
    note = "release agent and fingerprints keep primer off; resin and cast metal always"
    return Option(name=WASH_FIRST, note=note)


def wash_parts() -> SequenceStep:
    """Write washing before anything is laid."""
    return work(
        "wash-parts",
        Stage.CLEAN,
        "Wash with detergent, rinse, let it dry",
        minutes=Minutes(fixed=5, per_part=2),
        needs=(WASH_FIRST,),
        tool=Tool.BRUSH,
    )


def looked_over() -> Option:
    """Return the choice of looking over seams in the primer."""
    return Option(name=LOOK_OVER, note="primer shows seams; sand, touch up, prime again there")


def look_over(*places: str) -> tuple[SequenceStep, ...]:
    """Write the look over the primer, its touch-up and a second look before colour."""
    return (
        work(
            "look-over",
            Stage.CLEAN,
            "Look over seams in the primer; fill and sand what shows",
            *places,
            minutes=Minutes(fixed=3, per_part=6),
            needs=(LOOK_OVER,),
            tool=Tool.HAND,
        ),
        *by_tools(
            "prime-again",
            Stage.PRIME,
            "Prime again where it was sanded",
            "primer",
            *places,
            can="primer (spray can)",
            brushed_coats=1,
            needs=(LOOK_OVER,),
            share=0.2,
        ),
        work(
            "look-again",
            Stage.CLEAN,
            "Look over it once more before the colour",
            *places,
            minutes=Minutes(fixed=1, per_part=1),
            needs=(LOOK_OVER,),
            tool=Tool.HAND,
        ),
    )


def metal_edges(*places: str) -> SequenceStep:
    """Write the shine of worn edges, which comes after the matte clear."""
    return lay(
        "metal-edges",
        Stage.DRY_BRUSH,
        "Rub graphite along edges that are worn to the metal",
        "graphite",
        *places,
        minutes=Minutes(fixed=2, per_part=4),
        needs=(METAL_EDGES,),
        share=0.03,
        tool=Tool.CLOTH,
    )


def decals(
    *places: str,
    needs: tuple[str, ...] = ("decals",),
    seal: str = "gloss clear",
    minutes: int = 15,
) -> tuple[SequenceStep, ...]:
    """Write decals and their pressing; bed and seal are the sequence's own."""
    settle = Gate(
        after="decals",
        windows=(Window(closes=Mark(minutes=90)),),
        closing=Bound.END,
    )
    return (
        lay(
            "decals",
            Stage.DECAL,
            "Decals",
            "decals",
            *places,
            minutes=Minutes(fixed=minutes),
            needs=needs,
            share=0.05,
            tool=Tool.HAND,
        ),
        work(
            "press",
            Stage.PRESS,
            "Press the decals down while the setting fluid works; wipe glue off with a damp cloth",
            *places,
            minutes=Minutes(fixed=5),
            needs=needs,
            tool=Tool.CLOTH,
            gates=(settle,),
        ),
    )


def oil_wash(
    id_: str, *places: str, needs: tuple[str, ...] = (), unless: tuple[str, ...] = ()
) -> tuple[SequenceStep, ...]:
    """Write an oil wash and its wiping back, which customary gates hold to the hour."""
    return (
        lay(
            id_,
            Stage.OIL_WASH,
            "Try the thinner on a hidden place; then the oil wash along edges and into recesses",
            "oil wash",
            *places,
            minutes=Minutes(fixed=3, per_part=6),
            needs=needs,
            unless=unless,
            traits=(Trait.SMELLS,),
            look_in=20,
        ),
        work(
            f"{id_}-wipe",
            Stage.WIPE,
            "Wipe the wash back, in the direction of rain",
            *places,
            minutes=Minutes(fixed=3, per_part=4),
            needs=needs,
            unless=unless,
            tool=Tool.CLOTH,
        ),
    )


def join(title: str = "Scrape the joint faces and glue on what was painted apart") -> SequenceStep:
    """Write the late join of every part; where the model is one part, it is not there."""
    glue = Application(places=(f"{EVERY}/glue faces",), coating="glue")
    step = Step(
        id="join",
        stage=Stage.JOIN,
        title=title,
        applications=(glue,),
        touches=(EVERY,),
        tool=Tool.HAND,
        minutes=Minutes(fixed=4, per_part=3),
    )
    return SequenceStep(step=step)


def tool_options(usual: str = AIRBRUSH) -> tuple[Option, ...]:
    """Return the choice of tool, with what each asks."""
    notes = {
        AIRBRUSH: "thin even coats; each load is cleaned out",
        BRUSH: "two thin coats instead of one; nothing to set up",
        CAN: "primer, base and clear coats from a can in daylight; the rest by brush",
    }
    return tuple(
        Option(name=tool, usual=tool == usual, choice="tool", note=notes[tool]) for tool in TOOLS
    )


def colour(name: str, usual: str, note: str = "") -> Colour:
    """Write a colour with the starter coating that it usually takes."""
    return Colour(name=name, usual=usual, note=note)


GRAPHITE = colour("graphite", "graphite powder")
PRIMER = colour("primer", "waterborne acrylic, grey primer")
PRIMER_CAN = colour("primer (spray can)", "solvent lacquer, grey primer in a can")
GLOSS = colour("gloss clear", "waterborne acrylic, gloss clear")
GLOSS_CAN = colour("gloss clear (spray can)", "waterborne acrylic, gloss clear in a can")
MATTE = colour("matte clear", "waterborne acrylic, matte clear")
MATTE_CAN = colour("matte clear (spray can)", "waterborne acrylic, matte clear in a can")
DECALS = colour("decals", "water-slide decals")
GLUE = colour("glue", "cyanoacrylate glue")
OIL_WASH = colour("oil wash", "umber oil wash, 1 : 9")
PIGMENTS = colour("pigments", "pigment, dry earth")
FIXER = colour("pigment fixer", "pigment fixer")
CHIPPING = colour("chipping fluid", "chipping fluid")
CHIPS = colour("chips", "waterborne acrylic, dark rust")
