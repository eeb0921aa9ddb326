"""A real mail server for the tests, on this machine alone."""

from __future__ import annotations

from collections.abc import Iterator
from email import message_from_bytes, policy
from email.message import EmailMessage
from socket import socket

import pytest
from aiosmtpd.controller import Controller

MAIL = "QUARTERDAY_MAIL"


class Inbox:
    """What a real mail server of the tests took; it refuses whom it was told to refuse."""

    def __init__(self) -> None:
        self.taken: list[EmailMessage] = []
        self.refuses: str = ""
        self.full = False

    async def handle_RCPT(self, _server, _session, envelope, address, _options) -> str:  # type: ignore[no-untyped-def]  # noqa: N802, ANN001 - the library's names
        if address == self.refuses:
            return "550 5.1.1 no such mailbox here"
        envelope.rcpt_tos.append(address)
        return "250 OK"

    async def handle_DATA(self, _server, _session, envelope) -> str:  # type: ignore[no-untyped-def]  # noqa: N802, ANN001 - the library's names
        if self.full:
            return "452 4.3.1 the disk is full"
        self.taken.append(message_from_bytes(envelope.content, policy=policy.default))
        return "250 taken"


@pytest.fixture
def inbox(monkeypatch: pytest.MonkeyPatch) -> Iterator[Inbox]:
    """A real SMTP server (aiosmtpd, RFC 5321) on a port of its own."""
    box = Inbox()
    with socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    controller = Controller(box, hostname="127.0.0.1", port=port)
    controller.start()
    monkeypatch.setenv(MAIL, f"smtp://127.0.0.1:{port}")
    yield box
    controller.stop()
