"""Bench time: the weeks as they come, and what makes them so."""
