## What was lost

settling-loss = { CAPITAL($cause) } on { $day }
settling-at = { $what }, { $place }
settling-component-building = Building
settling-component-contents = Contents
settling-component-equipment = Equipment
settling-component-stained-glass = Stained glass
settling-component-organ-and-fine-arts = Organ and fine arts
settling-component-outdoor-property = Outdoor property
settling-component-property-away = Property away from the premises
settling-component-property-of-others = Property of others
settling-component-valuable-papers = Valuable papers
settling-component-lock-and-key = Locks and keys
settling-component-construction-in-progress = Building works under way
settling-component-glass = Glass
settling-component-by-laws = What today's building rules add
settling-component-debris = Clearing the site
settling-component-fees = Architects and engineers
settling-component-extra-expense = Extra expense
settling-component-rent-elsewhere = Rent elsewhere
settling-component-income = Lost income
settling-component-civil-authority = Income lost by order of the authorities
settling-component-off-premises-utilities = Income lost to a utility failure
settling-component-money = Money
settling-component-money-by-employee = Money taken by an employee
settling-component-money-by-volunteer = Money taken by a volunteer
settling-component-money-transferred = Money sent on a forged order
settling-component-money-outside = Money outside the premises
settling-component-offerings-in-transit = Offerings on the way to the bank
settling-component-counterfeit = Counterfeit money
settling-component-cyber-own-losses = Own costs of a data incident
settling-component-volunteer-accident = Help for an injured volunteer
settling-component-travel = Costs of a trip gone wrong
settling-component-key-person = Cost of losing a key person
settling-component-compensatory = Damages to make good the harm
settling-component-punitive = Punitive damages
settling-component-exemplary = Exemplary damages
settling-component-multiplied = Multiplied damages
settling-component-defence = Lawyers and defence
settling-component-therapy = Therapy
settling-component-medical = Medical costs of a visitor

## Who pays, and why some is borne

settling-reason-policy = the policy's own limits
settling-reason-shared-limit = the shared additional limit
settling-reason-umbrella = the umbrella
settling-reason-no-cover = no cover for it
settling-reason-excluded-cause = cause left out
settling-reason-damages-excluded = kind of damages left out
settling-reason-damages-unstated = kind of damages not named in the terms
settling-reason-before-retroactive-date = happened too early
settling-reason-waiting = waiting period
settling-reason-depreciation = wear and age
settling-reason-coinsurance = coinsurance (too little insured)
settling-reason-deductible = deductible (your own part)
settling-reason-over-limit = above the limit
settling-reason-over-margin = above the most for one building
settling-reason-monthly-limit = above the most for thirty days
settling-reason-over-aggregate = the year's limit is used up

## Figures

settling-total = The whole loss: { $loss }
settling-paid = What insurance pays: { $loss }
settling-borne = What you bear: { $loss }
settling-by-payer = Paid from { $of }: { $loss }
settling-by-reason = Borne by you – { $of }: { $loss }
settling-how-total = The sum of all amounts lost.
settling-how-paid = What is left of each amount after all steps, plus what a further limit adds. It is rounded to the cent once.
settling-how-borne = The whole loss less what insurance pays.
settling-how-by-payer = What this source pays over all amounts lost.
settling-how-by-reason = What this step leaves with you over all amounts lost.

## Steps

