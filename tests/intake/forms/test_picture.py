"""The picture of a returned page: drawn in a process apart, its fields framed where they stand.

poppler's pdftoppm draws the same page independently; ISO 32000-1, 8.3 (user space) says where a
rectangle lies.
"""

from __future__ import annotations

import io
import subprocess
import tempfile
from pathlib import Path

import pikepdf
import pytest
from PIL import Image

from quarterday.intake.forms import peek
from quarterday.intake.forms.drawn import FRAME, MARGIN
from quarterday.intake.forms.peek import Looked
from quarterday.intake.forms.picture import WIDTH, picture, spots_of
from quarterday.intake.forms.recognise import Given, Returned, recognise
from quarterday.intake.refusals import Unreadable
from tests.intake.forms import filling
from tests.papers import given

PHONE = "contacts.warden.phone"


def returned(data: bytes) -> Returned:
    found = recognise(peek.look(data, "form.pdf"), {}, ())
    assert isinstance(found, tuple)
    return found[0]


def drawn(data: bytes, name: str = PHONE) -> tuple[Image.Image, int, tuple[float, ...]]:
    form = returned(data)
    ((page, spot),) = spots_of(form.answers, name).items()
    return Image.open(io.BytesIO(picture(form.looked, page, {7: spot}))), page, spot


def framed(image: Image.Image) -> tuple[int, int, int, int]:
    """The box around every pixel in the colour of the frame, the badge at its left included."""
    pixels = image.convert("RGB").load()
    assert pixels is not None
    across, down = image.size
    hits = [(x, y) for y in range(down) for x in range(across) if pixels[x, y] == FRAME]
    xs, ys = [x for x, _ in hits], [y for _, y in hits]
    return min(xs), min(ys), max(xs), max(ys)


def by_poppler(data: bytes, page: int) -> Image.Image:
    with tempfile.TemporaryDirectory() as folder:
        source = Path(folder) / "in.pdf"
        source.write_bytes(data)
        size = ["-scale-to-x", str(WIDTH), "-scale-to-y", "-1"]
        of = ["-f", str(page), "-l", str(page)]
        subprocess.run(["pdftoppm", "-png", *of, *size, source, f"{folder}/p"], check=True)
        (made,) = Path(folder).glob("p*.png")
        return Image.open(io.BytesIO(made.read_bytes())).convert("L")


def test_the_page_is_the_one_that_poppler_draws() -> None:
    data = filling.with_pypdf(given.package().pdf, {PHONE: "705-555-0177"})
    form = returned(data)
    page = next(iter(spots_of(form.answers, PHONE)))
    mine = Image.open(io.BytesIO(picture(form.looked, page, {}))).convert("L")
    other = by_poppler(data, page)
    assert abs(mine.size[0] - other.size[0]) <= 1
    small = [image.resize((100, 130)).tobytes() for image in (mine, other)]
    apart = sum(abs(a - b) for a, b in zip(*small, strict=True)) / len(small[0])
    assert apart < 4  # of 255: letters are smoothed otherwise, nothing is elsewhere


def test_what_was_filled_in_is_drawn_too() -> None:
    blank, *_ = drawn(given.package().pdf)
    filled, *_ = drawn(filling.with_pypdf(given.package().pdf, {PHONE: "705-555-0177"}))
    assert blank.tobytes() != filled.tobytes()


def test_the_frame_lies_around_the_rectangle_of_the_field() -> None:
    image, _, (left, bottom, right, top) = drawn(given.package().pdf)
    scale = WIDTH / 612  # US Letter, 612 × 792 points
    x0, y0, x1, y1 = framed(image)
    assert abs(x1 - (right * scale + MARGIN)) <= 2
    assert abs(y0 - ((792 - top) * scale - MARGIN)) <= 2
    assert abs(y1 - ((792 - bottom) * scale + MARGIN)) <= 2 + 22  # a badge may be taller
    assert x0 < left * scale


@pytest.mark.parametrize("turn", [90, 180, 270])
def test_on_a_page_that_is_turned_the_frame_turns_with_it(turn: int) -> None:
    def turned(pdf: pikepdf.Pdf) -> None:
        for page in pdf.pages:
            page.rotate(turn, relative=False)

    straight = framed(drawn(given.package().pdf)[0])
    image, *_ = drawn(filling.changed(given.package().pdf, turned))
    assert (image.size[0] > image.size[1]) == (turn in {90, 270})
    assert framed(image) != straight


def test_a_field_s_places_on_a_page_are_one_spot_and_a_beginning_names_several() -> None:
    answers = returned(given.package().pdf).answers
    alone = spots_of(answers, "contacts.new-1.name")
    together = spots_of(answers, "contacts.new-1")
    assert alone.keys() == together.keys()
    for page, (left, bottom, right, top) in alone.items():
        whole = together[page]
        assert whole[0] <= left
        assert whole[1] <= bottom
        assert whole[2] >= right
        assert whole[3] >= top
    assert spots_of({"a": Given("1")}, "a") == {}
    assert spots_of(answers, "contacts.new") == {}  # not a whole part of a name


def looked(data: bytes) -> Looked:
    return Looked("x.pdf", data, "", 1, (), (), "")


@pytest.mark.parametrize(
    ("data", "page", "why"),
    [
        (b"%PDF-1.7 nothing", 1, "returns-broken"),
        (given.package().pdf, 999, "returns-broken"),
        (filling.locked(given.package().pdf, "secret"), 1, "returns-locked"),
    ],
    ids=["broken", "no such page", "locked"],
)
def test_what_cannot_be_drawn_is_refused_in_a_sentence(data: bytes, page: int, why: str) -> None:
    with pytest.raises(Unreadable) as refused:
        picture(looked(data), page, {})
    assert refused.value.words.id == why


def test_a_page_of_absurd_size_is_drawn_small() -> None:
    with pikepdf.Pdf.new() as pdf:
        pdf.add_blank_page(page_size=(14400, 14400))
        data = filling.saved(pdf)
    image = Image.open(io.BytesIO(picture(looked(data), 1, {})))
    assert image.size == (WIDTH, WIDTH)
    with pikepdf.Pdf.new() as pdf:
        pdf.add_blank_page(page_size=(3, 14400))
        data = filling.saved(pdf)
    tall = Image.open(io.BytesIO(picture(looked(data), 1, {})))
    assert tall.size[1] <= 3 * WIDTH
