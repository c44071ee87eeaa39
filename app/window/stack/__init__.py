"""The Coat stack view: the films of one place as a cross-section, with verdicts and mends."""
