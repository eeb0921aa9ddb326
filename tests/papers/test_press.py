"""Setting: anything that is not clean is refused with its reason, never printed."""

from __future__ import annotations

import threading
from datetime import date
from pathlib import Path

import pytest

from quarterday.papers.press import BadTemplate, Press, Unprintable

DAY = date(2026, 11, 25)
HEAD = '#set document(title: "t", date: auto)\n#set text(lang: "en", font: "Source Sans 3")\n'
NO_ALTERNATIVE = """= a
#image(bytes("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>"))"""
GOOD = HEAD + "#let data = json(bytes(sys.inputs.data))\n= #data.title\n"


def press(folder: Path, template: str) -> Press:
    file = folder / "t.typ"
    file.write_text(template, "utf-8")
    return Press(file, root=folder)


def test_letters_that_no_font_has_are_named_with_their_text(tmp_path: Path) -> None:
    with pytest.raises(Unprintable, match=r"“Grüße 漢字” cannot be printed.*字, 漢"):
        press(tmp_path, GOOD).set({"title": "Grüße 漢字"}, DAY)


def test_letters_are_looked_for_in_every_text_however_deep(tmp_path: Path) -> None:
    with pytest.raises(Unprintable, match="漢"):
        press(tmp_path, GOOD).set({"title": "a", "rows": [{"cells": ["b", "漢"]}]}, DAY)


@pytest.mark.parametrize(
    ("broken", "said"),
    [
        ('#set text(font: "No Such Font")\n= #data.title', "no such font"),  # a mere warning
        ("= #data.nothing", "nothing"),
        ("#rect()\n= a\n=== b", "heading"),  # PDF/UA-1 7.4.2: no level skipped
        (NO_ALTERNATIVE, "alt"),
    ],
)  # fmt: skip
def test_a_template_that_is_not_clean_is_refused(broken: str, said: str, tmp_path: Path) -> None:
    with pytest.raises(BadTemplate) as refused:
        press(tmp_path, GOOD + broken).set({"title": "a"}, DAY)
    assert said in str(refused.value).lower()


def test_several_threads_may_use_one_press(tmp_path: Path) -> None:
    """The typesetter itself refuses a second borrower; the press makes them wait."""
    one, made = press(tmp_path, GOOD), []
    threads = [
        threading.Thread(target=lambda n=n: made.append(one.set({"title": f"t{n % 2}"}, DAY)))
        for n in range(6)
    ]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(timeout=60)
    assert len(made) == 6
    assert len(set(made)) == 2


def test_what_lies_between_two_settings_changes_neither(tmp_path: Path) -> None:
    """What the typesetter remembers must not be seen; nor must a setting that failed."""
    one = press(tmp_path, GOOD)
    first = one.set({"title": "a"}, DAY)
    for n in range(3):
        one.set({"title": f"other {n}"}, DAY)
    with pytest.raises(BadTemplate):
        one.set({"nothing": "a"}, DAY)
    assert one.set({"title": "a"}, DAY) == first


def test_the_day_of_building_is_all_that_dates_a_file(tmp_path: Path) -> None:
    same = [press(tmp_path, GOOD).set({"title": "a"}, DAY) for _ in range(2)]
    other = press(tmp_path, GOOD).set({"title": "a"}, date(2026, 11, 26))
    assert same[0] == same[1] != other
