"""Who may come in: the manager's page, the demo's two visitors, and the terminal."""

from __future__ import annotations

import os
from datetime import date
from pathlib import Path
from shutil import copyfile
from typing import Any

import pytest
from click.testing import CliRunner
from django.test import Client
from tests.desk.conftest import As

from quarterday.cli.main import cli
from quarterday.invent.demo.book import HERE
from quarterday.office import demo_people
from quarterday.office.books import MARK
from quarterday.office.trouble import Trouble
from quarterday.people.models import Grant, Person
from quarterday.store.place import HOME

NEW = {"name": "Zoë Ng", "email": "Zoe@Holliswren.example.org", "licence": "", "language": "fr",
       "role-val-aubry": "colleague"}  # fmt: skip


def test_a_manager_adds_somebody_who_then_changes_the_password_shown_once(
    book: None, signed_in: As
) -> None:
    browser = signed_in("maria")
    page = browser.post("/people/", NEW)
    person, secret = page.context["shown"]
    assert secret in page.content.decode()
    assert secret not in browser.get("/people/").content.decode()
    assert [(g.office, g.role) for g in person.grants.all()] == [("val-aubry", "colleague")]
    there = Client()
    there.post("/sign-in/", {"email": "zoe@holliswren.example.org", "password": secret})
    assert there.get("/")["Location"] == "/password/"


@pytest.mark.parametrize(
    "change",
    [{"email": "no address"}, {"name": " "}, {"role-val-aubry": "emperor"}, {"language": "xx"},
     {"email": "ANN@holliswren.example.org"}],
)  # fmt: skip
def test_a_person_who_is_not_whole_is_refused(
    change: dict[str, str], book: None, signed_in: As
) -> None:
    before = Person.objects.count()
    assert signed_in("maria").post("/people/", {**NEW, **change}).status_code == 422
    assert Person.objects.count() == before


def test_a_manager_changes_roles_and_shuts_somebody_out(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    browser, ann = signed_in("maria"), signed_in("ann")
    form = {"licence": "X-1", "language": "fr", "role-val-aubry": "read-only"}
    browser.post(f"/people/{people['ann'].pk}/", form)
    kept = Person.objects.get(pk=people["ann"].pk)
    assert (kept.licence, kept.language, kept.is_active) == ("X-1", "fr", False)
    assert [(g.office, g.role) for g in kept.grants.all()] == [("val-aubry", "read-only")]
    assert ann.get("/").status_code == 302


def test_a_manager_cannot_lock_themselves_out(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    form = {"licence": "", "language": "en", "role-*": "read-only", "active": "yes"}
    answer = signed_in("maria").post(f"/people/{people['maria'].pk}/", form)
    assert answer.status_code == 422
    assert Grant.objects.get(person=people["maria"]).role == "manager"


def test_a_new_password_also_asks_for_a_new_second_factor(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    Person.objects.filter(pk=people["ann"].pk).update(factor="kept")
    page = signed_in("maria").post(f"/people/{people['ann'].pk}/", {"renew": "yes"})
    kept = Person.objects.get(pk=people["ann"].pk)
    assert kept.check_password(page.context["shown"][1])
    assert (kept.factor, kept.must_change) == ("", True)


@pytest.fixture
def demo(own_store: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A started store in a folder that the demo made."""
    home = Path(os.environ[HOME])
    (home.parent / MARK).touch()
    copyfile(HERE / "brokerage.yaml", home / "brokerage.yaml")
    return home


def test_a_demo_lets_two_visitors_in_without_a_factor_on_its_own_day(demo: Path) -> None:
    made = demo_people.visitors(date(2026, 11, 25))
    assert [v.role for v in made] == ["owner", "manager"]
    assert len({v.password for v in made}) == 2
    assert demo_people.today() == date(2026, 11, 25)
    assert not demo_people.needs_factor()
    for visitor in made:
        person = Person.objects.get(email=visitor.email)
        assert person.check_password(visitor.password)
        assert not person.must_change
    again = demo_people.visitors(date(2026, 11, 25))
    assert Person.objects.count() == 2
    assert not Person.objects.get(email=again[0].email).check_password(made[0].password)


def test_a_store_that_no_demo_made_is_never_opened_like_one(own_store: str) -> None:
    home = Path(os.environ[HOME])
    copyfile(HERE / "brokerage.yaml", home / "brokerage.yaml")
    (home / demo_people.MARK).write_text("day: 2026-11-25\n")
    assert demo_people.needs_factor()
    assert demo_people.demo_day() is None
    with pytest.raises(Trouble):
        demo_people.visitors(date(2026, 11, 25))
    assert Person.objects.count() == 0


def test_the_terminal_lets_the_first_manager_in(own_store: str) -> None:
    result: Any = CliRunner().invoke(
        cli, ["person", "--name", "Maria", "--email", "Maria@example.org", "--role", "manager"],
        catch_exceptions=False,
    )  # fmt: skip
    assert result.exit_code == 0
    person = Person.objects.get(email="maria@example.org")
    secret = result.output.split()[-1]
    assert person.check_password(secret)
    assert person.must_change
    assert person.password.startswith("argon2$")
    again = CliRunner().invoke(
        cli, ["person", "--name", "M", "--email", "maria@example.org", "--role", "manager"]
    )
    assert again.exit_code == 1
    assert "already" in again.output