settling-step-no-cover = { $what }: nothing in these terms pays for this after this cause: { $cause }. You bear { $moved }.
settling-step-excluded-cause = { $what }: the cover “{ $coverage }” leaves out this cause: { $cause }. You bear { $moved }.
settling-step-damages-excluded = { $what }: the cover “{ $coverage }” leaves out this kind of damages. You bear { $moved }.
settling-step-damages-unstated = { $what }: the cover “{ $coverage }” does not name this kind of damages. We count { $moved } as yours.
settling-step-retroactive = { $what }: only events from { $day } on count, and this came earlier. You bear { $moved }.
settling-step-waiting = { $what }: the first { $hours } hours are not paid. { $before } less { $moved } = { $after }.
settling-step-depreciation = { $what }: { $part } of { $before } is wear and age, which is not paid. { $before } less { $moved } = { $after }.
settling-step-coinsurance = { $what }: { $insured } is insured and { $required } is required (coinsurance). { $before } × { $share } = { $after }.
settling-step-coinsurance-enough = { $what }: { $insured } is insured and { $required } is required (coinsurance). That is enough, so nothing is cut.
settling-step-coinsurance-agreed = { $what }: an agreed value holds on the day of the loss, so coinsurance does not apply.
settling-step-coinsurance-small = { $what }: the loss is small enough that coinsurance does not apply.
settling-step-deductible = { $what }: { $before } less the deductible (your own part) of { $amount } = { $after }.
settling-step-deductible-in-part = { $what }: { $before } less { $moved } of the deductible (your own part) of { $amount } = { $after }.
settling-step-deductible-part = { $what }: { $before } less a deductible (your own part) of { $moved }, a share of the loss = { $after }.
settling-step-highest = { $what }: of several deductibles in one event only the highest counts. { $moved } is paid after all.
settling-step-monthly = { $what }: at most { $limit } is paid for thirty days. { $before } less { $moved } = { $after }.
settling-step-margin = { $what }: a margin clause pays at most { $limit } at this place. { $before } less { $moved } = { $after }.
settling-step-limit = { $what }: the limit of { $limit } is reached. { $before } less { $moved } = { $after }.
settling-step-limit-above = { $what }: this is part of the limit of “{ $coverage }”, and its { $limit } are reached. { $before } less { $moved } = { $after }.
settling-step-limit-enough = { $what }: the limit of { $limit } is not reached.
settling-step-year-limit = { $what }: the limit of { $limit } for the whole year is reached. { $before } less { $moved } = { $after }.
settling-step-year-limit-enough = { $what }: the limit of { $limit } for the whole year is not reached.
settling-step-in-full = { $what }: all of { $paid } is paid.
settling-step-aggregate = { $what }: the limit of { $limit } for the whole year is used up. { $before } less { $moved } = { $after }.
settling-step-shared = { $what }: the shared additional limit ({ $limit } a year) pays { $moved } of what is above the limit.
settling-step-umbrella = { $what }: the umbrella (a further { $limit }) pays { $moved } of what is above the limit.
settling-step-umbrella-aggregate = { $what }: the umbrella pays at most { $limit } a year. { $moved } stays with you.
settling-step-paid = Of { $total }, insurance pays { $paid } and you bear { $borne }.

## Cautions

settling-caution-order = { $coverage }: the terms do not say whether the deductible or coinsurance comes first. We put coinsurance first, as most forms print it.
settling-caution-highest = The terms do not say what happens when several deductibles meet in one event. We count only the highest.
settling-caution-value = { $coverage }: nobody knows the true value. We took the amount insured for it, so a coinsurance cut may be missing.
settling-caution-income = { $coverage }: the terms do not say whether coinsurance counts expenses that would stop. Wordings of gross earnings do, those of profits do not. Ask the insurer which yours is.
settling-caution-wear = { $coverage }: wear and age are estimated from the building's age.
settling-caution-functional = { $coverage }: the terms pay for something that does the same job. We took the amounts as they are; it may cost less.
settling-caution-defence = { $coverage }: the terms do not say whether defence costs use up the limit. We assume that they do.
settling-caution-retroactive = { $coverage }: no retroactive date is shown. We assume that earlier events count.
settling-caution-qualified = { $coverage }: the prevention plan is not accepted yet. The insurer may pay less than this, or nothing.
settling-caution-damages = { $coverage }: the terms do not name this kind of damages. A silent wording may go either way.

## What cannot be honoured

