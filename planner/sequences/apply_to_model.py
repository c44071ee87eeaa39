"""The steps that a sequence makes for one model."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field, replace
from functools import lru_cache

from planner.passes import WHOLE_UNIT
from planner.sequences.chosen_options import complete, holds
from planner.sequences.references import meant, written
from planner.sequences.sections import in_sections
from planner.sequences.step_minutes import factor_of, grown, growth, paced
from planner.values.identity_key import Same
from planner.values.message import message
from planner.values.model import Model
from planner.values.refusal import Refused, demand_known
from planner.values.sequence import EVERY, Colour, Sequence, SequenceStep
from planner.values.step import Gate, Stage, Step
from planner.values.wishes import Pace


def steps_for(
    sequence: Sequence,
    model: Model,
    options: Iterable[str] | None,
    colours: Mapping[str, str],
    *,
    area_cm2: float | None = None,
    pace: Pace = Pace(),  # noqa: B008 - frozen
) -> tuple[Step, ...]:
    """Return a sequence's steps for a model.

    Parts that the model lacks are left out; a step with nothing left to
    work on is not there, and what waited for it waits for what it waited for.
    What cannot be wiped or rubbed in time is laid in sections (`sections`).

    Parameters
    ----------
    options
        Options chosen; None means the usual ones (`chosen_options.complete`).
    colours
        Coating or mix for each colour; one not named takes its usual one.
    area_cm2
        Painted area of the model; absent, the minutes are taken as written.
    pace
        What was learned and agreed to.

    Raises
    ------
    Refused
        If options or colours do not fit, a colour that is needed has no
        coating, or no step is left.
    """
    fitted = _fitted(sequence, model, options)
    named = _coatings(sequence, fitted, colours)
    larger = growth(area_cm2, sequence.made_for_cm2)
    if not fitted:
        raise Refused(
            "",
            message(
                'nothing of "{sequence}" fits "{model}"; choose another',
                sequence=sequence.name,
                model=model.name,
            ),
        )
    sized = (
        replace(
            step,
            applications=tuple(
                replace(application, coating=named[application.coating])
                for application in step.applications
            ),
            minutes=grown(step.minutes, larger),
        )
        for step in fitted
    )
    timed = tuple(replace(step, minutes=paced(step, factor_of(pace, step))) for step in sized)
    return in_sections(timed)


def resolved(sequence: Sequence, options: Iterable[str] | None) -> Sequence:
    """Return a sequence of the chosen steps alone, with no option left to choose.

    Raises
    ------
    Refused
        If options do not fit, or no step is left.
    """
    fitting, chosen = _Fitting(), complete(sequence, options)
    for step in sequence.steps:
        fitting.add(step.step, step.step if holds(step, chosen) else None)
    steps = tuple(SequenceStep(step=step) for step in fitting.kept.values())
    return replace(sequence, options=(), steps=steps)


def without_steps(steps: Iterable[Step], gone: Collection[str]) -> tuple[Step, ...]:
    """Return steps without some; what waited for those waits for what they waited for."""
    fitting = _Fitting()
    for step in steps:
        fitting.add(step, None if step.id in gone else step)
    return tuple(fitting.kept.values())


def colours_needed(
    sequence: Sequence, model: Model, options: Iterable[str] | None
) -> tuple[Colour, ...]:
    """Return the colours that the chosen steps lay on a model, in the sequence's order."""
    laid = _laid(_fitted(sequence, model, options))
    return tuple(colour for colour in sequence.colours if colour.name in laid)


def _laid(steps: Iterable[Step]) -> set[str]:
    return {application.coating for step in steps for application in step.applications}


def _coatings(
    sequence: Sequence, steps: tuple[Step, ...], colours: Mapping[str, str]
) -> dict[str, str]:
    known = [colour.name for colour in sequence.colours]
    for name in colours:
        demand_known(name, known, "colour", "colours")
    laid = _laid(steps)
    named = {}
    for colour in sequence.colours:
        coating = colours.get(colour.name) or colour.usual
        if colour.name in laid and not coating:
            raise Refused(
                "colours", message('"{colour}" has no coating yet; choose one', colour=colour.name)
            )
        named[colour.name] = coating
    return named


@dataclass
class _Fitting:
    """Steps kept so far, and what those left out waited for."""

    kept: dict[str, Step] = field(default_factory=dict)
    behind: dict[str, tuple[str, ...]] = field(default_factory=dict)

    def add(self, step: Step, fitted: Step | None) -> None:
        """Keep a step that fits, rerouted; remember what one that does not waited for."""
        waited = [*step.after, *(gate.after for gate in step.gates)]
        if fitted is None:
            self.behind[step.id] = self._there(waited)
            return
        gates = tuple(gate for gate in step.gates if self._holds(gate))
        lost = [gate.after for gate in step.gates if gate not in gates]
        gated = {gate.after for gate in gates}
        after = dict.fromkeys((*self._there(step.after), *self._there(lost)))
        kept = tuple(name for name in after if name not in gated or name in step.after)
        self.kept[step.id] = replace(fitted, after=kept, gates=gates)

    def _there(self, names: Iterable[str]) -> tuple[str, ...]:
        found: dict[str, None] = {}
        for name in names:
            found.update(dict.fromkeys((name,) if name in self.kept else self.behind[name]))
        return tuple(found)

    def _holds(self, gate: Gate) -> bool:
        """Tell whether what a gate watches is there; its marks fit no other step."""
        return gate.after in self.kept


def _fitted(sequence: Sequence, model: Model, options: Iterable[str] | None) -> tuple[Step, ...]:
    """Return the chosen steps on the model's own places, still with the sequence's colours."""
    shape = tuple((part.name, *(place.name for place in part.places)) for part in model.parts)
    return _fitted_to(Same(sequence), shape, _Named(model), complete(sequence, options))


@dataclass(frozen=True)
class _Named:
    """A model that is as good as any other with parts and places of the same names."""

    model: Model = field(compare=False)


@lru_cache(maxsize=512)
def _fitted_to(
    sequence: Same[Sequence],
    _shape: tuple[tuple[str, ...], ...],
    named: _Named,
    chosen: tuple[str, ...],
) -> tuple[Step, ...]:
    fitting = _Fitting()
    for step in sequence.value.steps:
        fits = holds(step, chosen)
        fitting.add(step.step, placed(step.step, named.model) if fits else None)
    return tuple(fitting.kept.values())


def placed(step: Step, model: Model) -> Step | None:
    """Return a step on the places that a model has; None if there is nothing to do.

    Where one application means every part and another of the same step
    names some places, those are left to the other.
    """
    whole = step.stage in WHOLE_UNIT
    named = frozenset(
        place
        for application in step.applications
        if not _sweeping(application.places)
        for place in meant(model, application.places)
    )
    applications = []
    for application in step.applications:
        places = meant(model, application.places)
        if _sweeping(application.places):
            places -= named
        if places:
            applications.append(replace(application, places=written(model, places)))
    touches = written(model, meant(model, step.touches, whole=whole), whole=whole)
    parts = {name.partition("/")[0] for application in applications for name in application.places}
    parts |= {name.partition("/")[0] for name in touches}
    if not parts or (step.stage is Stage.JOIN and len(parts) < 2):
        return None
    if step.applications and not applications and step.stage is not Stage.JOIN:
        return None  # its colour has nowhere to go; what it touches beside has no meaning alone
    return replace(step, applications=tuple(applications), touches=touches)


def _sweeping(references: tuple[str, ...]) -> bool:
    return any(
        reference.startswith(EVERY) and "/" not in reference.partition(" but ")[0]
        for reference in references
    )
