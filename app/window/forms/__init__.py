"""Forms, lists and controls that the views for what one owns share."""
