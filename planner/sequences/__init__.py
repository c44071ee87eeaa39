"""Sequences: giving them to models, saving them from models, and what changed since."""
