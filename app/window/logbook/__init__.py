"""The logbook: what was done, what happened, and what it teaches."""
