"""The guide holds: its examples are run as they stand, and it names every address that there is."""

from __future__ import annotations

import json
import re
import shlex
from collections.abc import Callable, Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from tests.api.conftest import ROOT, Program

from quarterday.api.service import described
from quarterday.people.access_keys import MOST_A_MINUTE

GUIDE = Path(__file__).parents[2] / "docs" / "api.md"
EXAMPLE = re.compile(r"```sh\n(curl .*?)\n```\n\n```json\n(.*?)\n```", re.DOTALL)
ELIDED = "…"
CSV = b"account,name,province,office\nHW-7777,A new hall,ON,port-ellery\n"


def examples() -> list[tuple[str, Any]]:
    return [(command, json.loads(shown)) for command, shown in EXAMPLE.findall(GUIDE.read_text())]


def run(command: str, program: Program) -> Any:
    """Return what a curl command of the guide is answered: its -H, -d, -F and its address."""
    words = shlex.split(command)
    headers, body, form = {}, None, False
    for option, said in pairwise(words):
        if option == "-H" and said != "$KEY":
            name, _, value = said.partition(": ")
            headers[name] = value
        body = said if option == "-d" else body
        form = form or option == "-F"
    headers.pop("Content-Type", None)
    path = words[-1].replace("$QD", ROOT)
    if form:
        return program.send(path, "organisations.csv", CSV).json()
    if body is not None:
        return program.post(path, body, **headers).json()
    return program.get(path, **headers).json()


def holds(answer: Any, shown: Any) -> bool:
    """Tell whether an answer has all that is shown of it; ``…`` stands for anything."""
    if shown == ELIDED:
        return answer is not None
    if isinstance(shown, dict):
        return all(key in answer and holds(answer[key], part) for key, part in shown.items())
    if isinstance(shown, list):
        return len(answer) == len(shown) and all(map(holds, answer, shown))
    return bool(answer == shown)


@pytest.mark.parametrize(("command", "shown"), examples())
def test_each_example_answers_as_it_is_shown(
    command: str, shown: Any, book: None, program: Callable[[str], Program]
) -> None:
    answer = run(command, program("ann"))
    assert holds(answer, shown), json.dumps(answer, indent=1)[:1500]


def test_an_example_that_is_wrong_would_be_noticed() -> None:
    assert len(examples()) >= 7
    assert not holds({"a": [1]}, {"a": [2]})
    assert not holds({"a": 1}, {"b": ELIDED})
    assert not holds({"a": [1, 2]}, {"a": [1]})


def named() -> Iterator[str]:
    """Yield the addresses that the tables of the guide name, without their parameters."""
    for cell in re.findall(r"^\| (.*?) \|", GUIDE.read_text(), re.MULTILINE):
        base = ""
        for said in re.findall(r"`(?:POST )?(/[^`?]*)", cell):
            if said.startswith("/files/FILE/"):
                base = "/files/FILE"
            short = base and not said.startswith(("/files", "/forms", "/loads"))
            yield base + said if short else said


def test_every_address_is_in_the_guide_and_none_that_is_not_there() -> None:
    known = {
        re.sub(r"{(\w+)}", lambda m: m[1].upper(), path.removeprefix(ROOT))
        for path in described()["paths"]
    }
    known -= {"/problems", "/loads/TOKEN"}  # named in the text
    assert set(named()) == known


def test_the_limits_that_the_guide_names_are_those_that_hold(settings: Any) -> None:
    text = GUIDE.read_text()
    assert f"{MOST_A_MINUTE} requests of one key within a minute" in text
    assert f"JSON may have {settings.DATA_UPLOAD_MAX_MEMORY_SIZE // 1024 // 1024} MB" in text
    assert f"a document {settings.MOST_UPLOADED // 1024 // 1024} MB" in text
