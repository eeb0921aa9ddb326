"""The broker's web pages: the day, a file, and the acts on it."""
