## Every page

package-title = Insurance renewal { $renewal }: { $organisation }
package-draft = Draft, not for delivery: no licensed broker has signed this review yet.
package-foot = { $organisation } · file { $file } · term { $start } to { $end }
package-built = { CAPITAL($language) } · built { $built_on } · version { $version }
package-page = Page
package-of = of
paper-kicker = { CAPITAL($paper) } · { $organisation }
paper-name = { CAPITAL($paper) }
paper-coverage-at = { $coverage }, { $place }
paper-ask-us = ask us
chart-alternative = { $title }. { $rows }.
chart-starts = The scale starts at { $from }, not at zero.

## Letter

letter-reason = What to decide, and what comes with this letter.
letter-title = { $count ->
    [0] Nothing to decide before { $renewal }
    [1] One decision before { $renewal }
    [2] Two decisions before { $renewal }
    [3] Three decisions before { $renewal }
    [4] Four decisions before { $renewal }
    [5] Five decisions before { $renewal }
   *[other] { $count } decisions before { $renewal }
}
letter-lead = Your insurance renews on { $renewal }. We compared the insurer's offer with this year's policy and with what we know of you on { $as_of }. { $count ->
    [0] Your leaders have nothing to decide.
   *[other] Below is what your leaders need to decide, what it costs, and by when.
}
letter-lead-no-offer = Your insurance renews on { $renewal }. The insurer has not made its offer yet. We looked at this year's policy and at what we know of you on { $as_of }. { $count ->
    [0] Your leaders have nothing to decide yet.
   *[other] Below is what your leaders can decide now.
}
letter-to = { $name }, { $role }
letter-dear = Dear { $name },
letter-all = To the leaders of the organisation,
letter-glance-premium = Premium for the year, with tax
letter-not-offered = not offered yet
letter-moved-up = { $change } more than this year
letter-moved-down = { $change } less than this year
letter-moved-same = the same as this year
letter-glance-decisions = To decide
letter-glance-by = the first by { $by }
letter-glance-renewal = Your insurance renews
letter-glance-as-of = figures as of { $as_of }
letter-words = A premium is the price of your insurance. A limit is the most the insurer pays. A deductible is what you pay first in a loss. Coinsurance means you share a loss when too little is insured.
letter-decide = What to decide
letter-in-full = Each decision in full
letter-number = No.
letter-decision = Decision
letter-price = Price
letter-free = no charge
letter-at-stake = At stake
letter-by = By
letter-send-back = To send back or put right
letter-know = Good to know
letter-enclosed = { $count ->
    [one] One paper is enclosed, because it applies to you
   *[other] { $count } papers are enclosed, because they apply to you
}
letter-alike = { $count ->
    [0] { $title }
    [one] { $title } (and one more like it)
   *[other] { $title } (and { $count } more like it)
}
letter-pages = pages
letter-part-read = To read before you meet
letter-part-send = To fill in and send back
letter-part-keep = To keep and look up
letter-why = Why you get it
letter-page = Page
letter-not-signed = Not signed yet
letter-licence = Licensed broker, { $licence }
letter-reviewed = I reviewed this file as of { $as_of }.

## What changed

what-changed-reason = The insurer's offer differs from this year's policy, or costs a different amount.
what-changed-title = What the offer changes
what-changed-title-up = Your premium would go up by { $change }
what-changed-title-down = Your premium would go down by { $change }
what-changed-title-same = Your premium would stay the same
what-changed-lead = We set this year's policy, which ends on { $before }, beside the offer of { $insurer }. Every difference we found is below.
what-changed-coverage = Coverage
what-changed-change = What changes
what-changed-borne = You could pay
what-changed-sentence = { CAPITAL($change) }
what-changed-whole = The whole policy
what-changed-dropped = { $count ->
    [one] One coverage is gone
   *[other] { $count } coverages are gone
}
what-changed-dropped-lead = The offer no longer pays for these. Ask for them back if you need them.
what-changed-worse = { $count ->
    [one] One term gets worse
   *[other] { $count } terms get worse
}
what-changed-worse-lead = The last column shows how much more or less you could pay yourself in one loss.
what-changed-added = { $count ->
    [one] One coverage is new
   *[other] { $count } coverages are new
}
what-changed-added-lead = The offer pays for these for the first time.
what-changed-better = { $count ->
    [one] One term gets better
   *[other] { $count } terms get better
}
what-changed-better-lead = The last column shows how much more or less you could pay yourself in one loss.
what-changed-other = Different, but neither better nor worse by itself
what-changed-other-lead = Read these with care. Whether they help or hurt depends on the loss.
what-changed-none = The terms stay as they are
what-changed-none-lead = We found no difference between this year's policy and the offer.
what-changed-premium = Why the premium moved
what-changed-chart = From this year's premium to the offer, in dollars with tax
what-changed-before = This year
what-changed-after = Offered
what-changed-exposure = Sums insured
what-changed-rate = Rates
what-changed-added-step = Coverage added
what-changed-dropped-step = Coverage gone
what-changed-adjustment = Discounts, surcharges
what-changed-fee = Fees
what-changed-tax-base = Tax on the change
what-changed-tax-rate = New tax rate
what-changed-cause-exposure = more or less is insured
what-changed-cause-rate = the insurer changed its rates
what-changed-cause-added = coverage was added
what-changed-cause-dropped = coverage was taken out
what-changed-cause-adjustment = discounts and surcharges changed
what-changed-cause-fee = fees changed
what-changed-cause-tax-base = tax follows the premium
what-changed-cause-tax-rate = the tax rate changed
what-changed-largest-up = The largest part is { $amount } more, because { $cause }.
what-changed-largest-down = The largest part is { $amount } less, because { $cause }.
what-changed-part = Part of the premium
what-changed-note = A rate is the price of each dollar insured. Where both the rate and the sum insured moved, each gets its fair share of the change. The parts add up to the cent.

