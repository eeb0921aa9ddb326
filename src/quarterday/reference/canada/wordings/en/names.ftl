## Language

language-en = English
language-fr = French

## Kind of organisation

organisation-class-worship = place of worship
organisation-class-charity = charity
organisation-class-hall = community hall
organisation-class-camp = camp
organisation-class-food-bank = food bank
organisation-class-sports = sports club
organisation-class-arts = arts centre
organisation-class-school = school
organisation-class-mission = mission
organisation-class-other = organisation

## Role of a contact

role-treasurer = treasurer
role-chair = board chair
role-minister = minister or spiritual leader
role-administrator = administrator
role-secretary = secretary
role-property = property steward
role-other = contact

## What a contact may decide on

area-coverage = coverage
area-accounts = accounts
area-claims = claims

## Ownership of a building

ownership-own = own
ownership-rent = rent
ownership-mandate = look after it for others

## Construction

construction-frame = wood frame
construction-masonry-veneer = masonry veneer on wood frame
construction-heavy-timber = heavy timber
construction-masonry = masonry
construction-stone = stone
construction-concrete = concrete
construction-steel = steel
construction-other = other

## Basement

basement-none = no basement
basement-unfinished = unfinished basement
basement-finished = finished basement

## What a valuation rests on

basis-formal-appraisal = formal appraisal
basis-desk-valuation = desk valuation
basis-cost-manual = cost manual
basis-owner-estimate = owner's estimate
basis-indexed = earlier value carried forward by an index
basis-unknown = basis not known
valuation-basis-formal-appraisal = { basis-formal-appraisal }
valuation-basis-desk-valuation = { basis-desk-valuation }
valuation-basis-cost-manual = { basis-cost-manual }
valuation-basis-owner-estimate = { basis-owner-estimate }
valuation-basis-indexed = { basis-indexed }
valuation-basis-unknown = { basis-unknown }

## What was valued

valued-building = building
valued-contents = contents
valued-feature = special feature

## Stages of terms

stage-requested = requested
stage-offered = offered
stage-issued = issued
stage-expiring = expiring

## How a limit applies

limit-basis-per-occurrence = to each event
limit-basis-per-claim = to each claim
limit-basis-per-building = to each building
limit-basis-blanket = as one amount over all of them
limit-basis-aggregate = to the whole year

## How a loss is settled

settlement-basis-replacement = new for old (replacement cost)
settlement-basis-actual-cash-value = less wear and age (actual cash value)
settlement-basis-functional = something that does the same job
settlement-basis-reproduction = an exact copy

## A deductible as a share

percent-of-loss = of the loss
percent-of-limit = of the limit
percent-of-value = of the value

## Kinds of damages

damages-punitive = punitive damages
damages-exemplary = exemplary damages
damages-multiplied = multiplied damages

## Defence costs

defence-inside = inside the limit: they use it up
defence-outside = on top of the limit

## Whom a shared limit is meant for

meant-for-owner = an organisation that owns its buildings
meant-for-renter = an organisation that rents

## Kinds of charge

premium-kind-premium = premium
premium-kind-flat = flat charge
premium-kind-surcharge = surcharge
premium-kind-discount = discount
premium-kind-fee = fee

## Printed totals

total-of-coverage = coverage
total-of-location = location
total-of-subtotal = subtotal
total-of-tax = tax
total-of-total = total

## Claims

claim-status-open = open
claim-status-closed = closed
party-first = harm to what is yours
party-third = harm to others

## Lenders and lessors

interest-role-lender = lender
interest-role-lessor = lessor
interest-status-active = active
interest-status-paid-off = paid off
interest-status-unknown = not known

## What an allocation key measures

allocation-by-location = what stands there
allocation-by-area = area (m²)
allocation-by-headcount = number of people
allocation-by-revenue = revenue
allocation-by-share = fixed shares

## Ways of delivery

way-e-mail = by e-mail
way-post = by post
way-by-hand = by hand
way-room = in the leaders' room

## States of a renewal

state-gathering = gathering
state-reviewing = reviewing
state-asked = asked
state-offered = offered
state-with-leaders = with leaders
state-settling = settling
state-bound = bound
state-checked = checked
state-lapsed = lapsed

## Kinds of findings

finding-kind-decide = decide
finding-kind-send-back = send back
finding-kind-know = know
finding-kind-fix = fix

## Answers

answer-take-it = take it
answer-leave-it = leave it
answer-later = later
answer-ask-us = ask us

## Who a finding is for

audience-leaders = leaders
audience-broker = broker
audience-insurer = insurer

## What a finding is about

subject-organisation = organisation
subject-building = building
subject-coverage = coverage
subject-claim = claim
subject-person = person
subject-terms = terms
subject-premium = premium
subject-interest = lender or lessor
subject-operations = activities
subject-diary = diary

## Tiers of priority

tier-safety-or-duty = a person's safety or a legal duty
tier-lapses = cover that lapses, or a date that cannot be moved
tier-money = money at risk
tier-record = the accuracy of the record

## Families of coverages

family-property = property
family-crime = theft and dishonesty
family-income = income and extra expense
family-liability = liability to others
family-management = decisions and employment
family-abuse = abuse
family-people = people and travel
family-cyber = computers and data
family-vehicles = vehicles
family-umbrella = umbrella

## Papers of a package

paper-letter = letter and agenda
paper-what-changed = what changed
paper-premium-statement = premium statement
paper-coverage-summary = coverage summary
paper-options = options
paper-building-values = building values
paper-copies-for-lenders = copies for lenders and lessors
paper-figures = where each figure comes from

## Forms

paper-contacts-form = contacts and authorised people
paper-statement-of-values = statement of values
paper-operations-form = what you do
paper-water-form = water questionnaire
paper-abuse-form = abuse prevention declaration
paper-decisions-form = your decisions
paper-payment-form = how you pay
paper-interests-form = lenders and lessors

## Records of a file

record-organisation = organisation
record-contact = contact
record-authority = authorised person
record-operations = activities
record-building = building
record-valuation = valuation
record-terms = terms
record-claim = claim
record-interest = lender or lessor
record-allocation-key = line of an allocation key
record-bound = cover bound
record-decision = decision
record-delivery = delivery
record-finding-set-aside = finding set aside
record-form-returned = form returned
record-note = note
record-package-built = package built
record-payment-choice = payment choice
record-policy-checked = policy checked
record-redaction = redaction
record-original-erased = erased document
record-review-signed = review signed
kind-organisation = { record-organisation }
kind-contact = { record-contact }
kind-authority = { record-authority }
kind-operations = { record-operations }
kind-building = { record-building }
kind-valuation = { record-valuation }
kind-terms = { record-terms }
kind-claim = { record-claim }
kind-interest = { record-interest }
kind-allocation-key = { record-allocation-key }
kind-bound = { record-bound }
kind-decision = { record-decision }
kind-delivery = { record-delivery }
kind-finding-set-aside = { record-finding-set-aside }
kind-form-returned = { record-form-returned }
kind-note = { record-note }
kind-package-built = { record-package-built }
kind-payment-choice = { record-payment-choice }
kind-policy-checked = { record-policy-checked }
kind-redaction = { record-redaction }
kind-original-erased = { record-original-erased }
kind-review-signed = { record-review-signed }

## When a tax rate changes

turns-on-policy-start = the first day of the policy
turns-on-payment-date = the day of payment
