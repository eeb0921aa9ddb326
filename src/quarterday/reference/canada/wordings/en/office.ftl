## Why a finding stands where it stands

priority-safety = People's safety or a legal duty comes first.
priority-lapses = Cover could lapse, or a date that cannot be moved is near.
priority-money = It is about money.
priority-record = The record should be right before anybody relies on it.
priority-each-dollar = { $cost } a year removes { $at_risk } of what is at stake: { $each } for each dollar. What removes more for a dollar comes first.
priority-free-first = It costs nothing, so it comes before what costs.
priority-unpriced = Nobody has named a price yet, so it comes after what has one.
priority-no-ratio = Its price is known, but not that it removes more than it costs; so it comes after what does.
priority-by = It must be settled by { $day }.
priority-at-risk = { $amount } is at stake.
priority-cost = Putting it right costs { $cost }.
priority-free = Putting it right costs nothing.

## Contacts

office-contacts = Contacts
office-contact-confirmed = { $name }, confirmed on
office-contact-unconfirmed-title = { $count ->
    [one] Is { $names } still the person to write to?
   *[other] Are these { $count } people still the ones to write to: { $names }?
}
office-no-contact-title = We have nobody to write to at your organisation
office-contact-unconfirmed-means = Renewal papers and claim letters go to your contacts. If they reach the wrong person, a date can be missed.
office-contacts-form-todo = Correct or confirm the names on the contacts form, have it signed, and send it back.

## Who may decide

office-authorised = Authorised people
office-authorised-nobody-title = Nobody on our file may decide for you on { $areas }
office-authorised-gone-title = { $count ->
    [one] { $names } may still decide for you but is no longer among your contacts
   *[other] { $names } may still decide for you but are no longer among your contacts
}
office-authorised-means = We act only on the word of people you authorised. Without one, a change or a claim has to wait.
office-authorised-both-means = We act only on the word of people you authorised. At present nobody may decide on { $areas }.

## Operations

office-operations = What the organisation does
office-operations-stale-title = We last knew what you do on { $confirmed }: tell us what changed
office-operations-never-title = We do not know yet what your organisation does
office-operations-stale-means = The insurer prices and covers what it was told. A trip, a rental or a day camp it never heard of may not be covered.
office-operations-stale-todo = Fill in the operations form, one page of yes-or-no questions, and send it back.

## Lenders and lessors

office-interests = Lenders and lessors
office-interest-of = { $name }: interest
office-interests-confirm-title = { $count ->
    [one] Does { $names } still have a loan or lease with you?
   *[other] Do these { $count } still have a loan or lease with you: { $names }?
}
office-interests-copies-title = { $count ->
    [one] A copy for { $names } is enclosed
   *[other] Copies for { $count } lenders and lessors are enclosed: { $names }
}
office-interests-means = A lender or lessor is named on your policy and paid first after a loss. It wants proof of cover every year.
office-interests-confirm-todo = Confirm or correct them on the interests form. Their copies are enclosed; we send them once cover is in force.
office-interests-copies-todo = Nothing to do: we send the copies once cover is in force.
office-interests-paid-off-title = { $count ->
    [one] { $names } is paid off but still named on your policy
   *[other] These { $count } are paid off but still named on your policy: { $names }
}
office-interests-paid-off-means = As long as they are named, a claim cheque can be made out to them as well. That delays your repair.
office-interests-paid-off-todo = Ask for a discharge, the letter that says nothing is owed. Send it back with the interests form.

## Who is insured

office-registration-title = The charity number { $number } cannot be right
office-registration-form-means = A charity's registration number has nine digits, then RR, then four digits. This one does not.
office-registration-check-digit-means = The ninth digit of a registration number is worked out from the first eight. In this one it does not fit, so a digit was mistyped.
office-registration-todo = Compare it with the tax receipts or the Canada Revenue Agency's list of charities, and correct it.
office-name-mismatch-title = The policy insures "{ $insured }", but the legal name is "{ $legal }"
office-name-mismatch-means = The insurer owes payment to who is named. Another name gives it a reason to ask questions after a loss.
office-name-mismatch-todo = Check the legal name in the founding papers. Then have the policy corrected in writing.

## The diary

office-diary = Diary
office-deadline-title = { $count ->
    [one] "{ $first }" can no longer be done before the renewal on { $renewal }
   *[other] { $count } steps can no longer be done before the renewal on { $renewal }
}
office-deadline-means = It begins with: { $first }. Even at full speed, the last step ends on { $ends }; the last working day that helps is { $last }.
office-deadline-todo = Phone the leaders and the insurer today. Ask the insurer in writing whether it extends the present cover by some days.