## Premium statement

premium-statement-reason = What each coverage costs at each location, for your books.
premium-statement-title = You would pay { $total } for the year
premium-statement-title-issued = You pay { $total } for the year
premium-statement-lead = This is the price of your insurance from { $start } to { $end }. It shows what each coverage costs at each location.
premium-statement-before-tax = Premium and fees
premium-statement-tax = Tax
premium-statement-total = Total for the year
premium-statement-part = Locations, part { $n } of { $count }
premium-statement-coverage = Coverage (dollars)
premium-statement-all = All
premium-statement-subtotal = Premium before fees and tax
premium-statement-sum = From the premium to the total
premium-statement-what = What
premium-statement-dollars = Dollars
premium-statement-premium = Premium of all coverages
premium-statement-fees = Fees
premium-statement-tax-at = Tax, { $rate } of { $base }
premium-statement-no-tax = Tax on premiums (none in your province)
premium-statement-stage-offered = These are the terms that { $insurer } offers. They are not in force yet.
premium-statement-stage-requested = These are the terms we asked { $insurer } for. Nothing is offered yet.
premium-statement-stage-issued = These are the terms of your policy with { $insurer }. Nothing is offered for next year yet.
premium-statement-tax-unknown = We do not know the tax rate for this day. The total is without tax.
premium-statement-surcharge = The premium for { $coverage } includes a surcharge of { $amount }: { $reason }.
premium-statement-discount = The premium for { $coverage } includes a discount of { $amount }: { $reason }.
premium-statement-flat = The premium for { $coverage } includes a flat charge of { $amount }: { $reason }.

## Coverage summary

coverage-summary-reason = { $count ->
    [0] What you are covered for. We found nothing missing.
    [one] What you are covered for, and one coverage that is missing.
   *[other] What you are covered for, and { $count } coverages that are missing.
}
coverage-summary-title = { $count ->
    [0] You have every coverage that fits what you do
    [one] One coverage that fits what you do is missing
   *[other] { $count } coverages that fit what you do are missing
}
coverage-summary-lead = You have { $have } kinds of coverage from { $start } to { $end }. A limit is the most that the insurer pays. A deductible is what you pay first.
coverage-summary-coverage = Coverage
coverage-summary-state = Have it?
coverage-summary-limit = Limit
coverage-summary-deductible = Deductible
coverage-summary-gaps = What is missing
coverage-summary-pays = What it pays
coverage-summary-why = Why it fits you
coverage-summary-everyone = Any organisation can need it.
coverage-summary-have = yes
coverage-summary-needed = no
coverage-summary-ask = tell us
coverage-summary-because = Because { $reasons }.
coverage-summary-tell-us = We need to know { $questions }.
coverage-summary-rest = Nothing in your file calls for: { $names }.
coverage-summary-within = { $case ->
    [shared] The shared additional limit pays for it.
   *[lines] It is part of this: { $covers }.
}
coverage-summary-shared = shared limit
coverage-summary-hours = { $n ->
    [one] after { $n } hour
   *[other] after { $n } hours
}

## Options

