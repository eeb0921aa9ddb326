"""The tables. Entries, originals and seals are only ever added to; index tables can be rebuilt.

Every table says in ``personal_data`` what it holds about people. Index tables hold no facts of
their own: ``quarterday.store.index`` makes them from the entries, in the transaction that adds
those.
"""

from __future__ import annotations

from typing import ClassVar

from django.db import models

DIGEST = 64  # characters of a SHA-256 in hex
FILE = 80  # characters of a file's id
KEY = 500  # characters of a record's key, which may be made of several fields


def table_of(model: type[models.Model]) -> str:
    """Return the name of a model's table."""
    return model._meta.db_table  # noqa: SLF001 - Django's documented model API


def columns_of(model: type[models.Model]) -> tuple[str, ...]:
    """Return the columns of a model's table."""
    return tuple(field.attname for field in model._meta.concrete_fields)  # noqa: SLF001 - as above


class LedgerEntry(models.Model):
    """One entry of one file's ledger, as ``quarterday.core.file.entry.Entry`` describes it."""

    personal_data: ClassVar[str] = (
        "body: everything a file knows, names, telephone numbers, addresses and claims included, "
        "until it is redacted; by, origin and key: who wrote it, and a name where a record's key "
        "is made of one"
    )

    file = models.CharField(max_length=FILE)
    seq = models.PositiveIntegerField()
    recorded_at = models.DateTimeField()
    by = models.CharField(max_length=300)
    act = models.CharField(max_length=80)
    kind = models.CharField(max_length=80)
    key = models.CharField(max_length=KEY)
    body = models.TextField(null=True)  # noqa: DJ001 - no body is not an empty one
    salt = models.CharField(max_length=32, null=True)  # noqa: DJ001 - gone with a redacted body
    body_digest = models.CharField(max_length=DIGEST)
    origin = models.TextField()  # canonical JSON; a JSON column would rewrite what was hashed
    digest = models.CharField(max_length=DIGEST)
    previous = models.CharField(max_length=DIGEST)

    class Meta:
        """Two writers can never both add entry ``seq``."""

        constraints: ClassVar = [models.UniqueConstraint(fields=["file", "seq"], name="one_seq")]

    def __str__(self) -> str:
        return f"{self.file}/{self.seq}"


class IndexedFile(models.Model):
    """A line of the list of files, and the head of its chain."""

    personal_data: ClassVar[str] = (
        "name and search_text: the organisation's names; a small organisation may bear a person's"
    )

    file = models.CharField(max_length=FILE, primary_key=True)
    name = models.CharField(max_length=300)
    sort_name = models.CharField(max_length=600, db_index=True)
    search_text = models.TextField()
    province = models.CharField(max_length=80)
    organisation_class = models.CharField(max_length=80)
    language = models.CharField(max_length=80)
    office = models.CharField(max_length=300, db_index=True)
    broker = models.CharField(max_length=300)
    registration_number = models.CharField(max_length=300, db_index=True)
    renewal_date = models.DateField(null=True, db_index=True)
    currency = models.CharField(max_length=80)
    premium_expiring = models.DecimalField(max_digits=15, decimal_places=2, null=True)
    premium_offered = models.DecimalField(max_digits=15, decimal_places=2, null=True)
    seq = models.PositiveIntegerField()
    digest = models.CharField(max_length=DIGEST)

    def __str__(self) -> str:
        return self.file


class _OfFile(models.Model):
    """A row that belongs to a file's line."""

    file = models.ForeignKey(IndexedFile, models.CASCADE, db_constraint=False)

    class Meta:
        """Not a table of its own."""

        abstract = True


class IndexedBuilding(_OfFile):
    """A building as the newest entries have it."""

    personal_data: ClassVar[str] = "name and town: a manse or rectory is somebody's home"

    building = models.CharField(max_length=80)
    name = models.CharField(max_length=300)
    town = models.CharField(max_length=300)
    province = models.CharField(max_length=80)
    ownership = models.CharField(max_length=80)
    construction = models.CharField(max_length=80)
    year_built = models.PositiveIntegerField(null=True)
    area_m2 = models.DecimalField(max_digits=15, decimal_places=2, null=True)
    sum_insured = models.DecimalField(max_digits=15, decimal_places=2, null=True)

    def __str__(self) -> str:
        return f"{self.file_id}/{self.building}"


class IndexedClaim(_OfFile):
    """A claim as its newest valuation has it."""

    personal_data: ClassVar[str] = "number: names a claim, which may be about a person"

    number = models.CharField(max_length=80)
    cause = models.CharField(max_length=80, db_index=True)
    date_of_loss = models.DateField()
    location = models.CharField(max_length=80)
    status = models.CharField(max_length=80)
    paid = models.DecimalField(max_digits=15, decimal_places=2, null=True)
    outstanding = models.DecimalField(max_digits=15, decimal_places=2, null=True)
    incurred = models.DecimalField(max_digits=15, decimal_places=2, null=True)

    def __str__(self) -> str:
        return f"{self.file_id}/{self.number}"


