"""Sending mail: through which server, and what to say when a message was not taken.

``QUARTERDAY_MAIL`` names the server: ``smtp://host:25``, ``smtps://user@host:465`` or
``smtp+starttls://user@host:587``, with the password in ``QUARTERDAY_MAIL_PASSWORD``; or ``files``,
which writes messages into the folder ``mail`` beside the store, as a demo does.
"""

from __future__ import annotations

import os
import smtplib
from dataclasses import dataclass
from datetime import UTC, datetime
from email.utils import formataddr
from urllib.parse import unquote, urlsplit

from django.conf import settings
from django.core.exceptions import ValidationError
from django.core.mail import EmailMessage, get_connection
from django.core.mail.backends.base import BaseEmailBackend
from django.core.validators import validate_email

from quarterday.core.words import words
from quarterday.office.demo_people import demo_day
from quarterday.office.trouble import Trouble
from quarterday.people import limits
from quarterday.people.models import Person

SERVER, PASSWORD = "QUARTERDAY_MAIL", "QUARTERDAY_MAIL_PASSWORD"
FILES = "files"
SECONDS = 20
_SMTP = "django.core.mail.backends.smtp.EmailBackend"
_IN_FILES = "django.core.mail.backends.filebased.EmailBackend"
_WAYS = {
    "smtp": (False, False, 25),
    "smtps": (True, False, 465),
    "smtp+starttls": (False, True, 587),
}


@dataclass(frozen=True, slots=True)
class Message:
    """A message to one person, with what is enclosed: name and bytes."""

    sender: tuple[str, str]
    to: tuple[str, str]
    subject: str
    words: str
    enclosed: tuple[tuple[str, bytes], ...]


def address(text: str) -> str:
    """Return one e-mail address as it was typed; Trouble when it is none."""
    plain = text.strip()
    try:
        validate_email(plain)
    except ValidationError:
        raise Trouble(words("acts-person-email", email=plain[:80])) from None
    return plain


def count(person: Person) -> None:
    """Count a message of a person; Trouble when they send very many within an hour."""
    now = datetime.now(UTC)
    if limits.is_over("send", person.email, now):
        raise Trouble(words("acts-too-often"))
    limits.count("send", person.email, now)


def ready() -> bool:
    """Tell whether there is a server, or a folder, that mail can go to."""
    return bool(_server())


def _server() -> str:
    return os.environ.get(SERVER, "").strip() or (FILES if demo_day() else "")


def send(message: Message) -> None:
    """Hand a message to the server; Trouble says who did not take it, and why."""
    try:
        _email(message).send()
    except smtplib.SMTPRecipientsRefused as refused:
        why = next(iter(refused.recipients.values()), (0, b""))[1]
        raise Trouble(words("mail-refused", to=message.to[1], why=_said(why))) from refused
    except smtplib.SMTPAuthenticationError as refused:
        raise Trouble(words("mail-password", why=_said(refused.smtp_error))) from refused
    except smtplib.SMTPResponseException as refused:
        raise Trouble(words("mail-not-taken", why=_said(refused.smtp_error))) from refused
    except (smtplib.SMTPException, OSError) as lost:
        raise Trouble(words("mail-not-reached", why=_said(str(lost)))) from lost


def _email(message: Message) -> EmailMessage:
    made = EmailMessage(
        subject=" ".join(message.subject.split()),
        body=message.words,
        from_email=formataddr(message.sender, "utf-8"),
        to=[formataddr(message.to, "utf-8")],
        connection=_connection(),
    )
    for name, data in message.enclosed:
        made.attach(name, data, "application/pdf")
    return made


def _connection() -> BaseEmailBackend:
    server = _server()
    if not server:
        raise Trouble(words("mail-no-server", setting=SERVER))
    if server == FILES:
        folder = settings.QUARTERDAY_HOME / "mail"
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        return get_connection(_IN_FILES, file_path=str(folder))
    told = urlsplit(server)
    if told.scheme not in _WAYS or not told.hostname:
        raise Trouble(words("mail-bad-server", setting=SERVER))
    ssl, starttls, port = _WAYS[told.scheme]
    return get_connection(
        _SMTP, host=told.hostname, port=_port(told.netloc, port), use_ssl=ssl, use_tls=starttls,
        username=unquote(told.username or ""), password=os.environ.get(PASSWORD, ""),
        timeout=SECONDS,
    )  # fmt: skip


def _port(netloc: str, usual: int) -> int:
    try:
        return urlsplit(f"//{netloc}").port or usual
    except ValueError:
        raise Trouble(words("mail-bad-server", setting=SERVER)) from None


def _said(text: bytes | str) -> str:
    """Return what a server said, in one short line."""
    told = text.decode("utf-8", "replace") if isinstance(text, bytes) else text
    return " ".join(told.split())[:200] or "–"
