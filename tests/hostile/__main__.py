"""Run it: ``python -m tests.hostile --count 10000``. Ends with 1 when anything ended badly."""

from __future__ import annotations

import sys
from collections import Counter

import click

from tests.hostile.reading import FORMATS, megabytes, run


@click.command()
@click.argument("formats", nargs=-1, type=click.Choice(list(FORMATS)))
@click.option("--count", default=10_000, show_default=True, help="Inputs of each format.")
@click.option("--seed", default=1, show_default=True)
def main(formats: tuple[str, ...], count: int, seed: int) -> None:
    """Spoil inputs of FORMATS (default: all) and read them; tell how they ended."""
    bad = 0
    for format in formats or tuple(FORMATS):
        ends: Counter[str] = Counter()
        for tried in run(format, count, seed):
            ends[tried.end] += 1
            if tried.end in {"traceback", "too long"}:
                bad += 1
                click.echo(f"{format} {tried.number}: {tried.end}\n{tried.why}")
        click.echo(f"{format}: {dict(ends)}, at most {megabytes()} MB held")
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
