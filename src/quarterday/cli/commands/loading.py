"""Load what a brokerage knows: preview in sentences, then all of it or nothing."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.options import json_option, needs_store, screen_of
from quarterday.cli.screen import Screen

if TYPE_CHECKING:
    from quarterday.office.loading import Loading
    from quarterday.store.ledger import Batch


@click.command()
@click.argument("paths", nargs=-1, required=True, type=click.Path(path_type=Path))
@click.option(
    "--preview", "only_preview", is_flag=True, help="Say what would be done; write nothing."
)
@click.option(
    "--accept-with-errors", is_flag=True, help="Load the good rows, leave out the others."
)
@click.option("--profile", type=click.Path(path_type=Path),
              help="How columns are read; kept there with --keep-profile.")  # fmt: skip
@click.option("--keep-profile", is_flag=True, help="Write the mapping of this load to --profile.")
@click.option("--annotate", type=click.Path(path_type=Path),
              help="Where to write the copy with a comment at each fault.")  # fmt: skip
@click.option("--by", envvar="QUARTERDAY_USER", default="cli", show_default=True,
              help="Who loads it.")  # fmt: skip
@json_option
@click.pass_context
@needs_store
def load(
    context: click.Context, /, *, paths: tuple[Path, ...], only_preview: bool,
    accept_with_errors: bool, profile: Path | None, keep_profile: bool, annotate: Path | None,
    by: str, as_json: bool,
) -> None:  # fmt: skip
    """Load workbooks (.xlsx), folders of CSV files, or Open Exposure Data locations."""
    from quarterday.intake import profile as profiles
    from quarterday.intake.map import keep
    from quarterday.office import loading

    screen = screen_of(context)
    known = profiles.load(profile) if profile and profile.exists() else profiles.NO_PROFILE
    stopped = False
    for path in paths:
        planned = loading.preview(path, screen.reference, known)
        if profile and keep_profile:
            profiles.save(keep(planned.plan.map), profile)
        _show(screen, planned, as_json)
        if annotate and planned.plan.needs_acceptance:
            _annotated(screen, planned, annotate)
        if only_preview:
            screen.tell("cli-load-nothing")
        elif planned.plan.needs_acceptance and not accept_with_errors:
            stopped = True
            _stopped(screen, planned)
        else:
            _write(screen, planned, by, accept_with_errors)
    if stopped:
        sys.exit(1)


def _show(screen: Screen, planned: Loading, as_json: bool) -> None:
    from quarterday.office import loading

    told = loading.plain(planned, screen.speech)
    if as_json:
        screen.json(told)
        return
    said, mapping = told["sentences"], told["mapping"]
    screen.line(said[0], style="bold")
    for sentence in said[1:]:
        screen.line(f"– {sentence}")
    if mapping:
        screen.line()
        screen.say("cli-mapping")
    for sentence in mapping:
        screen.line(sentence, indent=2)


def _annotated(screen: Screen, planned: Loading, out: Path) -> None:
    from quarterday.intake.annotate import annotate

    path = annotate(planned.parsed, planned.plan, out, screen.speech)
    screen.tell("cli-load-annotated", path=str(path))


def _stopped(screen: Screen, planned: Loading) -> None:
    plan = planned.plan
    screen.tell("cli-load-stopped", n=len(plan.of("refused")) + len(plan.of("asks")))


def _write(screen: Screen, planned: Loading, by: str, accepted: bool) -> None:
    from quarterday.office import loading

    def watch(batches: Iterator[Batch], total: int) -> Iterator[Batch]:
        return screen.progress(batches, total, "cli-loading")

    done = loading.accept(planned, by=by, accept_with_errors=accepted, watch=watch)
    screen.tell("cli-load-done", files=done.files, entries=done.entries)
