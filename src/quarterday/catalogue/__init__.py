"""Reads the reference data, and speaks wordings in the reader's language."""
