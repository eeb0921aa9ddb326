"""The same reads and acts for programs: JSON over HTTP, described by OpenAPI.

No module here has ``from __future__ import annotations``: django-ninja reads the annotations of an
operation when it is declared, and cannot describe postponed ones.
"""
