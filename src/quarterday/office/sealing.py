"""The seal of a package: certified as the last step, and judged when it comes back.

Certification and its permissions: ISO 32000-1, 12.8.4 (DocMDP); PAdES: ETSI EN 319 142-1. A seal
says who vouches for the pages; fields may still be filled in. The certificate is the brokerage's
own; where there is none, one is made that it signs itself.
"""

from __future__ import annotations

import hashlib
import io
import json
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Literal

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    load_pem_private_key,
)
from cryptography.x509.oid import NameOID
from django.conf import settings
from django.db import transaction
from pyhanko.keys import load_cert_from_pemder
from pyhanko.pdf_utils.incremental_writer import IncrementalPdfFileWriter
from pyhanko.pdf_utils.misc import PdfError
from pyhanko.pdf_utils.reader import PdfFileReader
from pyhanko.sign import PdfSignatureMetadata, fields, signers
from pyhanko.sign.validation import validate_pdf_signature
from pyhanko.sign.validation.errors import SignatureValidationError
from pyhanko.sign.validation.pdf_embedded import EmbeddedPdfSignature
from pyhanko_certvalidator import ValidationContext

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import PackageBuilt, PackageSealed
from quarterday.core.words import Words, words
from quarterday.intake.forms.alike import Compared, compared
from quarterday.intake.forms.peek import Looked, look
from quarterday.intake.refusals import Unreadable
from quarterday.office.trouble import Trouble
from quarterday.papers.brokerage import Brokerage
from quarterday.store import keys, ledger, originals
from quarterday.store.refusals import BadOriginal, UnknownFile

KEY_FILE, CERTIFICATE_FILE = "certificate.key", "certificate.pem"
FIELD = "Seal"
YEARS = 10
State = Literal["intact", "filled", "rewritten", "altered", "kept", "strange"]
_BAD_PDF = (PdfError, SignatureValidationError, ValueError, TypeError, KeyError, IndexError,
            AttributeError, NotImplementedError, RecursionError, OSError)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Sealed:
    """A package that was sealed: its record and its bytes."""

    record: PackageSealed
    pdf: bytes
    name: str


@dataclass(frozen=True, slots=True)
class Verdict:
    """What can be said of a document.

    ``intact``: sealed, and not a byte was changed; ``filled``: sealed, then only filled in;
    ``rewritten``: the seal is gone or none, but it is the package that was kept here, only filled
    in; ``altered``: something else was changed; ``kept``: not sealed, and byte for byte a document
    that is kept here; ``strange``: neither sealed nor known. ``is_own`` tells whether the seal was
    made with this brokerage's certificate.
    """

    state: State
    signer: str = ""
    sealed_at: datetime | None = None
    is_own: bool = False
    compared: Compared | None = None

    @property
    def is_sound(self) -> bool:
        """Whether the pages are what was sent."""
        if self.state in {"intact", "filled"}:
            return self.is_own
        return self.state in {"rewritten", "kept"}


def _home() -> Path:
    home: Path = settings.QUARTERDAY_HOME
    return home


def _new_key() -> bytes:
    key = ec.generate_private_key(ec.SECP256R1())
    return key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())


def _new_certificate(brokerage: Brokerage, now: datetime) -> bytes:
    """Return a certificate that the brokerage signs itself, good for sealing and nothing else."""
    key = load_pem_private_key((_home() / KEY_FILE).read_bytes(), password=None)
    assert isinstance(key, ec.EllipticCurvePrivateKey)
    name = x509.Name(
        [
            x509.NameAttribute(NameOID.COMMON_NAME, brokerage.name[:64]),
            x509.NameAttribute(NameOID.ORGANIZATION_NAME, brokerage.name[:64]),
        ]
    )
    usage = x509.KeyUsage(
        digital_signature=True, content_commitment=True, key_encipherment=False,
        data_encipherment=False, key_agreement=False, key_cert_sign=False, crl_sign=False,
        encipher_only=False, decipher_only=False,
    )  # fmt: skip
    made = (
        x509.CertificateBuilder()
        .subject_name(name)
        .issuer_name(name)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - timedelta(days=1))
        .not_valid_after(now + timedelta(days=365 * YEARS))
        .add_extension(usage, critical=True)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .sign(key, hashes.SHA256())
    )
    return made.public_bytes(Encoding.PEM)


