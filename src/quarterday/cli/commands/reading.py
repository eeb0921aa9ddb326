"""Read forms that came home into proposed changes, and take or refuse them."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.words import Term, words

if TYPE_CHECKING:
    from quarterday.intake.forms.proposal import Asked, Proposal
    from quarterday.intake.forms.recognise import Flat
    from quarterday.office.accepting import Kept
    from quarterday.office.returning import Reading

Plain = dict[str, Any]


@click.command()
@click.argument("paths", nargs=-1, type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--file", "file", help="The file that the form should be about.")
@click.option("--accept", is_flag=True, help="Take every answer that is clear into the file.")
@click.option("--take", multiple=True, metavar="FIELD", help="Take one answer, asked ones too.")
@click.option("--refuse", multiple=True, metavar="FIELD", help="Leave one answer out for good.")
@click.option("--enter", "form", metavar="FORM", help="Show a form's questions, to type in.")
@click.option("--answers", type=click.Path(exists=True, dir_okay=False, path_type=Path),
              help="With --enter: what was typed, as JSON (field: answer).")  # fmt: skip
@click.option("--beside", type=click.Path(dir_okay=False, path_type=Path),
              metavar="PAGE.html",
              help="Write what is proposed or asked beside the pages as pictures.")  # fmt: skip
@click.option("--by", envvar="QUARTERDAY_USER", default="cli", show_default=True,
              help="Who reads them.")  # fmt: skip
@as_of_option
@json_option
@click.pass_context
@needs_store
def read(
    context: click.Context, /, *, paths: tuple[Path, ...], file: str | None, accept: bool,
    take: tuple[str, ...], refuse: tuple[str, ...], form: str | None, answers: Path | None,
    beside: Path | None, by: str, as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Read returned forms (PDF), or with --enter type in one that came back on paper."""
    from quarterday.intake.forms.recognise import Flat
    from quarterday.office import accepting

    screen = screen_of(context)
    if form and file and not answers:
        _questions(screen, file, form, as_of, as_json)
        _side_by_side(screen, paths, beside, (file, [form]), as_of)
        return
    found = _found(screen, paths, file, form, answers, as_of, by)
    results: list[Plain] = []
    for number, one in enumerate(found, start=1):
        _write_beside(screen, one, _numbered(beside, number, len(found)), as_of)
        if isinstance(one, Flat):
            results.append(_flat(screen, one, as_json))
            continue
        kept = None
        if accept or take or refuse:
            kept = accepting.accept(one, by=by, every=accept, take=take, refuse=refuse)
        results.append(_show(screen, one, kept, as_json))
    if as_json:
        screen.json(results)
    if any(isinstance(one, Flat) for one in found):
        sys.exit(1)


def _numbered(path: Path | None, number: int, of: int) -> Path | None:
    """Return a path of its own for each of several forms."""
    return path.with_stem(f"{path.stem}-{number}") if path and of > 1 else path


def _write_beside(screen: Screen, one: Reading | Flat, path: Path | None, as_of: date) -> None:
    from quarterday.cli import beside
    from quarterday.intake.forms.recognise import Flat
    from quarterday.office import picturing

    if path is None:
        return
    if isinstance(one, Flat):
        file = one.files[0] if len(one.files) == 1 else ""
        title = screen.words("returns-flat", name=one.looked.name)
        asked = _asked(screen, file, one.forms, as_of) if file else ()
        text = beside.entry_sheet(screen, title, picturing.pages(one.looked), asked)
    else:
        text = beside.sheet(screen, one, picturing.beside(one))
    _wrote(screen, path, text)


def _wrote(screen: Screen, path: Path, text: str) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")
    screen.tell("cli-beside-written", path=str(path))


def _side_by_side(
    screen: Screen, paths: tuple[Path, ...], out: Path | None, about: tuple[str, Sequence[str]],
    as_of: date,
) -> None:  # fmt: skip
    """Write the questions of one form beside every page of the papers that hold its answers."""
    from quarterday.cli import beside
    from quarterday.intake.forms.peek import look
    from quarterday.office import picturing

    if out is None:
        return
    file, forms = about
    looked = [look(path.read_bytes(), path.name) for path in paths]
    pages = [page for one in looked for page in picturing.pages(one)]
    title = screen.words("cli-read-enter", form=Term("paper", forms[0]), file=file)
    text = beside.entry_sheet(screen, title, pages, _asked(screen, file, forms, as_of))
    _wrote(screen, out, text)


