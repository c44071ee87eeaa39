"""Use cases shared by the window and the command line; no Qt in here."""
