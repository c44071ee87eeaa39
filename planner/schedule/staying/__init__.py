"""Staying near the plan that is there: repairing it, and what may take its place (27a)."""
