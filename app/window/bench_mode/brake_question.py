"""The question of the bench mode before work over a film that is not ready.  No Qt."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from app.service.film_brake import GoOn, HeldUp
from app.window import words
from app.window.bench_mode.choice_prompt import Asked, Line
from app.window.evening import brake_words
from app.window.plan_snapshot import PlanSnapshot

Noted = Callable[[HeldUp | None, GoOn | None], None]
FILMS_TOLD = 2


def ask_first(
    held: HeldUp | None,
    picture: PlanSnapshot,
    now: int,
    noted: Noted,
    ask: Callable[[Asked], None],
    *,
    done: bool,
) -> None:
    """Note work at once, or ask how it goes on; Escape waits."""
    if held is None:
        noted(None, None)
        return
    ask(brake_question(held, picture, now, noted, done=done))


def brake_question(
    held: HeldUp, picture: PlanSnapshot, now: int, noted: Noted, *, done: bool
) -> Asked:
    """Return the question: wait, it is dry, or all the same."""
    zone = picture.zone
    about = [
        line for one in held.found[:FILMS_TOLD] for line in brake_words.film_lines(one, zone, now)
    ]
    lines = [Line(words.tr("Wait"), brake_words.wait_words(held, zone, now), lambda: None)]
    if held.by_looking:
        lines.append(
            Line(
                brake_words.looked_words(),
                words.tr("noted as a look: it sets the pace of this film"),
                partial(noted, held, GoOn.LOOKED),
            )
        )
    lines.append(
        Line(
            brake_words.all_the_same_words(done=done),
            words.tr("it stands marked in timeline, logbook and record"),
            partial(noted, held, GoOn.ALL_THE_SAME),
        )
    )
    return Asked(brake_words.title_words(held, done=done), tuple(lines), tuple(about))
