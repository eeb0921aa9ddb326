"""The program's own help: every command, by what it is for, in whole sentences."""

from __future__ import annotations

import subprocess  # what a command reads is told by a process of its own
import sys

import click
from click.testing import CliRunner

from quarterday.cli.main import COMMANDS, GROUPS, cli


def test_the_help_names_every_command_once_and_cuts_no_sentence() -> None:
    text = CliRunner().invoke(cli, ["--help"], terminal_width=80).output
    lines = text.splitlines()
    for heading, group in GROUPS.items():
        assert f"{heading}:" in lines
        for name in group:
            assert sum(line.startswith(f"  {name} ") for line in lines) == 1, name
    assert "..." not in text.partition("\n\n")[2]
    assert max(map(len, lines)) <= 80


def test_each_command_is_called_what_the_list_calls_it() -> None:
    context = click.Context(cli)
    found = {name: cli.get_command(context, name) for name in COMMANDS}
    assert {name: command.name for name, command in found.items() if command} == {
        name: name for name in COMMANDS
    }
    assert sum(map(len, GROUPS.values())) == len(COMMANDS)


def test_a_command_that_is_not_there_is_told() -> None:
    done = CliRunner().invoke(cli, ["lisst"])
    assert done.exit_code == 2
    assert "No such command 'lisst'" in done.output


def test_a_list_does_not_wait_for_what_only_a_review_needs() -> None:
    says = (
        "import sys; from quarterday.cli.main import cli; import click;"
        "cli.get_command(click.Context(cli), 'list'); print('scipy' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", says], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


def test_the_program_starts_as_a_process_of_its_own() -> None:
    """Its modules are read before any store is known; a test that has one open cannot tell."""
    done = subprocess.run(
        [sys.executable, "-m", "quarterday.cli", "--version"], capture_output=True, text=True,
        check=False,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.startswith("quarterday, version ")
