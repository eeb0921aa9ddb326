"""The brand of the brokerage: checked whole, and shown."""

from __future__ import annotations

from pathlib import Path

import click

from quarterday.cli.options import json_option, needs_store, screen_of


@click.command()
@click.argument("file", type=click.Path(path_type=Path), required=False)
@json_option
@click.pass_context
@needs_store
def brand(context: click.Context, /, *, file: Path | None, as_json: bool) -> None:
    """Check the brand of the brokerage: its file, pictures, colours and wordings.

    FILE is the brokerage's file or its folder; default: beside the store.
    """
    from quarterday.office.brand import brand as checked

    screen = screen_of(context)
    found = checked(file)
    house = found.brokerage
    signatures = [person.name for person in house.people if person.signature]
    if as_json:
        screen.json({
            "path": str(found.path), "name": house.name, "name_fr": house.name_fr,
            "logo": house.logo, "colours": house.colours.model_dump(),
            "signatures": signatures, "wordings": found.wordings,
        })  # fmt: skip
        return
    screen.say("cli-brand", name=house.name, path=str(found.path))
    screen.say("cli-brand-logo", logo=house.logo or "–")
    screen.say("cli-brand-colours", accent=house.colours.accent, tint=house.colours.tint)
    screen.say("cli-brand-signatures", names=tuple(signatures) or "–")
    for language, ids in found.wordings.items():
        if ids:
            screen.say("cli-brand-wordings", language=language, n=len(ids), ids=ids)
