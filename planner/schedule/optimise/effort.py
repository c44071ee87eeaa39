"""How much work a search may do; apart from the search, which takes long to import."""

from __future__ import annotations

from dataclasses import dataclass

PROOF_WORK = (1.0, 4.0, 16.0, 60.0)  # deterministic seconds of the whole master, round by round


@dataclass(frozen=True)
class Effort:
    """How much work a search may do: rolls of all evenings, and rounds of proof."""

    rolls: int = 20
    proofs: int = len(PROOF_WORK)
