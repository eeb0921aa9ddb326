"""The addresses of the desk."""

from __future__ import annotations

from django.urls import path, register_converter
from django.urls.converters import StringConverter

from quarterday.desk.views import (
    acts,
    asking,
    book,
    day,
    diary,
    editing,
    errors,
    file,
    history,
    keys,
    load,
    outside,
    papers,
    people,
    premium,
    returns,
    sending,
    settling,
    signing_in,
    terms,
)


class FileId(StringConverter):
    """A file's id: anything without a slash, at most eighty characters."""

    regex = "[^/]{1,80}"


register_converter(FileId, "file")
_F = "files/<file:file>/"

urlpatterns = [
    path("", day.day, name="day"),
    path("views/", day.keep_view, name="keep-view"),
    path("views/<int:number>/forget/", day.forget_view, name="forget-view"),
    path("diary/", diary.diary, name="diary"),
    path("diary/address/", diary.new_address, name="feed-address"),
    path("diary/feed/<str:token>/quarterday.ics", diary.feed, name="feed"),
    path("book/", book.book, name="book"),
    path("book/export/<str:topic>/<str:kind>/", book.export, name="book-export"),
    path("load/", load.load, name="load"),
    path("load/<str:token>/", load.preview, name="load-preview"),
    path("load/<str:token>/accept/", load.accept, name="load-accept"),
    path(_F, file.file, name="file"),
    path(f"{_F}why/", file.why, name="why"),
    path(f"{_F}history/", history.history, name="history"),
    path(f"{_F}undo/", history.undo, name="undo"),
    path(f"{_F}edit/", editing.edit, name="edit"),
    path(f"{_F}withdraw/", editing.withdraw, name="withdraw"),
    path(f"{_F}terms/", editing.edit_part, name="edit-part"),
    path(f"{_F}terms/remove/", editing.remove_part, name="remove-part"),
    path(f"{_F}set-aside/", acts.set_aside, name="set-aside"),
    path(f"{_F}take-up/", acts.take_up, name="take-up"),
    path(f"{_F}decide/", acts.decide, name="decide"),
    path(f"{_F}payment/", acts.choose_payment, name="choose-payment"),
    path(f"{_F}note/", acts.note, name="note"),
    path(f"{_F}sign/", acts.sign, name="sign"),
    path(f"{_F}build/", papers.build, name="build"),
    path(f"{_F}papers/<str:document>/", papers.download, name="paper"),
    path(f"{_F}deliver/", papers.deliver, name="deliver"),
    path(f"{_F}certify/", outside.certify, name="certify"),
    path(f"{_F}forms/", returns.forms, name="forms"),
    path(f"{_F}forms/by-hand/<str:form>/", returns.by_hand, name="form-by-hand"),
    path(f"{_F}forms/<str:token>/", returns.read, name="form-read"),
    path(f"{_F}request/", asking.ask, name="ask"),
    path(f"{_F}request/letter/<str:kind>/", asking.letter, name="ask-letter"),
    path(f"{_F}kept/<str:document>/", asking.kept, name="kept-document"),
    path(f"{_F}compare/", terms.compare, name="compare"),
    path(f"{_F}pay/", terms.pay, name="pay"),
    path(f"{_F}premium/", premium.premium, name="premium"),
    path(f"{_F}send/", sending.send, name="send"),
    path(f"{_F}came-back/", sending.came_back, name="came-back"),
    path(f"{_F}decisions/", settling.decisions, name="decisions"),
    path(f"{_F}bind/", settling.bind, name="bind"),
    path(f"{_F}check/", settling.check, name="check"),
    path("keys/", keys.keys, name="keys"),
    path("keys/<int:number>/end/", keys.end_key, name="end-key"),
    path("people/", people.people, name="people"),
    path("people/<int:number>/", people.change, name="change-person"),
    path("sign-in/", signing_in.sign_in, name="sign-in"),
    path("sign-in/code/", signing_in.code, name="sign-in-code"),
    path("sign-out/", signing_in.sign_out, name="sign-out"),
    path("password/", signing_in.password, name="password"),
    path("factor/", signing_in.set_up_factor, name="factor"),
    path("kept/", signing_in.kept, name="kept"),
    path("language/", signing_in.language, name="language"),
]
handler400 = errors.bad
handler403 = errors.forbidden
handler404 = errors.missing
handler500 = errors.broken
