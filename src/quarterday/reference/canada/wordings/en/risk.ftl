## How much a record weighs

risk-weight = { $case ->
    [none] All parts are organisations like yours: your own record is not on file.
    [hardly] Nearly all of it is organisations like yours; your own record is still short.
    [almost] Nearly all of it is your own record.
   *[parts] { $own } { $own ->
        [one] part
       *[other] parts
    } your record, { $others } { $others ->
        [one] part
       *[other] parts
    } organisations like yours.
}

## Credibility on its own

risk-rows-differ = Values and weights do not have the same rows and periods. Give each value its weight, null where nothing was seen.
risk-weights-count = A group has { $values } values and { $weights } weights. Give each value its weight.
risk-weights-negative = A weight is below zero. A weight is how much was observed; use 0 for a period that was not.
risk-two-groups = { $groups ->
    [0] No group was observed. Two groups are needed to tell how far groups differ.
    [one] Only one group was observed. Two groups are needed to tell how far groups differ.
   *[other] { $groups } groups were observed.
}
risk-two-periods = No group was observed in two periods. One period alone does not show how much results vary by chance.
risk-full-wrong = Give a chance between 0 and 1, and a range and a dispersion above 0.
risk-step-structure = Variance within the groups: { $within }. Variance between them: { $between }. The collective mean is { $collective }.
risk-step-no-between = Variance within the groups: { $within }. The variance between them comes out at { $between }, so they differ no more than chance alone makes them. No record gets any weight: the collective mean { $collective } stands for all.
risk-step-group = { $group }: { $own } of its own with weight { $z }, the rest from the collective: { $estimate }.
risk-step-group-unseen = { $group } was not observed: the collective mean { $estimate } stands, with weight { $z } on its own record.
risk-step-poisson = { $claims ->
    [0] No claim
    [one] One claim
   *[other] { $claims } claims
} in { $years } years of record, beside { $prior } a year expected before: { $mean } claims a year now.
risk-step-full = With { $full } claims a record is within { $within } of its mean { $chance } of the time.

## Limited means on their own

risk-distribution-needs = The distribution { $distribution } takes { $names }, all of them and nothing else.
risk-no-mean = With a shape of { $shape } losses have no mean. Give a shape above 1, or the largest loss there can be.
risk-step-mean = An average loss is { $mean }.
risk-step-limited = If no more than { $most } of each loss counts, the average is { $limited }.
risk-step-paid = Of an average loss { $paid } is paid and { $kept } is kept.

## How often and how large

risk-default-rate = { CAPITAL($cause) }: claims a year of an average organisation
risk-default-size = { CAPITAL($cause) }: what one claim costs on average
risk-book-rate = { CAPITAL($cause) }: claims a year of an organisation like yours
risk-how-book-rate = Learned from { $organisations } organisations with { $claims } claims in { $years } years together.
risk-book-size = { CAPITAL($cause) }: what one claim costs organisations like yours
risk-how-book-size = The average of { $claims } claims of organisations we look after.
risk-rate = { CAPITAL($cause) }: claims a year to expect of you
risk-how-rate = { $claims ->
    [0] No claim of yours
    [one] One claim of yours
   *[other] { $claims } claims of yours
} in { $years } years on file, beside what is known of others. { $weight }
risk-size = { CAPITAL($cause) }: average size of a loss to expect
risk-how-size = { $law ->
    [liability] The average of others, with your own claims of this cause weighed in. A few claims by others are very large (a Pareto distribution).
   *[damage] The average of others, with your own claims of this cause weighed in. Most losses are small and a few are very large (a lognormal distribution). None is larger than what stands there.
}
risk-caution-illustrative = This rests in part on examples that nobody publishes. Your broker can set others.
risk-caution-model = This is a model, not a forecast. A range shown holds only the chance in the simulation; it does not hold the error of the model itself.

## An average year and bad years

risk-no-terms = File { $file } holds no policy terms, so nobody can say what they would pay. Load the terms, then ask again.
risk-alternative = { $case ->
    [expiring] The terms that end now, once more
   *[offered] The offer as it stands
}
risk-amounts = { $case ->
    [limit] { $limit }
    [deductible] deductible { $deductible }
    [limit-deductible] { $limit }, deductible { $deductible }
   *[other] no amount named
}
risk-option = { $coverage }: { $amounts }
risk-mean = What losses cost you in an average year: { $alternative }
risk-how-mean = { $case ->
    [sampled] Each cause: how often, times what stays with you of a loss. What yearly maximums change is taken from { $years } simulated years.
   *[closed] Each cause: how often, times what stays with you of a loss. No simulation goes into it.
}
risk-mean-cause = { CAPITAL($cause) }, in an average year: { $alternative }
risk-how-cause = How often, times what stays with you of a loss under these terms.
risk-bad = What losses cost you in a 1-in-{ $one_in } year: { $alternative }
risk-how-bad = One year in { $one_in } costs this or more, in { $years } simulated years. Chance alone puts it between { $low } and { $high }.
risk-change = { $one_in ->
    [0] What changes for you in an average year: { $alternative }
   *[other] What changes for you in a 1-in-{ $one_in } year: { $alternative }
}
risk-how-change = { $case ->
    [closed] Beside the offer as it stands. No simulation goes into it.
    [unclear] Beside the offer as it stands, over the same simulated years. Chance alone puts it between { $low } and { $high }, so no difference is shown.
   *[clear] Beside the offer as it stands, over the same simulated years. Chance alone puts it between { $low } and { $high }.
}
risk-closure = Income lost while { $building } is closed for { $months } months after a total loss
risk-how-closure = The average over the months in which a closure may begin, less expenses that stop. Damage closes it for a part of that time, in proportion; from { $share } of what stands there, for all of it.
risk-income-counted = Lost income is counted for { $building } alone, which is closed longest. After a total loss it is about { $amount } over { $months } months; after less, in proportion.
risk-left-out-elsewhere = Renting elsewhere and moving are left out.
risk-left-out-income = Lost income is left out: the file does not say what income a building brings.
risk-left-out-income-refused = Lost income is left out. { $why }
risk-weight-told = { CAPITAL($cause) } costs you most in an average year. How often it is expected: { $weight }
risk-loss = Loss that { $coverage } is asked for once in { $one_in } years
risk-how-loss = How often each cause strikes, times the share of its losses that are larger, comes to one in { $one_in } years. No simulation goes into it.
risk-left-out-duty = Abuse and injury to volunteers are left out. Harm to people is a duty, never a sum.
risk-left-out-cause = Left out: { $cause }. { $why }
risk-left-out-terms = One alternative is left out. { $why }

