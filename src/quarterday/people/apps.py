"""The people as a Django application."""

from __future__ import annotations

from django.apps import AppConfig


class PeopleConfig(AppConfig):
    """People, grants, attempts, and what waits for a person."""

    name = "quarterday.people"
    label = "people"
    default_auto_field = "django.db.models.BigAutoField"
