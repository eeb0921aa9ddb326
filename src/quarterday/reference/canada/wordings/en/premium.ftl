## What a premium table says that cannot be right

premium-no-building = { $amount } is charged for { $coverage } at "{ $location }", and the file has no such building. Ask the insurer which building is meant.
premium-negative = { $amount } stands for { $coverage } ({ $location }) and no reason is given. Ask the insurer what this credit is for.
premium-taxed-exempt = The printed tax of { $tax } includes { $coverages }, which { $province } does not tax. It should be { $right }. Ask the insurer for a corrected offer.

## Who bears which part

allocation-no-keys = There is no allocation key "{ $key }": this file has none. An allocation key says who bears which part. Load one on the sheet "Allocation".
allocation-no-key = There is no allocation key "{ $key }" on this file, so nothing says who bears what. Write one of: { $known }.
allocation-left-over = The key "{ $key }" says nothing about { $coverage } ({ $location }), so nobody would bear it. Add a line for all that is left.
allocation-portion = The key "{ $key }" divides one part in several ways ({ $by }). Give each way one portion, the same on all its lines.
allocation-portions = The portions in the key "{ $key }" add up to { $whole } instead of 100%. Correct them on the sheet "Allocation".
allocation-measure = The key "{ $key }" has no measure for "{ $party }" ({ $by }), so its part is not known. Add it.
allocation-nothing = The measures in the key "{ $key }" ({ $by }) are all zero, so nothing can be divided by them. Give at least one.
allocation-no-premium = The premium adds up to nothing, so fees and tax cannot be divided by it. Check the premium table.
allocation-tax = Tax
allocation-fees = Fees
allocation-rounding = Cents of rounding
allocation-total = Total

## Paying over time

instalments-nothing = The premium is { $premium }, so there is nothing to pay over time. Check the amount.
instalments-deposit-above = The deposit of { $deposit } is more than the premium of { $premium }. Lower it, or pay at once.
instalments-after-term = The last payment of this plan falls due on { $due }, and cover ends on { $end }. Choose fewer payments or a shorter interval.
instalments-one-deposit = A plan needs one deposit. Give "deposit" in dollars or "deposit_rate" as a ratio, and not both.
instalments-no-plan = There is no plan "{ $plan }". Write one of: { $known }.
instalments-not-offered = "{ $plan }" was not offered for this renewal: no instalments come with its terms. Pay at once, or ask the insurer and add to the terms that it takes them.
instalments-not-possible = "{ $plan }" cannot be used for this renewal. { $why }
instalments-not-theirs = { $insurer } does not take "{ $plan }". { $count ->
    [0] It has no plan that we know: ask it.
    [one] Choose { $plans }, or pay at once.
   *[other] Choose one of { $plans }, or pay at once.
}
instalments-total = All payments of { $plan }
instalments-total-how = { $count } payments, the first on { $first }, the last on { $last }.
instalments-at-once = Paid at once on the first day
instalments-at-once-how = Premium, fees and tax on the first day of the term.
instalments-extra = What { $plan } cost more than paying at once
instalments-extra-how = Charges of the plan { $charge }, and { $tax } of tax because later payments bear another rate.
instalments-canada = Cost of borrowing a year ({ $plan })
instalments-canada-how = Charges { $cost } over { $years } years on an average of { $average } still owed, by the formula of Canada's cost of borrowing rules.
instalments-effective = Yearly rate of all that is paid more ({ $plan })
instalments-effective-how = The rate at which the dated payments are worth as much on the first day as paying at once.
instalments-plan-costs = { $plan } ({ $extra } more, { $rate } a year)
instalments-plan-free = { $plan } (nothing more)

## What a rate is, and when there is none

apr-no-rate = These amounts have no yearly rate: the money never changes direction, or no rate makes them equal. Check signs and amounts.
apr-several-rates = The money changes direction { $changes } times, so several rates would be right and none is the cost. Give a plan in which one side pays first and the other pays back.
apr-nothing-financed = { $financed } financed until later is nothing that bears a rate. Give an amount above zero and payments after the first day.
apr-not-repaid = The payments fall short of the { $financed } financed by { $short }. Add what is missing.

## When a term changes in the middle

midterm-outside = { $day } lies outside the term from { $start } to { $end }, so nothing can be reckoned from it. Give a day of the term.
midterm-reversed = The term ends on { $end }, which is not after its start on { $start }. Correct the days.
midterm-other-term = The table is made for a term of { $table } days and this one has { $days }. Use a rule that goes by days, like pro-rata.
midterm-gap = The table as published has no row for { $day } days: its rows nearest to it are for { $before } and { $after } days. Put the insurer's own table in your reference folder.
midterm-no-rule = There is no rule "{ $rule }" for ending a term early. Write one of: { $known }.
midterm-days = { $days ->
    [one] One day of { $of_days } was in force.
   *[other] { $days } days of { $of_days } were in force.
}
midterm-leap = The term holds February 29, so it has 366 days.
midterm-kept = The insurer keeps { $share }: { $earned }. It returns { $returned }.

