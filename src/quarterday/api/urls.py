"""The addresses of the interface."""

from django.http import HttpRequest, HttpResponse
from django.urls import URLPattern, URLResolver, path, re_path

from quarterday.api.problems import Problem, answer
from quarterday.api.service import service

ROOT = "api/"


def nothing(request: HttpRequest) -> HttpResponse:
    """Answer that there is nothing at this address."""
    return answer(request, Problem("not-found"))


api_patterns: list[URLPattern | URLResolver] = [path("v1/", service.urls), re_path("", nothing)]
