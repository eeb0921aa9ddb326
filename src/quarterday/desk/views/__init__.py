"""The views, one module a page."""
