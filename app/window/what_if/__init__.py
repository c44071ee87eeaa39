"""What if: changes tried beside the plan, compared with it, then kept or dropped."""
