"""A process that works for a long time holds its reference data out of the collector's way."""

from __future__ import annotations

import subprocess  # what it does, it does to a whole process
import sys

SAYS = """
import gc
from quarterday.office import worker
from quarterday.office.own_data import reference_in_use
worker.warm()
known = reference_in_use()
walked = {id(one) for one in gc.get_objects()}
print(gc.get_freeze_count() > 10_000, id(known) in walked, gc.get_threshold()[0] >= 10_000)
"""


def test_a_warm_process_never_walks_its_reference_data_again() -> None:
    done = subprocess.run([sys.executable, "-c", SAYS], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["True", "False", "True"]
