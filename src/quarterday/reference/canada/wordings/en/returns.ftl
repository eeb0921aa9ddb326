# Forms that come home: what they propose, and what is wrong with them.

## What a form proposes

returns-heading = { $name }: forms of file { $file }, for the renewal of { $renewal }
returns-filled = { CAPITAL($form) }, filled in by { $by }
returns-unsigned = nobody who gave a name
returns-no-changes = Nothing in it differs from what is on file.
returns-change = { $label }. Today: { $now }. The form says: { $said }.
returns-clash = { $label }. When the form was made: { $was }. Today: { $now }. The form says: { $said }.
returns-asks = { $label }. Today: { $now }. The form says: { $said }.
returns-unread = { $label }. The form says: { $said }.
returns-unread-said = an answer that cannot be relied on
returns-refused = { $label }. The form says: { $said }. This was refused before.
returns-nothing = nothing
returns-unclear = { $what } { $remedy }
returns-changed-since = The fact was changed after the form was made. Say which of the two is right.
returns-emptied = The form leaves this empty, and the file has an answer. Ask whether it still holds.
returns-taken-for = It was read as "{ $choice }". Take it if that is what was meant.
returns-far = The amount is far from today's. Check whether a comma or a zero slipped, then take it by name.
returns-not-exact = It could mean more than one thing.
returns-record-gone = The file no longer has what this answer is about, so it cannot be taken.
returns-nobody = Nobody signed this form with a name, and only a person can decide. Ask who did.
returns-no-plan = { $why } Ask how they want to pay.
returns-no-name = A new person was described without a name. Ask for it.
returns-namesake = Somebody of this name is on file already. Take it if it is the same person.
returns-lapsed-one = The form belongs to the renewal of { $renewal }, which is over. Ask whether it still holds.

## What has to be said of a form

returns-again = This document was read before, on { $day }. What was taken then is not taken twice.
returns-lapsed = This form is of the renewal of { $renewal }, which is not the one that is coming. Send a new one; nothing of it is taken unless you name it.
returns-missing = { $n ->
    [one] One question of the form is not on its pages
   *[other] { $n } questions of the form are not on its pages
}; the first is "{ $first }". A page may be missing, or a field was renamed. Ask for the whole form; the rest was read.
returns-unknown = { $n ->
    [one] One field is none of this form's and was left alone: { $names }.
   *[other] { $n } fields are none of this form's and were left alone, such as { $names }.
}
returns-date-unclear = The form's date, "{ $said }", could not be read: { $what } Today's date stands in its place.
returns-holds-program = { $name } holds a program. It was not run. No form of ours has one: ask who sent it before you take anything.
returns-holds-attachment = { $name } holds another file inside. It was not opened. Ask for it on its own if it matters.
returns-holds-xfa = { $name } holds a second form of another kind. It was not read; only what stands on the pages was.
returns-field-too-long = The answer has { $n } characters, which is more than any answer needs. It was not read; the original is kept.
returns-field-odd = The answer is not text. It was not read; look at the page.
returns-field-character = The answer holds a character that cannot be kept ({ $character }). It was not read; look at the page.
returns-field-twice = The field stands there twice with different answers. Look at the pages and ask.
returns-field-split = The box shows another choice than the form holds. Look at the page and ask.

## What is refused whole

returns-too-large = { $name } is larger than { $most } MB, so it was not read. Ask for the form alone, not a scan of everything.
returns-not-pdf = { $name } is not a PDF, so it was not read. Save or scan the form as a PDF.
returns-locked = { $name } is locked with a password, so nothing could be read. Ask for it without one.
returns-broken = { $name } is damaged and could not be read. Ask for it to be sent again.
returns-too-much = { $name } took too much time or memory to read, as no form of ours does. Nothing was read; ask who sent it.
returns-not-ours = { $name } is a form, but none that was sent from here. Check that it is the right document.
returns-several = { $name } holds forms of more than one package, run together so that they cannot be told apart. Nothing was read; split it, or ask for each form on its own.
returns-no-feet = { $name } has lost the mark by which a form of ours is known. The feet of its pages do not say which one it is. Ask for the form as it was sent.
returns-bad-stamp = { $name } looks like a form of ours, but its mark was changed, so nothing was read. Send a new one.
returns-no-file = { $name } is a form of file "{ $file }", which is not in this book. It was not read.
returns-other-file = { $name } is a form of file { $file }, not of { $expected }. It was not read; open { $file } and read it there.
returns-not-built = { $name } names a package of file { $file } that was never built here, so it cannot be trusted. Send a new one.
returns-flat = { $name } has no fields to read: it was printed and scanned, or made flat. Nothing was guessed.
returns-flat-next = Enter it side by side: quarterday read --enter { $form } --file { $file } shows the questions; give the answers with --answers ANSWERS.json { $name }
returns-no-question = "{ $name }" is no question of this form ({ $form }). The questions are listed by --enter without --answers.
returns-no-form = There is no form "{ $form }". There are: { $forms }.
returns-no-proposal = No answer of this form is called "{ $name }". Names are those printed above each answer.
returns-cannot-take = "{ $label }" cannot be taken as it stands. { $why }

## At the terminal

cli-read-what = Name the returned forms, or use --enter FORM together with --file FILE.
cli-read-enter = The questions of: { $form }, file { $file }. Write the answers as JSON: field and answer. Leave out what is unchanged.
cli-read-printed = Printed in: { $said }.
cli-read-answers = { $path } must hold one JSON object of fields and answers, all of them text.
cli-read-kept = { $n ->
    [0] Nothing new was written.
    [one] One entry written: { $taken } taken, { $refused } refused. The original is kept.
   *[other] { $n } entries written: { $taken } taken, { $refused } refused. The original is kept.
}
cli-read-next = Nothing was written. Take what is clear with --accept, one answer with --take FIELD, or leave one out with --refuse FIELD.

## Records that come of it

record-answers = answers
record-request-sent = request to the insurer
record-package-sealed = package sealed
kind-answers = { record-answers }
kind-request-sent = { record-request-sent }
kind-package-sealed = { record-package-sealed }

cli-beside-page = Page { $page }
cli-beside-alt = { $n ->
    [0] Page { $page } as it came back.
   *[other] Page { $page } as it came back; framed and numbered: { $numbers }.
}
cli-beside-undrawn = Page { $page } could not be drawn. The document is kept as it came.
cli-beside-nowhere = Said without a place on a page
cli-beside-now = Today
cli-beside-was = When printed
cli-beside-said = The form says
cli-beside-state = State
cli-beside-change = clear: --accept takes it
cli-beside-clash = changed meanwhile: --take takes it
cli-beside-asks = asked: needs a person
cli-beside-refused = refused
cli-beside-why = Why
cli-beside-form = Form
cli-beside-printed = Printed in
cli-beside-choices = Choices
cli-beside-written = Side by side: { $path }

returns-flat-code = { $n ->
    [one] By the code printed on page { $pages }
   *[other] By the code printed on pages { $pages }
} it is: { $form }, file { $file }, renewal of { $renewal }, version { $version }.
returns-flat-no-code = { $n ->
    [one] Page { $pages } has no code that can be read
   *[other] Pages { $pages } have no code that can be read
}: look there too.
