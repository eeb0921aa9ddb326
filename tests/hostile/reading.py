"""Read hostile inputs as the program does, and say how each ended.

An input ends well when it is read, or refused in a sentence. A traceback, more processor time than
allowed, or much memory kept is a fault of ours.
"""

from __future__ import annotations

import json
import random
import resource
import signal
import tempfile
import traceback
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from types import FrameType
from typing import Any, Literal

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.words import Words
from quarterday.intake.exposure import plan as exposure
from quarterday.intake.exposure.tables import codes
from quarterday.intake.forms import peek
from quarterday.intake.forms.proposal import Asked, Context
from quarterday.intake.forms.propose import propose
from quarterday.intake.forms.recognise import recognise
from quarterday.intake.forms.telling import sentence
from quarterday.intake.map import match
from quarterday.intake.parse import parse
from quarterday.intake.plan import plan
from quarterday.intake.preview import preview, understood
from quarterday.intake.write import write_csv, write_workbook
from quarterday.invent.demo.book import demo_book
from quarterday.office.calculating import CALCULATIONS, calculated
from quarterday.papers.fields import field_parts
from quarterday.papers.package import PAPERS
from quarterday.papers.parts import FORMS
from tests.hostile import spoiling
from tests.papers import given

SECONDS = 20  # of processor time for one input; a sound one takes well under one
SMALL = {"HW-1014", "HW-1024"}
End = Literal["read", "refused", "traceback", "too long"]
GIVEN: Mapping[str, Mapping[str, Any]] = {
    "coinsurance": {"value": "250000", "required": "0.8", "carried": "100000", "loss": "40000"},
    "index-value": {"value": "1000", "from": "2020-05-01", "to": "2027-01-01", "geography": "on"},
    "tax": {"province": "QC", "policy_start": "2026-12-01", "pay_on": "2027-02-01",
            "lines": [{"coverage": "building", "family": "property", "amount": "1000"}]},
    "apportion": {"amount": "100.01", "weights": {"a": "1", "b": "2"}},
    "apportion-table": {"cells": {"a": {"x": "1.005", "y": "2"}, "b": {"x": "3.3", "y": "0.1"}}},
    "instalments": {"plan": "three-cheques", "province": "ON", "start": "2027-01-15",
                    "premium": "9000", "fees": "50"},
    "earned": {"premium": "1200", "start": "2027-01-01", "end": "2028-01-01", "on": "2027-04-01"},
    "settle": {
        "terms": {"start": "2027-01-15", "coverages": [
            {"coverage": "building", "location": "hall", "limit": 100000, "deductible": 250,
             "coinsurance": 0.8}]},
        "values": [{"coverage": "building", "location": "hall", "value": 250000}],
        "losses": [{"cause": "fire", "place": "hall", "date_of_loss": "2027-06-01",
                    "amounts": {"building": 40000}}]},
}  # fmt: skip


class TooLong(BaseException):
    """Raised when reading one input takes too much processor time."""


@dataclass(frozen=True, slots=True)
class Tried:
    """How one input ended, and the traceback where it ended badly."""

    format: str
    number: int
    end: End
    why: str = ""


@contextmanager
def _within(seconds: float) -> Iterator[None]:
    def stop(_: int, __: FrameType | None) -> None:
        raise TooLong

    before = signal.signal(signal.SIGVTALRM, stop)
    signal.setitimer(signal.ITIMER_VIRTUAL, seconds)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        signal.signal(signal.SIGVTALRM, before)


def tried(format: str, number: int, read: Callable[[], object]) -> Tried:
    """Return how reading one input ended."""
    try:
        with _within(SECONDS):
            return Tried(format, number, _ended(read))
    except TooLong:
        return Tried(format, number, "too long")
    except Exception:  # noqa: BLE001 - whatever comes is what is looked for
        return Tried(format, number, "traceback", traceback.format_exc())


def _ended(read: Callable[[], object]) -> End:
    """Read, and speak the sentence of a refusal in both languages."""
    try:
        read()
    except Exception as error:
        said = getattr(error, "words", None)
        if not isinstance(said, Words):
            raise
        for language in ("en", "fr"):
            Speech(reference(), language).say(said)
        return "refused"
    return "read"