## Spread over the months

prepaid-year-end = "{ $value }" is not the end of a fiscal year. Write the month and the day, like 12-31.
journal-prepaid = Prepaid insurance
journal-payable = Insurance payable
journal-expense = Insurance expense
journal-bank = Bank
journal-charge = Charges for paying over time
journal-memo-opening = Premium of the term, with fees and tax
journal-memo-month = Insurance used up from { $month } to { $end }
journal-memo-payment = Insurance payment { $n } of { $count }
journal-date = date
journal-account = account
journal-fund = fund
journal-debit = debit
journal-credit = credit
journal-memo = memo

## Calculations on their own

calc-table = { $rows } rows and { $columns } columns in units of { $unit }. Every cell, row, column and the total is the unit just below or above its exact value.
calc-split = The premium moves from { $before } to { $after }: { $change }. The effects add up to it.
calc-instalments-once = Paid at once it is { $at_once }, by this plan { $total }: { $extra } more.
calc-instalments-parts = Of that, { $charge } is charges of the plan and { $tax } tax, because the rate goes by the day of payment.
calc-instalments-canada = Cost of borrowing by the Canadian formula: { $rate } a year.
calc-instalments-effective = Effective rate of all that is paid more: { $rate } a year.
calc-apr-canada = Cost { $cost } ÷ ({ $years } years × { $average } owed on average) = { $rate } a year.
calc-apr-actuarial = By unit periods (Regulation Z, appendix J): { $rate } a year.
calc-apr-effective = Effective yearly rate of these flows: { $rate }.

## The command

cli-premium-of = Premium of the terms that start on { $start } ({ $stage })
cli-premium-doubts = What to ask the insurer first
cli-premium-table = Coverage and place
cli-premium-moved = Why it moved: { $change } against last year ({ $share })
cli-premium-no-change = There is no premium of last year to compare with.
cli-premium-allocation = Who bears which part, by the key "{ $key }"
cli-premium-by-place = The same by place
cli-premium-keys = Keys on file: { $keys }. Show one with --allocate.
cli-premium-plans = Paying over time
cli-premium-plan = { $plan }: { $extra } more than at once; cost of borrowing { $canada } a year, effective { $effective }
cli-premium-prepaid = Used up month by month
cli-premium-no-premium = These terms have no premium table, so there is nothing to show. Load it first, or choose other terms with --terms.
cli-journal-written = The journal is in { $file }: { $count } lines, debits { $debit }, credits { $credit }.
premium-head-coverage = Coverage
premium-head-place = Place
premium-head-premium = Premium
premium-head-due = Due
premium-head-tax = Tax
premium-head-charge = Charge
premium-head-amount = Amount
premium-head-effect = Reason
premium-head-from = From
premium-head-days = Days
premium-head-fiscal-year = Fiscal year to

## The premium statement: who bears it, how it is paid, how it is used up

premium-statement-bears = { $party } bears the largest part: { $amount }
premium-statement-bears-lead = This divides the premium by the key "{ $key }" that you gave us. Rows and columns both add up to the cent.
premium-statement-place = Place (dollars)
premium-statement-plans = Paying over time costs at least { $extra } more
premium-statement-plans-lead = Paid at once on the first day, it is { $at_once }. Each plan shows what it costs on top. { premium-statement-plans-rates }
premium-statement-plans-rates = The legal rate counts the plan's charge; the true yearly rate counts all you pay more.
premium-statement-plans-elsewhere = How you can pay, and what is due on which day, is on the form “How you pay”.
premium-statement-plans-example = These plans are examples until your insurer states its own. Ask us before you count on them.
premium-statement-plan = { $plan }: { $extra } more. Legal rate { $canada }; true yearly rate { $effective }
premium-statement-due = Due
premium-statement-paid-premium = Premium and fees
premium-statement-paid-tax = Tax
premium-statement-paid-charge = Charge
premium-statement-paid = To pay
premium-statement-months = { $amount } of it belongs to the fiscal year that ends on { $year }
premium-statement-months-lead = You pay for a whole term ahead. Each month uses up its days; the rest is prepaid, something you own until then.
premium-statement-from = From
premium-statement-days = Days
premium-statement-year = Fiscal year ends
premium-statement-used = Used up (dollars)

## The payment form

payment-form-reason = Tell us how you want to pay.
payment-form-title = How do you want to pay { $total }?
payment-form-lead = Mark one way. It holds for this term only. If nothing is marked by { $by }, ask us before the first payment is due.
payment-form-ways = What each way costs
payment-form-way = Way
payment-form-first = First payment
payment-form-last = Last payment
payment-form-all = All payments
payment-form-extra = More than at once
payment-form-rate = Rate a year
payment-form-plans = Each payment of each plan, for your calendar
payment-form-question = Your way to pay
payment-form-bank = Write no account or card number on this form. If you choose withdrawals, you get the insurer's own form for that.
payment-form-cheques = If you choose cheques, date each one for its day and send all of them with this form.
payment-at-once = at once, on the first day
