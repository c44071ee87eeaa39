"""What an evening asks: before wet films, for other work done, and when it closes."""
