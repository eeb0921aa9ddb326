## Tax on the premium

money-tax = Tax on the premium
money-tax-base = Amount the tax is laid on
money-tax-base-how = Taxed premium { $taxed }, plus taxed fees { $fees }. Premium free of tax: { $exempt }.
money-tax-rate = Tax rate on premiums ({ $province })
money-tax-how = { $base } × { $rate }, rounded once to the nearest cent, half a cent up.
money-no-tax-how = This province lays no tax on premiums that you pay ({ $premium }).
money-tax-unknown-how = No rate is known for the day this policy of { $premium } begins, so no tax is counted.
money-tax-later = Payments from { $since } bear { $rate } instead. The day of payment decides, so instalments after that day cost more tax.

## The premium table

money-premium = Premium
money-offer = The insurer's offer
money-whole-policy = Whole policy
money-table-cell = { $coverage } ({ $location })
money-table-coverage = { $coverage }, all locations
money-table-location = { $location }, all coverages
money-table-subtotal = Subtotal before fees and tax
money-table-total = Total with fees and tax
money-cell-how = Amount insured { $exposure } × { $rate }.
money-sum-how = { $count ->
    [one] One cell of the table, discounts taken off.
   *[other] The sum of { $count } cells of the table, discounts taken off.
}
money-total-how = Premium { $subtotal } + fees { $fees } + tax { $tax }.
money-printed = As printed: { $what }
money-fault = { $stated } printed for { $what } instead of { $right }

## Why the premium moved

money-before = Premium of the term that ends, with fees and tax
money-after = Premium offered for the coming term, with fees and tax
money-change = Change of the premium
money-change-how = { $after } less { $before }; the parts below add up to it to the cent.
money-line-how = This line of the premium table was { $before } and is now { $after }.
effect-exposure = Amounts insured went up or down
effect-exposure-how = Change of the amount insured × the mean of the old and the new price for each dollar.
effect-rate = The price for each dollar insured changed
effect-rate-how = Change of the price for each dollar × the mean of the old and the new amount insured. A line without such an amount counts here whole.
effect-added = Coverage added
effect-added-how = The price of what is in the offer and was not in the ending term.
effect-dropped = Coverage taken out
effect-dropped-how = The price of what was in the ending term and is not in the offer.
effect-adjustment = Surcharges and discounts
effect-adjustment-how = Change of the amounts the insurer adds or takes off for a special reason.
effect-fee = Fees
effect-fee-how = Change of the fees.
effect-tax-base = Tax, because the premium changed
effect-tax-base-how = Change of the taxed amount × the mean of the old and the new tax rate.
effect-tax-rate = Tax, because its rate changed
effect-tax-rate-how = Change of the tax rate × the mean of the old and the new taxed amount.

money-premium-moved-up-title = Your premium goes up by { $change } ({ $share })
money-premium-moved-down-title = Your premium goes down by { $change } ({ $share })
money-premium-moved-means = It moves from { $before } to { $after }, fees and tax included. The largest part, { $amount }: { $main }.
money-premium-moved-up-todo = Read the paper "What changed". Ask us about any part you did not expect before you decide.
money-premium-moved-down-todo = Read the paper "What changed". Make sure nothing you need was taken out to make it cheaper.

## A table that does not add up

money-does-not-add-up-title = { $count ->
    [one] The offered premium does not add up: { $difference } is in question ({ $what })
   *[other] The offered premium does not add up in { $count } places: up to { $difference } is in question ({ $what })
}
money-does-not-add-up-means = We added up the insurer's table again. The largest differences: { $faults }. A wrong table means a wrong bill.
money-does-not-add-up-todo = Send the insurer both figures and ask for a corrected offer before the package goes out.

## Paying by instalments

money-instalments-title = You can pay this premium in instalments: tell us which way you want
money-instalments-means = The insurer offers a plan with several payments. It may carry a charge, so compare its full cost with one payment.
money-instalments-title-costs = Paying in instalments costs at least { $extra } more, like a loan at { $rate } a year
money-instalments-means-costs = Paid at once, the premium is { $at_once }. You can also pay by { $plans }. The rate says what a loan that costs as much would bear.
money-instalments-todo = Send back the payment form by { $by }.

## Calculations on their own

calc-tax-total = Premium { $premium } + tax { $tax } = { $total }.
calc-tax-not-known = No tax rate is known for { $province } on { $day }, so the tax would be a guess. Give a later date.
calc-no-province = There is no province or territory "{ $province }". Write one of: { $known }.
calc-apportion = { $count ->
    [one] { $total } goes to one part, in units of { $unit }.
   *[other] { $total } over { $count } parts, in units of { $unit }: each share rounded down, what is left goes to the largest remainders.
}
apportion-not-whole = { $amount } is not a whole number of units of { $unit }, so no parts can sum to it. Round it first.
apportion-wrong-sum = The parts cannot be rounded to { $amount } units, because their sum is further off. Check the parts.
apportion-unit = The unit is { $unit }, and nothing can be counted in it. Give a unit above zero.
apportion-negative = A weight is below zero, so a part would be less than nothing. Give weights of zero or more.
apportion-no-weight = The weights add up to zero, so nothing says who gets what. Give at least one weight above zero.

given-unknown = "{ $key }" is not an input of this calculation. Check its spelling or leave it out.
given-missing = "{ $key }" is missing, and the calculation needs it. Add it.
given-unknown-of = "{ $key }" is not an input of this calculation. Check its spelling or leave it out. The inputs are { $known }.
given-missing-of = "{ $key }" is missing, and the calculation needs it. Add it. The inputs are { $known }.
given-date = "{ $key }" is "{ $value }", which is not a date. Write it like 2026-11-25.
given-far = "{ $key }" is "{ $value }", which is too far from today. Check the year.
given-number = "{ $key }" is "{ $value }", which is not an exact number. Write it as text, like "12345.67".
given-choice = "{ $key }" is "{ $value }", which is not one of its choices. Write one of: { $choices }.
given-wrong = "{ $key }" is "{ $value }", which has the wrong form or is empty. A list stands in [ ], an object in {"{ }"}.
given-ge = "{ $key }" is { $value }. It must be { $bound } or more.
given-gt = "{ $key }" is { $value }. It must be above { $bound }.
given-le = "{ $key }" is { $value }. It must be { $bound } or less.
given-lt = "{ $key }" is { $value }. It must be below { $bound }.
split-amount-or-rate = The line "{ $line }" needs an amount, or an exposure and a rate. Give one or the other.
