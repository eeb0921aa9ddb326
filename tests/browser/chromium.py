"""The browser of the tests: the system's Chromium, reaching nothing but the tests' server."""

from __future__ import annotations

import shutil

CHROMIUM = shutil.which("chromium") or ""
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-sync",
         "--disable-background-networking", "--disable-component-update"]  # fmt: skip
