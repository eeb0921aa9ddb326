"""The tables of people. None of it is part of a file's ledger.

Every table says in ``personal_data`` what it holds about people, as the store's tables do.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import ClassVar

from django.contrib.auth.base_user import AbstractBaseUser, BaseUserManager
from django.db import models

EVERY_OFFICE = "*"
ROLES = ("owner", "colleague", "manager", "read-only-manager", "read-only")
SCOPES = ("read", "act")


class People(BaseUserManager["Person"]):
    """Finds people; an address is compared without capitals."""

    def get_by_natural_key(self, username: str | None) -> Person:
        """Return the person who signs in with this address; Person.DoesNotExist when none does."""
        return self.get(email=(username or "").strip().casefold())


class Person(AbstractBaseUser):
    """Somebody of the brokerage who may sign in.

    ``licence`` is empty for who may not advise. ``factor`` is the encrypted secret of the second
    factor, empty until it is set up; ``factor_step`` the last step whose code was used.
    """

    personal_data: ClassVar[str] = "name, e-mail address and licence of a member of the brokerage"

    email = models.EmailField(unique=True, max_length=254)
    name = models.CharField(max_length=300)
    licence = models.CharField(max_length=300, blank=True)
    language = models.CharField(max_length=2, default="en")
    is_active = models.BooleanField(default=True)
    factor = models.TextField(blank=True)
    factor_step = models.BigIntegerField(default=0)
    must_change = models.BooleanField(default=False)  # the password was made by somebody else
    feed = models.CharField(max_length=64, blank=True, db_index=True)  # SHA-256 of the address

    objects = People()
    USERNAME_FIELD = "email"
    EMAIL_FIELD = "email"
    REQUIRED_FIELDS: ClassVar[list[str]] = ["name"]

    def __str__(self) -> str:
        return self.name

    @cached_property
    def roles(self) -> Mapping[str, str]:
        """The person's role by office, looked up once for each time the person is."""
        return dict(self.grants.values_list("office", "role"))

    @property
    def signed(self) -> str:
        """Name and address, as entries say who wrote them: two people may share a name."""
        return f"{self.name} <{self.email}>"

    def save(self, *args: object, **named: object) -> None:
        """Keep the address as it is compared."""
        self.email = self.email.strip().casefold()
        super().save(*args, **named)  # type: ignore[arg-type]


class Grant(models.Model):
    """What a person may do with the files of one office (``*``: of every office)."""

    personal_data: ClassVar[str] = "none beyond the person it belongs to"

    person = models.ForeignKey(Person, models.CASCADE, related_name="grants")
    office = models.CharField(max_length=300)
    role = models.CharField(max_length=20, choices=[(role, role) for role in ROLES])

    class Meta:
        """One role an office."""

        constraints: ClassVar = [
            models.UniqueConstraint(fields=["person", "office"], name="one_role"),
            models.CheckConstraint(condition=models.Q(role__in=ROLES), name="known_role"),
        ]

    def __str__(self) -> str:
        return f"{self.person_id} {self.role} of {self.office}"


class RecoveryCode(models.Model):
    """A code that replaces the second factor once."""

    personal_data: ClassVar[str] = "none beyond the person it belongs to"

    person = models.ForeignKey(Person, models.CASCADE)
    digest = models.CharField(max_length=128)

    def __str__(self) -> str:
        return f"a code of {self.person_id}"


class Attempt(models.Model):
    """Something counted so that it cannot be done too often: a failed sign-in, an upload."""

    personal_data: ClassVar[str] = "who: an address that was typed, and the machine it came from"

    what = models.CharField(max_length=20)
    who = models.CharField(max_length=400)
    at = models.DateTimeField()

    class Meta:
        """Looked up by what and who."""

        indexes: ClassVar = [models.Index(fields=["what", "who", "at"], name="attempts")]

    def __str__(self) -> str:
        return f"{self.what} by {self.who}"


class SavedView(models.Model):
    """A question to the list of renewals that a person wants to ask again."""

    personal_data: ClassVar[str] = "query: words a person searches for, perhaps names"

    person = models.ForeignKey(Person, models.CASCADE)
    name = models.CharField(max_length=80)
    query = models.CharField(max_length=2000)

    class Meta:
        """A name stands once."""

        constraints: ClassVar = [
            models.UniqueConstraint(fields=["person", "name"], name="one_view"),
        ]

    def __str__(self) -> str:
        return self.name


class Upload(models.Model):
    """A document that a person previews and has not accepted yet."""

    personal_data: ClassVar[str] = "content: whatever the document says, until it is removed"

    token = models.CharField(max_length=64, primary_key=True)
    person = models.ForeignKey(Person, models.CASCADE)
    name = models.CharField(max_length=300)
    content = models.BinaryField()
    at = models.DateTimeField()

    def __str__(self) -> str:
        return self.name


class Sending(models.Model):
    """A message that is on its way and not recorded yet; it holds a second one back."""

    personal_data: ClassVar[str] = "key: the name of the person that a package is sent to"

    file = models.CharField(max_length=80)
    key = models.CharField(max_length=400)
    at = models.DateTimeField()

    class Meta:
        """One message at a time."""

        constraints: ClassVar = [
            models.UniqueConstraint(fields=["file", "key"], name="one_sending"),
        ]

    def __str__(self) -> str:
        return f"a message about {self.file}"


class AccessKey(models.Model):
    """A key with which a person's program asks in their name; ``digest`` is the secret's SHA-256.

    ``used`` counts what was asked in the minute that began at ``minute``.
    """

    personal_data: ClassVar[str] = "last_used: when a person's program last asked"

    person = models.ForeignKey(Person, models.CASCADE, related_name="access_keys")
    name = models.CharField(max_length=80)
    digest = models.CharField(max_length=64, unique=True)
    scope = models.CharField(max_length=4, choices=[(scope, scope) for scope in SCOPES])
    made_at = models.DateTimeField()
    until = models.DateTimeField()
    revoked_at = models.DateTimeField(null=True)
    last_used = models.DateTimeField(null=True)
    minute = models.DateTimeField(null=True)
    used = models.PositiveIntegerField(default=0)

    class Meta:
        """A scope is one that exists."""

        constraints: ClassVar = [
            models.CheckConstraint(condition=models.Q(scope__in=SCOPES), name="known_scope"),
        ]

    def __str__(self) -> str:
        return f"{self.name} of {self.person_id}"


class Answered(models.Model):
    """An act that a program named so that it can ask again, and what it was answered.

    It is written with the act, and forgotten after a day; empty while an act that takes long is
    still being done.
    """

    personal_data: ClassVar[str] = "answer: what the act wrote or showed, with names, for a day"

    person = models.ForeignKey(Person, models.CASCADE)
    key = models.CharField(max_length=200)
    asked = models.CharField(max_length=64)  # SHA-256 of what was asked
    answer = models.TextField()
    at = models.DateTimeField(db_index=True)

    class Meta:
        """A name counts once for each person."""

        constraints: ClassVar = [
            models.UniqueConstraint(fields=["person", "key"], name="one_answer"),
        ]

    def __str__(self) -> str:
        return f"{self.key} of {self.person_id}"
