"""What the pages say exists: commands and their options, settings, links, folders, make targets."""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterator
from pathlib import Path

import click
import pytest

from quarterday.cli.main import cli

ROOT = Path(__file__).parents[2]
PAGES = [ROOT / "README.md", *sorted((ROOT / "docs").rglob("*.md"))]
GUIDES = [page for page in PAGES if page.parent.name != "decisions"]
NAMES = [str(page.relative_to(ROOT)) for page in PAGES]
FENCES = re.compile(r"^```\w*\n(.*?)^```", re.MULTILINE | re.DOTALL)
INLINE = re.compile(r"`((?:\.venv/bin/)?quarterday [^`]+)`")
SETTING = re.compile(r"QUARTERDAY_[A-Z_]+")


def _commands(text: str) -> Iterator[str]:
    """Yield every call of the program in a page, comments left out."""
    for block in FENCES.findall(text):
        for line in block.splitlines():
            plain = line.split(" #")[0].strip()
            if re.match(r"(\.venv/bin/)?quarterday ", plain):
                yield plain
    for said in INLINE.findall(FENCES.sub("", text)):
        yield " ".join(said.split())


def _said(page: Path) -> list[str]:
    """Return what a page calls; COMMAND stands for any of them."""
    return [s for s in _commands(page.read_text(encoding="utf-8")) if "COMMAND" not in s]


def _of(words: list[str]) -> tuple[click.Command, list[str]]:
    """Return the command that words call, and the words after its name."""
    rest = list(words[1:])
    while rest and rest[0].startswith("--"):
        rest = rest[2:]
    name = rest[0] if rest else ""
    command = cli.get_command(click.Context(cli), name)
    assert command is not None, f"there is no command {name!r}"
    return command, rest[1:]


@pytest.mark.parametrize("page", GUIDES, ids=lambda p: p.name)
def test_every_command_and_option_that_a_page_names_exists(page: Path) -> None:
    for said in _said(page):
        command, rest = _of(shlex.split(said.rstrip("…")))
        known = {name for p in command.params for name in p.opts} | {"--help", "-h"}
        known |= {name for p in cli.params for name in p.opts}
        options = {word.split("=")[0] for word in rest if re.match(r"--?[a-z]", word)}
        assert options <= known, said


def test_every_command_is_on_some_page() -> None:
    told = {_of(shlex.split(s.rstrip("…")))[0].name for page in GUIDES for s in _said(page)}
    assert set(cli.list_commands(click.Context(cli))) - told == set()


@pytest.mark.parametrize("page", PAGES, ids=NAMES)
def test_every_link_of_a_page_leads_somewhere(page: Path) -> None:
    text = FENCES.sub("", page.read_text(encoding="utf-8"))
    links = re.findall(r"\]\(([^)\s]+)\)", text) + re.findall(r'(?:src|href)="([^"]+)"', text)
    for link in links:
        target, _, anchor = link.partition("#")
        if "://" in target or link.startswith("mailto:"):
            continue
        found = (page.parent / target).resolve() if target else page
        assert found.exists(), link
        if anchor and found.suffix == ".md":
            heads = re.findall(r"^#+ (.+)$", found.read_text(encoding="utf-8"), re.MULTILINE)
            assert anchor in {re.sub(r"[^\w -]", "", h).lower().replace(" ", "-") for h in heads}


def _settings_in(folder: Path) -> set[str]:
    texts = (path.read_text(encoding="utf-8") for path in folder.rglob("*.py"))
    return set().union(*(SETTING.findall(text) for text in texts))


def test_the_page_on_running_lists_exactly_the_settings_that_there_are() -> None:
    text = (ROOT / "docs" / "running.md").read_text(encoding="utf-8")
    listed = set(re.findall(r"^\| `(QUARTERDAY_[A-Z_]+)` \|", text, re.MULTILINE))
    assert listed == _settings_in(ROOT / "src")


@pytest.mark.parametrize("page", GUIDES, ids=lambda p: p.name)
def test_no_page_names_a_setting_that_is_not_there(page: Path) -> None:
    assert set(SETTING.findall(page.read_text("utf-8"))) <= _settings_in(ROOT / "src")


def test_the_map_in_the_readme_is_the_house() -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8").split("## The map of the house")[1]
    named = set(re.findall(r"^\| `(\w+)/` \|", text, re.MULTILINE))
    house = ROOT / "src" / "quarterday"
    assert named == {p.name for p in house.iterdir() if (p / "__init__.py").exists()}


def test_every_page_can_be_reached_from_the_readme() -> None:
    seen, waiting = set[Path](), [ROOT / "README.md"]
    while waiting:
        page = waiting.pop()
        seen.add(page)
        links = re.findall(r"\]\(([^)#\s]+\.md)[^)]*\)", page.read_text(encoding="utf-8"))
        found = {(page.parent / link).resolve() for link in links if "://" not in link}
        waiting += [path for path in found - seen if path.exists()]
    assert set(PAGES) - seen == set()


@pytest.mark.parametrize("page", GUIDES, ids=lambda p: p.name)
def test_every_make_target_that_a_page_names_exists(page: Path) -> None:
    makefile = (ROOT / "Makefile").read_text(encoding="utf-8")
    for target in re.findall(r"`make ([a-z]+)`", page.read_text(encoding="utf-8")):
        assert re.search(rf"^{target}:", makefile, re.MULTILINE), target


@pytest.mark.parametrize("page", GUIDES, ids=lambda p: p.name)
def test_every_path_in_the_source_that_a_page_names_exists(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    for name in re.findall(r"`((?:src|tests|core|office|papers|cli|reference)/[\w/.-]+)`", text):
        places = (ROOT / name, ROOT / "src" / "quarterday" / name)
        assert any(place.exists() for place in places), name