options-reason = { $count ->
    [one] The insurer offers one more coverage. You choose.
   *[other] The insurer offers { $count } more coverages. You choose.
}
options-title = { $count ->
    [one] The insurer would add one thing if you ask
   *[other] The insurer would add { $count } things if you ask
}
options-lead = None of these is in the price yet. For each you see the price, what it pays for and a question to ask yourselves.
options-price = Price
options-a-year = { $price } a year before tax
options-limit = Limit
options-deductible = Deductible
options-now = As offered
options-covered = covered
options-not-covered = not covered
options-question = Ask yourselves: { $question }
options-change = What each would change for you, beside the offer as it stands
options-change-lead = Losses fall on you in part: deductibles, what goes beyond a limit, what is not covered. This is how much less (or more) of them you would bear.
options-not-measured = not measured
options-reach = ({ $least } to { $most })
options-rests-on = From { $years } simulated years of losses, the same for every option, and your own claims beside those of others. In brackets: where chance alone puts it. "The same" means no difference that chance does not explain. Sizes and frequencies are in part examples that nobody publishes. Amounts are rounded to what chance leaves of them.
options-deductibles = Another deductible
options-deductibles-lead = The deductible is the part of each loss that you pay yourself.
options-caution = An option counts only once we confirm it to you in writing.

## Building values

building-values-reason = { $short ->
    [0] { $count ->
        [one] Your building is insured for enough to rebuild it. This shows why.
       *[other] Your { $count } buildings are insured for enough to rebuild them. This shows why.
    }
    [one] One building could not be rebuilt with what it is insured for.
   *[other] { $short } buildings could not be rebuilt with what they are insured for.
}
building-values-title-short = { $building } would be about { $amount } short after a total loss
building-values-title-enough = { $building } is insured for enough to rebuild it
building-values-title-unknown = Nobody knows what it costs to rebuild { $building }
building-values-lead = A total loss could come just before the term ends on { $end }. Rebuilding takes time, so we count the costs up to { $day }.
building-values-insured = Most the policy pays
building-values-available = its share of a joint amount
building-values-cost = Cost to rebuild
building-values-by = by { $day }
building-values-short = Short by
building-values-spare = To spare
building-values-share = { $share } of the cost
building-values-chart = Sum insured and cost to rebuild, in dollars
building-values-line-cost = cost to rebuild
building-values-line-insured = sum insured
building-values-projected = projected
building-values-day-valued = valued
building-values-day-renewal = renewal
building-values-day-rebuilt = rebuilt
building-values-alternative = { $building }: on { $valued_on } it would have cost { $valued } to rebuild, on { $renewal } { $at_renewal }, and by { $day } { $rebuilt }, the last part projected. It is insured for { $insured }.
building-values-increases-behind = Since the valuation of { $day }, the sum insured went up by { $applied } on its own. Building costs went up by { $index }.
building-values-increases-ahead = Since the valuation of { $day }, the sum insured went up by { $applied } on its own. Building costs went up by { $index }, so it has kept pace.
building-values-clause-title-short = Even a small loss would be paid at only { $share }
building-values-clause-title-full = A partial loss would be paid in full, after the deductible
building-values-clause-title-suspended = The coinsurance clause is set aside
building-values-clause-short = Your policy has a coinsurance clause: insure at least { $required }, or share every loss. You insure { $carried }. So the insurer pays { $share } of a loss, less the deductible.
building-values-clause-full = Your policy has a coinsurance clause: insure at least { $required }, or share every loss. You insure { $carried }, which is enough.
building-values-clause-suspended = A coinsurance clause makes you share every loss when too little is insured. An agreed value sets it aside for this term.
building-values-losses = Who pays for a loss of this size
building-values-paid = the insurer pays
building-values-borne = you pay
building-values-pays = insurer { $paid }, you { $borne }
building-values-todo = What to do
building-values-todo-none = Nothing now. Tell us before you renovate, extend or empty the building.
building-values-caution = { caution-estimate } This one starts from: { $basis }, { $day }, { $by }.
building-values-by-unknown = valuer not named
building-values-caution-none = No valuation is on file, so we cannot say whether the sum insured is enough.

## Copies for lenders and lessors

copies-reason = { $names } must be shown that you are insured.
copies-title-lender = Evidence of insurance for a lender
copies-title-lessor = Evidence of insurance for a lessor
copies-lead-issued = The insurance below is in force for the term shown.
copies-lead-offered = The insurance below is offered for the term shown. It is not in force until the insurer issues the policy.
copies-lead-requested = The insurance below was asked for. The insurer has not offered it yet.
copies-insured = Insured
copies-address = Address
copies-insurer = Insurer
copies-policy = Policy
copies-term = Term
copies-from-to = { $start } to { $end }
copies-reference = Your reference
copies-location = Property
copies-item = Equipment
copies-amount = Your interest
copies-coverage = Coverage
copies-limit = Limit
copies-deductible = Deductible
copies-caution = This page informs. It changes nothing in the policy and gives no right of its own; the policy's own wording governs.
copies-signed = { $name }, licensed broker, { $on }

