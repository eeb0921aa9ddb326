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

risk-weights-count = A group has { $values } values and { $weights } weights. Give each value its weight.
risk-weights-negative = A weight is below zero. A weight is how much was observed; use 0 for a period that was not.
risk-two-groups = { $groups ->
    [0] No group was observed. Two groups are needed to tell how far groups differ.
    [one] Only one group was observed. Two groups are needed to tell how far groups differ.
   *[other] { $groups } groups were observed.
}
risk-two-periods = No group was observed in two periods. One period alone does not show how much results vary by chance.
risk-no-weights = The model buhlmann weighs all periods the same. Leave the weights out, or ask for buhlmann-straub.
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
