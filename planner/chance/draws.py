"""Random numbers that belong to things and not to their turn.

Each thing (a pass, a film, a session, the room) has a stream of its own,
seeded by its name.  Two plans of one book therefore meet the same slow
primer and the same lost Thursday, and differ by what differs between them.

References
----------
Law, Simulation Modeling and Analysis, 5th ed., section 11.2: common random
numbers, synchronised by what each is used for.
"""

from __future__ import annotations

from hashlib import blake2b

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]
Minutes = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]
Runs = npt.NDArray[np.intp]


class Draws:
    """The draws of ``runs`` runs; the same seed gives the same ones, whatever asks first."""

    def __init__(self, runs: int, seed: int = 0) -> None:
        self.runs = runs
        self.seed = seed
        self._normal: dict[tuple[object, ...], Floats] = {}
        self._uniform: dict[tuple[object, ...], Floats] = {}

    def stream(self, *name: object) -> np.random.Generator:
        """Return a stream of its own for what is called ``name``."""
        text = "\x1f".join(map(str, (self.seed, *name)))
        return np.random.Generator(
            np.random.Philox(key=int.from_bytes(blake2b(text.encode(), digest_size=16).digest()))
        )

    def normal(self, *name: object) -> Floats:
        """Return standard normal draws, one a run; never to be changed."""
        found = self._normal.get(name)
        if found is None:
            found = self._normal[name] = self.stream("n", *name).standard_normal(self.runs)
        return found

    def uniform(self, *name: object) -> Floats:
        """Return draws in [0, 1), one a run; never to be changed."""
        found = self._uniform.get(name)
        if found is None:
            found = self._uniform[name] = self.stream("u", *name).random(self.runs)
        return found
