# The acts of the year: refusals, mail, rights, what was done.

acts-no-wish = "{ $wish }" is not a change that can be agreed beyond this offer. Load the page again.
acts-no-offer = { $file } has no offer for the coming term, so nothing can be bound. Load the insurer's offer first.
acts-nothing-to-check = { $file } has no issued policy with an offer or a binder to compare it with. Load the terms that were issued first.
acts-check-words = { $n ->
    [one] The policy gives less than was agreed on one point. Say what was done about it, then record the check.
   *[other] The policy gives less than was agreed on { $n } points. Say what was done about them, then record the check.
}
acts-check-moved = { $file } was changed after you loaded its page, so the check was not recorded. Compare again, then record it.
acts-no-plan = There is no plan of instalments "{ $plan }". Choose one of those that the offer allows.
acts-went-already = This package went to { $to } already, on { $day }. It was not sent again. Load the page again if it should be.
acts-no-delivery = There is no such delivery, or it came back already. Load the page again.
acts-request-moved = { $file } was changed after you read it, so the request was not recorded. Read it again: it may ask for more now.
acts-returns-moved = The file was changed since you read this form, so nothing was written. Below is what the form proposes now.
mail-no-server = No mail server is named, so nothing was sent or recorded. Set { $setting } to its address, or record a delivery by post or by hand.
mail-bad-server = { $setting } does not name a mail server, so nothing was sent. Write it like smtp+starttls://user@mail.example.org.
mail-refused = The mail server does not deliver to { $to }, so nothing was recorded. It says: { $why }
mail-password = The mail server does not accept our user or password, so nothing was sent. It says: { $why }
mail-not-taken = The mail server did not take the message, so nothing was recorded. It says: { $why }
mail-not-reached = The mail server could not be reached, so nothing was sent or recorded. Try again later. The machine says: { $why }
mail-on-its-way = A message to { $to } is being sent just now. Wait a minute, then look whether it is recorded.
mail-perhaps = A message to { $to } was begun at { $at } and never recorded: the machine stopped. It may have gone out. Ask whether it came; send again if not.
right-ask = ask the insurer
right-bind = record that cover is bound
right-check = record that a policy was checked
desk-act-request = asked of the insurer
desk-act-came-back = came back
desk-act-bind = bound
desk-act-check = checked
desk-act-read = read from a form

## What goes with a package by e-mail

mail-subject = { $organisation }: your insurance renewal of { $renewal }
mail-greeting = Dear { $to },
mail-body = Enclosed is the renewal package of { $organisation } for { $renewal }. Its first page lists what you are asked to decide, in order, with the price of each and its last day.
mail-forms = The forms in it can be filled in on screen and sent back to this address. Call { $phone } when anything is unclear: no question is too small.
mail-caution = The policy's wording governs. If a child or vulnerable person is at risk, call emergency services and child protection first, then us.
mail-close = { $sender }, { $brokerage }

## The same from a terminal

cli-decide-what = Say the question, the answer and, with --said-by, who gave it.
cli-decide-none = Nothing is open to decide.
cli-decided = { $by } on { $question }: { $answer }. It is on record.
cli-payment = { $file }: { $by } pays by { $plan }. It is on record.
cli-delivered = { $file }: the delivery to { $to } is on record.
cli-mailed = { $file }: sent to { $to } at { $address }, and recorded.
cli-letter-not-mailed = A subject and a message go out by e-mail: say with --mail where to, or leave them out.
cli-letter-who = The usual words are signed by who sends them: give your name with --by, or your own words with --message.
cli-letter-not-text = { $path } is not text in UTF-8, so nothing was sent. Save it as UTF-8, then try again.
cli-undone = { $file }: entry { $seq } ({ $what }) is taken back by entry { $by }. What stood before counts again.
cli-undone-gone = { $file }: entry { $seq } ({ $what }) is taken back by entry { $by }. Nothing stood before, so the record counts no more.
cli-wish = change
cli-limit = limit
cli-price = a year
cli-wish-taken = taken by the leaders
cli-bind-next = Name who confirmed it with --confirmed-by, and each change the insurer accepted with --accept.
cli-bound = { $file } is bound. { $by } confirmed it, { $n ->
    [0] on the offer as it stands.
    [one] on the offer with one change.
   *[other] on the offer with { $n } changes.
}
cli-check = { $file }, policy from { $day }: { $n ->
    [0] it says what was agreed.
    [one] one difference from what was agreed.
   *[other] { $n } differences from what was agreed.
}
cli-checked = The check is on record.
cli-check-next = Record the check with --done; where the policy gives less, say with --about what was done.

