## Places a construction index is measured in

index-composite = fifteen Canadian cities together
index-ab = Alberta
index-bc = British Columbia
index-calgary = Calgary
index-edmonton = Edmonton
index-halifax = Halifax
index-mb = Manitoba, measured in Winnipeg
index-montreal = Montréal
index-nb = New Brunswick
index-nl = Newfoundland and Labrador
index-ns = Nova Scotia, measured in Halifax
index-on = Ontario
index-ottawa-on = Ottawa–Gatineau, Ontario part
index-qc = Quebec
index-sk = Saskatchewan
index-toronto = Toronto
index-vancouver = Vancouver
index-winnipeg = Winnipeg
index-given = the points given

## Index levels

values-quarter = Q{ $number } { $year }
values-index-point = Construction index, { $place }, { $quarter }
values-index-level = Construction index, { $place }, on { $day }
values-how-level-1 = The published figure for { $first }.
values-how-level-2 = Between the published figures for { $first } and { $last }; each stands for the middle of its quarter.
values-how-projected = The published figure for { $last }, carried forward at { $rate } a year.
values-caution-projected-index = Projected: the published index ends with { $last }. After it, costs are assumed to rise { $rate } a year.
values-caution-composite-index = This place has no construction index. The figure uses the one for fifteen Canadian cities together.
values-caution-projected-composite-index = This place has no construction index, so the one for fifteen Canadian cities is used. Projected: it ends with { $last }; after it, costs are assumed to rise { $rate } a year.

## What a building costs

values-cost-at-valuation = Cost to rebuild { $building }, as valued on { $day }
values-cost-at-renewal = Cost to rebuild { $building } on the renewal day, { $day }
values-cost-at-term-end = Cost to rebuild { $building } on the last day of the coming term, { $day }
values-cost-rebuilt = Cost of { $building } if it burns down at the end of the coming term and is rebuilt (prices of { $day })
values-how-valuation = The amount of the valuation ({ $basis }): { $amount }.
values-how-valuation-fees = The amount of the valuation ({ $basis }), { $amount }, and { $fees } for architects and engineers, which it leaves out.
values-how-indexed = { $base } on { $start }, times the construction index on { $day }, divided by the index on { $start }.
values-caution-fees-unknown = Nobody noted whether the valuation includes architects and engineers. Nothing was added for them.
values-not-indexed-none = Nobody has valued this building, so its cost cannot be compared with the sum insured.
values-not-indexed-old = The valuation of { $day } is older than the construction index. Its cost today cannot be worked out.
values-not-indexed-horizon = The newest construction index ends with { $last }. That is too long ago to say what this building costs. Load a newer release.

## What is insured

values-sum-insured = Sum insured, { $building }
values-how-sum-insured = The limit for the building in the terms that start on { $start }.
values-available = Most the policy pays for { $building }
values-how-blanket = The building shares one amount, { $whole }, with others (a blanket limit). All of it may go to this building.
values-how-blanket-margin = The building shares { $whole } with others (a blanket limit). A margin clause pays at most { $margin } of the building's own amount.
values-shortfall = What { $building } would be short after a total loss
values-how-shortfall = { $cost } to rebuild, less { $available } that the policy pays at most.
values-price-of-raising = Added premium a year to close the gap at { $building }, before tax
values-how-price = { $gap } times the building's own rate, { $rate } of the amount insured.

## Automatic increases

values-increases-applied = Automatic increases since the valuation, { $building }
values-how-increases = { $times ->
    [one] The increase of one renewal.
   *[other] The increases of { $times } renewals, one on top of the other.
}
values-how-increases-assumed = { $times ->
    [one] The increase of one renewal.
   *[other] The increases of { $times } renewals, one on top of the other.
} { $assumed ->
    [one] For one of them the terms are not on file. It is assumed to be like the nearest one known.
   *[other] For { $assumed } of them the terms are not on file. They are assumed to be like the nearest one known.
}
values-index-change = Rise of building costs since the valuation, { $building }
values-how-index-change = The construction index on { $day }, divided by the index on { $start }.
values-increases-behind = How far automatic increases stayed behind building costs, { $building }
values-how-behind = One, less the grown amount divided by the grown cost.
values-increases-gap = The same in money, { $building }
values-how-gap = The valuation times the difference between the two rises.

## Coinsurance

