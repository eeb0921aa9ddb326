## Kinds of income

income-kind-donations = donations
income-kind-rents = rents
income-kind-tuition = fees and tuition
income-kind-events = events
income-kind-other = other income
income-share-of-month = Share of a year's { $kind } that comes in { $month }
income-month = { $month } { $year }
income-subject = Loss of income

## The worksheet

income-need = Income lost in the worst closure
income-how-need = { $months ->
    [one] One month
   *[other] { $months } months
} without the building, from { $start }: the start in the coming term that would cost most.
income-lost-in = Income lost in { $month } { $year }
income-how-month = Income of the month, { $income }, less { $kept } that would still come in, less { $saved } of expenses that would stop.
income-caution-both = We assume that all your income needs the building, and that no expense stops. Your answers on the operations form make this exact.
income-caution-expenses = We assume that no expense stops while the building is closed. Your answers on the operations form make this exact.
income-caution-share = We assume that all your income needs the building. Your answer on the operations form makes this exact.
income-caution-season = How income falls on the months is a general pattern. Your own books know better.
income-limit = Most the policy pays for lost income
income-how-limit = The limit for loss of income in the terms that start on { $start }.
income-short = Lost income that the policy would not pay
income-how-short = { $need } needed, less { $pays } paid.
income-exposure = A year's income, as the coinsurance clause counts it
income-how-exposure = The year's income that needs the premises, { $years ->
    [0] as told
    [one] grown by one year
   *[other] grown by { $years } years
}{ $counts ->
    [whole] . Expenses that would stop are not taken off
    [less] , less the expenses that would stop
   *[part] , less a part of the expenses that would stop
}.
income-caution-clause = The terms do not say whether the clause counts expenses that would stop. Wordings of gross earnings do, those of profits do not. Ask the insurer which yours is.
income-required = Least amount that the income must be insured for
income-how-required = { $exposure } times { $percent }, which the coinsurance clause asks for.
income-coinsured-share = Share of lost income that the policy pays
income-paid = What the policy would pay for lost income
income-how-paid = { $need } times { $share }, but never more than { $limit }.
income-extra = Cost of living elsewhere until the building is back
income-how-extra = { $months ->
    [one] One month's rent
   *[other] The rent of { $months } months
} and the move.
income-extra-limit = Most the policy pays for living elsewhere
income-how-extra-limit = The limits for extra expense and for other premises together.
income-extra-short = Cost of living elsewhere that the policy would not pay

## Income cover that ends too soon

income-too-low-title = After a fire, your income cover would be about { $about } short
income-too-low-means = A fire could close { $building } for about { $months ->
    [one] one month
   *[other] { $months } months
}. In the worst case, from { $start }, you would lose { $need } of income. The policy pays at most { $limit }. { $lasts ->
    [0] That would not last the first month.
    [one] That lasts one month.
   *[other] That lasts { $lasts } months.
}
income-too-low-means-clause = A fire could close { $building } for about { $months ->
    [one] one month
   *[other] { $months } months
}. In the worst case, from { $start }, you would lose { $need } of income. The policy pays at most { $limit }. A coinsurance clause also cuts each claim to { $share }, because too little income is insured.
income-too-low-todo-decide = Decide whether to raise the limit to { $need }. That adds about { $price } a year before tax. Tell us on the operations form which bills would stop and what income would go on.
income-too-low-todo-decide-unpriced = Decide whether to raise the limit to { $need }; we will ask the insurer for the price. Tell us on the operations form which bills would stop and what income would go on.
income-too-low-todo-send-back = Tell us on the operations form which income needs the building and which bills would stop. Then we can tell what limit is right.
income-too-low-todo-know = The gap is small. Think of it when the limit is next set.
income-offer-price = { $case ->
    [ask] at a price still to be asked
   *[priced] for { $price } a year
}
income-too-low-offer-title = After a fire, your income cover would be about { $about } short; the insurer offers { $offered }
income-too-low-offer = The insurer offers a limit of { $offered } { $for_price }. { $pays ->
    [all] That lasts until the building is back.
    [cut] The coinsurance clause would still cut each claim: it asks for { $required }.
   *[part] That would last { $then_lasts ->
        [one] one month
       *[other] { $then_lasts } months
    }.
}
income-too-low-offer-todo = { $reach ->
    [all] Decide: take the insurer's option, or leave the limit as it is.
   *[part] Decide: take the insurer's option, have us ask for { $need }, or leave the limit as it is.
} Tell us on the operations form which bills would stop and what income would go on.
income-too-low-reason = A long closure would leave { $short } of income unpaid.

income-extra-expense-low-title = Living elsewhere would cost you about { $about } more than the policy pays
income-extra-expense-low-means = Until your building is back, about { $months ->
    [one] one month
   *[other] { $months } months
}, another place and the move would cost { $need }. The policy pays at most { $limit } for that.
income-extra-expense-low-todo-send-back = Check the rent and moving costs on the operations form. Then we can tell what limit is right.
income-extra-expense-low-todo-know = The gap is small. Think of it when the limit is next set.
income-extra-expense-low-todo-decide = Decide whether to ask for a limit of { $need } for extra expense, which pays the added cost of living elsewhere. We will ask the insurer for the price.
income-extra-expense-low-offer-title = Living elsewhere would cost you about { $about } more than the policy pays; the insurer offers { $offered }
income-extra-expense-low-offer = The insurer offers a limit of { $offered } { $for_price }.
income-extra-expense-low-offer-todo = { $reach ->
    [all] Decide: take the insurer's option, or leave the limit as it is.
   *[part] Decide: take the insurer's option, have us ask for { $need }, or leave the limit as it is.
}
income-extra-expense-low-reason = A long closure would leave { $short } of added cost unpaid.

## On its own

income-calc-months = "revenue" of { $kind } has { $count } amounts. Give one for the year, or twelve from January.
income-step-exposure = { $case ->
    [none] A year's income: { $exposure }.
    [whole-income] A year's income, whole, as the clause counts it: { $exposure }.
    [less-stopping] A year's income less the expenses that stop, as the clause counts it: { $exposure }.
   *[unsaid] A year's income as a clause usually counts it, expenses that stop included: { $exposure }. Check the wording.
}
income-step-worst = Worst month to begin in: { $start }, for a closure of { $months ->
    [one] one month
   *[other] { $months } months
}.
income-step-need = { $income } of income, less { $kept } still coming in, less { $saved } saved = { $need } lost.
income-step-extra = Living elsewhere costs { $extra } over the closure.
income-step-share = { $months ->
    [one] One month
   *[other] { $months } months
} ÷ 12 = { $share }: the largest coinsurance percentage that fits such a closure.
income-step-lasts = A limit of { $limit } { $lasts ->
    [0] does not last the first month.
    [one] lasts one month.
   *[other] lasts { $lasts } months.
}
income-step-monthly = At most { $most } is paid each month: { $paid } in all.
