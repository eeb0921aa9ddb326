## All forms

form-tip = { $field }: { $subject }
form-tip-confirm = Filled in by: { $field }
form-confirm = Filled in by
form-confirm-lead = Fill this in on screen or on paper. Then send it to { $email }, or by post to the address on page one.
form-confirmed-by = Your name
form-confirmed-role = Your role
form-confirmed-on = Date

## Contacts and authorised people

contacts-form-title = Are these still the right people?
contacts-form-lead = We only act on the word of someone you name here. Please correct what is wrong, and add who is new.
contacts-form-person = { $name }, { $role }
contacts-form-new = New person { $n }
contacts-form-who = Name
contacts-form-stays-label = Is this person still with you?
contacts-form-stays = yes
contacts-form-left = no, has left
contacts-form-may = May decide on
contacts-form-may-tip = { $who } may decide on { $area }

## Statement of values

statement-of-values-title = Check each building, and what to insure it for
statement-of-values-lead = What a building is decides what it costs to rebuild. Correct what has changed. Leave empty what you do not know.
statement-of-values-what = What it is
statement-of-values-updated = What was renewed, and when
statement-of-values-protection = What protects it
statement-of-values-sums = What to insure it for
form-sum = Insure for, in dollars: { $coverage }
form-sum-now = Terms today: { $amount }.
form-sum-none = Terms today: no amount.
form-sum-cost = Estimated cost to rebuild by { $day }: { $amount }.
