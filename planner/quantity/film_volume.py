"""From an area and a film to a volume, by identity of volumes.

Figures are estimates: what is lost on the way to the model is reckoned by
``planner.quantity.transfer``, what stays in the cup by
``planner.quantity.loads``.
"""

from __future__ import annotations

from planner.values.refusal import number_in


def amount_ml(
    area_cm2: float, dry_film_um: float, solids: float, fraction: float, coats: int = 1
) -> float:
    """Return the volume to lay ``coats`` coats on an area [ml].

    V = A × film × coats / (10 000 × solids × fraction), A in cm² and the film in
    µm (1 cm² × 1 µm = 1/10 000 ml); ``fraction`` is what stays on the model.
    """
    _check(solids, dry_film_um)
    number_in(fraction, 0.01, 1, "fraction")
    return area_cm2 * dry_film_um * coats / (10_000 * solids * fraction)


def _check(solids: float, dry_film_um: float) -> None:
    number_in(solids, 1e-6, 1, "solids")
    number_in(dry_film_um, 1e-3, 1e5, "dry_film_um", "µm")
