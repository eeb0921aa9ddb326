"""The desk as a Django application."""

from __future__ import annotations

from django.apps import AppConfig


class DeskConfig(AppConfig):
    """Pages, without tables of their own."""

    name = "quarterday.desk"
    label = "desk"
