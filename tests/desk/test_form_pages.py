"""A returned form beside the pictures of its pages, which come once the page stands."""

from __future__ import annotations

from tests.desk.conftest import As
from tests.desk.test_year import filled, signed, upload
from tests.intake.forms import filling

from quarterday.store import originals

PNG = b"data:image/png;base64,"


def test_the_pages_that_answers_stand_on_come_as_pictures_under_their_numbers(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    answers = {"contacts.treasurer.phone": "705-555-0188", "operations.attendance": "180"}
    at = upload(browser, filled(signed(browser).document, **answers))["Location"]
    page = browser.get(at)
    assert PNG not in page.content
    assert f'hx-get="{at}?pictures=1"' in page.content.decode()
    assert [row["number"] for row in page.context["readings"][0]["rows"]] == [1, 2]
    pictures = browser.get(f"{at}?pictures=1")
    assert pictures.content.count(PNG) == 2
    assert [p["numbers"] for p in pictures.context["pages"]] == [("1",), ("2",)]
    assert "img-src 'self' data:" in pictures["Content-Security-Policy"]


def test_a_scan_is_typed_in_beside_all_its_pages(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    scan = filling.scanned(originals.get(signed(browser).document), 2)
    at = upload(browser, scan, "scan.pdf")["Location"]
    flat = browser.get(at).content.decode()
    token = at.rstrip("/").rpartition("/")[2]
    assert "?pictures=1" in flat
    assert browser.get(f"{at}?pictures=1").content.count(PNG) == 2
    typing = f"{at.removesuffix(f'{token}/')}by-hand/contacts-form/?scan={token}"
    assert f'hx-get="{at}?pictures=1"' in browser.get(typing).content.decode()


def test_the_pages_that_somebody_sent_are_theirs_alone(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    at = upload(browser, filled(signed(browser).document))["Location"]
    for who in ("maria", "cole", "rhea"):
        answer = signed_in(who).get(f"{at}?pictures=1")
        assert answer.status_code in {403, 404, 422}
        assert PNG not in answer.content
