"""How steps of a sequence, their places, gates and options are told in words."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

from app.window import words
from planner.sequences.difference import ChangedStep
from planner.sequences.references import BUT
from planner.values.coating import Clock, Mark, Window
from planner.values.sequence import EVERY, Sequence, SequenceStep
from planner.values.step import Application, Bound, Gate, Minutes, Step

Titles = Mapping[str, str]
"""What each step is called, by its id."""

NOTHING = "–"


def titles_of(steps: Iterable[Step]) -> dict[str, str]:
    """Return what each step is called, by its id."""
    return {step.id: words.title_word(step.title) or step.id for step in steps}


def places_text(references: Iterable[str]) -> str:
    """Return references in words: "every part but wheels and tracks"."""
    return words.listed([_place(reference) for reference in references])


def _place(reference: str) -> str:
    tr = words.tr
    if reference == EVERY:
        return tr("every part")
    if reference.startswith(BUT):
        left_out = [name.strip() for name in reference.removeprefix(BUT).split(";") if name.strip()]
        return tr("every part but {parts}").format(parts=places_text(left_out))
    part, slash, place = reference.partition("/")
    if part == EVERY and slash:
        return tr("{place} wherever there is one").format(place=words.part_word(place))
    part, place = words.part_word(part), words.part_word(place)
    return tr("{place} of {part}").format(part=part, place=place) if slash else part


def where(step: Step) -> str:
    """Return where a step works."""
    return places_text(sorted(step.references(), key=lambda reference: reference != EVERY))


def colours_text(step: Step) -> str:
    """Return what a step lays, with the number of coats where it is more than one."""
    tr = words.tr
    named: dict[str, int] = {}
    for application in step.applications:
        name = words.colour_word(application.coating)
        named[name] = max(application.coats, named.get(name, 0))
    told = (
        tr("{colour}, {n} coats").format(colour=colour, n=coats) if coats > 1 else colour
        for colour, coats in named.items()
    )
    return "; ".join(told) or NOTHING


def minutes_text(minutes: Minutes) -> str:
    """Return minutes of a pass: "2 min and 3 for each part"."""
    tr = words.tr
    told = []
    if minutes.fixed:
        told.append(tr("{n} min").format(n=minutes.fixed))
    if minutes.per_part:
        told.append(tr("{n} min a part").format(n=minutes.per_part))
    if minutes.per_change:
        told.append(tr("{n} min a change of colour").format(n=minutes.per_change))
    return " + ".join(told)


def work_text(step: Step) -> str:
    """Return stage and tool: "oil wash, brush"."""
    return words.tr("{stage}, {tool}").format(
        stage=words.stage_word(step.stage), tool=words.tool_word(step.tool)
    )


def only_with(step: SequenceStep) -> str:
    """Return with which options a step is there, "" for always."""
    tr = words.tr
    told = []
    if step.needs:
        told.append(tr("with {options}").format(options=_options(step.needs)))
    if step.unless:
        told.append(tr("not with {options}").format(options=_options(step.unless)))
    return ", ".join(told)


def _options(names: Iterable[str]) -> str:
    return words.listed([words.option_word(name) for name in names])


def waits_text(step: Step, titles: Titles) -> str:
    """Return what a step waits for beyond the coat stack, in sentences."""
    tr = words.tr
    told = [gate_text(gate, titles) for gate in step.gates]
    if step.after:
        names = words.listed([_quoted(titles, name) for name in step.after])
        told.insert(0, tr("after {steps}").format(steps=names))
    if step.look_in:
        told.append(tr("look {n} min later").format(n=step.look_in))
    return "; ".join(told)


def gate_text(gate: Gate, titles: Titles) -> str:
    """Return a gate in words: "done between 3 min and 90 min after “Decals”"."""
    tr = words.tr
    done = gate.closing is Bound.END
    told = []
    for window in gate.windows:
        begin, end = _opens(window), _closes(window)
        if begin and end:
            form = tr("done from {begin} to {end}") if done else tr("begun from {begin} to {end}")
        elif end:
            form = tr("done within {end}") if done else tr("begun within {end}")
        else:
            form = tr("from {begin} on") if begin else tr("at any time")
        text = form.format(begin=begin, end=end)
        if window.preparation_minutes:
            text = tr("{window} with {minutes} min of preparation").format(
                window=text, minutes=window.preparation_minutes
            )
        told.append(text)
    return tr("{windows} after {step}").format(
        windows=tr(" or ").join(told), step=_quoted(titles, gate.after)
    )


def _quoted(titles: Titles, name: str) -> str:
    return f"“{titles.get(name, name)}”"


def _opens(window: Window) -> str:
    return _mark(window.opens) if window.opens else ""


def _closes(window: Window) -> str:
    return _mark(window.closes) if window.closes else ""


def _mark(mark: Mark) -> str:
    if mark.state is not None:
        return words.state_word(mark.state)
    told = words.span(mark.minutes or 0)
    if mark.clock is Clock.FILM:
        return words.tr("{span} at 23 °C and 50 %").format(span=told)
    return told


def step_in_full(other: SequenceStep, sequence: Sequence) -> str:
    """Return all of a step in a few lines."""
    tr = words.tr
    step = other.step
    titles = titles_of(each.step for each in sequence.steps)
    lines = [
        tr("{work} · {where} · {minutes}").format(
            work=words.capital(work_text(step)),
            where=where(step),
            minutes=minutes_text(step.minutes),
        )
    ]
    waits = waits_text(step, titles)
    if waits:
        lines.append(tr("Gates: {gates}").format(gates=waits))
    if only_with(other):
        lines.append(tr("Only {options}").format(options=only_with(other)))
    return "\n".join(lines)


def _applications(applications: tuple[Application, ...]) -> str:
    tr = words.tr
    told = []
    for application in applications:
        text = tr("{colour} on {places}, {n} ×").format(
            colour=application.coating, places=places_text(application.places), n=application.coats
        )
        if application.share is not None:
            text = words.fill(
                tr("{text}, {share:.3g} % of it"), text=text, share=100 * application.share
            )
        told.append(text)
    return "; ".join(told) or NOTHING


def changes_text(changed: ChangedStep, titles: Titles) -> str:
    """Return what is other in a step, field by field: "minutes: 5 min → 30 min"."""
    return "; ".join(_change(changed, name, titles) for name in changed.fields)


def _change(changed: ChangedStep, field: str, titles: Titles) -> str:
    tr = words.tr
    name, tell = _fields(titles).get(field, (field.replace("_", " "), _plain))
    was, becomes = getattr(changed.was, field), getattr(changed.becomes, field)
    return tr("{field}: {was} → {becomes}").format(field=name, was=tell(was), becomes=tell(becomes))


def _fields(titles: Titles) -> dict[str, tuple[str, Callable[..., str]]]:
    tr = words.tr

    def gates(value: tuple[Gate, ...]) -> str:
        return "; ".join(gate_text(gate, titles) for gate in value) or NOTHING

    def names(value: tuple[str, ...]) -> str:
        return words.listed([_quoted(titles, name) for name in value]) or NOTHING

    return {
        "title": (tr("name"), _plain),
        "stage": (tr("stage"), words.stage_word),
        "tool": (tr("tool"), words.tool_word),
        "minutes": (tr("minutes"), minutes_text),
        "applications": (tr("coats"), _applications),
        "touches": (tr("places"), lambda value: places_text(value) or NOTHING),
        "gates": (tr("gates"), gates),
        "after": (tr("waits for"), names),
        "look_in": (tr("look after"), _minutes),
        "split_least": (tr("shortest piece"), _minutes),
        "dries_in": (tr("dries in"), lambda value: value or tr("the usual place")),
        "or_in": (tr("or dries in"), lambda value: words.listed(list(value)) or NOTHING),
        "traits": (
            tr("marks"),
            lambda value: words.listed([str(other) for other in value]) or NOTHING,
        ),
        "role": (tr("role"), _plain),
        "helper": (tr("needs two people"), _yes),
        "scraped": (tr("faces scraped"), _yes),
        "stands": (tr("drying places"), _plain),
    }


def _plain(value: object) -> str:
    return NOTHING if value is None or value == "" else str(value)


def _minutes(value: int | None) -> str:
    return NOTHING if value is None else words.span(value)


def _yes(value: bool) -> str:
    return words.tr("yes") if value else words.tr("no")
