"""Check the evidence in this folder with Python alone: run ``python3 check.py`` in it.

It prints every fault and ends with 1 when there is one. README.en.txt says what it does.
"""

import hashlib
import json
import pathlib
import sys


def sha256(data: bytes) -> str:
    """Return the SHA-256 of some bytes in hex."""
    return hashlib.sha256(data).hexdigest()


def hashed(text: str) -> str:
    """Return the SHA-256 of a text as UTF-8."""
    return sha256(text.encode("utf-8"))


def canonical(value: object) -> str:
    """Return a value as JSON with sorted names and no spaces."""
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def link(entry: dict[str, object]) -> str:
    """Return the digest that an entry must have."""
    names = ("file", "seq", "recorded_at", "by", "act", "kind", "key", "origin")
    envelope = {name: entry[name] for name in names} | {"withdraws": entry["act"] == "withdraw"}
    return hashed(f"{entry['previous']}\n{entry['body_digest']}\n{canonical(envelope)}")


def chain_faults(entries: list[dict[str, object]]) -> list[str]:
    """Return what is wrong with the chain of entries."""
    redacted = {entry["key"] for entry in entries if entry["kind"] == "redaction"}
    found, digest = [], "0" * 64
    for number, entry in enumerate(entries, start=1):
        if entry["seq"] != number or entry["previous"] != digest or entry["digest"] != link(entry):
            found.append(f"entry {entry['seq']} does not follow from the one before it")
        if entry["salt"] is None:
            fits = entry["body"] is None and str(entry["seq"]) in redacted
        else:
            fits = entry["body_digest"] == hashed(f"{entry['salt']}\n{entry['body'] or ''}")
        if not fits:
            found.append(f"the content of entry {entry['seq']} is not what was recorded")
        digest = str(entry["digest"])
    return found


def faults(folder: pathlib.Path) -> list[str]:
    """Return everything that is wrong with the evidence in a folder."""
    manifest = json.loads((folder / "manifest.json").read_text("utf-8"))
    found = []
    for name, digest in manifest["sha256"].items():
        part = folder / name
        if not part.is_file() or sha256(part.read_bytes()) != digest:
            found.append(f"{name} is missing or was changed")
    documents = sorted(folder.glob("documents/*"))
    found += [f"{d.name} was changed" for d in documents if sha256(d.read_bytes()) != d.name[:64]]
    text = (folder / "entries.jsonl").read_text("utf-8")
    entries = [json.loads(line) for line in text.split("\n") if line]
    found += chain_faults(entries)
    digests = {entry["seq"]: entry["digest"] for entry in entries}
    for head in [manifest["head"], *manifest["sealed_heads"]]:
        if digests.get(head["seq"]) != head["digest"]:
            found.append(f"entry {head['seq']} is not the one that was sealed, or is gone")
    return found


if __name__ == "__main__":
    wrong = faults(pathlib.Path(__file__).resolve().parent)
    sys.stdout.write("\n".join(wrong or ["Nothing was altered."]) + "\n")
    sys.exit(1 if wrong else 0)
