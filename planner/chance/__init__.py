"""How sure a date is, what decides it and what would help (definitions 29 and 30)."""
