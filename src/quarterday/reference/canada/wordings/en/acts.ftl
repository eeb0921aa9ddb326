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
acts-request-moved = { $file } was changed after you loaded its page, so the request was not recorded. Read it again: it may ask for more now.
acts-returns-moved = The file was changed since you read this form, so nothing was written. Below is what the form proposes now.
mail-no-server = No mail server is named, so nothing was sent or recorded. Set { $setting } to its address, or record a delivery by post or by hand.
mail-bad-server = { $setting } does not name a mail server, so nothing was sent. Write it like smtp+starttls://user@mail.example.org.
mail-refused = The mail server does not deliver to { $to }, so nothing was recorded. It says: { $why }
mail-password = The mail server does not accept our user or password, so nothing was sent. It says: { $why }
mail-not-taken = The mail server did not take the message, so nothing was recorded. It says: { $why }
mail-not-reached = The mail server could not be reached, so nothing was sent or recorded. Try again later. The machine says: { $why }
mail-on-its-way = A message to { $to } with this package is being sent just now. Wait a minute, then load the page again.
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
