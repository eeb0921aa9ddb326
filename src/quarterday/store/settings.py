"""Django's settings, from the environment; there is no secret in them."""

from __future__ import annotations

import os

from quarterday.store.place import chosen

_place = chosen(None, os.environ)
QUARTERDAY_HOME = _place.home
DATABASES = {"default": _place.database()}
INSTALLED_APPS = [
    "django.contrib.contenttypes",
    "django.contrib.auth",
    "django.contrib.sessions",
    "quarterday.store",
    "quarterday.people",
]
AUTH_USER_MODEL = "people.Person"
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"
USE_TZ = True
TIME_ZONE = "UTC"
USE_I18N = False  # the project speaks through its own wordings
PASSWORD_HASHERS = ["django.contrib.auth.hashers.Argon2PasswordHasher"]
