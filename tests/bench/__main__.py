"""``python -m tests.bench [NAME …]``: run the benches and print what they measure."""

from __future__ import annotations

import importlib
import pkgutil
import platform
import sys
from pathlib import Path

import click

HERE = Path(__file__).resolve().parent


def names() -> tuple[str, ...]:
    """Return the names of the benches: each has a function ``run`` that yields its lines."""
    found = (module.name for module in pkgutil.iter_modules([str(HERE)]))
    return tuple(sorted(name for name in found if not name.startswith("_")))


def main() -> None:
    """Run the benches that are named, or all, and print their lines."""
    chosen = sys.argv[1:] or names()
    click.echo(
        f"{platform.python_implementation()} {platform.python_version()}, {platform.machine()}"
    )
    for name in chosen:
        if name not in names():
            sys.exit(f"There is no bench {name!r}; there are: {', '.join(names())}.")
        click.echo(f"\n--- {name}")
        for line in importlib.import_module(f"tests.bench.{name}").run():
            click.echo(line)


if __name__ == "__main__":
    main()
