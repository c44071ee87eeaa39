"""Projects to try Tackfree on; all invented."""
