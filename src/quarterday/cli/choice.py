"""Which files a command is about: named, due in a span of days, or all."""

from __future__ import annotations

from datetime import date

import click

from quarterday.cli.screen import Screen


def chosen_files(
    screen: Screen, files: tuple[str, ...], due: tuple[date, date] | None, everything: bool
) -> tuple[str, ...]:
    """Return the ids of the files meant; a usage error unless exactly one way is used."""
    from quarterday.office import listing

    if sum((bool(files), due is not None, everything)) != 1:
        raise click.UsageError(screen.words("cli-choose-files"))
    if files:
        return files
    return tuple(row.file for row in listing.renewals(due))
