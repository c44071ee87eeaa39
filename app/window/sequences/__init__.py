"""The Sequences view: finishing orders, given to models and kept in step with them."""
