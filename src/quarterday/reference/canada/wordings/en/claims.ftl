## The record

claims-incurred-label = What claims cost from { $start } to { $end }
claims-incurred-how = { $n ->
    [one] One claim: paid plus set aside, less recovered.
   *[other] The sum of { $n } claims: paid plus set aside, less recovered.
}
claims-net-label = What claims cost after deductibles, from { $start } to { $end }
claims-net-how = { $n ->
    [one] One claim less its deductible.
   *[other] The sum of { $n } claims, each less its deductible.
}
claims-water-share-label = Share of claims caused by water, from { $start } to { $end }
claims-water-share-how = Water claims, divided by all { $n } claims.
claims-water-cost-share-label = Share of claims money spent on water, from { $start } to { $end }
claims-water-cost-share-how = What water claims cost, divided by what all { $n } claims cost.
claims-claim-label = Claim of { $day }: { $cause }
claims-claim-how = Paid plus still set aside, less recovered.
claims-claim-net-label = Claim of { $day } after its deductible: { $cause }
claims-claim-net-how = What the claim cost, less its deductible; never below zero.
claims-claim-net-how-unknown = What the claim cost. Its deductible is not on file, so nothing is taken off.
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
