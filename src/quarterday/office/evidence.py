"""The evidence of a file: one archive with everything that was sent, said and decided.

It can be checked without this program: ``entries.jsonl`` holds the chain as it is hashed, and the
text beside it says how. A workbook that was loaded for several organisations is not enclosed, since
it tells of the others too, nor a document that was erased on lawful request; name and digest are.
"""

from __future__ import annotations

import hashlib
import io
import json
import zipfile
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC
from pathlib import Path

from quarterday.catalogue.load import place_folder
from quarterday.catalogue.speech import Speech
from quarterday.catalogue.text import read_text
from quarterday.core.file.chain import Head
from quarterday.core.file.difference import Leaf, flat
from quarterday.core.file.entry import Entry, Origin
from quarterday.core.file.fold import fold
from quarterday.core.reference import Reference
from quarterday.core.words import Term, words
from quarterday.intake.labels import field_label
from quarterday.office.redacting import documents
from quarterday.store import ledger, originals
from quarterday.store.seals import sealed_heads

_FIRST_MOMENT = (1980, 1, 1, 0, 0, 0)  # a zip knows no earlier; equal evidence, equal bytes
_SHARED_WAYS = {"workbook", "csv"}
LANGUAGES = ("en", "fr")
CHECK = Path(__file__).parent / "evidence_check.py"


@dataclass(frozen=True, slots=True)
class Archive:
    """A file's evidence: its bytes, and how many entries and documents are in it."""

    name: str
    data: bytes
    entries: int
    documents: int
    left_out: tuple[str, ...]


def archive(id: str, reference: Reference) -> Archive:
    """Return everything that is kept of a file as one archive; the same file, the same bytes."""
    entries = ledger.entries(id)
    kept = {document.digest: document.name for document in documents(entries)}
    gone = {digest: name for digest, name in kept.items() if originals.is_erased(digest)}
    shared = dict(_shared(entries)) | gone
    named = {digest: name for digest, name in kept.items() if digest not in shared}
    parts = {"entries.jsonl": _lines(entries), "check.py": CHECK.read_bytes()}
    for digest, name in named.items():
        parts[f"documents/{digest}-{_safe(name)}"] = originals.get(digest)
    for language in LANGUAGES:
        speech = Speech(reference, language)
        parts[f"history.{language}.txt"] = _history(entries, speech).encode()
        parts[f"README.{language}.txt"] = _readme(id, entries, speech).encode()
    parts["manifest.json"] = _manifest(id, entries, parts, shared)
    return Archive(f"{id}-evidence.zip", _zip(parts), len(entries), len(named), tuple(shared))


def _shared(entries: Iterable[Entry]) -> Iterator[tuple[str, str]]:
    for entry in entries:
        if entry.origin.way in _SHARED_WAYS and entry.origin.document:
            yield entry.origin.document, entry.origin.name


def _lines(entries: Iterable[Entry]) -> bytes:
    return b"".join(
        json.dumps(_plain(entry), ensure_ascii=False, sort_keys=True).encode() + b"\n"
        for entry in entries
    )


def _plain(entry: Entry) -> dict[str, object]:
    return {
        "file": entry.file, "seq": entry.seq, "by": entry.by, "act": entry.act,
        "recorded_at": entry.recorded_at.astimezone(UTC).isoformat(timespec="microseconds"),
        "kind": entry.kind, "key": entry.key, "body": entry.body, "salt": entry.salt,
        "body_digest": entry.body_digest, "digest": entry.digest, "previous": entry.previous,
        "origin": _origin(entry.origin),
    }  # fmt: skip


def _origin(origin: Origin) -> dict[str, object]:
    plain: dict[str, object] = origin.model_dump(mode="json", exclude_defaults=True)
    return plain


def _manifest(
    id: str, entries: tuple[Entry, ...], parts: dict[str, bytes], shared: dict[str, str]
) -> bytes:
    last = entries[-1]
    heads = [{"seq": head.seq, "digest": head.digest} for head in sealed_heads().get(id, [])]
    told = {
        "file": id,
        "head": {"seq": last.seq, "digest": last.digest},
        "sealed_heads": heads,
        "sha256": {name: hashlib.sha256(data).hexdigest() for name, data in sorted(parts.items())},
        "not_enclosed": [{"sha256": d, "name": name} for d, name in sorted(shared.items())],
    }
    return json.dumps(told, ensure_ascii=False, indent=2).encode() + b"\n"


def _history(entries: tuple[Entry, ...], speech: Speech) -> str:
    return "\n\n".join(_told(entry, speech) for entry in entries) + "\n"


def _told(entry: Entry, speech: Speech) -> str:
    moment = f"{entry.recorded_at.astimezone(UTC):%Y-%m-%d %H:%M} UTC"
    said = words(
        "evidence-entry", seq=str(entry.seq), moment=moment, by=entry.by,
        kind=Term("kind", entry.kind), key=entry.key or "–",
        origin=speech.origin(entry.origin, entry.recorded_at.date()),
    )  # fmt: skip
    gone = "evidence-redacted" if entry.is_redacted else "evidence-withdrawn"
    facts = [
        speech.named(_called(name, entry.kind, speech), _valued(value, speech))
        for name, value in flat(entry.body).items()
    ]
    lines = facts or [speech.say(words(gone))]
    return "\n".join((speech.say(said), *(f"    {line}" for line in lines)))


def _called(path: str, kind: str, speech: Speech) -> str:
    """Return what people call a field; what it is part of stays before it, as the entry has it."""
    above, dot, name = path.rpartition(".")
    label = field_label(name, kind)
    called = speech.say(label) if speech.can_say(label.id) else name
    return f"{above}{dot}{called}"


def _valued(value: Leaf, speech: Speech) -> str:
    if isinstance(value, bool):
        return speech.say(words("yes" if value else "no"))
    return "" if value is None else str(value)


def _readme(id: str, entries: tuple[Entry, ...], speech: Speech) -> str:
    folder = place_folder(speech.reference.place) / "letters" / speech.language
    text = read_text(folder / "evidence.txt")
    name = fold(id, entries).organisation.name
    head = Head(entries[-1].seq, entries[-1].digest)
    told = {"file": id, "name": name, "seq": str(head.seq), "digest": head.digest}
    for key, value in told.items():
        text = text.replace(f"<{key}>", value)
    return text


def _safe(name: str) -> str:
    plain = "".join(c if c.isalnum() or c in "-._" else "-" for c in Path(name).name)
    return plain[-80:] or "document"


def _zip(parts: dict[str, bytes]) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as made:
        for name, data in sorted(parts.items()):
            made.writestr(zipfile.ZipInfo(name, _FIRST_MOMENT), data, zipfile.ZIP_DEFLATED)
    return out.getvalue()
