"""Mutated JSON gets a clear message or a right answer: no traceback, no failure of the program.

``QUARTERDAY_MUTATIONS`` says how many are tried (default 1,000; 10,000 take some minutes).
"""

from __future__ import annotations

import json
import os
import random
from collections import Counter
from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import FILE, ROOT, Program

from quarterday.people import access_keys

COUNT = int(os.environ.get("QUARTERDAY_MUTATIONS", "1000"))
BUILDING = {"id": "shed", "name": "The shed", "area_m2": "40", "year_built": 1990}
LOSS = {"id": "mine", "cause": "fire", "place": "hall", "date_of_loss": "2026-06-01",
        "amounts": {"building": "10000"}}  # fmt: skip
SEEDS: list[tuple[str, Any]] = [
    (f"{FILE}/records", {"kind": "building", "record": BUILDING, "seen": 999}),
    (f"{FILE}/decisions", {"question": "x@hall", "answer": "later", "by": "Lou",
                           "on": "2026-11-20", "words": "Later.", "seen": 999}),
    (f"{FILE}/undo", {"entry": 5, "seen": 999}),
    (f"{FILE}/requests/messages", {"language": "en", "address": "a@larkmoor.example.org",
                                   "subject": "S", "message": "M", "seen": 999}),
    (f"{FILE}/pay", {"told": LOSS, "terms": "expiring", "as_of": "2026-11-25"}),
    (f"{ROOT}/calculations/coinsurance",
     {"value": "1000000", "required": "0.90", "carried": "600000", "loss": "100000",
      "deductible": "1000"}),
    (f"{ROOT}/calculations/apportion",
     {"total": "100.00", "weights": {"a": "1", "b": "2"}, "unit": "0.01"}),
    (f"{ROOT}/calculations/earned",
     {"premium": "1200.00", "from": "2026-01-01", "to": "2027-01-01", "cancelled": "2026-07-01",
      "rule": "pro-rata"}),
    (f"{ROOT}/calculations/tax",
     {"province": "ON", "date": "2026-11-25", "lines": [{"family": "property", "amount": "100"}]}),
    (f"{ROOT}/calculations/limited-mean",
     {"distribution": {"name": "pareto", "alpha": "2", "theta": "1000"}, "limit": "5000"}),
    (f"{ROOT}/calculations/apr",
     {"method": "canada", "financed": "1000", "payments": [{"amount": "550", "years": "0.5"},
                                                           {"amount": "550", "years": "1"}]}),
]  # fmt: skip
STRANGE: list[Any] = [
    None, True, False, 0, -1, 2**63, 10**40, "", " ", "0", "-0", "1e999", "NaN", "Infinity", "1,5",
    "\u0000", "a" * 5000, "\u202eevil", "🏚", "<script>", "'; --", "2026-02-30", "0000-00-00",
    [], {}, [[]], {"": ""}, [None], "../../etc", "%s{0}",
]  # fmt: skip


def places(part: Any) -> list[tuple[Any, Any]]:
    """Return every place of a value at which something stands: its holder, and where in it."""
    if not isinstance(part, dict | list):
        return []
    found: list[tuple[Any, Any]] = []
    for key, value in part.items() if isinstance(part, dict) else enumerate(part):
        found.append((part, key))
        found += places(value)
    return found


def mutated(said: Any, chance: random.Random) -> bytes:
    """Return a body that was changed in one to three places, as values or as bytes."""
    made = json.loads(json.dumps(said))
    for _ in range(chance.randint(1, 3)):
        spots = places(made)
        if not spots:
            break
        holder, key = chance.choice(spots)
        match chance.randrange(4):
            case 0:
                del holder[key]
            case 1 if isinstance(holder, dict):
                holder[str(key) + chance.choice(["", "x", "é", " "])] = holder.pop(key)
            case _:
                holder[key] = chance.choice(STRANGE)
    body = bytearray(json.dumps(made, ensure_ascii=chance.random() < 0.5).encode())
    if chance.random() < 0.4:
        for _ in range(chance.randint(1, 4)):
            at = chance.randrange(len(body) + 1)
            body[at : at + chance.randint(0, 3)] = chance.randbytes(chance.randint(0, 3))
    return bytes(body)


@pytest.mark.parametrize(("path", "said"), SEEDS)
def test_each_is_answered_or_told_in_a_sentence(
    path: str, said: Any, book: None, program: Callable[[str], Program],
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.setattr(access_keys, "MOST_A_MINUTE", 10**6)
    chance, asker = random.Random(path), program("maria")
    seen: Counter[int] = Counter()
    for _ in range(max(COUNT // len(SEEDS), 1)):
        body = mutated(said, chance)
        answer = asker.post(path, body)
        seen[answer.status_code] += 1
        assert answer.status_code in {200, 400, 404, 409, 422}, (body, answer.content)
        if answer.status_code != 200:
            detail = answer.json()["detail"]
            assert detail.strip(), body
            assert not any(sign in detail for sign in ("Traceback", "Error:", "0x7")), detail
    assert seen[400] + seen[422] > 0
