"""Seal packages, hand out the evidence of a file, list what is asked of insurers, export."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path

import click

from quarterday.cli.commands import exposure
from quarterday.cli.options import json_option, needs_store, screen_of, today
from quarterday.cli.screen import Screen
from quarterday.core.given import Unusable

folder_option = click.option(
    "--out", type=click.Path(path_type=Path, file_okay=False), default=Path(), show_default="here",
    help="The folder to write to.",
)  # fmt: skip
by_option = click.option(
    "--by", envvar="QUARTERDAY_USER", default="cli", show_default=True, help="Who does it."
)
house_option = click.option(
    "--brokerage", "brand", type=click.Path(exists=True, path_type=Path),
    help="The file that describes the brokerage, or its folder.",
)  # fmt: skip


@click.command()
@click.argument("file")
@click.option("--language", "paper", type=click.Choice(["en", "fr"]),
              help="Of which package; default: the organisation's language.")  # fmt: skip
@folder_option
@house_option
@by_option
@json_option
@click.pass_context
@needs_store
def seal(
    context: click.Context, /, *, file: str, paper: str | None, out: Path, brand: Path | None,
    by: str, as_json: bool,
) -> None:  # fmt: skip
    """Seal the newest signed package of FILE with the brokerage's certificate."""
    from quarterday.office import sealing
    from quarterday.office.brand import brokerage

    screen = screen_of(context)
    made = sealing.seal_package(file, paper, brokerage(brand), by=by, now=datetime.now(UTC))
    path = written(out / made.name, made.pdf)
    if as_json:
        told = {"document": made.record.document, "sealed": made.record.sealed}
        screen.json({"path": str(path), **told, "certificate": made.record.certificate})
        return
    screen.say("cli-sealed", path=str(path))
    screen.say("cli-sealed-certificate", digest=made.record.certificate)


@click.command()
@click.argument("file")
@folder_option
@json_option
@click.pass_context
@needs_store
def evidence(context: click.Context, /, *, file: str, out: Path, as_json: bool) -> None:
    """Write everything that was sent, said and decided on FILE as one archive."""
    from quarterday.office.evidence import archive

    screen = screen_of(context)
    made = archive(file, screen.reference)
    path = written(out / made.name, made.data)
    if as_json:
        screen.json({"path": str(path), "entries": made.entries, "documents": made.documents,
                     "not_enclosed": list(made.left_out)})  # fmt: skip
        return
    screen.say("cli-evidence", path=str(path), entries=made.entries, documents=made.documents)
    if made.left_out:
        screen.say("cli-evidence-left-out", n=len(made.left_out))


def written(path: Path, data: bytes) -> Path:
    """Write a file so that it is there whole or not at all."""
    path.parent.mkdir(parents=True, exist_ok=True)
    part = path.with_suffix(".part")
    part.write_bytes(data)
    return part.replace(path)


@click.command()
@click.option("--month", type=click.DateTime(["%Y-%m"]), required=True, help="Like 2026-12.")
@folder_option
@json_option
@click.pass_context
@needs_store
def bordereau(context: click.Context, /, *, month: datetime, out: Path, as_json: bool) -> None:
    """List what renews in a month and what the insurers were asked, as workbook and CSV."""
    from quarterday.core.dates import Period, add_months
    from quarterday.office.bordereau import bordereau as lines
    from quarterday.office.bordereau import write_bordereau
    from quarterday.store import ledger

    screen = screen_of(context)
    first = month.date()
    span = Period(first, add_months(first, 1))
    rows = list(lines(span, ledger.many()))
    paths = write_bordereau(span, rows, out)
    if as_json:
        screen.json({"paths": [str(path) for path in paths], "lines": len(rows)})
        return
    screen.say("cli-bordereau", n=len(rows), paths=tuple(str(path) for path in paths))


@click.command()
@click.option("--to", "kind", type=click.Choice(["xlsx", "csv", "parquet", "oed", "journal"]),
              default="xlsx", show_default=True,
              help="A workbook; or a folder: CSV, Parquet, Open Exposure Data, or the journal "
                   "lines of each premium.")  # fmt: skip
@click.option("--out", type=click.Path(path_type=Path), required=True,
              help="The workbook or the folder to write.")  # fmt: skip
@click.argument("files", nargs=-1)
@click.pass_context
@needs_store
def export(context: click.Context, /, *, files: tuple[str, ...], kind: str, out: Path) -> None:
    """Write the current state of FILES (default: the whole book) in a layout that load reads."""
    from quarterday.core.file.layout import SHEETS
    from quarterday.intake.parquet import write_parquet
    from quarterday.intake.write import write_csv, write_workbook
    from quarterday.store import ledger

    screen = screen_of(context)
    ids = files or ledger.files()
    if kind == "oed":
        exposure.write(screen, ids, out)
        return
    if kind == "journal":
        _journals(screen, ids, out)
        return
    kinds = {sheet.record.kind for sheet in SHEETS}
    records = (
        (file.id, held.record) for file in ledger.many(ids)
        for (of, _), held in sorted(file.held.items()) if of in kinds
    )  # fmt: skip
    if kind == "parquet":
        write_parquet(records, out, screen.language)
    else:
        (write_workbook if kind == "xlsx" else write_csv)(records, out, screen.language)
    screen.say("cli-exported", n=len(ids), path=str(out))


def _journals(screen: Screen, ids: Sequence[str], out: Path) -> None:
    """Write a journal a file; a file without terms to judge is told and left out."""
    from quarterday.cli.commands.premium import write_journal
    from quarterday.office import premium as office
    from quarterday.office.trouble import Trouble

    out.mkdir(parents=True, exist_ok=True)
    for id in ids:
        try:
            _, made = office.premium_of(id, screen.reference, today())
        except (Trouble, Unusable) as refused:
            screen.tell("named-value", label=id, value=screen.speech.say(refused.words))
            continue
        write_journal(screen, made, out / f"{id}.csv")
