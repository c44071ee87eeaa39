"""Shopping: what to buy until when, whether there is enough for all, what can be touched up."""
