"""Workbooks, CSV folders, PDF forms and JSON, spoiled at random from a seed, and read."""