def ensure_certificate(brokerage: Brokerage, now: datetime) -> Path:
    """Make key and certificate when there are none, for their owner alone; return the latter."""
    keys.ensure(_home() / KEY_FILE, _new_key)
    return keys.ensure(_home() / CERTIFICATE_FILE, lambda: _new_certificate(brokerage, now))


def is_ready() -> bool:
    """Tell whether the brokerage has a certificate to seal with."""
    return (_home() / CERTIFICATE_FILE).is_file() and (_home() / KEY_FILE).is_file()


def fingerprint() -> str:
    """Return the SHA-256 of the certificate in use; it must exist."""
    made = x509.load_pem_x509_certificate((_home() / CERTIFICATE_FILE).read_bytes())
    return made.fingerprint(hashes.SHA256()).hex()


def _signer() -> signers.SimpleSigner:
    pair = str(_home() / KEY_FILE), str(_home() / CERTIFICATE_FILE)
    made: signers.SimpleSigner | None = signers.SimpleSigner.load(*pair)  # type: ignore[no-untyped-call]
    if made is None:
        raise Trouble(words("seal-no-key", path=str(_home() / CERTIFICATE_FILE)))
    return made


def sealed(pdf: bytes, brokerage: Brokerage, now: datetime) -> bytes:
    """Return ``pdf`` certified with the brokerage's certificate; only fields may change after."""
    ensure_certificate(brokerage, now)
    meta = PdfSignatureMetadata(
        field_name=FIELD, name=brokerage.name, certify=True,
        docmdp_permissions=fields.MDPPerm.FILL_FORMS, subfilter=fields.SigSeedSubFilter.PADES,
    )  # fmt: skip
    out = signers.sign_pdf(IncrementalPdfFileWriter(io.BytesIO(pdf)), meta, _signer())
    assert isinstance(out, io.BytesIO)
    return out.getvalue()


def seal_package(
    id: str, language: str | None, brokerage: Brokerage, *, by: str, now: datetime
) -> Sealed:
    """Seal the newest package of a file and keep it beside the unsealed one.

    Sealing again returns what was sealed. Trouble when there is no package, or it is a draft.
    """
    file = ledger.load(id)
    built = _newest(file, language or file.organisation.language)
    if built is None or built.reviewer is None:
        raise Trouble(words("seal-not-signed", file=id))
    name = f"{id}-{built.renewal}-{built.language}-v{built.version}-sealed.pdf"
    before = [s for s in file.all(PackageSealed) if s.document == built.document]
    if before:
        return Sealed(before[-1], originals.get(before[-1].sealed), name)
    pdf = sealed(originals.get(built.document), brokerage, now)
    record = _record(built, pdf, now.date())
    draft = Draft("seal", record.kind, record.key, record.body(), Origin(way="office", person=by))
    with transaction.atomic():
        originals.put(pdf, name)
        ledger.append(id, [draft], by=by, expected_seq=None)
    return Sealed(record, pdf, name)


def _newest(file: File, language: str) -> PackageBuilt | None:
    built = [
        p for p in file.all(PackageBuilt) if (p.renewal, p.language) == (file.renewal, language)
    ]
    return max(built, key=lambda p: p.version, default=None)


def _record(built: PackageBuilt, pdf: bytes, on: date) -> PackageSealed:
    return PackageSealed(
        renewal=built.renewal, language=built.language, version=built.version,
        document=built.document, sealed=hashlib.sha256(pdf).hexdigest(), sealed_on=on,
        certificate=fingerprint(),
    )  # fmt: skip


def judge(data: bytes, name: str) -> Verdict:
    """Return what can be said of a document: who sealed it, when, and whether it was changed.

    Unreadable when it is no PDF, or cannot be read at all.
    """
    here = look(data, name, with_pages=True)
    signature = _signature(data)
    if signature is None:
        return _unsealed(here)
    return _sealed_verdict(signature, here)


@dataclass(frozen=True, slots=True)
class _Signature:
    signer: str
    at: datetime | None
    is_own: bool
    is_intact: bool
    covered: int  # bytes, from the start of the document


