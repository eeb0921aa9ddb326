"""What operations take: named, bounded, and refused when it says more."""

import re
from datetime import date
from typing import Annotated, Any, Literal

from ninja import File, Query
from ninja.files import UploadedFile
from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field, StrictBool
from pydantic_core import PydanticCustomError

from quarterday.api.strict import Fraction
from quarterday.store.drafts import keepable

PROSE = r"^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]*$"
KEEPABLE = r"^[^\u0000-\u001f\u007f-\u009f]*$"
LONGEST_PROSE = 10_000
NEWEST = 10**9  # no journal comes near
_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")


def _iso_day(said: object) -> object:
    if isinstance(said, date):
        return said
    if not (isinstance(said, str) and _DAY.fullmatch(said)):
        raise PydanticCustomError("date_form", "not a date")
    return said


def _kept(said: str) -> str:
    if not keepable(said):
        raise PydanticCustomError("string_kept", "cannot be kept")
    return said


def _whole(said: object) -> object:
    if isinstance(said, Fraction) and (whole := said.whole(NEWEST)) is not None:
        return whole
    if isinstance(said, bool) or not isinstance(said, int):
        raise PydanticCustomError("int_form", "not a whole number")
    return said


def _spaced(said: str) -> str:
    if not keepable(said.replace("\n", "").replace("\t", "").replace("\r", "")):
        raise PydanticCustomError("string_kept", "cannot be kept")
    return said


Day = Annotated[date, BeforeValidator(_iso_day)]
Text = Annotated[
    str, Field(max_length=300, json_schema_extra={"pattern": KEEPABLE}), AfterValidator(_kept)
]
Prose = Annotated[
    str,
    Field(max_length=LONGEST_PROSE, json_schema_extra={"pattern": PROSE}),
    AfterValidator(_spaced),
]
Seen = Annotated[
    int,
    Field(ge=0, le=NEWEST, description="The newest entry of the file that you have read: its seq."),
    BeforeValidator(_whole),
]
Number = Annotated[
    int,
    Field(ge=1, le=NEWEST, description="The number of an entry: its seq."),
    BeforeValidator(_whole),
]
Language = Literal["en", "fr"]
Version = Literal["expiring", "requested", "offered", "issued"]
AsOf = Annotated[Day | None, Query(None, description="The day to reckon from; default: today.")]
Document = Annotated[UploadedFile, File(..., description="The document.")]


class Sent(BaseModel):
    """A body; what it does not know is refused by name."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class Seeing(Sent):
    """An act on a file that says what its sender had seen of it."""

    seen: Seen


class RecordSent(Seeing):
    """A fact as it should stand; ``key`` names the record it replaces, null for a new one."""

    kind: Text
    key: Text | None = None
    record: dict[str, Any]


class Withdrawal(Seeing):
    """A record that is taken back."""

    kind: Text
    key: Text


class SetAside(Seeing):
    """A finding to set aside for this renewal, and why."""

    finding: Text
    reason: Prose


class TakeUp(Seeing):
    """A finding that was set aside, to be taken up again."""

    finding: Text


class DecisionSent(Seeing):
    """What the leaders decided on one question, who of them said so, and when."""

    question: Text
    answer: Literal["take-it", "leave-it", "later", "ask-us"]
    by: Text
    on: Day
    words: Prose = ""


class PaymentSent(Seeing):
    """By which plan the organisation pays, who said so, and when."""

    plan: Text
    by: Text
    on: Day


class NoteSent(Seeing):
    """Something worth keeping."""

    text: Prose


class TakenBack(Seeing):
    """An entry that is taken back: what stood before it counts again."""

    entry: Number


class Signature(Seeing):
    """That the licensed person whose key it is read the review of the day, and signs it."""

    read: Literal[True]


class Order(Sent):
    """The language of a package to build."""

    language: Language


class DeliverySent(Seeing):
    """That the newest signed package in a language went to somebody."""

    language: Language
    to: Text
    way: Literal["e-mail", "post", "by hand", "room"]
    on: Day


class MessageSent(Seeing):
    """The newest signed package in a language, to be sent by e-mail; usual words where none are."""

    language: Language
    to: Text
    address: Text
    subject: Text = ""
    message: Prose = ""


class CameBack(Seeing):
    """That a delivery (by its key) came back, and what was said of why."""

    key: Text
    why: Prose
    on: Day


class Binder(Seeing):
    """Who at the insurer confirmed the coming term, when, and with which changes to the offer."""

    confirmed_by: Text
    on: Day
    accepted: Annotated[list[Text], Field(max_length=200)] = []
    binder: Text = ""
    words: Prose = ""


class CheckDone(Seeing):
    """That the issued policy was compared, and what was done about what it lacks."""

    on: Day
    about: Prose = ""


class RequestOrder(Seeing):
    """In which language the insurer is asked."""

    language: Language = "en"


class RequestMessage(Seeing):
    """The next request, to be sent by e-mail; usual words and the usual address where none are."""

    language: Language = "en"
    address: Text = ""
    subject: Text = ""
    message: Prose = ""


class Taken(Sent):
    """What of a returned form is taken: all that is clear, and more by name; and what is not."""

    every: StrictBool = True
    take: Annotated[list[Text], Field(max_length=1000)] = []
    refuse: Annotated[list[Text], Field(max_length=1000)] = []


class LoadAccepted(Sent):
    """That a preview is accepted as it was shown (``mark``), with its faults or only without."""

    mark: Text
    with_errors: StrictBool = False


class Pay(Sent):
    """A loss: one of the library by its id, or one of your own as ``settle`` takes it."""

    loss: Text | None = None
    told: dict[str, Any] | None = None
    terms: Version = "offered"
    as_of: Day | None = None


class Inputs(BaseModel):
    """The inputs of a calculation: the guide lists them by name."""

    model_config = ConfigDict(extra="allow", frozen=True)
