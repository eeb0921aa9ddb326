"""A mutation run on demand: whether the tests notice when the code is made wrong."""