values-required = Least amount that { $building } must be insured for
values-carried = Amount insured, { $building }
values-how-carried = The limit for the building.
values-how-carried-blanket = The one amount that all buildings and contents under it share.
values-share = Share of a loss that the policy pays, { $building }
values-how-share = The amount insured, divided by the amount that must be insured; never more than 100%.
values-margin = How much building costs may still rise before a penalty starts, { $building }
values-how-margin = The amount insured, divided by the amount that must be insured, less one. Below zero: a penalty applies now.
values-how-margin-none = Nothing must be insured, so no penalty can start.
values-penalty = What the coinsurance clause takes from a loss of { $percent } of { $building }
values-how-penalty = A loss of { $loss } settled without the clause, less the same loss settled at { $share }. The share is assumed to come before the deductible; your policy's wording decides.
values-penalty-chance = Chance that a penalty applies, { $building }
values-how-penalty-chance = The true cost lies around the estimate, as likely above as below, with a standard error of { $error }. This is the chance that it lies above what the amount insured is enough for.
values-penalty-expected = Mean share of a partial loss that the clause takes, { $building }
values-how-penalty-expected = The mean over all true costs the valuation allows, with a standard error of { $error }.
values-safe-amount = Amount that keeps { $building } clear of the clause, { $certainty } certain
values-how-safe-amount = The least amount the clause asks for, raised until the true cost is { $certainty } certain to be covered. The estimate may be off by { $error } (standard error).
values-price-of-safe = Added premium a year for that amount at { $building }, before tax
values-page-safe = Insured for { $amount }, you could be { $certainty } sure of meeting the clause. That adds about { $price } a year before tax.
values-page-safe-unpriced = Insured for { $amount }, you could be { $certainty } sure of meeting the clause. We will ask the insurer for the price.

## Steps of a loss

values-step-no-clause = No coinsurance clause applies.
values-step-agreed = An agreed value holds until { $until }, so no coinsurance clause applies.
values-step-waived = The loss is at most { $amount }, and the clause leaves losses that small alone.
values-step-stated = The amount that must be insured is stated in the policy: { $required }.
values-step-required = { $value } × { $percent } = { $required } must be insured.
values-step-share = { $carried } is insured of { $required } required: the policy pays { $share } of the loss.
values-step-full-share = { $carried } is insured of { $required } required: enough, so there is no penalty.
values-step-reduced = { $before } × { $share } = { $after }
values-step-deductible = { $before } less the deductible of { $deductible } = { $after }
values-step-limit-reached = The limit of { $limit } is reached.
values-step-limit-enough = The limit of { $limit } is not reached.
values-step-paid = The policy pays { $paid }; the organisation bears { $borne }.
values-step-index = { CAPITAL($place) }: { $first } on { $start }, { $second } on { $day }.
values-step-factor = { $second } ÷ { $first } = { $factor }
values-step-indexed = { $value } × { $factor } = { $result }

## Sums insured too low

values-below-replacement-title = { $building } would be about { $about } short after a total loss
values-below-replacement-means = The sum insured is the most the policy pays: { $available }. Rebuilding would cost about { $cost } at the prices of { $rebuilt_on }. You would have to find the difference, { $share } of the cost.
values-below-replacement-todo = Decide whether to raise the sum insured by { $gap }. At the building's present rate that adds about { $price } a year before tax.
values-below-replacement-todo-unpriced = Decide whether to raise the sum insured by { $gap }. We will ask the insurer what that costs.
values-below-replacement-todo-unsure = Decide whether to raise the sum insured by { $gap } now, for about { $price } a year before tax. Have the building valued afresh too: the valuation behind this figure is weak.
values-below-replacement-todo-unsure-unpriced = Decide whether to raise the sum insured by { $gap } now; we will ask the insurer for the price. Have the building valued afresh too: the valuation behind this figure is weak.
values-below-replacement-todo-joined = This building is part of the question about all buildings on the agenda.
values-below-replacement-todo-know = The gap is small. Bear it in mind when the sum insured is next set.
values-below-replacement-reason = A total loss would leave { $gap } to find.
values-below-replacement-together-title = { $n } buildings are insured for less than they cost to rebuild
values-below-replacement-together-means = They are { $buildings }. The largest gap is at { $building }: a total loss would leave you { $gap } short. The page of each building shows its own.
values-below-replacement-together-todo = Decide whether to raise all of them to what they cost. At their present rates that adds about { $price } a year before tax.
values-below-replacement-together-todo-unpriced = Decide whether to raise all of them to what they cost. We will ask the insurer for the price.
values-below-replacement-together-todo-unsure = Decide whether to raise all of them to what they cost. At their present rates that adds about { $price } a year before tax. Have these valued afresh, as their figures are weak: { $doubtful }.
values-below-replacement-together-todo-unpriced-unsure = Decide whether to raise all of them to what they cost; we will ask the insurer for the price. Have these valued afresh, as their figures are weak: { $doubtful }.
values-below-replacement-together-reason = The largest gap is { $gap }, at { $building }.

