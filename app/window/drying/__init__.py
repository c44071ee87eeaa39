"""Drying now: what opens, what closes, and how that is made known in time."""