class IndexedCoverage(_OfFile):
    """A coverage of the terms that expire on the renewal date, or that are offered from it."""

    personal_data: ClassVar[str] = "none"

    stage = models.CharField(max_length=80)
    start = models.DateField()
    coverage = models.CharField(max_length=80, db_index=True)
    location = models.CharField(max_length=80)
    limit = models.DecimalField(max_digits=15, decimal_places=2, null=True)
    deductible = models.DecimalField(max_digits=15, decimal_places=2, null=True)

    def __str__(self) -> str:
        return f"{self.file_id}/{self.coverage}/{self.location}"


class Standing(models.Model):
    """Where a file's renewal stood on a day: made from the file, the reference data and the day.

    ``seq`` and ``day`` say what it was made from; a newer entry or another day makes it stale.
    """

    personal_data: ClassVar[str] = "none"

    file = models.OneToOneField(
        IndexedFile, models.DO_NOTHING, db_constraint=False, primary_key=True
    )
    seq = models.PositiveIntegerField()
    day = models.DateField(db_index=True)
    renewal = models.DateField(null=True, db_index=True)
    state = models.CharField(max_length=20, db_index=True)
    late = models.PositiveIntegerField()
    impossible = models.PositiveIntegerField()
    next_step = models.CharField(max_length=40)
    next_who = models.CharField(max_length=20)
    next_by = models.DateField(null=True)
    came_back = models.DateField(null=True)  # the newest from the leaders that waits for us

    def __str__(self) -> str:
        return f"{self.file_id} on {self.day}"


class StandingDue(models.Model):
    """A step of a file's renewal that is still to be done; written with the file's standing."""

    personal_data: ClassVar[str] = "none"

    file = models.ForeignKey(IndexedFile, models.DO_NOTHING, db_constraint=False)
    renewal = models.DateField()
    step = models.CharField(max_length=40)
    who = models.CharField(max_length=20)
    start_by = models.DateField()
    latest = models.DateField(db_index=True)
    is_late = models.BooleanField()
    is_impossible = models.BooleanField()

    def __str__(self) -> str:
        return f"{self.file_id}/{self.step}"


class BookLine(models.Model):
    """What one file adds to the book's sums on a day: made as a standing is, and stale as one is.

    ``body`` holds the sums as JSON; ``month`` is that of the renewal at work (``2027-01``).
    """

    personal_data: ClassVar[str] = "broker: the name of a member of the brokerage"

    file = models.OneToOneField(
        IndexedFile, models.DO_NOTHING, db_constraint=False, primary_key=True
    )
    seq = models.PositiveIntegerField()
    day = models.DateField()
    office = models.CharField(max_length=300)
    broker = models.CharField(max_length=300)
    province = models.CharField(max_length=80)
    month = models.CharField(max_length=7)
    body = models.TextField()

    def __str__(self) -> str:
        return f"{self.file_id} on {self.day}"


class BookCell(models.Model):
    """The sums of the lines that share what ``level`` names; what it does not name is empty."""

    personal_data: ClassVar[str] = "broker: the name of a member of the brokerage"

    level = models.PositiveSmallIntegerField()
    office = models.CharField(max_length=300)
    broker = models.CharField(max_length=300)
    province = models.CharField(max_length=80)
    month = models.CharField(max_length=7)
    body = models.TextField()

    class Meta:
        """A cell stands once, and is looked up by its place."""

        constraints: ClassVar = [
            models.UniqueConstraint(
                fields=["level", "office", "broker", "province", "month"], name="one_cell"
            ),
        ]

    def __str__(self) -> str:
        return f"{self.level}: {self.office}/{self.broker}/{self.province}/{self.month}"


class BookMade(models.Model):
    """When the cells were made and from what: the day, how many lines, and the sum of their seq."""

    personal_data: ClassVar[str] = "none"

    number = models.PositiveSmallIntegerField(primary_key=True)  # always 1
    day = models.DateField()
    made_at = models.DateTimeField()
    lines = models.PositiveIntegerField()
    seqs = models.PositiveBigIntegerField()

    def __str__(self) -> str:
        return f"the book on {self.day}"


class Original(models.Model):
    """A document as it was received or built, under its SHA-256; at most erased.

    It lies in the database rather than in files beside it: it is then written in the transaction
    of the entries that name it, goes into the same backup, and is there for every machine that
    shares a PostgreSQL database.
    """

    personal_data: ClassVar[str] = "content and name: whatever the document says about people"

    digest = models.CharField(max_length=DIGEST, primary_key=True)
    kept_at = models.DateTimeField()
    name = models.CharField(max_length=300)  # as it was called when it first came
    size = models.PositiveBigIntegerField()
    content = models.BinaryField()

    def __str__(self) -> str:
        return self.digest


class Seal(models.Model):
    """A signature over the heads of all files that moved since the seal before."""

    personal_data: ClassVar[str] = "none"

    number = models.PositiveIntegerField(primary_key=True)
    sealed_at = models.DateTimeField()
    heads = models.TextField()  # canonical JSON: [[file, seq, digest], …]
    previous = models.CharField(max_length=DIGEST)
    digest = models.CharField(max_length=DIGEST)
    public_key = models.CharField(max_length=64)  # Ed25519, hex
    signature = models.CharField(max_length=128)  # Ed25519, hex

    def __str__(self) -> str:
        return f"seal {self.number}"
