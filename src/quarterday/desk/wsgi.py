"""What a web server runs."""

from __future__ import annotations

import os

os.environ["DJANGO_SETTINGS_MODULE"] = "quarterday.desk.settings"

from django.core.wsgi import get_wsgi_application

application = get_wsgi_application()