def _signature(data: bytes) -> _Signature | None:
    """Return the certification of a document; None when it has none that can be read."""
    try:
        found = list(PdfFileReader(io.BytesIO(data), strict=False).embedded_regular_signatures)
        return _checked(found[0]) if found else None
    except _BAD_PDF:
        return None


def _checked(found: EmbeddedPdfSignature) -> _Signature:
    path = _home() / CERTIFICATE_FILE
    roots = [load_cert_from_pemder(str(path))] if path.exists() else []  # type: ignore[no-untyped-call]
    status = validate_pdf_signature(found, ValidationContext(trust_roots=roots), skip_diff=True)
    _, _, start, length = (int(number) for number in found.byte_range)
    who = found.signer_cert.subject.native
    at = found.self_reported_timestamp
    return _Signature(
        str(who.get("common_name", "–"))[:100], at, bool(status.trusted),
        bool(status.intact and status.valid), start + length,
    )  # fmt: skip


def _sealed_verdict(signature: _Signature, here: Looked) -> Verdict:
    who = (signature.signer, signature.at, signature.is_own)
    if not signature.is_intact:
        return _beside_kept(here, was_sealed=True)
    if not here.data[signature.covered :].strip():
        return Verdict("intact", *who)
    then = look(here.data[: signature.covered], here.name, with_pages=True)
    told = compared(then, here)
    return Verdict("filled" if told.only_filled else "altered", *who, told)


def _unsealed(here: Looked) -> Verdict:
    if _is_kept(here.document):
        return Verdict("kept")
    return _beside_kept(here, was_sealed=False)


def _is_kept(document: str) -> bool:
    try:
        originals.get(document)
    except BadOriginal:
        return False
    return True


def _beside_kept(here: Looked, *, was_sealed: bool) -> Verdict:
    """Judge a document without a seal that holds beside the package that was kept of it."""
    kept = _kept(here)
    if kept is None:
        return Verdict("altered" if was_sealed else "strange")
    told = compared(kept, here)
    return Verdict("rewritten" if told.only_filled else "altered", compared=told)


def _kept(here: Looked) -> Looked | None:
    """Return the package that a document says it is, as it is kept here."""
    stamps = [cell.value for cell in here.cells if cell.name == "_record" and cell.value]
    try:
        told = json.loads(stamps[0])
        file = ledger.load(str(told["file"]))
        key = f"{told['renewal']}/{told['language']}/{told['version']}"
        built = file.get(PackageBuilt, key)
        return look(originals.get(built.document), "kept", with_pages=True) if built else None
    except (IndexError, KeyError, TypeError, ValueError, UnknownFile, BadOriginal, Unreadable):
        return None


def sentences(verdict: Verdict, name: str) -> tuple[Words, ...]:
    """Return what to tell of a document."""
    filled = len(verdict.compared.filled) if verdict.compared else 0
    told = [words(f"seal-{verdict.state}", name=name, n=filled)]
    if verdict.signer:
        told.append(_by(verdict))
    if verdict.compared:
        told += _where(verdict.compared, name)
    return tuple(told)


def _by(verdict: Verdict) -> Words:
    id = "seal-by-own" if verdict.is_own else "seal-by-other"
    if verdict.sealed_at is None:
        return words(f"{id}-undated", signer=verdict.signer)
    moment = verdict.sealed_at.astimezone(UTC)
    return words(id, signer=verdict.signer, day=moment.date(), time=f"{moment:%H:%M}")


def _where(told: Compared, name: str) -> list[Words]:
    found = []
    then, now = told.counts
    if told.pages and then != now:
        found.append(words("seal-page-count", then=then, now=now, first=str(told.pages[0])))
    elif told.pages:
        pages = tuple(str(page) for page in told.pages[:10])
        found.append(words("seal-pages", n=len(told.pages), pages=pages))
    if told.other_fields:
        found.append(words("seal-fields", n=len(told.other_fields), names=told.other_fields[:5]))
    found += [words(f"returns-holds-{mark}", name=name) for mark in told.marks]
    if told.filled:
        found.append(words("seal-filled-in", n=len(told.filled), names=told.filled[:5]))
    return found
