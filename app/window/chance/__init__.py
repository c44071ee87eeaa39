"""How sure the dates are, what decides them and what would help, beside the plan."""