class Inputs:
    """Sound inputs of every format, to be spoiled."""

    def __init__(self, folder: Path) -> None:
        """Write the sound ones into ``folder``."""
        self.folder = folder
        accounts = [account for account in demo_book() if account.id in SMALL]
        pairs = [(account.id, record) for account in accounts for record in account.records]
        write_workbook(pairs, folder / "sound.xlsx")
        write_csv(pairs, folder / "sound")
        self.workbook = (folder / "sound.xlsx").read_bytes()
        self.tables = {p.name: p.read_text("utf-8-sig") for p in (folder / "sound").glob("*.csv")}
        self._pdf = b""

    @property
    def pdf(self) -> bytes:
        """A package with all its forms."""
        if not self._pdf:
            self._pdf = given.package().pdf
        return self._pdf

    def workbook_read(self, chance: random.Random) -> None:
        """Spoil and read a workbook."""
        spoil = spoiling.of_bytes if chance.random() < 0.2 else spoiling.of_package
        path = self.folder / "spoiled.xlsx"
        path.write_bytes(spoil(self.workbook, chance))
        _loaded(path)

    def csv_read(self, chance: random.Random) -> None:
        """Spoil one or two tables of a folder and read it."""
        folder = self.folder / "spoiled"
        folder.mkdir(exist_ok=True)
        aims = chance.sample(sorted(self.tables), 2)
        for name, text in self.tables.items():
            data = spoiling.of_csv(text, chance) if name in aims else text.encode()
            (folder / name).write_bytes(data)
        _loaded(folder)

    @cached_property
    def asked(self) -> Mapping[str, Asked]:
        """What the package's forms ask."""
        of, found = given.setting(), {}
        for paper in PAPERS:
            before = len(of.fields.described)
            if paper.id in FORMS and paper.reason(of) is not None:
                paper.data(of)
            for one in of.fields.described[before:]:
                parts = field_parts(one.name)
                found[one.name] = Asked(paper.id, one.name, parts, one.tip, one.value, one.options)
        return found

    def pdf_read(self, chance: random.Random) -> None:
        """Spoil a form's bytes or its fields; look into it, and tell what it would change."""
        spoil = spoiling.of_bytes if chance.random() < 0.4 else spoiling.of_form
        looked = peek.look(spoil(self.pdf, chance), "spoiled.pdf")
        found = recognise(looked, {}, [given.FLAGSHIP])
        for one in found if isinstance(found, tuple) else ():
            file = given.book()[given.FLAGSHIP]
            context = Context(one.stamp, one.answers, self.asked, file, file, reference(),
                              given.AS_OF)  # fmt: skip
            made = propose(context)
            for language in ("en", "fr"):
                say = Speech(reference(), language).say
                for told in made.notes:
                    say(told)
                for proposal in made.proposals:
                    say(sentence(proposal))
                    say(proposal.why or "")

    def json_read(self, chance: random.Random) -> None:
        """Spoil the inputs of a calculation and run it."""
        name = chance.choice(sorted(GIVEN.keys() & CALCULATIONS.keys()))
        given = spoiling.of_json(GIVEN[name], chance)
        if isinstance(given, dict):
            text = json.dumps(given)
            plain = json.loads(text, parse_float=str, parse_constant=str)
            json.dumps(calculated(name, plain, reference(), Speech(reference(), "en")))


def _loaded(path: Path) -> None:
    """Read, plan and tell what loading would do, as a preview on an empty store does."""
    parsed = parse(path)
    if exposure.is_exposure(parsed):
        made = exposure.plan(parsed, lambda _: None, codes(), reference())
    else:
        made = plan(parsed, match(parsed), lambda _: None, reference())
    for language in ("en", "fr"):
        speech = Speech(reference(), language)
        for said in (*understood(made.map), *preview(made)):
            speech.say(said)
    made.drafts(accept_with_errors=True)


FORMATS: Mapping[str, Callable[[Inputs, random.Random], None]] = {
    "workbook": Inputs.workbook_read,
    "csv": Inputs.csv_read,
    "pdf": Inputs.pdf_read,
    "json": Inputs.json_read,
}


def run(format: str, count: int, seed: int) -> Iterator[Tried]:
    """Spoil and read ``count`` inputs of a format, each from its own number and the seed."""
    with tempfile.TemporaryDirectory() as folder:
        inputs = Inputs(Path(folder))
        for number in range(count):
            chance = random.Random(f"{seed}/{format}/{number}")
            yield tried(format, number, lambda c=chance: FORMATS[format](inputs, c))  # type: ignore[misc]


def megabytes() -> int:
    """Return the most memory that this process has held."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
