"""First run: three short questions from an empty book to a plan, worked by keys alone."""
