"""Translations of the window: the texts of a language and what finds them."""