## The year's pages at the desk

direction-neutral = neutral
desk-year = Acts of the year
desk-year-forms = Forms back
desk-year-ask = Ask the insurer
desk-year-compare = Compare terms
desk-year-pay = What would it pay?
desk-year-premium = Premium
desk-year-send = Send
desk-year-decisions = Decisions and payment
desk-year-bind = Bind
desk-year-check = Check the policy
desk-done-read = { $taken ->
    [0] No answer was taken into the file
    [one] One answer was taken into the file
   *[other] { $taken } answers were taken into the file
}{ $refused ->
    [0] {""}.
    [one] , one was refused.
   *[other] , { $refused } were refused.
}
desk-done-ask = The request is on record, and its letter is kept.
desk-done-send = Sent to { $to } at { $address }, and recorded.
desk-done-came-back = It is on record that the package came back. It no longer counts as delivered.
desk-done-bind = It is on record that cover is bound.
desk-done-check = The check is on record.
desk-forms = Forms that came back
desk-forms-about = Send a returned form: its answers are shown beside today's facts, and you take or refuse each one. The original is kept.
desk-forms-send = A form as a PDF
desk-forms-file = The form
desk-forms-most = PDF, at most { $most } megabytes
desk-forms-read = See what it says
desk-forms-paper = A form on paper
desk-forms-paper-about = Type in what is written on it.
desk-forms-came = Came back so far: { $n }
desk-forms-none = No form has come back yet.
desk-forms-on = Came on
desk-forms-by = Filled in by
desk-form = Form
desk-taken = Taken
desk-refused = Refused
desk-original = Original
desk-form-says = What the form says
desk-form-of = renewal of { $day }
desk-form-question = Question
desk-form-now = On file today
desk-form-said = On the form
desk-form-do = What to do
desk-form-take = take
desk-form-refuse = refuse
desk-form-wait = leave open
desk-form-clash = changed since
desk-form-asks = look closer
desk-form-no-change = The form changes nothing on file.
desk-form-record = Record that it came back
desk-form-write = Write these choices
desk-form-all = Take all that is clear
desk-form-again = Back to what was typed
desk-form-kept = The form itself is kept as it came. What is refused stays refused when the same form comes again.
desk-form-nothing = Nothing is asked in { $form } for this file today.
desk-flat = A picture of a form
desk-flat-about = Choose which form it is, and type in what is written on it. The picture is kept with your entry.
desk-by-hand = Type in a form: { $form }
desk-by-hand-about = Each field holds what would be printed in it. Change those where something else is written, and leave the others.
desk-ask = Ask the insurer
desk-ask-lead = Request { $number } to { $insurer } asks for { $n ->
    [one] one change.
   *[other] { $n } changes.
}
desk-ask-gone = { $left ->
    [0] { $n ->
        [one] It takes back what an earlier request asked for.
       *[other] All of them take back what earlier requests asked for.
    }
   *[other] { $n ->
        [one] One of them takes back what an earlier request asked for.
       *[other] { $n } of them take back what earlier requests asked for.
    }
}
desk-ask-about = About
desk-ask-what = What
desk-ask-was = Stands
desk-ask-now = Asked for
desk-ask-since = Since
desk-ask-letter = The letter, to be sent:
desk-ask-pdf = { $language ->
    [fr] French PDF
   *[en] English PDF
}
desk-ask-nothing-next = Record what the leaders decided, or change the file: the next request asks for that.
desk-ask-sent = It went out
desk-ask-sent-about = Send the letter the way the insurer takes it. Then record it here: the next request starts where this one ends.
desk-ask-language = Language of the letter
desk-ask-do = Record it as asked
desk-ask-before = Asked before
desk-ask-on = Sent on
desk-ask-to = To
desk-ask-changes = Changes
desk-send = Send the package
desk-send-to-papers = To signature and papers
desk-send-what = Enclosed: the { $language } package, version { $version } of { $day }, reviewed by { $reviewer }.
desk-send-other = Send in { $language } instead
desk-send-to-whom = Write to
desk-send-subject = Subject
desk-send-message = Message
desk-send-kept = The words and the digest of what is enclosed are kept with the delivery.
desk-send-do = Send and record
desk-send-before = Delivered before
desk-send-back = came back
desk-send-came-back = It came back
desk-send-why = What was said
desk-send-came-back-do = Record that it came back
desk-decisions-page = Decisions and payment
desk-decisions-title = What the leaders said, for { $day }
desk-decisions-about = Record what was decided, who of them said so, and their own words. An answer given later replaces one given before; both stay in the history.
desk-decide-again = Change the decision
desk-decide-by = by { $day }
desk-price = { $price } a year
desk-price-ask = price to be asked
desk-no-limit = no limit stated
desk-not-covered = not covered
desk-wish = { $coverage }, { $place }: { $limit }
desk-payment-extra = { $n ->
    [one] one payment, { $extra } more than at once
   *[other] { $n } payments, { $extra } more than at once
}
desk-bind = Bind
desk-bind-title = Bind the term from { $day }
desk-bind-about = Record who at { $insurer } confirmed cover. What is agreed is the offer with the changes ticked here; the policy is held to it when it comes.
desk-bind-changes = Changes beyond the offer
desk-bind-accepted = Accepted
desk-bind-change = Change
desk-bind-offer = In the offer
desk-bind-price = A year
desk-bind-why = Why it is here
desk-bind-requested = asked for
desk-bind-taken = taken by the leaders
desk-bind-by = Who at the insurer confirmed it
desk-bind-words = In which words
desk-bind-do = Record that cover is bound
desk-bound-by = { $by } bound it on { $day }, { $n ->
    [0] on the offer as it stood.
    [one] with one change beyond the offer.
   *[other] with { $n } changes beyond the offer.
}
desk-bound-binder = Binder { $binder }.
desk-bound-words = In their words: "{ $words }"
desk-bound-written = Recorded by { $by }.
desk-check = Check the policy
desk-check-bound = Compared with what { $by } bound on { $day }: the offer { $n ->
    [0] as it stood.
    [one] with one change.
   *[other] with { $n } changes.
}
desk-check-offer = Compared with the offer: no binder is on record.
desk-check-policy = Policy { $number }.
desk-checked-by = { $by } checked this policy on { $day } and found { $n ->
    [0] that it gives what was agreed.
    [one] one point that gives less.
   *[other] { $n } points that give less.
}
desk-check-more = More (+) or less (−) borne of one loss, at most
desk-compare-effect = Effect
desk-compare-clause = Clause
desk-check-same = It says what was agreed, clause by clause.
desk-check-hint = Read the policy itself too: forms and exclusions that nobody typed in are not compared here.
desk-check-do = Record the check
desk-compare = Compare terms
desk-compare-before = From
desk-compare-after = To
desk-compare-do = Compare
desk-compare-differences = { $n ->
    [0] No clause differs
    [one] One clause differs
   *[other] { $n } clauses differ: { $worse } worse, { $better } better
}
desk-compare-losses = The same losses under both
desk-compare-losses-about = What the organisation itself would bear of each loss of the library, sized to this account.
desk-compare-versions = { $n ->
    [one] The one version on file
    [2] Both versions side by side
   *[other] All { $n } versions side by side
}
desk-loss = Loss
desk-borne-under = Borne,
desk-difference = Difference
desk-same = same
desk-pay = What would it pay?
desk-pay-library = Losses that happen
desk-pay-lost = Lost
desk-pay-paid = Paid
desk-pay-borne = Borne
desk-pay-more = Also lost
desk-pay-amount = How much
desk-pay-do = Try this loss
desk-pay-reset = Back to the usual size
desk-pay-chart = Paid and borne under each version
desk-pay-steps = Step by step, { $stage ->
    [expiring] expiring terms
    [requested] requested terms
    [offered] offered terms
   *[issued] issued terms
}
desk-pay-why = Why something is borne
desk-pay-who = Who pays
desk-premium-key = Divided by
desk-premium-key-of = The key "{ $key }"
desk-premium-key-about = Who bears which part of the premium. Change a line, and the division changes with it.
desk-premium-key-add = Add a line to a key
desk-premium-by = By
desk-premium-chosen = { $by } chose how to pay on { $day }.