def _asked(screen: Screen, file: str, forms: Iterable[str], as_of: date) -> list[Asked]:
    from quarterday.office.form_questions import sheet
    from quarterday.store import ledger

    held = ledger.load(file)
    sheets = (sheet(held, f, screen.reference, as_of, screen.language) for f in forms)
    return [one for _, asked in sheets for one in asked.values()]


def _found(
    screen: Screen, paths: tuple[Path, ...], file: str | None, form: str | None,
    answers: Path | None, as_of: date, by: str,
) -> list[Reading | Flat]:  # fmt: skip
    """Return what was typed in, or what each document holds; a usage error when neither is."""
    if form and file and answers:
        return [_typed(screen, file, form, answers, paths, as_of, by)]
    if form or not paths:
        raise click.UsageError(screen.words("cli-read-what"))
    return [one for path in paths for one in _one(screen, path, as_of, file)]


def _one(screen: Screen, path: Path, as_of: date, file: str | None) -> Sequence[Reading | Flat]:
    from quarterday.intake.forms.recognise import Flat
    from quarterday.office import returning

    data = path.read_bytes()
    read = returning.read(data, path.name, screen.reference, as_of, expected=file)
    return [read] if isinstance(read, Flat) else read


def _typed(
    screen: Screen, file: str, form: str, answers: Path, paths: tuple[Path, ...], as_of: date,
    by: str,
) -> Reading:  # fmt: skip
    from quarterday.office import returning
    from quarterday.office.trouble import Trouble

    try:
        typed = json.loads(answers.read_text("utf-8"))
    except ValueError as error:
        raise Trouble(words("cli-not-json", why=str(error))) from error
    if not isinstance(typed, dict) or not all(isinstance(v, str) for v in typed.values()):
        raise Trouble(words("cli-read-answers", path=str(answers)))
    scan = (paths[0].read_bytes(), paths[0].name) if paths else None
    return returning.enter(file, form, typed, screen.reference, as_of, language=screen.language,
                           person=by, scan=scan)  # fmt: skip


def _questions(screen: Screen, file: str, form: str, as_of: date, as_json: bool) -> None:
    from quarterday.office.form_questions import sheet
    from quarterday.store import ledger

    _, asked = sheet(ledger.load(file), form, screen.reference, as_of, screen.language)
    if as_json:
        screen.json({name: one.printed for name, one in asked.items()})
        return
    screen.say("cli-read-enter", form=Term("paper", form), file=file)
    for one in asked.values():
        _question(screen, one)


def _question(screen: Screen, asked: Asked) -> None:
    screen.line(asked.name, style="bold")
    choices = " / ".join(id for id, _ in asked.options if id)
    printed = screen.words("cli-read-printed", said=asked.printed) if asked.printed else ""
    screen.line(" ".join(filter(None, (asked.label, f"({choices})" if choices else "", printed))),
                indent=2)  # fmt: skip


def _flat(screen: Screen, read: Flat, as_json: bool) -> Plain:
    from quarterday.office import proposals

    told = proposals.flat(read, screen.speech)
    if not as_json:
        for note in told["notes"]:
            screen.line(note)
    return told


def _show(screen: Screen, reading: Reading, kept: Kept | None, as_json: bool) -> Plain:
    from quarterday.office import proposals

    if not as_json:
        _lines(screen, reading)
        if kept:
            screen.tell("cli-read-kept", n=len(kept.entries), taken=len(kept.taken),
                        refused=len(kept.refused))  # fmt: skip
        elif reading.proposals:
            screen.tell("cli-read-next")
    return proposals.reading(reading, kept, screen.speech)


def _lines(screen: Screen, reading: Reading) -> None:
    name = reading.looked.name if reading.looked else "–"
    screen.say("returns-heading", name=name, file=reading.file, renewal=reading.stamp.renewal)
    for form in reading.proposed.filled:
        who = reading.proposed.confirmed.get(form)
        by = who.by if who and who.by else words("returns-unsigned")
        screen.line(screen.words("returns-filled", form=Term("paper", form), by=by), indent=2)
    for note in reading.notes:
        screen.line(f"! {screen.speech.say(note)}", indent=2)
    if not reading.proposals:
        screen.say("returns-no-changes")
    for one in reading.proposals:
        _line(screen, one)


def _line(screen: Screen, one: Proposal) -> None:
    from quarterday.intake.forms.telling import sentence

    screen.line(one.name, style="bold")
    screen.line(screen.speech.say(sentence(one)), indent=2)
    if one.why:
        screen.line(screen.speech.say(one.why), indent=2)
