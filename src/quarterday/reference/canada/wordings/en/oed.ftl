## Open Exposure Data: what was written

oed-written = { $locations ->
    [one] 1 location
   *[other] { $locations } locations
  } of { $accounts ->
    [one] 1 account
   *[other] { $accounts } accounts
  } written to { $path }.
oed-lost = The standard has no place for this, by { $record }: { $fields }.
oed-lost-times = { $name } ({ $times })
oed-lost-valuation = earlier values, and values of what is not insured
oed-lost-coverages = These coverages are not in the files: { $coverages }.
oed-lost-records = People, activities, claims, premiums and papers are not in the files.
oed-left-out = Left out, since their numbers are too long for the standard: { $buildings }.

## Open Exposure Data: what was read

oed-not-a-number = This is not a number of zero or more. Mend it and load the file again.
oed-not-whole = This is not a whole number. Mend it and load the file again.
oed-not-a-day = This is not a day. Write it like 2026-12-01 and load the file again.
oed-no-number = The account and the location need a number. Without one we cannot tell what the row is about.
oed-not-canada = This place is not in Canada, so the row was left out. Taxes and prices are known for Canada alone.
oed-no-area = This is no province or territory. Write its two letters, like ON.
oed-not-dollars = These amounts are not in Canadian dollars, so the row was left out. Change them to CAD first.
oed-several-buildings = The row adds several buildings together, so it was left out. Give each building a row of its own.
oed-area-unit = The area must be in square feet (11) or square metres (12). Change it and load the file again.
oed-not-possible = { $why }
oed-not-read = These columns say something that is not read: { $columns }.
oed-no-organisation = We do not know account { $account }. Put its account file, with AccName and AreaCode, in the same folder.
oed-twice = Location { $location } stands here twice. Keep one row, with the terms that hold for every cause.
oed-minimum-alone = A least or highest deductible needs a deductible that is a share. Write the type as 1 or 2.
oed-deductible-type = The deductible must be an amount (0), or a share of the loss (1) or of the value (2), at most 1.
oed-term-unknown = Our terms have no way to say this, so leaving it out would change what is paid. Enter these terms by hand.
oed-some-perils = These terms hold for some causes alone, and ours hold for all that are covered. Enter these terms by hand.
oed-no-period = The row does not say when its cover starts and ends. Its limits and deductibles were left out.
oed-terms-held = The terms of account { $account } were held back, since one of their rows cannot be honoured.
