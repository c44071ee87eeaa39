"""The Build view: what stands on the table, in which order it is worked on, and what waits."""
