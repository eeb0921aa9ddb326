yes = yes
no = no
unknown = not known
everywhere = everywhere
illustrative = illustrative
listing-more = { $n } more

## Counted units

unit-days = { $n ->
    [one] { $n } day
   *[other] { $n } days
}
unit-months = { $n ->
    [one] { $n } month
   *[other] { $n } months
}
unit-years = { $n ->
    [one] { $n } year
   *[other] { $n } years
}
unit-m2 = { $n } m²

## Where something comes from

source = { $title }, { $publisher }{ $place }
source-checked = { $source }; checked { $day }
in-force-since = In force since { $day }. Source: { $source }.
origin-workbook = From the workbook{ $name }{ $who }, { $day }
origin-csv = From the CSV files{ $name }{ $who }, { $day }
origin-form = From the returned form{ $name }{ $who }, { $day }
origin-person = Entered by hand{ $name }{ $who }, { $day }
origin-room = Answered in the leaders' room{ $name }{ $who }, { $day }
origin-office = Recorded by the office{ $name }{ $who }, { $day }
origin-row = sheet { $sheet }, row { $row }
origin-rows = sheet { $sheet }, rows { $row } to { $last }
origin-field = field { $field }

## Cautions

caution-illustrative = Nobody publishes this figure. It is an example to start from; your broker can set another.
caution-wording-governs = This explains your policy in short. Where they differ, the policy's own wording governs.
caution-estimate = A value is an estimate until a qualified appraiser confirms it.
caution-reviewed = { $reviewer }, licensed broker ({ $licence }), reviewed this on { $day }.
caution-local-rules = Local by-laws and fire officials decide what safety requires. Ask them before you act.
caution-at-risk = Is a child or vulnerable person at risk? Call emergency services and child protection first, then us.
caution-advice = For legal or tax questions, ask a lawyer or an accountant.

## Months

month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
named-value = { $label }: { $value }
said-then = { $first } { $then }
