"""What the forms share: nothing is sent that is not described."""

from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field

Money = Annotated[str, Field(pattern=r"^-?\d+\.\d\d$", description="An amount, two decimals.")]
Number = Annotated[str, Field(pattern=r"^-?\d+(\.\d+)?$", description="An exact number as text.")]
Day = Annotated[str, Field(json_schema_extra={"format": "date"})]
Moment = Annotated[str, Field(json_schema_extra={"format": "date-time"})]
Value = str | int | bool | None
Origin = Annotated[
    dict[str, Any],
    Field(description="Where it came from: the way, and the document, sheet and row, or person."),
]


class Shape(BaseModel):
    """A described answer."""

    model_config = ConfigDict(extra="forbid")
