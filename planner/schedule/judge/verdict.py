"""What the judge answers."""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.plan import Cost


@dataclass(frozen=True, order=True)
class Violation:
    """One thing that a plan does against a definition.

    ``about`` names the pass, project, airbrush or pin concerned; ``message``
    says in plain words what is wrong, with the times.
    """

    definition: int
    about: str
    message: str

    def __str__(self) -> str:
        return f"definition {self.definition}: {self.about}: {self.message}"


@dataclass(frozen=True)
class Verdict:
    """Whether a plan is feasible, and what it costs.

    Attributes
    ----------
    violations
        Everything that is against a definition; none in a feasible plan.
    flags
        What is allowed but should be known: windows judged at nominal
        values (definition 9), pins that became preferences (definition 24).
    cost, finishes
        As the judge computes them; nothing is taken from the plan but
        ``moved``, which needs the plan before it.
    """

    violations: tuple[Violation, ...]
    flags: tuple[str, ...]
    cost: Cost
    finishes: tuple[tuple[str, int], ...]

    @property
    def accepted(self) -> bool:
        """Tell whether nothing is against a definition."""
        return not self.violations

    @property
    def definitions(self) -> frozenset[int]:
        """The definitions that are violated."""
        return frozenset(violation.definition for violation in self.violations)
