"""What axe-core finds on a page: the rules of WCAG 2.2, A and AA, that an engine can judge."""

from __future__ import annotations

from importlib import resources
from typing import Any

from playwright.sync_api import Page

TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]
WCAG = {"runOnly": {"type": "tag", "values": TAGS}, "resultTypes": ["violations"]}
ENGINE = (resources.files("axe_playwright_python") / "axe.min.js").read_text("utf-8")
Found = list[tuple[str, str]]


def violations(page: Page) -> Found:
    """Return each rule that a page breaks, with the beginning of what breaks it."""
    if not page.evaluate("Boolean(window.axe)"):
        page.evaluate(ENGINE)
    found: Any = page.evaluate("(options) => axe.run(document, options)", WCAG)
    assert len(found["passes"]) > 5
    return [(v["id"], n["html"][:160]) for v in found["violations"] for n in v["nodes"]]
