"""The bench sheet on paper: pages of text with boxes to tick, and the timeline."""
