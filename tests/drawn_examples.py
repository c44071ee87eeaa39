"""How many examples a property draws, and which."""

from __future__ import annotations

from typing import Any

from hypothesis import HealthCheck, settings

PROFILE = "tackfree"
USUAL = 100


def load_profile(asked: int) -> None:
    """Draw the same examples on every machine, or ``asked`` new ones of each property (0: none)."""
    settings.register_profile(
        PROFILE,
        deadline=None,  # a busy machine is no fault of the code
        derandomize=not asked,
        max_examples=asked or USUAL,
        suppress_health_check=[HealthCheck.too_slow],
    )
    settings.load_profile(PROFILE)


def drawn(examples: int, *suppressed: HealthCheck, **rest: Any) -> settings:
    """Return the settings of a property that draws ``examples``, or as many as ``--drawn`` asks."""
    profile = settings.get_profile(PROFILE)
    return settings(
        profile,
        max_examples=examples if profile.derandomize else profile.max_examples,
        suppress_health_check=[*profile.suppress_health_check, *suppressed],
        **rest,
    )
