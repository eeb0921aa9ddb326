## The record

claims-incurred-label = What claims cost the insurer from { $start } to { $end }
claims-incurred-how = { $n ->
    [one] One claim: paid plus set aside, less recovered.
   *[other] The sum of { $n } claims: paid plus set aside, less recovered.
}
claims-ground-up-label = What claims came to with deductibles, from { $start } to { $end }
claims-ground-up-how = { $n ->
    [one] One claim with its deductible.
   *[other] The sum of { $n } claims, each with its deductible.
}
claims-water-share-label = Share of claims caused by water, from { $start } to { $end }
claims-water-share-how = Water claims, divided by all { $n } claims.
claims-water-cost-share-label = Share of claims money spent on water, from { $start } to { $end }
claims-water-cost-share-how = What water claims cost, divided by what all { $n } claims cost.
claims-claim-label = Claim of { $day }: { $cause }
claims-claim-how = { $case ->
    [less] Paid plus still set aside, less recovered, less the deductible that the loss run counts in; never below zero.
   *[as-shown] Paid plus still set aside, less recovered.
}
claims-claim-ground-up-label = Claim of { $day } with its deductible: { $cause }
claims-claim-ground-up-how = { $case ->
    [shown] Paid plus still set aside, less recovered. The loss run counts the deductible in.
    [unknown] What the claim cost the insurer. Its deductible is not on file, so nothing is added.
   *[more] What the claim cost the insurer, and the deductible. Nothing where the insurer paid nothing.
}
claims-cause = { $cause }

## Water

claims-water-lookback-title = { $n ->
    [one] One water claim in { $years } years: { $building } needs the water questionnaire
   *[other] { $n } water claims in { $years } years: { $building } needs the water questionnaire
}
claims-water-lookback-means = Water damage cost { $amount }; the latest was on { $day }. Insurers look back on water and may raise the deductible, the part you pay yourself.
claims-water-lookback-todo = Fill in the water questionnaire: what was repaired, and what now stops water early. Good answers help the price.
claims-water-lookback-reason = { $n ->
    [one] One water claim in the { $years } years before { $renewal }.
   *[other] { $n } water claims in the { $years } years before { $renewal }.
}

## The same again

claims-repeat-title = { CAPITAL($cause) } struck { $n ->
    [2] twice
   *[other] { $n } times
} in { $years } years
claims-repeat-means = It happened on { $days } and cost { $amount } in all. The next one may cost you the coverage, or bring a higher deductible (the part you pay yourself).
claims-repeat-todo = Tell us what has changed since the last one. If nothing has, ask us what would prevent it.
claims-repeat-reason = { $n } claims of one cause in { $years } years.

## Open claims

claims-stale-reserve-title = Claim { $claim } is open, and nothing has moved since { $moved }
claims-stale-reserve-means = { $outstanding } is still set aside for it ({ $cause }, { $day }). Money set aside counts as a loss when the renewal is priced.
claims-stale-reserve-todo = Ask the insurer's adjuster whether the claim can be closed or the amount reduced before the renewal.
claims-stale-reserve-reason = No movement for { $months } months or more.

## Claims beside the premium

claims-trended = Claim of { $day } at the prices of the renewal: { $cause }
claims-how-not-trended = As it was then. No index for this kind of claim is known here.
claims-experience-premium = Premium of { $years } years at today's price, as far as the days have passed
claims-experience-how-premium = The yearly premium of the terms that end now, before tax, for each year up to today. Earlier prices are not on file.
claims-experience-incurred = What claims cost the insurer in { $years } years
claims-experience-how-incurred = The sum of all claims: paid plus set aside, less recovered.
claims-experience-capped = The same, with each claim counted up to a cap
claims-experience-how-capped = The sum of all claims, each counted up to the cap. One large event should not stand for many years.
claims-experience-ratio = Claims as a share of the premium, { $years } years
claims-experience-how-ratio = Claims divided by premium. The premium is today's, the claims are at the prices of their own year.
claims-experience-capped-ratio = Claims, each up to a cap, as a share of the premium, { $years } years
claims-experience-how-capped-ratio = Capped claims divided by premium. The premium is today's, the claims are at the prices of their own year.
claims-experience-title = Claims took { $share } of what { $years ->
    [one] one year
   *[other] { $years } years
} of your premium come to
claims-experience-means = Since { $start } your premium at today's price comes to { $premium }. The insurer paid or set aside { $incurred } for { $n ->
    [one] one claim
   *[other] { $n } claims
}, large ones counted in part. An insurer that pays more than it takes raises prices or deductibles, the part you pay yourself.
claims-experience-todo = Tell us what you changed since these claims. It is the best reason for a better price.
claims-experience-reason = Claims took { $share } of the premium; the review speaks from { $most } on.

## Reported late

claims-delay-label = Days from the loss of { $day } to its report: { $cause }
claims-delay-how = The day the insurer was told, less the day of the loss.
claims-delayed = { $cause } of { $day }, reported { $days } days later
claims-reported-late-title = { $n ->
    [one] One claim was reported { $most } days after the loss
   *[other] { $n } claims were reported late, one of them after { $most } days
}
claims-reported-late-means = { CAPITAL($each) }. Terms ask you to report a loss without delay. An insurer that hears of it late can look into less, and may pay less or nothing.{ $whose ->
    [others] {" "}What others claim of you may only come to light late; then nobody was slow.
   *[own] {""}
}
claims-reported-late-todo = Report the next loss at once, also a small one, and anything that could become a claim. Agree who calls us.
claims-reported-late-reason = More than { $days } days from the loss to the report.

## The same event twice

claims-duplicate-title = Claims { $claim } and { $others } are one event
claims-duplicate-means = { CAPITAL($cause) } of { $day }, { $amount }: { $n } numbers for the same day, cause and place. It is counted once, as claim { $claim } shows it.
claims-duplicate-todo = Ask the insurer which number stands, and take the other off the loss run.
claims-duplicate-reason = Counted twice, it would make the record look worse than it is.

## Claims that cannot be so

claims-contradiction-title = { $case ->
    [closed-with-reserve] Claim { $claim } is closed, yet { $beside } is still set aside
    [negative-reserve] Claim { $claim } has less than nothing set aside: { $beside }
    [recovered-more] Claim { $claim } recovered { $beside }, more than was paid and set aside
    [reported-before] Claim { $claim } was reported on { $beside }, before it happened
    [valued-before] Claim { $claim } was valued on { $beside }, before it happened
    [in-the-future] Claim { $claim } has a date of loss that is still to come
    [before-founded] Claim { $claim } is older than the organisation, founded in { $beside }
   *[above-value] Claim { $claim } cost more than the building is valued at
}
claims-contradiction-means = { $case ->
    [above-value] { CAPITAL($cause) } of { $day } cost { $amount }; the building is worth { $beside } at the end of the coming term. The valuation may be too low, or the amount wrong.
    [before-founded] { CAPITAL($cause) } of { $day }, { $amount }. It may belong to somebody else, or the year of founding is wrong.
   *[other] { CAPITAL($cause) } of { $day }, { $amount }. The loss run contradicts itself, and the insurer prices from it.
}
claims-contradiction-todo = { $case ->
    [above-value] Check the amount with the insurer, and the value of the building.
    [before-founded] Ask the insurer whose claim it is, and the organisation when it was founded.
   *[other] Ask the insurer for a corrected loss run.
}
claims-contradiction-reason = A wrong claim makes every figure from the record wrong.
