"""YAML without its traps: exact decimals, no second equal key, no word read as a boolean."""

from __future__ import annotations

import re
from datetime import date, datetime
from decimal import Decimal
from typing import Any

import yaml

from quarterday.catalogue.problems import BadReference

_WHOLE = re.compile(r"[-+]?(0|[1-9][0-9]*)")
_DECIMAL = re.compile(r"[-+]?[0-9]+\.[0-9]+")


class _Strict(yaml.CSafeLoader):
    """A safe loader that refuses what YAML 1.1 would silently turn into something else."""


def _refuse(node: yaml.Node, why: str) -> yaml.YAMLError:
    return yaml.constructor.ConstructorError(None, None, why, node.start_mark)


def _mapping(loader: _Strict, node: yaml.MappingNode) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key_node, value_node in node.value:
        key = loader.construct_object(key_node, deep=True)
        if not isinstance(key, str):
            raise _refuse(key_node, f"the key {key!r} is not a word; put it in quotes")
        if key in found:
            raise _refuse(key_node, f"the key {key!r} stands here twice; keep one")
        found[key] = loader.construct_object(value_node, deep=True)
    return found


def _bool(_: _Strict, node: yaml.ScalarNode) -> bool:
    if node.value not in {"true", "false"}:
        raise _refuse(node, f"the bare word {node.value} reads as yes or no; put it in quotes")
    return bool(node.value == "true")


def _whole(_: _Strict, node: yaml.ScalarNode) -> int:
    if not _WHOLE.fullmatch(node.value):
        raise _refuse(node, f"{node.value} does not read as the number it looks like; quote it")
    return int(node.value)


def _decimal(_: _Strict, node: yaml.ScalarNode) -> Decimal:
    if not _DECIMAL.fullmatch(node.value):
        raise _refuse(node, f"{node.value} is not a plain decimal number; write it like 0.25")
    return Decimal(node.value)


def _day(loader: _Strict, node: yaml.ScalarNode) -> date:
    day: date = loader.construct_yaml_timestamp(node)
    if isinstance(day, datetime):
        raise _refuse(node, f"{node.value} has a time of day; write the date alone")
    return day


_Strict.add_constructor("tag:yaml.org,2002:map", _mapping)
_Strict.add_constructor("tag:yaml.org,2002:bool", _bool)
_Strict.add_constructor("tag:yaml.org,2002:int", _whole)
_Strict.add_constructor("tag:yaml.org,2002:float", _decimal)
_Strict.add_constructor("tag:yaml.org,2002:timestamp", _day)


def read_yaml(text: str, file: str) -> Any:  # noqa: ANN401 - YAML holds anything
    """Return what ``text`` holds; BadReference names ``file`` and the line when it cannot be read.

    Decimal numbers become ``Decimal``. Refused: a key that stands twice, words such as ``ON`` and
    ``NO`` without quotes, numbers with leading zeros or colons, infinities, dates with a time.
    """
    try:
        return yaml.load(text, _Strict)  # noqa: S506 - derived from the safe loader
    except ValueError as error:
        raise BadReference([f"{file}: {error}."]) from error
    except yaml.MarkedYAMLError as error:
        line = f", line {error.problem_mark.line + 1}" if error.problem_mark else ""
        raise BadReference([f"{file}{line}: {error.problem}."]) from error
    except RecursionError as error:
        raise BadReference([f"{file}: is nested too deeply."]) from error
    except yaml.YAMLError as error:
        raise BadReference([f"{file}: {error}."]) from error
