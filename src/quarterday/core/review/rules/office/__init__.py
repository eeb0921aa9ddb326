"""Rules of the family ``office``: whether the record can be relied on, and what is running late."""

from __future__ import annotations

from quarterday.core.diary.diary import PARAMETERS
from quarterday.core.review.finding import Rule
from quarterday.core.review.rules.office.confirmations import (
    authorised_people,
    contact_unconfirmed,
    operations_stale,
)
from quarterday.core.review.rules.office.deadlines import deadline
from quarterday.core.review.rules.office.identity import name_mismatch, registration
from quarterday.core.review.rules.office.lenders import interests

CONFIRMED = "office.confirmed-within-months"
OPERATIONS = "office.operations-within-months"
LUHN = (
    "Canada Revenue Agency, canada.ca: business number of 9 digits, program RR, 4-digit reference; "
    "Luhn check digit as in python-stdnum, module stdnum.ca.bn"
)

RULES: tuple[Rule, ...] = (
    Rule("office.contact-unconfirmed", "person", contact_unconfirmed, (CONFIRMED,)),
    Rule("office.authorised-people", "person", authorised_people),
    Rule("office.operations-stale", "operations", operations_stale, (OPERATIONS,)),
    Rule("office.interests", "interest", interests, (CONFIRMED,)),
    Rule("office.registration", "organisation", registration, basis=LUHN),
    Rule("office.name-mismatch", "organisation", name_mismatch),
    Rule("office.deadline", "diary", deadline, PARAMETERS),
)
