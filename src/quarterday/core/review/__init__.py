"""The review: rules over a file, their findings in order, and the leaders' agenda."""
