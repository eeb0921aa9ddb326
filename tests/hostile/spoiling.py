"""How an input is spoiled: its bytes, its texts, its structure."""

from __future__ import annotations

import io
import json
import random
import re
import zipfile
from decimal import Decimal
from typing import Any

import pikepdf

TEXTS = (
    "", " ", "0", "-1", "1e400", "-1e-400", "NaN", "Infinity", "1" * 400, "10" * 8, "1,5.0,3",
    "=1+1", '=HYPERLINK("http://example.org","x")', "@SUM(1)", "+1", "-",
    "2027-02-30", "1899-12-31", "9999-12-31", "0000-00-00", "31/02/2027", "Jan-24", "N/A", "#REF!",
    "\x00", "\x1b[31m", "\ufeff", "\u202e", "\ud800", "é" * 300, "🎉", "x" * 40_000, "true", "oui",
    "١٢٣", "½", "1\u00a0234,56 $", "{ $x }", "<b>", "'; DROP TABLE x; --", "../../etc", "%s%n",
)  # fmt: skip
VALUES: tuple[Any, ...] = (
    None, True, 0, -1, 10**30, 1e308, "1e5000", [], {}, [[]], {"": ""}, *TEXTS
)  # fmt: skip
XML = re.compile(rb"(?<=>)[^<>]{1,60}(?=<)")
ATTRIBUTE = re.compile(rb'(?<==")[^"]{1,40}(?=")')


def text_of(chance: random.Random) -> str:
    """Return a text that somebody might type, paste or send on purpose."""
    return chance.choice(TEXTS)


def of_bytes(data: bytes, chance: random.Random) -> bytes:
    """Flip, cut, double or insert somewhere."""
    found = bytearray(data)
    for _ in range(chance.choice((1, 1, 3, 20))):
        at = chance.randrange(len(found) or 1)
        size = chance.choice((1, 4, 64, 1024))
        match chance.randrange(5):
            case 0:
                found[at : at + 1] = bytes([chance.randrange(256)])
            case 1:
                del found[at : at + size]
            case 2:
                found[at:at] = found[at : at + size]
            case 3:
                found[at:at] = chance.randbytes(size)
            case _:
                found = found[: at + 1] if chance.random() < 0.2 else found
    return bytes(found)


def of_form(data: bytes, chance: random.Random) -> bytes:
    """Spoil fields of a form inside its document, which stays one: values, names, kinds, places."""
    with pikepdf.open(io.BytesIO(data)) as pdf:
        widgets = [w for page in pdf.pages for w in page.obj.get("/Annots", ())]
        hidden = [f for f in pdf.Root.AcroForm.Fields if "/V" in f and "/Rect" not in f]
        for field in chance.sample([*widgets, *hidden * 20], chance.choice((1, 5, 40))):
            key = chance.choice(("/V", "/V", "/V", "/T", "/FT", "/AS", "/Rect", "/Parent", "/Kids"))
            if chance.random() < 0.1 and key in field:
                del field[key]
            else:
                field[key] = _odd(pdf, field, chance)
        out = io.BytesIO()
        pdf.save(out, deterministic_id=True)
    return out.getvalue()


def _odd(pdf: pikepdf.Pdf, field: pikepdf.Object, chance: random.Random) -> Any:
    text = text_of(chance).encode("utf-8", "replace").decode()  # no PDF can hold half a letter
    return chance.choice(
        (
            pikepdf.String(text), pikepdf.String(text), pikepdf.String(text),
            pikepdf.String(json.dumps(chance.choice(VALUES))),
            pikepdf.Name("/" + chance.choice(("Off", "Yes", "weekly", "x" * 500))),
            chance.choice((0, -1, 10**9, True, Decimal("1.5"))),
            pikepdf.Array([pikepdf.String("a"), 1, field]),
            pikepdf.Dictionary(A=field),
            pikepdf.Stream(pdf, b"705-555-0100"),
        )
    )  # fmt: skip


def of_package(data: bytes, chance: random.Random) -> bytes:
    """Spoil parts of a workbook inside its package, which stays a package."""
    out = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(data)) as read,
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as made,
    ):
        names = read.namelist()
        aim = chance.choice(names)
        for name in names:
            part = read.read(name)
            if name == aim and chance.random() < 0.1:
                continue
            spoil = name == aim or (name.startswith("xl/worksheets/") and chance.random() < 0.3)
            made.writestr(name, _of_part(part, chance) if spoil else part)
    return out.getvalue()


def _of_part(part: bytes, chance: random.Random) -> bytes:
    if chance.random() < 0.15:
        return of_bytes(part, chance)
    pattern = chance.choice((XML, XML, XML, ATTRIBUTE))
    hits = list(pattern.finditer(part))
    for hit in sorted(chance.sample(hits, min(len(hits), 4)), key=lambda h: -h.start()):
        text = text_of(chance).encode("utf-8", "surrogatepass")
        escaped = text.replace(b"&", b"&amp;").replace(b"<", b"&lt;").replace(b'"', b"&quot;")
        part = part[: hit.start()] + escaped + part[hit.end() :]
    return part


def of_csv(text: str, chance: random.Random) -> bytes:
    """Spoil cells, rows, marks and the encoding of a table."""
    lines = text.splitlines()
    for _ in range(chance.choice((1, 2, 5))):
        at = chance.randrange(len(lines))
        cells = lines[at].split(",")
        match chance.randrange(6):
            case 0 | 1 | 2:
                cells[chance.randrange(len(cells))] = text_of(chance)
                lines[at] = ",".join(cells)
            case 3:
                lines.insert(at, lines[chance.randrange(len(lines))])
            case 4:
                lines[at] = lines[at].replace(",", chance.choice((";", "\t", '"', ",,")))
            case _:
                lines[at] += '"' * chance.randrange(1, 4)
    encoding = chance.choice(("utf-8", "utf-8", "utf-16", "cp1252", "utf-8-sig"))
    data = "\n".join(lines).encode(encoding, "replace" if encoding == "cp1252" else "surrogatepass")
    return of_bytes(data, chance) if chance.random() < 0.2 else data


def of_json(value: Any, chance: random.Random) -> Any:
    """Replace, remove, double or nest something in a structure."""
    made = json.loads(json.dumps(value))
    for _ in range(chance.choice((1, 1, 2, 4))):
        made = _at_random(made, chance)
    return made


def _at_random(value: Any, chance: random.Random) -> Any:
    inside = isinstance(value, dict | list) and value and chance.random() < 0.85
    if not inside:
        return chance.choice([*VALUES, [value], {"x": value}, [value] * 50])
    if isinstance(value, list):
        at = chance.randrange(len(value))
        return [*value[:at], _at_random(value[at], chance), *value[at + 1 :]]
    key = chance.choice(sorted(value))
    rest = {k: v for k, v in value.items() if k != key}
    match chance.randrange(8):
        case 0:
            return rest
        case 1:
            return {**value, text_of(chance): value[key]}
        case _:
            return {**rest, key: _at_random(value[key], chance)}
