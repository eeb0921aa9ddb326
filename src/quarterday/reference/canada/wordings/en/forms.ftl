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
statement-of-values-water = Protection against water
statement-of-values-elsewhere = asked on the water questionnaire

## What you do

operations-form-title = What do you do, and what has changed?
operations-form-lead = Your cover follows what you do. Correct what changed; mark “not known” where nobody knows. Amounts are in dollars, days are written like 2027-01-31.
operations-form-people = People
operations-form-care = People in your care
operations-form-premises = Your premises
operations-form-doing = What goes on there
operations-form-money = How you handle money
operations-form-travel = Trips and vehicles
operations-form-income = Income in a year
operations-form-closed = If your main building had to close
operations-form-closed-lead = A fire can close a building for a year or two. Your best guess is enough; leave empty what you cannot guess. Write shares in percent.

## Water questionnaire

water-form-title = { $count ->
    [one] What now keeps the water out?
   *[other] What now keeps the water out of each of { $count } places?
}
water-form-lead = Insurers ask this after water claims. Say what is so today. Good answers help the price, and a repair that is told counts.
water-form-day = Day
water-form-happened = What happened
water-form-incurred = Cost so far
water-form-repaired = What was repaired, and when?
water-form-cause = What caused it, and was that put right?
water-form-now = What protects it today
water-form-off-floor = Do things in the basement stand 15 cm or more off the floor?
water-form-warm = Is every room with pipes kept at 10 °C or more in winter?
water-form-shut = Is the main valve shut when nobody comes for some days?
water-form-hoses = Were the hoses of washers and dishwashers replaced in the last five years?
water-form-drains = Are floor drains and gutters cleaned every year?
water-form-downspouts = Do downspouts lead the water away from the walls?
water-form-valve-cleaned = Backwater valve last cleaned on
water-form-pump-tested = Sump pump last tested on
water-form-roof-checked = Roof last checked on
water-form-more = What else stops water, or is planned?
water-form-caution = A licensed plumber should fit valves and pumps. Ask your town first: it may require a permit, and may pay a part.

## Abuse prevention declaration

abuse-form-title = What do you truly do to keep people safe?
abuse-form-lead = Declare only what you truly do. “Not yet” is an honest answer, and a plan with a date is worth more than a yes that is not so.
abuse-form-do = we do this
abuse-form-not-yet = not yet
abuse-form-not-ours = does not apply
abuse-form-plan = The plan
abuse-form-screening = Before somebody starts
abuse-form-training = Training
abuse-form-together = When people are together
abuse-form-step-written = We have a written plan, and the board has adopted it.
abuse-form-step-known = Parents and workers know the plan and whom to tell.
abuse-form-step-reporting = Everyone knows to call child protection or the police at once, and that we never look into it ourselves first.
abuse-form-step-kept = Notes of checks, training and reports are kept safely, without an end date.
abuse-form-step-application = Everyone who works with people in our care fills in an application.
abuse-form-step-interview = Two people hold an interview.
abuse-form-step-references = We call at least two references.
abuse-form-note-references = Guidance: more than one reference check, always (Volunteer Alberta).
abuse-form-step-checks = We see a police check with a vulnerable sector search before they start, and renew it.
abuse-form-note-checks = Guidance: renewed every three years (Scouts Canada, section 3000, an older edition). Every five years, with a declaration each year between (child care rules in Ontario).
abuse-form-step-waiting = Newcomers wait for some months before they work with people in our care.
abuse-form-step-start = Training comes before the first day of work.
abuse-form-step-yearly = Everyone is trained again each year.
abuse-form-step-two-adults = Two screened adults are always present; nobody is alone with a child.
abuse-form-note-two-adults = Guidance: a second screened adult is always in sight (Coaching Association of Canada, Rule of Two).
abuse-form-step-open = Doors stand open or have a window, and a leader walks through.
abuse-form-step-messages = Nobody writes to a child alone: a parent or a second adult is always included.
abuse-form-note-messages = Guidance: no messages from one adult to one child (Coaching Association of Canada, Rule of Two).
abuse-form-step-away = Trips, drives and nights away have written rules and a parent's consent.
abuse-form-step-renters = Groups that rent our rooms for children show us their own plan.
abuse-form-numbers = Days and numbers
abuse-form-people = People who work with those in our care
abuse-form-checked = Of these, with a police check that is still good
abuse-form-trained = Of these, trained in the last year
abuse-form-open = What is not done yet, who does it, and by when?
abuse-form-standards = The standards named here are guidance. The ten steps of screening are in The Screening Handbook (Volunteer Canada for Public Safety Canada, 2012).
abuse-form-law = The law of your province and the rules of your own body come first. Ask a lawyer where you are not sure.
abuse-form-signed = Signed by the chair
abuse-form-signed-lead = The chair signs for the board. Sign only if each answer is true today; a wrong answer can cost you the cover.
abuse-form-adopted = Declaration adopted by the board on
abuse-form-signature = Signature of the chair

## Your decisions

decisions-form-reason = { $case ->
    [decisions] { $decisions ->
        [one] To send back: your answer to the one decision.
       *[other] To send back: your answers to the { $decisions } decisions.
    }
    [options] { $options ->
        [one] To send back: your answer to the one option with a price.
       *[other] To send back: your answers to the { $options } options with a price.
    }
   *[both] { $decisions ->
        [one] To send back: your answer to the one decision, and to what else has a price.
       *[other] To send back: your answers to the { $decisions } decisions, and to what else has a price.
    }
}
decisions-form-title = { $count ->
    [one] One question for your board to answer
   *[other] { $count } questions for your board to answer
}
decisions-form-lead = Mark one answer for each. Nothing changes until we confirm it to you in writing.
decisions-form-means-take-it = We do what the letter proposes, at the price shown.
decisions-form-means-leave-it = We do without. We keep on record that you were told and decided so.
decisions-form-means-later = You need more time. Mind the day: after it, this may no longer be on offer.
decisions-form-means-ask-us = We call you before you decide.
decisions-form-decisions = Decisions of the letter
decisions-form-options = Options with a price
decisions-form-answer = Your answer
decisions-form-words = In your words, if you wish
decisions-form-signed-lead = Somebody who may decide on coverage fills this in for the board.

## Lenders and lessors

interests-form-title = { $count ->
    [one] Does this lender or lessor still have a stake?
   *[other] Do these lenders and lessors still have a stake?
}
interests-form-lead = A lender or lessor named on your policy is paid first after a loss. One that was paid off should not be there.
interests-form-status = Does it still have a stake?
interests-form-active = yes
interests-form-paid-off = no, paid off
interests-form-unknown = not known
interests-form-name = Lender or lessor
interests-form-location = For which building
interests-form-discharge = If it was paid off: have it confirm this in writing, and send us the letter. Only then can the insurer take the name off.
interests-form-paid-off-on = Paid off on
interests-form-letter = Is the letter of discharge enclosed?
interests-form-new = Somebody new
interests-form-caution = Do not tell us account numbers or passwords. The number of the loan or lease is enough.
