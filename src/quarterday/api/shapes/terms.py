"""Terms, what they pay, and what they cost."""

from pydantic import Field

from quarterday.api.shapes.base import Day, Money, Number, Shape
from quarterday.api.shapes.files import Record
from quarterday.api.shapes.review import Node


class Versions(Shape):
    """The terms that play a part in the renewal; null where there are none."""

    file: str
    renewal: Day
    expiring: Record | None
    requested: Record | None
    offered: Record | None
    issued: Record | None


class Settled(Shape):
    """What is paid for one loss, by whom, and what is borne, and why; or why it is not settled."""

    id: str = ""
    name: str = ""
    why_not: str = ""
    loss: str = ""
    total: Money = ""
    paid: Money = ""
    borne: Money = ""
    paid_by: dict[str, Money] = Field(default_factory=dict)
    borne_by_reason: dict[str, Money] = Field(default_factory=dict)
    steps: list[str] = Field(default_factory=list)
    cautions: list[str] = Field(default_factory=list)


class ClauseDifference(Shape):
    """A difference between two versions of the terms."""

    kind: str
    coverage: str
    location: str
    direction: str
    more_borne: Money | None
    sentence: str


class Both(Shape):
    """What is borne of one loss under each version; null where that cannot be said."""

    loss: str
    before: Money | None
    after: Money | None
    can_say: bool
    more_borne: Money | None


class Past(Shape):
    """What would have been borne of ten years' claims under each version."""

    claims: int
    before: Money
    after: Money


class Comparison(Shape):
    """Two versions of the terms: clauses, and what the same losses cost under each."""

    file: str
    before: str
    after: str
    differences: list[ClauseDifference]
    losses: list[Both]
    past: Past


class Cell(Shape):
    """A cell of the premium table."""

    coverage: str
    location: str
    amount: Money


class StatedFault(Shape):
    """A total that the insurer stated and that does not add up."""

    what: str
    stated: Money
    computed: Money


class Allocation(Shape):
    """Who bears which part, by coverage and by location."""

    key: str
    by_coverage: dict[str, dict[str, Money]]
    by_location: dict[str, dict[str, Money]]
    totals: dict[str, Money]


class Payment(Shape):
    """One payment of a plan."""

    due: Day
    amount: Money
    premium: Money
    fees: Money
    tax: Money
    charge: Money


class Plan(Shape):
    """What paying by a plan costs; both rates are per year."""

    plan: str
    illustrative: bool
    payments: list[Payment]
    total: Money
    extra: Money
    extra_tax: Money
    cost_of_borrowing: Number
    effective: Number


class PrepaidMonth(Shape):
    """What a month uses up of the premium, both days included."""

    since: Day = Field(alias="from")
    to: Day
    days: int
    fiscal_year: Day
    amount: Money


class Premium(Shape):
    """A premium: table, tax, why it moved, who pays, instalments, prepaid months."""

    file: str
    terms: str
    cells: list[Cell]
    subtotal: Money
    fees: Money
    tax: Money
    total: Money
    faults: list[StatedFault]
    doubts: list[str]
    change: list[Node]
    allocation: Allocation | None
    plans: list[Plan]
    prepaid: list[PrepaidMonth]
    fiscal_years: dict[str, Money]


class Alternative(Shape):
    """What losses cost under one alternative: an average year, and bad ones."""

    id: str
    kind: str
    name: str
    price: Money | None
    average: Node | None
    one_in_10: Node | None
    one_in_100: Node | None


class Option(Shape):
    """What taking an option would change."""

    coverage: str
    location: str
    name: str
    state: str
    price: Money | None
    average: Node | None
    one_in_10: Node | None
    one_in_100: Node | None
    why_not: str | None


class Deductible(Shape):
    """What another deductible saves and costs."""

    name: str
    premium: Money | None
    kept: Node | None
    one_in_100: Node | None
    per_loss: Money | None
    expected_losses: Node | None
    break_even: Node | None
    pays: bool | None


class Risk(Shape):
    """What losses could cost the organisation next year, and what its options would change."""

    file: str
    renewal: Day
    as_of: Day
    years: int
    alternatives: list[Alternative]
    options: list[Option]
    deductibles: list[Deductible]
    left_out: list[str]
