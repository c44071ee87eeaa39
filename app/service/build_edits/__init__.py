"""Edits of what stands on the table: models, parts, places, steps and their order.

Pure functions from a book to an `Edit`.  Models that an edit does not name
stay the very same objects, so that nothing is worked out for them again.
What would leave the book unsound, or a logged fact without its step, is
refused in one line.
"""
