"""The timeline: what it shows, where that lies, how it is painted, and the tree beside it."""
