"""The description holds: what it allows is taken, what it forbids is refused, answers conform.

Schemathesis makes the inputs, right and wrong, from the description itself; the official schema of
OpenAPI 3.1 (spec.openapis.org/oas/3.1, as jsonschema validators carry it) judges the description.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from copy import deepcopy
from typing import Any

import pytest
import schemathesis
from django.core.signals import request_finished, request_started
from django.db import close_old_connections
from hypothesis import HealthCheck, Phase, assume, given, settings
from hypothesis.errors import Unsatisfiable
from jsonschema_rs import ValidationError as SchemaError
from schemathesis.config import SchemathesisConfig
from schemathesis.core.failures import FailureGroup
from schemathesis.generation import GenerationMode
from schemathesis.schemas import APIOperation
from schemathesis.specs.openapi.schemas import OpenApiSchema
from schemathesis.transport.serialization import Binary
from tests.api.conftest import FLAGSHIP

from quarterday.api.service import described
from quarterday.desk.wsgi import application
from quarterday.office.calculating import CALCULATIONS
from quarterday.people import access_keys
from quarterday.store import ledger

EXAMPLES = 12  # an operation, right and wrong inputs mixed
# only ids that exist reach further than "there is no such file"
KNOWN: dict[str, list[str]] = {
    "file": [FLAGSHIP],
    "figure": ["shortfall@hall", "none"],
    "name": sorted(CALCULATIONS),
}
CONFIG = {
    "seed": 8,
    "generation": {"mode": "all", "deterministic": True, "allow-x00": False},
    "checks": {
        # 422: what is rightly written but cannot be done, such as a decision on no question
        "positive_data_acceptance": {"expected-statuses": [200, 404, 409, 422]},
        # the interface says 405 itself, and HEAD and OPTIONS are no operations
        "unsupported_method": {"enabled": False},
        # a key is asked for by every operation, which the rights' matrix tests
        "ignored_auth": {"enabled": False},
    },
}


@pytest.fixture
def stays_open() -> Iterator[None]:
    """Keep the test's connection between requests, as Django's own test client does."""
    for signal in (request_started, request_finished):
        signal.disconnect(close_old_connections)
    yield
    for signal in (request_started, request_finished):
        signal.connect(close_old_connections)


@pytest.fixture
def schema(
    stays_open: None, book: None, secrets: dict[str, str], monkeypatch: pytest.MonkeyPatch
) -> OpenApiSchema:
    """The description, with ids that exist, asked by somebody who may do everything."""
    monkeypatch.setattr(access_keys, "MOST_A_MINUTE", 10**6)
    raw: dict[str, Any] = deepcopy(described())
    for methods in raw["paths"].values():
        for operation in methods.values():
            for parameter in operation["parameters"]:
                if parameter["name"] in KNOWN:
                    parameter["schema"] = {"type": "string", "enum": KNOWN[parameter["name"]]}
    loaded = schemathesis.openapi.from_dict(raw, config=SchemathesisConfig.from_dict(CONFIG))
    loaded.app = application
    loaded.location = "/api/v1/openapi.json"
    return loaded


def is_empty_document(body: Any) -> bool:
    """Tell an empty upload: werkzeug encodes it without the line that RFC 2046 ends it by."""
    found = body.get("document") if isinstance(body, dict) else None
    return isinstance(found, Binary) and not found.data


def probe(operation: APIOperation[Any, Any, Any, Any], mode: GenerationMode, key: str) -> int:
    """Ask an operation with made-up inputs of one mode; return how many were asked."""
    asked = 0

    @settings(
        max_examples=EXAMPLES, deadline=None, derandomize=True, database=None,
        phases=[Phase.generate], suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    @given(case=operation.as_strategy(generation_mode=mode))
    def ask(case: schemathesis.Case[Any]) -> None:
        nonlocal asked
        assume(not is_empty_document(case.body))
        asked += 1
        answer = case.call(headers={"Authorization": f"Bearer {key}"})
        case.validate_response(answer)
        if answer.status_code >= 400:
            assert answer.headers["content-type"] == ["application/problem+json"]
            assert answer.json()["detail"]

    ask()
    return asked


def test_each_operation_takes_and_refuses_what_the_description_says(
    schema: OpenApiSchema, secrets: dict[str, str]
) -> None:
    failed, asked = [], 0
    for found in schema.get_all_operations():
        operation = found.ok()  # type: ignore[union-attr]
        for mode in GenerationMode:
            try:
                asked += probe(operation, mode, secrets["maria"])
            except Unsatisfiable:
                continue  # an operation without inputs has no wrong ones
            except (AssertionError, FailureGroup) as failure:
                failed.append(f"{operation.label} {mode.value}: {failure}"[:1500])
    assert not failed, "\n\n".join(failed)
    assert asked > 5 * len(described()["paths"])


def test_the_description_is_openapi() -> None:
    """Schemathesis carries the published schema of OpenAPI 3.1 and judges by it."""
    made = described()
    assert made["openapi"].startswith("3.1")
    schemathesis.openapi.from_dict(deepcopy(made)).validate()
    ids = [op["operationId"] for path in made["paths"].values() for op in path.values()]
    assert len(ids) == len(set(ids))
    assert all(op.get("description") for path in made["paths"].values() for op in path.values())


def test_a_description_that_is_not_openapi_would_be_noticed() -> None:
    broken = deepcopy(described())
    broken["paths"]["/api/v1/me"]["get"]["parameters"] = "none"
    with pytest.raises(SchemaError):
        schemathesis.openapi.from_dict(broken).validate()


def test_every_reference_in_it_leads_somewhere() -> None:
    made = described()

    def references(part: Any) -> list[str]:
        if isinstance(part, dict):
            own = [part["$ref"]] if isinstance(part.get("$ref"), str) else []
            return own + [ref for value in part.values() for ref in references(value)]
        return [ref for one in part for ref in references(one)] if isinstance(part, list) else []

    found = set(references(made))
    assert found
    assert found <= {f"#/components/schemas/{name}" for name in made["components"]["schemas"]}


def test_it_is_read_without_a_key(db: None) -> None:
    from django.test import Client

    answer = Client().get("/api/v1/openapi.json")
    assert answer.json()["info"]["title"] == "Quarterday"
    assert answer.json()["paths"] == json.loads(json.dumps(described()["paths"]))
    assert ledger.files() == ()