settling-refused-coverage = There is no coverage “{ $coverage }”. Use an id of the coverage library, so that we know what it answers.
settling-refused-two-payers = { $line } stands twice in the terms. Two lines cannot pay the same loss; keep one of them.
settling-refused-two-payers-reason = Two payers stand behind the reason “{ $reason }”. Give each reason one payer.
settling-refused-negative = { $line }: “{ $clause }” is { $amount }. It cannot be below zero; correct it.
settling-refused-ratio = { $line }: “{ $clause }” is { $ratio }. It must lie from 0% to 100%; write 0.02 for 2%.
settling-refused-absent = { $line }: no limit is given. Without it nobody can say what is paid; give the limit.
settling-refused-two-deductibles = { $line }: gives a deductible both as an amount and as a share. Keep one; a smallest deductible can stand beside a share.
settling-refused-percent-of-what = { $line }: the deductible is a share, but of what? Say loss, limit or value.
settling-refused-no-limit = { $line }: the deductible is a share of the limit, and no limit is given. Give the limit.
settling-refused-deductible-bounds = { $line }: the smallest deductible ({ $least }) is above the largest ({ $most }). Correct one of them.
settling-refused-highest-of-loss = { $line }: a deductible that is a share of the loss cannot be ranked against others. Take out the rule “highest”, or make it an amount.
settling-refused-sublimit-circle = { $line }: is part of the limit of { $of }, which is in turn part of this one. Break the circle.
settling-refused-sublimit-of-nothing = { $line }: is part of the limit of { $of }, which these terms do not give there. Add that line or take the clause out.
settling-refused-sublimit-above = { $line }: its limit of { $limit } is above { $whole }, the limit of { $of } that it is part of. Correct one of them.
settling-refused-attaches-to-nothing = { $line }: lies over { $coverage }, which these terms do not give. Add that line or take it out of the list.
settling-refused-shared-negative = The shared additional limit is { $amount }. It cannot be below zero; correct it.
settling-refused-shared-twice = The shared additional limit names a coverage twice: { $coverages }. Name each once, in the order it is used.
settling-refused-cause = There is no cause “{ $cause }”. Use one of: { $known }.
settling-refused-component = There is no kind of loss “{ $component }”. Use one of: { $known }.
settling-refused-reference = There is no reference loss “{ $loss }”. Use one of: { $known }.
settling-refused-no-amounts = { $loss }: no amount is given. Say what was lost and how much.
settling-refused-negative-loss = The loss of “{ $component }” is { $amount }. A loss cannot be below zero; correct it.
settling-refused-place = The place “{ $place }” is not on the schedule of these terms. Use one of: { $known }.
settling-refused-needs-place = Say where “{ $component }” was lost: these terms insure it place by place ({ $known }).
settling-refused-months = { $loss }: “{ $component }” is given month by month. Only lost income can be; give one amount.
settling-refused-outside = { $day } lies outside the policy period, which runs from { $start } until { $end }. Give a day within it.
settling-refused-outside-claims-made = { $coverage } counts claims made from { $start } until { $end }, and in its reporting period. { $day } lies outside; give the day the claim is made.
settling-refused-period = The terms end on { $end } and start on { $start }. They must end after they start.
settling-refused-no-value = { $line }: a clause measures the loss against the true value, which is not given. Give it under “values”.
settling-refused-no-depreciation = { $line }: pays less wear and age, and the wear of “{ $component }” is not given. Give “depreciation” under “values”, such as 0.25.

## An account's own values and losses

settling-worth = Cost to rebuild { $building } on { $day }
settling-past-before = What you would have borne of your past claims under the first terms
settling-past-after = What you would have borne of your past claims under the second terms
settling-how-past = { $n ->
    [one] One past claim, settled again under these terms.
   *[other] { $n } past claims, settled again under these terms, year by year.
}
losses-not-yours = Your organisation cannot meet this loss.
losses-not-insured = None of your terms insures this: { $what }.
losses-no-largest = There is no building on file for this loss.
losses-no-basement = No building on file has a basement.
losses-nothing-lost = Nothing on file says how large this loss would be.
losses-assumed-deductible = { $n ->
    [one] The deductible of one claim is not on file. We took what the insurer paid as the whole loss.
   *[other] The deductibles of { $n } claims are not on file. We took what the insurer paid as the whole loss.
}
losses-assumed-one-thing = Loss runs do not say what was lost. We took each claim as damage to one thing, by its cause.
losses-assumed-open = Some claims are still open. We took the insurer's present estimate.
losses-assumed-prices = Amounts are those of the time; prices have risen since.

## Choices that terms may state

coinsurance-of-whole-income = a year's income, whole
coinsurance-of-less-stopping = a year's income, less the expenses that would stop
settling-order-coinsurance-first = coinsurance first
settling-order-deductible-first = deductible first
deductible-rule-highest = only the highest
deductible-rule-each = each of them