## Taking an entry back

acts-undo-never = This entry cannot be taken back: it tells of something that was done, or it is not there. Look at the history again.
acts-undo-later = A newer entry says something else of the same record. Take that one back first.
acts-undo-moved = Somebody wrote to file { $file } after you read its history, so nothing was taken back. Read it again and look at what is new.
desk-act-undo = undone
desk-act-seal = sealed
desk-undo-do = Take this entry back
desk-undo-what = What stood before counts again. This entry stays readable, and the taking back is an entry too.
desk-done-undo = The entry is taken back. What stood before counts again.

## What records are called

called-terms = { $stage ->
    [requested] requested
    [offered] offered
    [issued] issued
   *[expiring] expiring
}, from { $day }
called-number = number { $n }
called-package = { $language }, version { $version }

## What was typed into a form, by its fields

typed-by = Who said so
typed-on = On
typed-words = In their words
typed-binder = Binder number
typed-reason = Reason
typed-text = Note
typed-to = To whom
typed-address = Address
typed-subject = Subject
typed-message = Message
typed-why = What was said
typed-name = Name
typed-email = E-mail address
typed-licence = Licence number
typed-purpose = Needed for
desk-to-page = Back to the page

## What goes with a request to the insurer by e-mail

mail-ask-subject = { $organisation }, policy { $policy }: request { $number } for the term from { $renewal }
mail-ask-body = Enclosed is our request on policy { $policy } of { $organisation } for the term from { $renewal }. It asks for { $n ->
    [0] no new change
    [one] one change, beside what stands today
   *[other] { $n } changes, each beside what stands today
}.{ $gone ->
    [0] { "" }
    [one] { " " }One thing that we asked for earlier is asked no more: please disregard it, as the letter says.
   *[other] { " " }{ $gone } things that we asked for earlier are asked no more: please disregard them, as the letter says.
}

    Please confirm in writing what you accept and what it costs, or what you need to know first. We are at { $phone }.
mail-ask-close = { $sender }, { $brokerage }
desk-ask-mail = Send it by e-mail
desk-ask-mail-about = The letter is enclosed. What was sent, and where to, is kept with the request.
desk-ask-mail-do = Send and record
desk-done-ask-mail = Sent to { $address }, and recorded. The letter is kept.
desk-ask-where = E-mail address
desk-sealed = sealed
desk-form-title = { $n ->
    [0] The form changes nothing on file
    [one] One answer differs from the file
   *[other] { $n } answers differ from the file
}
desk-form-pages = Show the pages as they came
paper-unprintable = No paper can be printed with “{ $text }”: the fonts do not have { $letters }. Write it in Latin letters in the file; the original spelling stays in its history.