## Where each figure comes from

figures-reason = { $count ->
    [one] Where the one figure behind the findings comes from.
   *[other] Where the { $count } figures behind the findings come from.
}
figures-title = Where each figure comes from
figures-lead = Each figure has a number. Beside it stands how we computed it, and the numbers of what it was made from. Where it names a mark such as *1, read that caution first.
figures-number = No.
figures-value = Value
figures-figures = Figures we computed
figures-figure = Figure, and how it came about
figures-facts = Facts in your file
figures-parameters = Published and assumed values
figures-from = From { $numbers }.
figures-credits = Credit: { $text }

## Claims record

paper-claims-record = claims record
claims-record-reason = { $count ->
    [one] Your one claim in { $years } years, and what prevents the next.
   *[other] Your { $count } claims in { $years } years, and what prevents the next.
}
claims-record-title = { $case ->
    [none] { $count ->
        [one] You had one claim in { $years } years, and it was not water
       *[other] You had { $count } claims in { $years } years, none of them water
    }
    [all] { $count ->
        [one] Your one claim in { $years } years was water
       *[other] All { $count } claims in { $years } years were water
    }
   *[some] { $water } of your { $count } claims in { $years } years { $water ->
        [one] was
       *[other] were
    } water
}
claims-record-lead = These are the losses from { $start } to { $end } that we know of. Insurers look at them when they set your price.
claims-record-claims = Claims
claims-record-in-years = in { $years } years
claims-record-cost = What they cost
claims-record-cost-note = paid, and set aside for open ones
claims-record-water-cost = Of this, water
claims-record-water-share = { $share } of the cost
claims-record-chart = What claims cost, by cause
claims-record-key-water = water
claims-record-key-other = other causes
claims-record-counted = { $count ->
    [one] one claim, { $amount }
   *[other] { $count } claims, { $amount }
}
claims-record-each = Each claim, newest first
claims-record-day = Day
claims-record-cause = Cause
claims-record-place = Where
claims-record-cost-header = Cost
claims-record-status = State
claims-record-nowhere = not told
claims-record-prevention = What prevents it
claims-record-late = Reported more than { $days } days after the loss: { $each }. An insurer may pay less for what it hears of late.
claims-record-caution = The insurer's own record governs. Tell us what is missing or wrong.
claims-record-caution-day = As the insurer's record stood on { $day }; open claims can still change. Tell us what is missing or wrong.

## Draft motions

paper-motions = draft motions
motions-reason = { $count ->
    [one] Words for your minutes, for the one decision.
   *[other] Words for your minutes, for each of the { $count } decisions.
}
motions-title = { $count ->
    [one] One motion, ready for your minutes
   *[other] { $count } motions, ready for your minutes
}
motions-lead = Use, change or leave these. Where you decide against, minute that too: it shows that the board knew and chose.
motions-or = Or, if the board decides against it:
motions-mover = Moved by
motions-seconder = Seconded by
motions-result = Carried, or not
motions-caution = Your own by-laws say who may move, second and vote. Ask a lawyer where they are not clear.

## What would it pay

paper-what-would-it-pay = what would it pay
would-pay-reason = { $count ->
    [one] One loss, walked through step by step.
   *[other] { $count } losses, walked through step by step.
}
would-pay-title = { $case ->
    [some] { $loss }: you would bear about { $amount }
   *[none] In these losses, your insurance would pay it all
}
would-pay-lead = { $count ->
    [one] One loss that could happen to you, and what your insurance would pay.
   *[other] { $count } losses that could happen to you, and what your insurance would pay.
} The amounts are examples, made to your size. What you bear comes from your own funds.
would-pay-chart = Who pays for each loss
would-pay-loss = Loss
would-pay-part = What is lost
would-pay-lost = How much
would-pay-reason-of = { $amount } ({ $why })
would-pay-because = Why you bear it: { $reasons }.
would-pay-total = The whole loss
would-pay-pays = Insurer pays
would-pay-borne = You pay
would-pay-before = You pay under this year's policy
would-pay-result = { $case ->
    [all] The insurer pays the whole loss of { $total }.
    [none] The insurer pays nothing. You pay the whole loss of { $total }.
   *[part] Of { $total }, the insurer pays { $paid } and you pay { $borne }.
}
would-pay-caution = These are examples, not promises. A real claim turns on its own facts, and an adjuster decides.

## Brand

brand-logo = Logo of { $name }
brand-signature = Signature of { $name }
