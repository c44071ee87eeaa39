"""The bench mode: one piece of work at a time, in letters that are read from where one works."""
