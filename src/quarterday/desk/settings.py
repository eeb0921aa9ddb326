"""The web's settings: the store's, and what pages need.

The key that signs cookies lies in the store's folder; before a store is started there is none, and
a passing one stands in, with which nobody can stay signed in.
"""

from __future__ import annotations

import os
import secrets
from pathlib import Path

from quarterday.store.settings import *  # noqa: F403 - Django's own way to extend settings
from quarterday.store.settings import INSTALLED_APPS as _STORE_APPS
from quarterday.store.settings import QUARTERDAY_HOME

KEY_FILE = "web.key"
_key = QUARTERDAY_HOME / KEY_FILE
_HERE = Path(__file__).parent

SECRET_KEY = _key.read_text("ascii") if _key.is_file() else secrets.token_urlsafe(50)
DEBUG = False
ALLOWED_HOSTS = os.environ.get("QUARTERDAY_HOSTS", "localhost 127.0.0.1 [::1]").split()
IS_SECURE = os.environ.get("QUARTERDAY_HTTPS", "") == "yes"  # it is served by https only
ROOT_URLCONF = "quarterday.addresses"
WSGI_APPLICATION = "quarterday.desk.wsgi.application"

INSTALLED_APPS = [
    *_STORE_APPS,
    "django.contrib.messages",
    "django.contrib.staticfiles",
    "django_htmx",
    "quarterday.desk",
]
MIDDLEWARE = [
    "quarterday.desk.guard.SecurityHeaders",
    "django.middleware.security.SecurityMiddleware",
    "quarterday.api.guard.Problems",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "django.contrib.sessions.middleware.SessionMiddleware",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "quarterday.desk.guard.SignedIn",
    "django.contrib.messages.middleware.MessageMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
    "django_htmx.middleware.HtmxMiddleware",
    "quarterday.desk.guard.Told",
]
TEMPLATES = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "DIRS": [],
        "APP_DIRS": True,
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.contrib.messages.context_processors.messages",
                "quarterday.desk.context.shared",
            ],
            "builtins": ["quarterday.desk.templatetags.desk"],
        },
    },
]

AUTHENTICATION_BACKENDS = ["django.contrib.auth.backends.ModelBackend"]
SESSION_COOKIE_AGE = 10 * 3600  # a working day
SESSION_COOKIE_HTTPONLY = CSRF_COOKIE_HTTPONLY = True
SESSION_COOKIE_SAMESITE = CSRF_COOKIE_SAMESITE = "Lax"
SESSION_COOKIE_SECURE = CSRF_COOKIE_SECURE = IS_SECURE
SESSION_COOKIE_NAME, CSRF_COOKIE_NAME = "quarterday_session", "quarterday_csrf"
CSRF_FAILURE_VIEW = "quarterday.desk.views.errors.csrf"
MESSAGE_STORAGE = "django.contrib.messages.storage.session.SessionStorage"
SECURE_CONTENT_TYPE_NOSNIFF = True
SECURE_REFERRER_POLICY = "same-origin"
SECURE_HSTS_SECONDS = 31_536_000 if IS_SECURE else 0
SECURE_SSL_REDIRECT = IS_SECURE
X_FRAME_OPTIONS = "DENY"

MOST_UPLOADED = 30 * 1024 * 1024
DATA_UPLOAD_MAX_MEMORY_SIZE = 2 * 1024 * 1024  # a form's text; files are counted apart
DATA_UPLOAD_MAX_NUMBER_FIELDS = 2000
FILE_UPLOAD_PERMISSIONS = 0o600

STATIC_URL = "/static/"
WHITENOISE_USE_FINDERS = True
WHITENOISE_AUTOREFRESH = False
STORAGES = {
    "default": {"BACKEND": "django.core.files.storage.InMemoryStorage"},
    "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"},
}
LOGGING = {
    "version": 1,
    "disable_existing_loggers": False,
    "filters": {"no_secret": {"()": "quarterday.desk.log.NoSecretAddress"}},
    "handlers": {"err": {"class": "logging.StreamHandler", "filters": ["no_secret"]}},
    "loggers": {"django": {"handlers": ["err"], "level": "WARNING", "propagate": False}},
}
SILENCED_SYSTEM_CHECKS = ["security.W004", "security.W008", "security.W012", "security.W016"]