## Coinsurance clause

values-coinsurance-title-penalised = Claims at { $building } would be paid at only { $share }
values-coinsurance-title-likely = There is a { $chance } chance that a claim at { $building } would be cut
values-coinsurance-title-unlikely = A signed statement of values would free { $building } from its coinsurance clause
values-coinsurance-title-unknown = We cannot tell whether claims at { $building } would be paid in full
values-coinsurance-means = Coinsurance is a clause that cuts every claim, even a small one, when too little is insured. Yours asks for { $required } of the true cost. The sum insured is { $sum_insured }.
values-coinsurance-todo = Fill in and sign the statement of values. With it we ask the insurer for an agreed value, which switches the clause off.
values-coinsurance-todo-know = Raising the sum insured, as asked on the agenda, ends this too. Sign the statement of values as well.
values-coinsurance-reason-penalised = A loss of { $loss } would be paid { $penalty } short.
values-coinsurance-reason-likely = The estimate leaves a { $chance } chance of a penalty.
values-coinsurance-reason-unlikely = The amount is enough today; costs may still rise past it.
values-coinsurance-reason-unknown = Without a valuation nobody knows how much must be insured.

values-agreed-value-lapsing-title = The agreed value of { $building } ends on { $until }
values-agreed-value-lapsing-means = Until then the insurer accepts the amount as enough. After that day a coinsurance clause cuts every claim when less than { $required } of the true cost is insured.
values-agreed-value-lapsing-means-no-clause = Until then the insurer accepts the amount as enough. After that day it may question the amount when you claim.
values-agreed-value-lapsing-todo = Sign the statement of values before { $until }, so that the insurer can agree to a value again.
values-agreed-value-lapsing-reason = The agreement ends on { $until }.

## Automatic increases behind the index

values-index-too-low-title = Automatic increases at { $building } lag building costs by { $behind }
values-index-too-low-means = Since { $since } automatic increases raised the sum insured by { $applied }. Building costs ({ $place }) rose by { $index }. The gap is about { $gap } at the renewal.
values-index-too-low-todo = Do not count on the yearly increase alone. Compare the sum insured with the cost each year, and have the building valued regularly.
values-index-too-low-reason = The increases are { $gap } behind building costs.

## Valuations

values-valuation-stale-title-none = Nobody has valued { $building }
values-valuation-stale-title-indexed = { $building } was never valued, only carried forward
values-valuation-stale-title-unknown = Nobody knows where the value of { $building } comes from
values-valuation-stale-title-old = The valuation of { $building } is from { $day }
values-valuation-stale-means = { $amount } is insured. Without a sound valuation, made within { $years } years, nobody knows whether that rebuilds it.
values-valuation-stale-todo = Choose one. A desk valuation is made from plans and photos, costs less and takes 30 to 45 days. A formal appraisal is made on site and is the sounder one.
values-valuation-stale-todo-know = Have it valued when the sum insured is set. A desk valuation takes 30 to 45 days; a formal appraisal on site is sounder. Several buildings can share one visit.
values-valuation-stale-todo-unknown = Tell us who valued the building, when, and how. If nobody knows, ask us for a valuation.
values-valuation-stale-reason-none = There is no valuation on file.
values-valuation-stale-reason-indexed = Only values carried forward by an index are on file.
values-valuation-stale-reason-unknown = The basis of the valuation is not known.
values-valuation-stale-reason-old = On the renewal day the valuation will be more than { $years } years old.

