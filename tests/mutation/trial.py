"""Try one mutant: run the tests in a process of its own, in which one file is wrong."""

from __future__ import annotations

import os
import resource
import signal
import sys
from collections.abc import Sequence
from importlib.machinery import SourceFileLoader
from types import CodeType
from typing import Literal

import hypothesis
import pytest

from tests.mutation.mutants import Mutant

Fate = Literal["killed", "survived", "too long", "not tried"]
_FATES: dict[int, Fate] = {0: "survived", 1: "killed", 2: "killed"}


def steady() -> None:
    """Let property tests draw the same examples each time, however slow the machine is."""
    hypothesis.settings.register_profile("mutation", derandomize=True, database=None, deadline=None)
    hypothesis.settings.load_profile("mutation")


def fate(mutant: Mutant | None, tests: Sequence[str], seconds: int) -> Fate:
    """Return what the tests make of a mutant (None: of the code as it is).

    It gets ``seconds`` of processor time. "not tried" means that the tests could not be run at all.
    """
    child = os.fork()
    if child == 0:
        os._exit(_run(mutant, tests, seconds))
    _, status = os.waitpid(child, 0)
    if os.WIFSIGNALED(status):
        return "too long" if os.WTERMSIG(status) == signal.SIGXCPU else "killed"
    return _FATES.get(os.waitstatus_to_exitcode(status), "not tried")


def _run(mutant: Mutant | None, tests: Sequence[str], seconds: int) -> int:
    resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds + 5))
    silence = os.open(os.devnull, os.O_WRONLY)
    os.dup2(silence, 1)
    os.dup2(silence, 2)
    if mutant is not None:
        _spoil(mutant)
    return int(pytest.main(["-x", "-q", "-p", "no:randomly", *tests]))


def _spoil(mutant: Mutant) -> None:
    """Let the mutant's file be read with its one wrong, whatever bytecode is kept of it."""
    wrong = compile(mutant.tree(), str(mutant.path), "exec")
    right = SourceFileLoader.get_code

    def get_code(self: SourceFileLoader, name: str) -> CodeType | None:
        return wrong if self.path == str(mutant.path) else right(self, name)

    SourceFileLoader.get_code = get_code  # type: ignore[method-assign,assignment]
    assert not any(
        getattr(module, "__file__", None) == str(mutant.path) for module in sys.modules.values()
    )
