"""What happens at the bench, and what the model and its logbook become by it."""
