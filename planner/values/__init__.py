"""Frozen values of the domain, validated on construction."""
