"""The second factor: codes of the moment (RFC 6238), and codes to recover with.

The secret is encrypted with a key that lies in the store's folder, outside the database. A code
counts once; the step before and the step after are accepted, for clocks differ.
"""

from __future__ import annotations

import secrets
from datetime import datetime
from pathlib import Path

import pyotp
import segno
from cryptography.fernet import Fernet, InvalidToken
from django.conf import settings
from django.contrib.auth.hashers import check_password, make_password
from django.db import transaction

from quarterday.people.models import Person, RecoveryCode
from quarterday.store import keys

KEY_FILE = "factor.key"
STEP = 30  # seconds, RFC 6238's recommendation
ISSUER = "Quarterday"
CODES, CODE_LENGTH = 8, 10
_LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"  # none that can be mistaken for another


def _vault() -> Fernet:
    home: Path = settings.QUARTERDAY_HOME
    return Fernet(keys.ensure(home / KEY_FILE, Fernet.generate_key).read_bytes())


def new_secret() -> str:
    """Return a secret to be shown once, in base 32."""
    return pyotp.random_base32()


def address(person: Person, secret: str) -> str:
    """Return the address by which an authenticator learns the secret."""
    return pyotp.TOTP(secret).provisioning_uri(name=person.email, issuer_name=ISSUER)


def picture(text: str) -> str:
    """Return ``text`` as a QR code (ISO/IEC 18004), drawn as SVG without styles of its own."""
    return segno.make(text, error="m").svg_inline(scale=4, border=4, dark="#000", light="#fff")


def accepted_step(secret: str, code: str, at: datetime, after: int) -> int | None:
    """Return the step whose code was given, newer than step ``after``; None when none was."""
    now = int(at.timestamp()) // STEP
    made = pyotp.TOTP(secret)
    given = "".join(code.split())
    steps = (step for step in (now - 1, now, now + 1) if step > after)
    return next(
        (s for s in steps if secrets.compare_digest(made.generate_otp(s).encode(), given.encode())),
        None,
    )


def set_up(person: Person, secret: str, code: str, at: datetime) -> tuple[str, ...] | None:
    """Keep the secret when ``code`` proves that it was taken over; return the recovery codes."""
    step = accepted_step(secret, code, at, 0)
    if step is None:
        return None
    codes = tuple("".join(secrets.choice(_LETTERS) for _ in range(CODE_LENGTH))
                  for _ in range(CODES))  # fmt: skip
    with transaction.atomic():
        person.factor = _vault().encrypt(secret.encode()).decode()
        person.factor_step = step
        person.save(update_fields=["factor", "factor_step"])
        RecoveryCode.objects.filter(person=person).delete()
        RecoveryCode.objects.bulk_create(
            RecoveryCode(person=person, digest=make_password(code)) for code in codes
        )
    return codes


def passes(person: Person, code: str, at: datetime) -> bool:
    """Tell whether ``code`` is the person's code of the moment, or one to recover with; use it."""
    with transaction.atomic():
        kept = Person.objects.select_for_update().get(pk=person.pk)
        try:
            secret = _vault().decrypt(kept.factor.encode()).decode()
        except InvalidToken:
            return False
        step = accepted_step(secret, code, at, kept.factor_step)
        if step is None:
            return _recovers(kept, code)
        Person.objects.filter(pk=kept.pk).update(factor_step=step)
    return True


def _recovers(person: Person, code: str) -> bool:
    given = "".join(code.split()).casefold()
    if len(given) != CODE_LENGTH:
        return False
    for kept in RecoveryCode.objects.filter(person=person):
        if check_password(given, kept.digest):
            kept.delete()
            return True
    return False