## Options and deductibles

risk-title = What losses could cost you in the year from { $renewal }, beside the premium
risk-options-lead = What each option would change beside the offer as it stands
risk-head-terms = Terms
risk-head-option = Option
risk-head-state = State
risk-head-price = Price a year
risk-head-average = Average year
risk-head-ten = 1-in-10 year
risk-head-hundred = 1-in-100 year
risk-state = { $state ->
    [taken] taken
    [left] left
   *[open] open
}
risk-same = the same
risk-less = { $amount } less
risk-more = { $amount } more
risk-why-not = { $case ->
    [duty] Harm to people is weighed by duty, not by money.
    [refused] The terms with this option contradict themselves.
    [as-now] It names only what the terms give already. Ask us what it changes.
    [no-amount] The offer names no amount. Ask us.
   *[not-modelled] There are no figures yet on what this answers.
}
risk-option-told = { $case ->
    [less-less] With it you would bear about { $average } less in an average year, and about { $bad } less in a 1-in-100 year.
    [less-same] With it you would bear about { $average } less in an average year. In a 1-in-100 year no difference can be told.
    [same-less] With it you would bear about { $bad } less in a 1-in-100 year. In an average year that hardly shows.
    [less-more] With it you would bear about { $average } less in an average year, but about { $bad } more in a 1-in-100 year.
    [more-less] With it you would bear about { $average } more in an average year, but about { $bad } less in a 1-in-100 year.
    [more-more] With it you would bear about { $average } more in an average year, and about { $bad } more in a 1-in-100 year.
    [more-same] With it you would bear about { $average } more in an average year. In a 1-in-100 year no difference can be told.
    [same-more] With it you would bear about { $bad } more in a 1-in-100 year. In an average year that hardly shows.
   *[same-same] Neither in an average year nor in a 1-in-100 year can a difference be told.
}
risk-not-measured = { $option }. { $why }
risk-losses = Losses a year on which this choice makes a difference
risk-how-losses = How often each cause strikes, times the share of its losses that are large enough.
risk-break-even = Losses a year at which both ways cost the same
risk-per-loss = The most that this choice changes of one loss
risk-how-per-loss = What stays with you of a loss under either deductible, tried on every size; the largest gap.
risk-how-break-even = { $years ->
    [0] The difference in premium, divided by the most that this choice changes of one loss.
    [one] The difference in premium, divided by the most that this choice changes of one loss: one such loss every year.
   *[other] The difference in premium, divided by the most that this choice changes of one loss: one such loss every { $years } years.
}
risk-deductible-title = Another deductible (the part of a loss you pay yourself): { $name }
risk-deductible-premium = { $case ->
    [costs] The premium rises by { $amount } a year.
    [saves] The premium falls by { $amount } a year.
    [ask-saves] Ask us for the price. Up to { $amount } a year it pays for itself.
    [ask-keeps] Ask us for the price. It pays only if the premium falls by more than { $amount } a year.
   *[free] The premium stays the same.
}
risk-deductible-kept = { $case ->
    [less] In an average year you would pay { $amount } less of your losses yourself.
    [more] In an average year you would pay { $amount } more of your losses yourself.
   *[same] In an average year you would pay as much of your losses yourself as now.
}
risk-deductible-bad = { $case ->
    [less] In a 1-in-100 year it would be { $amount } less.
    [more] In a 1-in-100 year it would be { $amount } more.
   *[same] In a 1-in-100 year no difference can be told.
}
risk-deductible-break-even = It changes up to { $per_loss } of one loss. Both ways cost the same with such a loss { $even }. We expect a loss that it touches { $expected }. { $case ->
    [rare] An average says little about so rare a loss. Ask yourselves whether you could pay that amount at once.
    [dearer] Over many years, that speaks for the smaller deductible and its premium.
   *[cheaper] Over many years, that speaks for the larger deductible, if you could pay it.
}
risk-every = { $case ->
    [rare] less than once in { $n } years
    [often] { $n ->
        [one] once a year
       *[other] { $n } times a year
    }
   *[years] { $n ->
        [one] once a year
       *[other] once in { $n } years
    }
}

## On the screen

cli-risk-learning = Learning from the book
cli-risk-why = To see what a figure was made from: quarterday risk { $file } --why { $figure }
