"""Run it: ``python -m tests.mutation settling --sample 200``, or without a name for the list.

Mutants that survive are printed with their place. Some of them change nothing that anybody could
see; they are counted as survivors all the same.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from pathlib import Path

import click

from tests.mutation.mutants import Mutant, mutants
from tests.mutation.trial import Fate, fate, steady

ROOT = Path(__file__).parents[2]
CORE = ROOT / "src" / "quarterday" / "core"
TESTS = "tests/core"
STEP = 10  # mutants between two words on how far it came


@dataclass(frozen=True, slots=True)
class Target:
    """Code to be made wrong, and the tests that must notice, the quick ones first."""

    files: tuple[str, ...]
    tests: tuple[str, ...]

    def mutants(self) -> list[Mutant]:
        """Return every mutant of the files."""
        paths = chain.from_iterable(sorted(CORE.glob(pattern)) for pattern in self.files)
        return list(chain.from_iterable(map(mutants, paths)))


def _tests(folder: str, *names: str) -> tuple[str, ...]:
    return tuple(f"{TESTS}/{folder}/test_{name}.py" for name in names)


SETTLING = ("clauses", "documented", "form", "outcomes", "machine", "properties")
VALUES = ("index", "coinsurance")
PREMIUM = ("tax", "rounding", "table", "split", "apr", "instalments", "midterm", "prepaid")
TARGETS: Mapping[str, Target] = {
    "settling": Target(
        ("terms/settling/*.py",),
        (*_tests("terms/settling", *SETTLING), *_tests("terms", "compare_settling", "calc")),
    ),
    "values": Target(tuple(f"values/{name}.py" for name in VALUES), (f"{TESTS}/values",)),
    "premium": Target(tuple(f"premium/{name}.py" for name in PREMIUM), (f"{TESTS}/premium",)),
}


def chosen(found: Sequence[Mutant], sample: int | None, seed: int) -> list[Mutant]:
    """Return the mutants to try, in order of their place: all of them, or a sample by seed."""
    if sample is None or sample >= len(found):
        return list(found)
    picked = random.Random(seed).sample(range(len(found)), sample)
    return [found[number] for number in sorted(picked)]


def tried(mutants: Sequence[Mutant], tests: Sequence[str], seconds: int) -> Iterator[Fate]:
    """Yield the fate of each mutant; print it where it was not killed, and how far it came."""
    for number, mutant in enumerate(mutants):
        if number and number % STEP == 0:
            click.echo(f"{number} of {len(mutants)} tried", err=True)
        told = fate(mutant, tests, seconds)
        if told != "killed":
            place = f"{mutant.path.relative_to(ROOT)}:{mutant.line}"
            click.echo(f"{told:<9} {place}  {mutant.was}  ->  {mutant.now}")
        yield told


@click.command()
@click.argument("name", type=click.Choice(list(TARGETS)))
@click.option("--sample", type=click.IntRange(min=1), help="Try so many; default: all.")
@click.option("--seed", default=1, show_default=True, help="Which sample.")
@click.option("--skip", default=0, help="Begin after so many: a run that was cut off goes on.")
@click.option("--seconds", default=120, show_default=True, help="Processor seconds a mutant.")
def main(name: str, sample: int | None, seed: int, skip: int, seconds: int) -> None:
    """Make the code of NAME wrong in one place after the other; count how often a test notices."""
    target = TARGETS[name]
    steady()
    if fate(None, target.tests, seconds * 2) != "survived":
        raise click.ClickException("The tests fail as it is; mend that first.")
    found = target.mutants()
    counts = Counter(tried(chosen(found, sample, seed)[skip:], target.tests, seconds))
    noticed, total = counts["killed"] + counts["too long"], counts.total()
    click.echo(f"{name}: {noticed} of {total} noticed ({noticed / total:.1%}), of {len(found)} "
               f"mutants in all; {dict(counts)}")  # fmt: skip


if __name__ == "__main__":
    main()
