"""The Room view: the air ahead, how long each coating takes in it, and one film's course."""
