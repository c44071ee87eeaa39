"""What the words of the trade mean, each in one sentence: for tooltips and for the help."""

from __future__ import annotations

from app.window.words import tr
from planner.values.coating import State
from planner.values.step import Role, Stage


def stage_meaning(stage: Stage) -> str:
    """Return what is done at a stage."""
    told = {
        Stage.PRIME: tr("A first thin coat that grips the bare part and gives colours a ground."),
        Stage.BASE: tr("The main colour, wherever it shows."),
        Stage.CAMO: tr("Further colours of a scheme, over the base."),
        Stage.HIGHLIGHT: tr("A lighter shade on what faces the light."),
        Stage.DETAIL: tr("Small parts in colours of their own, mostly by brush."),
        Stage.DRY_BRUSH: tr("A brush with hardly any paint is drawn over edges, which take it."),
        Stage.WASH: tr("Thin dark paint that runs into recesses and shows them."),
        Stage.OIL_WASH: tr("A wash of oil or enamel paint; it stays open and is wiped back."),
        Stage.WIPE: tr("Taking a wash off the raised faces while it can still be wiped."),
        Stage.FILTER: tr("A very thin tint over all, which draws the colours together."),
        Stage.VARNISH: tr("A clear coat: a bed for decals, a seal, a barrier, or the last coat."),
        Stage.DECAL: tr("Markings that are soaked off their paper and slid into place."),
        Stage.PRESS: tr("Pressing decals down while the setting fluid softens them."),
        Stage.CHIP: tr("Painted chips, dabbed on by sponge or fine brush."),
        Stage.CHIP_FLUID: tr(
            "A film that water dissolves, below the colour that is to be chipped."
        ),
        Stage.CHIP_RUB: tr("Rubbing the colour over the fluid off with water, soon after."),
        Stage.PIGMENT: tr("Dry powder for dust, rust and mud; it lies loose unless it is fixed."),
        Stage.WEATHER: tr("Traces of use and weather: streaks, dust, mud."),
        Stage.MASK: tr("Covering places with tape or fluid, so that a colour ends at an edge."),
        Stage.UNMASK: tr("Taking the mask off, early enough to leave a clean edge."),
        Stage.TURN: tr("Turning a part over, to reach its other side."),
        Stage.JOIN: tr("Gluing together what was painted apart."),
        Stage.CLEAN: tr("Washing, dusting, sanding, trying for fit: work that lays no film."),
        Stage.MATTE: tr("The last clear coat, which takes the shine off."),
    }
    return told[stage]


def state_meaning(state: State) -> str:
    """Return how a film is in a drying state."""
    told = {
        State.SET_TO_TOUCH: tr("Sticky still, but nothing comes off on the finger."),
        State.DUST_FREE: tr("Dust that settles can be blown off."),
        State.TACK_FREE: tr("It does not feel sticky any more."),
        State.DRY_TO_HANDLE: tr("It can be held without leaving a mark."),
        State.DRY_TO_RECOAT: tr("The next coat may follow."),
        State.PRINT_FREE: tr("What lies on it leaves no print: tape may."),
        State.SOLVENT_SAFE: tr("White spirit may be brushed and wiped over it."),
        State.DRY_THROUGH: tr("Firm to the ground: a thumb that presses and turns moves nothing."),
    }
    return told[state]


def role_meaning(role: Role) -> str:
    """Return what a varnish is there for."""
    told = {
        Role.DECAL_BED: tr("Smooth gloss, on which decals lie without trapped air."),
        Role.SEAL: tr("Keeps decals or paint from what comes next."),
        Role.BARRIER: tr("Parts two layers of which the upper would attack the lower."),
        Role.FINAL: tr("The last coat, which gives everything one sheen."),
    }
    return told[role]


def our_words() -> list[tuple[str, str]]:
    """Return words that this program gives a meaning of their own."""
    return [
        (tr("bench book"), tr("All that you have and do, in one file.")),
        (tr("place"), tr("An area of a part with a stack of coats of its own.")),
        (tr("gate"), tr("What must hold between two pieces of work: a wait, or a time limit.")),
        (tr("session"), tr("One unbroken time at the bench.")),
        (tr("load"), tr("One filling of an airbrush.")),
        (tr("wish"), tr("Where you want a piece of work to be; the plan keeps to it.")),
        (tr("sequence"), tr("A finishing order with options, to be given to any model.")),
        (tr("can wait"), tr("How long a step may be put off without a later end.")),
    ]
