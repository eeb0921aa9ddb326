"""What a web server runs."""

from __future__ import annotations

import os
from contextlib import suppress

os.environ["DJANGO_SETTINGS_MODULE"] = "quarterday.desk.settings"

from django.core.wsgi import get_wsgi_application

from quarterday.catalogue.problems import BadReference
from quarterday.office import worker

application = get_wsgi_application()
with suppress(BadReference):  # whoever asks for a page is told
    worker.warm()
