"""The drying laws against published figures, series by series.

Run from the repository: ``PYTHONPATH=tests python tests/benchmarks/drying.py``.
"""

from __future__ import annotations

from collections import defaultdict
from statistics import fmean

from cure_rooms import points, room
from published_drying import LEAST, RATIOS, STAGES_TOLD, TEMPERATURE, UTC

from planner.cure import Band, Cure, Film


def main() -> None:
    """Print the model's ratio beside the published one, and the errors by family."""
    by_family: dict[str, list[float]] = defaultdict(list)
    wrong = 0
    for series in TEMPERATURE:
        errors = series.errors()
        by_family[series.family] += errors
        print(f"{series.family}: {series.name} ({series.source})")
        rows = zip(series.told[1:], series.published()[1:], series.modelled()[1:], strict=True)
        for ((warmth, _), told, ours), error in zip(rows, errors, strict=True):
            against = (told - 1) * (ours - 1) < 0
            wrong += against
            mark = "  WRONG DIRECTION" if against else ""
            print(f"  {warmth:5.1f} °C  told {told:6.3f}  ours {ours:6.3f}  {error:+.2f}{mark}")
        mean, worst = fmean(map(abs, errors)), max(map(abs, errors))
        print(f"  mean {mean:.2f}, worst {worst:.2f}")
    print()
    for family, errors in by_family.items():
        mean, worst = fmean(map(abs, errors)), max(map(abs, errors))
        print(f"{family}: {len(errors)} ratios, mean |ln| {mean:.3f}, worst {worst:.2f}")
    every = [abs(error) for errors in by_family.values() for error in errors]
    print(f"all: {len(every)} ratios, mean |ln| {fmean(every):.3f}, wrong direction {wrong}")
    print("\nother ratios: published, ours")
    for ratio in RATIOS:
        least = "at least " if ratio.least else ""
        print(
            f"  {ratio.family}: {ratio.name}: {least}{ratio.told:.2f}  {ratio.ours():.2f}"
            f"  {ratio.error():+.2f}"
        )
    print("\nleast waits: published, ours surely [h]")
    for least in LEAST:
        early = "" if least.surely() >= least.hours else "  TOO EARLY"
        print(
            f"  {least.what}, {least.temperature_c:g} °C: "
            f"{least.hours:.1f}  {least.surely():.1f}{early}"
        )
    print("\nstages of one product: published, ours early to late [h]")
    for name, coating, warmth, told in STAGES_TOLD:
        cure = Cure(room(*points(("00:00", warmth, 50.0))), UTC)
        film = Film(coating, coating.dry_film_um, "bench", 0)
        for state, hours in told:
            ends = [cure.ready_at(film, state, band) for band in (Band.EARLY, Band.LATE)]
            shown = " to ".join("never" if end is None else f"{end / 60:.1f}" for end in ends)
            print(f"  {name}, {state}: {hours:g}  {shown}")


if __name__ == "__main__":
    main()
