"""The operations profile: what the organisation does, asked every year."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated, ClassVar

from pydantic import Field

from quarterday.core.file.records.base import Amount, Count, Day, Number, Prose, Record

Share = Annotated[Number, Field(ge=0, le=1)]  # a ratio


class Operations(Record):
    """What the organisation does. One per file; a field that is None was never answered."""

    kind: ClassVar[str] = "operations"

    confirmed_on: Day | None = None
    owns_premises: bool | None = None
    rents_premises: bool | None = None
    attendance: Count | None = None
    employees: Count | None = None
    volunteers: Count | None = None
    revenue_donations: Amount | None = None
    revenue_rents: Amount | None = None
    revenue_tuition: Amount | None = None
    revenue_events: Amount | None = None
    revenue_other: Amount | None = None
    income_growth: Annotated[Number, Field(gt=-1, le=1)] | None = None  # a ratio a year
    premises_share: Share | None = None  # of that income, what stops without the main building
    giving_kept: Share | None = None  # of donations, in the first months in another place
    payroll: Amount | None = None  # a year
    payroll_kept: Share | None = None  # of the payroll, while closed
    expenses_stopping: Amount | None = None  # a year's expenses that end with closing
    rent_elsewhere: Amount | None = None  # a month in another place
    moving_costs: Amount | None = None  # once
    children: bool | None = None
    youth: bool | None = None
    vulnerable_adults: bool | None = None
    prevention_plan_reviewed_on: Day | None = None
    screening_training_on: Day | None = None
    record_checks_on: Day | None = None
    day_care: bool | None = None
    school: bool | None = None
    camp: bool | None = None
    hall_rental: bool | None = None
    food_service: bool | None = None
    alcohol_at_events: bool | None = None
    trips_in_canada: bool | None = None
    trips_abroad: bool | None = None
    trip_days: Count | None = None
    trip_people: Count | None = None
    vehicles_owned: Count | None = None
    volunteer_drivers: bool | None = None
    counselling: bool | None = None
    construction_planned: bool | None = None
    unoccupied_buildings: bool | None = None
    two_counters: bool | None = None
    safe: bool | None = None
    deposit_same_day: bool | None = None
    online_giving: bool | None = None
    personal_data_held: bool | None = None
    social_media: bool | None = None
    solar_panels: bool | None = None
    playground: bool | None = None
    cemetery: bool | None = None
    largest_event: Count | None = None
    overnight_stays: bool | None = None
    snow_by_volunteers: bool | None = None
    notes: Prose | None = None

    @property
    def works_with_vulnerable(self) -> bool:
        """Whether children, youth or vulnerable adults are in the organisation's care."""
        return any((self.children, self.youth, self.vulnerable_adults, self.day_care,
                    self.school, self.camp))  # fmt: skip

    @property
    def yearly_income(self) -> Decimal:
        """What comes in over a year from all kinds together, as far as they were told."""
        told = (self.revenue_donations, self.revenue_rents, self.revenue_tuition,
                self.revenue_events, self.revenue_other)  # fmt: skip
        return sum((amount for amount in told if amount is not None), Decimal(0))
