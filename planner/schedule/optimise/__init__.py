"""Better plans than the instant one, and proofs of how much better one can still be."""
