"""The addresses of the web: the interface for programs, and else the desk's."""

from __future__ import annotations

from django.urls import include, path

from quarterday.api.urls import ROOT, api_patterns
from quarterday.desk import urls as desk

urlpatterns = [path(ROOT, include(api_patterns)), *desk.urlpatterns]
handler400, handler403 = desk.handler400, desk.handler403
handler404, handler500 = desk.handler404, desk.handler500
