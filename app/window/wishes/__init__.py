"""Wishes: pins and what counts most, tried before they are written down."""
