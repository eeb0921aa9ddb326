"""Serving the desk, and letting people in."""

from __future__ import annotations

import contextlib
import os
import secrets
import signal
import subprocess  # the server is a program of its own
import sys
from pathlib import Path
from threading import Event, Thread

import click

from quarterday.cli.options import needs_store, screen_of

SETTINGS, APPLICATION = "quarterday.desk.settings", "quarterday.desk.wsgi:application"
HOST, PORT = "127.0.0.1", 8642
ADDRESS = f"http://{HOST}:{PORT}/"
WAIT = 60.0  # seconds between two looks for renewals whose standing is stale
PART = 500  # files at a time
LAST = 19  # the nice value of work that nobody waits for


@click.command()
@click.option("--port", type=click.IntRange(1, 65_535), default=PORT, show_default=True)
@click.option("--host", default=HOST, show_default=True,
              help="The address to listen on; 0.0.0.0 for the whole network.")  # fmt: skip
@click.option("--workers", type=click.IntRange(1, 64), default=2, show_default=True)
@click.pass_context
@needs_store
def serve(context: click.Context, port: int, host: str, workers: int) -> None:
    """Serve the desk to browsers."""
    from django.conf import settings

    from quarterday.people.models import Person
    from quarterday.store import keys

    screen = screen_of(context)
    home: Path = settings.QUARTERDAY_HOME
    keys.ensure(home / "web.key", lambda: secrets.token_urlsafe(50).encode("ascii"))
    if not Person.objects.exists():
        screen.say("cli-serve-nobody")
    screen.say("cli-serve-at", address=f"http://{host}:{port}/")
    sys.exit(_run(_command(host, port, workers), host))


def _command(host: str, port: int, workers: int) -> list[str]:
    """Return the server's command: WSGI, as measured no slower, and a lost worker comes back."""
    return [
        sys.executable, "-m", "granian", "--interface", "wsgi", "--host", host, "--port", str(port),
        "--workers", str(workers), "--blocking-threads", "1", "--respawn-failed-workers",
        "--no-ws", APPLICATION,
    ]  # fmt: skip


def _run(command: list[str], host: str) -> int:
    """Run the server until it ends; beside it, keep the standings of the day fresh."""
    environment = {**os.environ, "DJANGO_SETTINGS_MODULE": SETTINGS}
    environment.setdefault("QUARTERDAY_HOSTS", f"localhost 127.0.0.1 [::1] {host}")
    server = subprocess.Popen(command, env=environment)  # noqa: S603 - our own words
    stop = Event()
    Thread(target=_keep, args=(stop,), daemon=True).start()
    signal.signal(signal.SIGTERM, lambda *_: server.terminate())
    with contextlib.suppress(KeyboardInterrupt):
        server.wait()
    server.terminate()
    stop.set()
    return max(server.wait(), 0)


def _keep(stop: Event) -> None:
    """Make stale standings and the book's figures anew, some at a time, until told to stop.

    It takes only the time that nobody at the desk asks for: a whole book may be waiting for it.
    """
    from quarterday.office import standings
    from quarterday.office.book import keeping
    from quarterday.office.demo_people import today
    from quarterday.office.own_data import reference_in_use
    from quarterday.store.refusals import Busy, NotReached

    os.nice(LAST)  # on Linux, of this thread alone
    while not stop.is_set():
        done = more = 0
        with contextlib.suppress(Busy, NotReached):  # tried again at the next look
            done = standings.refresh(reference_in_use(), today(), most=PART)
            more = keeping.refresh(reference_in_use(), today(), most=keeping.CHUNK)
        stop.wait(0.2 if done == PART or more == keeping.CHUNK else WAIT)


@click.command()
@click.option("--name", required=True, help="Name, as entries will say it.")
@click.option("--email", required=True, help="Address to sign in with.")
@click.option("--role", required=True, help="What they may do.", type=click.Choice(
    ["owner", "colleague", "manager", "read-only-manager", "read-only"]))  # fmt: skip
@click.option("--office", default="*", show_default=True, help="The office whose files it is for.")
@click.option("--licence", default="", help="Licence number, when licensed to advise.")
@click.option("--speaks", type=click.Choice(["en", "fr"]), default="en", show_default=True)
@click.pass_context
@needs_store
def person(
    context: click.Context, /, *, name: str, email: str, role: str, office: str, licence: str,
    speaks: str,
) -> None:  # fmt: skip
    """Let somebody in to the desk; prints their one-time password."""
    from quarterday.office import staff

    added, secret = staff.add(
        name=name, email=email, licence=licence, language=speaks, grants={office: role}
    )
    screen_of(context).say("cli-person-added", name=added.name, email=added.email, password=secret)
