"""What the logbook teaches: this person's minutes, and this room's drying."""
