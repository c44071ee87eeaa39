"""What is done to several models at once, each by one command: orders, dates, mends, more."""
