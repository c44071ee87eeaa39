"""Gear: airbrushes and what they cost, and the places where films dry."""
