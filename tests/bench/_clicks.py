"""People at the desk: each signs in, clicks every three seconds, and notes how long it took."""

from __future__ import annotations

import random
import re
from collections import defaultdict
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from http.cookiejar import CookieJar
from math import ceil
from time import monotonic, perf_counter, sleep
from urllib.parse import quote, urlencode
from urllib.request import HTTPCookieProcessor, build_opener

PEOPLE, EACH = 20, 3.0  # people, and seconds between two clicks of one
WARM, COUNTED = 15.0, 120.0  # seconds left out at first, and seconds that count
# clicks on each page in a hundred: our own guess of a morning, no source
MIX = {
    "day": 30, "search": 15, "narrowed": 10, "file": 25, "why": 8, "diary": 5, "history": 4,
    "edit": 3,
}  # fmt: skip
SOUGHT = ("church", "hall", "saint", "food bank", "B0001", "50%")
_FILE = re.compile(r'href="(/files/[^/"]+/)"')
_WHY = re.compile(r'hx-get="(/files/[^"]+/why/[^"]+)"')
_TOKEN = re.compile(r'name="csrfmiddlewaretoken" value="([^"]+)"')
Waited = Mapping[str, list[float]]


class Clicker:
    """Somebody at the desk, with a browser's cookies and dice of their own."""

    def __init__(self, base: str, seed: int) -> None:
        self.base = base
        self.dice = random.Random(seed)
        self.browser = build_opener(HTTPCookieProcessor(CookieJar()))
        self.files: list[str] = []
        self.why = ""
        self.waited: dict[str, list[float]] = defaultdict(list)

    def ask(self, path: str, form: Mapping[str, str] | None = None) -> str:
        """Return a page; HTTPError for an answer that is none."""
        data = urlencode(form).encode() if form else None
        with self.browser.open(self.base + path, data, timeout=60) as answer:
            return str(answer.read().decode())

    def sign_in(self, email: str, password: str) -> None:
        """Sign in as a browser does, and look at the day."""
        token = _TOKEN.search(self.ask("/sign-in/"))
        assert token, "the page to sign in has no token"
        form = {"csrfmiddlewaretoken": token[1], "email": email, "password": password}
        self.read("day", self.ask("/sign-in/", form))
        assert self.files, "nobody was signed in, or the day is empty"

    def address(self, page: str) -> str:
        """Return where a click goes."""
        file = self.dice.choice(self.files)
        return {
            "day": f"/?page={self.dice.randint(1, 8)}",
            "search": f"/?from=&until=&q={quote(self.dice.choice(SOUGHT))}",
            "narrowed": f"/?only={self.dice.choice(('late', 'impossible', 'leaders'))}",
            "file": file,
            "why": self.why or file,
            "diary": "/diary/",
            "history": f"{file}history/",
            "edit": f"{file}edit/?kind=organisation&key=",
        }[page]

    def read(self, page: str, text: str) -> None:
        """Remember what a page offers to click on."""
        if page in {"day", "search", "narrowed"}:
            self.files = _FILE.findall(text) or self.files
        if page == "file":
            found = _WHY.findall(text)
            self.why = self.dice.choice(found).replace("&amp;", "&") if found else ""

    def work(self, begin: float) -> None:
        """Click until the time is over, each click three seconds after the one before."""
        at = begin + self.dice.random() * EACH
        while at < begin + WARM + COUNTED:
            sleep(max(0.0, at - monotonic()))
            page = self.dice.choices([*MIX], [*MIX.values()])[0]
            started = perf_counter()
            text = self.ask(self.address(page))
            if at >= begin + WARM:
                self.waited[page].append((perf_counter() - started) * 1000)
            self.read(page, text)
            at = max(at + EACH, monotonic())


def drive(base: str, email: str, password: str) -> Waited:
    """Let twenty people click, and return the milliseconds they waited, by page."""
    clickers = [Clicker(base, seed) for seed in range(PEOPLE)]
    for one in clickers:
        one.sign_in(email, password)
    begin = monotonic()
    with ThreadPoolExecutor(PEOPLE) as pool:
        for done in [pool.submit(one.work, begin) for one in clickers]:
            done.result()
    pages = sorted({page for one in clickers for page in one.waited})
    return {page: [ms for one in clickers for ms in one.waited[page]] for page in pages}


def percentile(values: list[float], share: float) -> float:
    """Return the smallest value that at least this share of the values does not exceed."""
    return sorted(values)[max(ceil(len(values) * share) - 1, 0)]
