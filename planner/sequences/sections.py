"""Work that must be wiped or rubbed soon, laid part by part where a model is large.

An oil wash is wiped back within the hour and a coat over chipping fluid
rubbed within an hour and a half (`planner.graph.gates`).  Where a model has
too many parts for that, nobody washes all of it first and wipes it then:
each part, or a few, is washed and wiped before the next.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from planner.values.message import titled, within
from planner.values.step import Gate, Stage, Step

TOGETHER = {Stage.WIPE: (60, 45), Stage.CHIP_RUB: (90, 65)}
"""Minutes that both may take at most together, and those aimed at in a section.

The first are the customary closings; the second leave time to dry to the
touch and to look: assumed.
"""


def in_sections(steps: tuple[Step, ...]) -> tuple[Step, ...]:
    """Return the steps with pairs that cannot be done in time split by parts.

    The steps name whole places of one model.  Later sections get "-2",
    "-3" after the step's id; what waited for the step waits for all.  A pair
    with a gate of its own, or of one part, stays as it is.
    """
    found: list[Step] = []
    sections: dict[str, tuple[str, ...]] = {}
    at = 0
    while at < len(steps):
        pair = steps[at : at + 2]
        groups = _groups(*pair) if len(pair) == 2 else ()
        if len(groups) > 1:
            for number, parts in enumerate(groups, start=1):
                found += [_section(step, parts, number) for step in pair]
            for step in pair:
                sections[step.id] = tuple(_id(step, n) for n in range(1, len(groups) + 1))
        else:
            found.append(steps[at])
        at += len(pair) if len(groups) > 1 else 1
    return tuple(_waiting(step, sections) for step in found) if sections else steps


def _groups(laid: Step, soon: Step) -> tuple[tuple[str, ...], ...]:
    """Return the parts by sections; none or one where the pair stays together."""
    most, wanted = TOGETHER.get(soon.stage, (0, 0))
    same = set(laid.references()) == set(soon.references())
    if not most or not same or soon.gates or not laid.applications:
        return ()
    parts = _parts(laid.references())
    if _together(laid, soon, len(parts)) <= most:
        return ()
    size = len(parts)
    while size > 1 and _together(laid, soon, size) > wanted:
        size -= 1
    return tuple(parts[at : at + size] for at in range(0, len(parts), size))


def _together(laid: Step, soon: Step, parts: int) -> int:
    colours = len({application.coating for application in laid.applications})
    return laid.minutes.of(parts, colours) + soon.minutes.of(parts)


def _parts(references: Iterable[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name.partition("/")[0] for name in references))


def _id(step: Step, number: int) -> str:
    return step.id if number == 1 else f"{step.id[:57]}-{number}"


def _section(step: Step, parts: tuple[str, ...], number: int) -> Step:
    def mine(references: tuple[str, ...]) -> tuple[str, ...]:
        return tuple(name for name in references if name.partition("/")[0] in parts)

    applications = tuple(
        replace(application, places=places)
        for application in step.applications
        if (places := mine(application.places))
    )
    title = titled("{step}: {parts}", step=step.title or step.id, parts=", ".join(parts))
    return replace(
        step,
        id=_id(step, number),
        title=within(200, title),
        applications=applications,
        touches=mine(step.touches),
    )


def _waiting(step: Step, sections: dict[str, tuple[str, ...]]) -> Step:
    """Return a step that waits for every section of what it waited for."""
    own = {name for names in sections.values() if step.id in names for name in names}
    after: dict[str, None] = {}
    gates: list[Gate] = []
    for name in step.after:
        after.update(dict.fromkeys(sections.get(name, (name,))))
    for gate in step.gates:
        gates += [replace(gate, after=name) for name in sections.get(gate.after, (gate.after,))]
    kept = tuple(name for name in after if name not in own)
    return replace(step, after=kept, gates=tuple(gates))
