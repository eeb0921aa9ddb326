"""The project's tests; a package so that no other package of this name is found instead."""