values-heritage = the heritage building itself
values-special-features-title = { $building } has { $n ->
    [one] a feature
   *[other] { $n } features
} that nobody has valued
values-special-features-means = Not valued on its own: { $features }. Cost guides do not know craft like this, so the building's value may leave most of it out.
values-special-features-todo = List each one on the statement of values, with photos and its maker if known. A formal appraisal is the sure way.
values-special-features-reason = Not valued: { $features }.

values-contents-unlisted-title = The contents of { $building } were never listed
values-contents-unlisted-title-everywhere = Your contents were never listed
values-contents-unlisted-means = { $amount } of contents is insured. After a fire or a theft you must show what you had, and the list is the proof.
values-contents-unlisted-todo = Walk through with a phone and film each room. Then list the dearest things on the statement of values.
values-contents-unlisted-reason = No itemised list is on file.

values-contents-worksheet = Contents of { $building } by the worksheet
values-how-contents-lines = { $n ->
    [one] One category: { $categories }.
   *[other] { $n } categories added up: { $categories }.
}
values-how-contents-whole = The valuation of all contents of { $day }.
values-contents-too-low-title = The contents of { $building } are insured for about { $about } too little
values-contents-too-low-means = What stands in it would cost { $listed } to buy new. The policy pays at most { $limit } for contents. You would have to find the difference, { $share } of the cost.
values-contents-too-low-todo = Decide whether to raise the contents by { $gap }. At their present rate that adds about { $price } a year before tax.
values-contents-too-low-todo-unpriced = Decide whether to raise the contents by { $gap }. We will ask the insurer for the price.
values-contents-too-low-todo-know = The gap is small. Think of it when the amount is next set.
values-contents-too-low-reason = A total loss would leave { $gap } of contents to find.

## Facts of a building

values-sum-insured-field = Sum insured
values-incomplete-building-title = { $n ->
    [one] One fact about { $building } is missing
   *[other] { $n } facts about { $building } are missing
}
values-incomplete-building-means = Insurers assume the worst about what they are not told, or decline. Missing: { $missing }.
values-incomplete-building-todo = Fill in the missing facts on the statement of values and send it back.
values-incomplete-building-reason = Missing: { $missing }.

values-mismatch-area-m2 = floor area { $ours } m² on file, { $theirs } m² in the valuation
values-mismatch-storeys = { $ours } storeys on file, { $theirs } in the valuation
values-mismatch-year-built = built in { $ours } on file, in { $theirs } in the valuation
values-area-mismatch-title = Two sources disagree about { $building }
values-area-mismatch-means = { CAPITAL($items) }. If the valuation measured another building, its amount is wrong too.
values-area-mismatch-todo = Ask the organisation which is right and correct the file. If the valuation is wrong, have it redone.
values-area-mismatch-reason = { CAPITAL($items) }.

values-brought-forward = Earlier valuation of { $building } at the prices of { $day }
values-valuations-disagree-title = Two valuations of { $building } are { $apart } apart
values-valuations-disagree-means = The one of { $older } says { $was }, which is { $brought } at the prices of { $newer }. The one of that day says { $amount }. Both cannot be right.
values-valuations-disagree-todo = Ask both valuers what they counted: fees, by-laws, the same floors. Keep the sounder one and note why.
values-valuations-disagree-reason = Two valuations are { $apart } apart at the same prices.

values-value-per-m2 = Value of { $building } by square metre
values-how-per-m2 = The amount of the valuation, divided by the floor area.
values-implausible-value-title = { $building } is valued at { $each } a square metre: check it
values-implausible-value-means = The valuation of { $day } says { $amount } for { $area } m². Buildings mostly cost { $least } to { $most } a square metre. A digit too many or square feet for metres would do this.
values-implausible-value-todo = Compare the amount and the area with the valuation itself and correct the file. If both are right, set this aside with the reason.
values-implausible-value-reason = { $each } a square metre lies outside { $least } to { $most }.

## On its own

values-calc-one-of = Give either "geography" or "points": the index must come from one of them.
values-calc-no-geography = There is no construction index for "{ $geography }". Use one of: { $known }.
values-calc-quarter = "{ $quarter }" is not a quarter. Write it like 2025Q4.
values-calc-before = The index begins with { $first } and says nothing about { $day }. Give a later day.
values-calc-no-rate = The index ends with { $last } and does not reach { $day }. Give "projected_rate", such as "0.03" for 3% a year.
values-calc-horizon = The index ends with { $last }. { $day } lies more than { $years } years after it, too far to project. Give a day up to { $end }.
