"""The demo book: forty invented organisations looked after by one invented brokerage.

Each organisation is one file in ``accounts``; it tells its story, says which findings were planted
in it, and holds only what differs from the insurers' usual plans in ``plans.yaml``.
"""

from __future__ import annotations

from quarterday.invent.demo.book import AS_OF, Tale, demo_book, tales

__all__ = ["AS_OF", "Tale", "demo_book", "tales"]
