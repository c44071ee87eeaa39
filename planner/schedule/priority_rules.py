"""Rules by which the instant answer chooses the next pass."""

from __future__ import annotations

from dataclasses import dataclass
from random import Random


@dataclass(frozen=True)
class Rule:
    """Weights by which the next pass is chosen.

    ``same_load`` and ``setup`` say what staying with the colour in the cup
    is worth, ``due`` how much lateness counts beside the longest tail,
    ``patience`` how long hands may rest for a better pass [min].
    """

    same_load: float = 240
    setup: float = 20
    due: float = 1.0
    patience: int = 0
    noise: float = 0.0


# Chosen on the demonstration projects: no one rule was best on all of them.
RULES = (
    Rule(same_load=2000, setup=60, due=0.3),
    Rule(setup=60, patience=15),
    Rule(patience=30),
    Rule(same_load=0, setup=5, due=0.5),
)


def drawn_rules(count: int, seed: int) -> tuple[Rule, ...]:
    """Return rules drawn at random; a longer draw begins with the shorter one."""
    random = Random(seed)  # noqa: S311 - a seeded search, not a secret
    return tuple(
        Rule(
            same_load=random.choice((0, 120, 480, 2000)),
            setup=random.choice((2, 20, 60)),
            due=random.random(),
            patience=random.choice((0, 5, 15, 30, 60)),
            noise=random.choice((60, 300, 1200)),
        )
        for _ in range(count)
    )
