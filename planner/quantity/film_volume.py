"""From an area and a film to a volume, by identity of volumes.

Figures are estimates: what is lost on the way to the model is reckoned by
``planner.quantity.transfer``, what stays in the cup by
``planner.quantity.loads``.
"""

from __future__ import annotations

from planner.values.refusal import number_in


def spreading_rate_m2_l(solids: float, dry_film_um: float) -> float:
    """Return the theoretical spreading rate [m²/l], by identity of volumes.

    ``solids`` is the volume solids as a fraction, ``dry_film_um`` the dry
    film [µm].  Multiply by the transfer for the practical rate.
    """
    _check(solids, dry_film_um)
    return 1000 * solids / dry_film_um


def wet_film_um(dry_film_um: float, solids: float, thinner: float = 0.0) -> float:
    """Return the wet film that dries to ``dry_film_um`` [µm].

    ``thinner`` is what was added per volume of coating (UFC 3-190-06
    paragraph 2.1.5 for the unthinned coating).
    """
    _check(solids, dry_film_um)
    number_in(thinner, 0, 100, "thinner")
    return dry_film_um * (1 + thinner) / solids


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
