"""What a rule is given: one file, the reference data, a day, and the terms to compare."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import TYPE_CHECKING, Literal, get_args

from quarterday.core.dates import Period
from quarterday.core.figure import Parameter
from quarterday.core.file.fold import File, renewal_period
from quarterday.core.file.records import Building, Terms
from quarterday.core.reference import IndexRelease, Reference
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference
from quarterday.core.words import Words, words

if TYPE_CHECKING:
    from quarterday.core.income.picture import IncomePicture
    from quarterday.core.risk.choices import OptionRow
    from quarterday.core.risk.risk import Risk
    from quarterday.core.values.building import BuildingPicture


Version = Literal["expiring", "requested", "offered", "issued"]
VERSIONS: tuple[Version, ...] = get_args(Version)
"""The parts that terms play in a renewal, in the order they come about."""


class NoRenewal(LookupError):
    """Raised when a file gives no renewal date to review for; ``words`` is the sentence."""

    def __init__(self, file: str) -> None:
        super().__init__(file)
        self.words = words("review-no-renewal", file=file)


@dataclass(frozen=True)
class Case:
    """One file to be reviewed for one renewal, as on one day."""

    file: File
    reference: Reference
    as_of: date

    @cached_property
    def renewal(self) -> date:
        """The renewal date; NoRenewal when the file gives none."""
        if self.file.renewal is None:
            raise NoRenewal(self.file.id)
        return self.file.renewal

    @cached_property
    def coming(self) -> Period:
        """The coming term."""
        return renewal_period(self.file, self.renewal)

    @cached_property
    def expiring(self) -> Terms | None:
        """The terms that end on the renewal date."""
        return self.file.expiring(self.renewal)

    @cached_property
    def offered(self) -> Terms | None:
        """The terms the insurer offers for the coming term."""
        return self.file.terms(self.renewal, "offered")

    @cached_property
    def requested(self) -> Terms | None:
        """The terms that were asked of the insurer for the coming term."""
        return self.file.terms(self.renewal, "requested")

    @cached_property
    def issued(self) -> Terms | None:
        """The terms the insurer issued for the coming term."""
        return self.file.terms(self.renewal, "issued")

    def version(self, name: Version) -> Terms | None:
        """Return the terms that play one part in the renewal; None when they are not on file."""
        found: Terms | None = getattr(self, name)
        return found

    @cached_property
    def terms(self) -> Terms | None:
        """The newest terms to judge: offered, else requested, else expiring."""
        return self.offered or self.requested or self.expiring

    @cached_property
    def pictures(self) -> Mapping[str, BuildingPicture]:
        """What every insured building costs against what it is insured for, by its id."""
        from quarterday.core.values.building import picture  # it needs this module

        found = ((building.id, picture(self, building)) for building in self.file.buildings)
        return {id: made for id, made in found if made is not None}

    @cached_property
    def income(self) -> IncomePicture | None:
        """What a closed building would cost in income against what is insured, where known."""
        from quarterday.core.income.picture import picture  # it needs this module

        return picture(self)

    @cached_property
    def risk(self) -> Risk | None:
        """What losses could cost under each alternative; None where no terms can be measured."""
        from quarterday.core.risk.risk import NoTerms, risk_of  # it needs this module
        from quarterday.core.terms.settling.refusals import Refused

        try:
            return risk_of(self)
        except (NoTerms, Refused):
            return None

    @cached_property
    def options(self) -> tuple[OptionRow, ...]:
        """What each option on offer would change; nothing where nothing can be measured."""
        from quarterday.core.risk.choices import options  # it needs this module

        return options(self.risk) if self.risk else ()

    @cached_property
    def changes(self) -> tuple[Difference, ...]:
        """How the offer differs from the expiring terms; nothing when one is missing."""
        if self.expiring is None or self.offered is None:
            return ()
        return compare(self.expiring, self.offered)

    @cached_property
    def _parameters(self) -> dict[str, Parameter]:
        """The parameters that were asked for."""
        return {}

    def parameter(self, id: str) -> Parameter:
        """Return a parameter as in force on the review's day."""
        found = self._parameters.get(id)
        if found is None:
            found = self._parameters[id] = self.reference.parameter(id, self.as_of)
        return found

    def index(self, building: Building) -> IndexRelease:
        """Return the construction index of a building's province as published by the day."""
        province = self.reference.provinces[self.file.province_of(building)]
        return self.reference.index(province.index_geography, self.as_of)

    def building_name(self, id: str) -> str | Words:
        """Return a building's name; the wording "everywhere" for ``*``, else the id itself."""
        if id == "*":
            return words("everywhere")
        building = self.file.get(Building, id)
        return building.name if building else id
