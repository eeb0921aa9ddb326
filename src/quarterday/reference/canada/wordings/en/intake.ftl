# What loading a workbook says: what cannot be read, how it was understood, what it would do.

## A file that is refused whole

intake-not-found = There is no file or folder { $name }. Check the name and where it is.
intake-empty = This file is empty: nothing was loaded. Save the workbook again and load that copy.
intake-not-a-workbook = This file is not an Excel workbook, whatever its name says: nothing was loaded. Save your table as .xlsx or as CSV.
intake-truncated = This workbook is damaged or cut short: nothing was loaded, as rows could be missing. Get the file again, or open it, save it as .xlsx, and load that copy.
intake-password = This workbook is locked with a password, so nothing in it can be read. Open it, remove the password, save it, and load that copy.
intake-macros = This workbook carries macros, which are programs that could do harm: nothing was loaded. Save it as .xlsx, which leaves the macros out.
intake-older-format = This workbook is in a format in which faulty cells cannot be told from blank ones: nothing was loaded. Save it as .xlsx and load that copy.
intake-too-large = This file is larger than { $most } MB: nothing was loaded. Split it into several workbooks, a group of accounts in each.
intake-too-large-unpacked = Unpacked, this workbook takes more than { $most } MB, as harmful files do: nothing was loaded. Split it, or copy its values into a new workbook.
intake-too-many-parts = This workbook is made of more than { $most } parts, as harmful files are: nothing was loaded. Copy its values into a new workbook.
intake-too-many-files = This folder holds more than { $most } CSV files: nothing was loaded. Keep only those that belong together.
intake-too-wide = { $part } spans more than { $most } cells, most of them blank: nothing was loaded. Delete stray cells far below or far to the right, and save.
intake-no-csv = There is no CSV file in the folder { $name }. Name a workbook, a CSV file, or a folder that holds CSV files.
intake-csv-broken = { $name } cannot be read near row { $row }: a quotation mark is not closed, or a cell is far too long. Nothing was loaded. Mend that row.
intake-csv-characters = { $name } holds characters that cannot be read: nothing was loaded, as names could be spoiled. Save it as CSV in UTF-8.
intake-profile-broken = { $name } is not a profile that can be read ({ $why }). Mend it, or leave it out to match by names.
intake-profile-sheet = { $name } says that the sheet “{ $sheet }” is “{ $unknown }”, which is no sheet of the layout. Correct the name, or leave it blank to leave the sheet out.
intake-profile-column = { $name } gives the sheet “{ $sheet }” a column “{ $unknown }”, which that sheet does not have. Correct it, or leave it blank to leave the column out.

## Where something stands

intake-where-sheet = { $sheet }
intake-where-column = { $sheet }, column “{ $column }”
intake-where-row = { $sheet }, row { $row }
intake-where-cell = { $sheet }, row { $row }, “{ $column }”
intake-fault = { $what }
intake-fault-where = { $where }: { $what }
intake-fault-remedy = { $what } { $remedy }
intake-fault-value = “{ $value }”: { $what }
intake-fault-where-value = { $where }, “{ $value }”: { $what }
intake-fault-where-remedy = { $where }: { $what } { $remedy }
intake-fault-value-remedy = “{ $value }”: { $what } { $remedy }
intake-fault-where-value-remedy = { $where }, “{ $value }”: { $what } { $remedy }

## Cells that cannot be read

intake-error-cell = The cell shows an error, so its value is lost.
intake-error-cell-remedy = Mend the formula, or type the value.
intake-uncalculated = The formula was never calculated, so there is no value to read.
intake-uncalculated-remedy = Open the workbook in a spreadsheet program, save it, and load it again.
intake-merged-number = One number stands for several rows, so whose it is cannot be told.
intake-merged-number-remedy = Undo the merged cells and give each row its own number.
intake-not-a-number = This is not a number.
intake-not-a-number-remedy = Write digits only, such as 1234.50.
intake-not-a-year-remedy = Write the year with four digits, such as 1998.
intake-not-a-count-remedy = Write a whole number in digits, such as 12.
intake-two-readings = This can be read as { $smaller } or as { $larger }, and nothing in the column tells which.
intake-two-readings-remedy = Write it without a thousands mark.
intake-other-currency = The amount is in another currency, and amounts are kept in the currency of the terms.
intake-other-currency-remedy = Write the amount in that currency, without its sign.
intake-trillion = The number is a trillion or more, which cannot be right here.
intake-trillion-remedy = Check the digits.
intake-fraction-of-cent = The amount has fractions of a cent, so a digit or a mark is likely wrong.
intake-fraction-of-cent-remedy = Write it with two decimals.
intake-not-whole = This must be a whole number.
intake-not-whole-remedy = Write it without decimals.
intake-percent-here = A percentage stands where an amount or a count belongs.
intake-percent-here-remedy = Write the amount or the count itself.
intake-date-for-number = A date stands where a number belongs.
intake-date-for-number-remedy = Format the cell as a number and type the number again.
intake-two-ratios = This can mean { $percent } % or { $ratio } %, as the column holds both kinds.
intake-two-ratios-remedy = Write every cell of the column with its % sign.
intake-not-a-date = This is not a date.
intake-not-a-date-remedy = Write year, month and day, such as 2026-03-31.
intake-two-dates = This can mean { $first } or { $second }, and nothing in the column tells which.
intake-two-dates-remedy = Write year, month and day, such as 2026-03-31.
intake-zero-date = This is the date a spreadsheet shows for zero or nothing, not a day of yours.
intake-zero-date-remedy = Type the date, or clear the cell.
intake-far-date = The year { $year } or a later one cannot be right.
intake-far-date-remedy = Check the year.
intake-not-a-month-day = This is not a day of the year.
intake-not-a-month-day-remedy = Write month and day, such as 12-31.
intake-date-for-text = The spreadsheet has turned this text into a date, and what was typed is lost.
intake-date-for-text-remedy = Format the cell as text and type it again.
intake-odd-character = The text holds a character that cannot be kept ({ $character }).
intake-odd-character-remedy = Type the text again.
intake-not-yes-no = This says neither yes nor no.
intake-not-yes-no-remedy = Write yes, no, or N/A when it is not known.
intake-not-a-choice = “{ $said }” is not one of the answers of this column.
intake-not-a-choice-remedy = Write one of: { $choices }.

## What a row must say

intake-account-missing = The row does not say which account it belongs to.
intake-account-missing-remedy = Fill in the account.
intake-required = The “{ $column }” is missing, and the row means nothing without it.
intake-required-remedy = Fill it in.
intake-must-be-known = This cannot be left as not known.
intake-must-be-known-remedy = Write its value (0 where there is none), or clear the cell to keep what is on file.
intake-greater-than = This must be more than { $bound }.
intake-greater-than-equal = This must be { $bound } or more.
intake-less-than = This must be less than { $bound }.
intake-less-than-equal = This must be { $bound } or less.
intake-string-too-long = The text has more than { $bound } characters.
intake-too-long = The list has more than { $bound } items.
intake-bound-remedy = Check the cell.
intake-ends-early = The terms end on or before the day they start.
intake-ends-early-remedy = Check both dates.
intake-not-possible = What the row says cannot be true together.
intake-not-possible-remedy = Check the row.
intake-twice = The row says again what { $sheet }, row { $row } says. It was taken once.
intake-contradicts = { $sheet }, row { $row } says “{ $there }” where this row says “{ $here }”. Both rows are about the same thing.
intake-contradicts-remedy = Keep the one that is right.

## What ids name

intake-no-account = There is no organisation with the account “{ $said }”.
intake-no-account-remedy = Add it to the sheet of organisations, or correct the account.
intake-no-account-near-remedy = Did you mean { $near }? If not, add it to the sheet of organisations.
intake-several = “{ $said }” can stand for { $ids }.
intake-several-remedy = Write it in full.
intake-read-as = “{ $said }” as { $meant }
intake-ids-read = Ids were read in the form they are kept in: { $pairs }.
intake-ids-read-more = Ids were read in the form they are kept in: { $pairs }, and { $more } more.
intake-organisation-refused = The row of the organisation { $account } was refused, so nothing of it can be kept.
intake-mend-first-remedy = Mend that row first.
intake-same-number = The organisation { $others } has the same registration number, and each organisation has its own.
intake-same-number-remedy = Check the number of both.
intake-no-building = The account has no building “{ $said }”.
intake-no-building-remedy = Add it to the sheet of buildings, or correct the id.
intake-building-refused = The row of the building “{ $said }” was refused.
intake-no-contact = The account has no contact “{ $said }”.
intake-no-contact-remedy = Add the person to the sheet of contacts.
intake-contact-refused = The row of the contact “{ $said }” was refused.
intake-no-coverage = There is no coverage (a kind of protection) called “{ $said }”.
intake-no-coverage-remedy = The command quarterday coverages lists them all.
intake-no-cause = There is no cause of loss called “{ $said }”.
intake-no-cause-remedy = The command quarterday causes lists them all.
intake-no-province = There is no province or territory called “{ $said }”.
intake-no-province-remedy = Write its two letters, such as ON or QC.
intake-did-you-mean = Did you mean one of these: { $ids }?
intake-id-and-name = { $code } ({ $name })
intake-no-terms = There are no { $stage } terms (conditions of a policy) that start on { $start }.
intake-no-terms-remedy = Add them to the sheet of terms, or correct the date and the stage.
intake-terms-held = The { $stage } terms that start on { $start } were held back, because a row that belongs to them was refused. Half a policy on file would show coverage as dropped.

## What was left out, or read in a way to know of

intake-hidden-sheet = The sheet is hidden and was left out.
intake-hidden-sheet-remedy = If it belongs to the load, show it and save.
intake-linked-cells = { $count ->
    [one] One cell takes its value from another workbook, as it was when last opened.
   *[other] { $count } cells take their values from other workbooks, as they were when last opened. This is the first.
  }
intake-linked-cells-remedy = Accept them, or paste them as values.
intake-links-unused = The workbook knows other workbooks, but no cell takes its value from them.
intake-csv-encoding = { $name } is not in UTF-8. It was read as Western European text: check the accents.
intake-total-row = The row “{ $text }” adds up others and was left out.
intake-remark-row = The row holds a remark alone and was left out: “{ $text }”.
intake-headings-again = The headings stand here again; the row was left out.
intake-merged = The merged cell was read for rows { $first } to { $last }.
intake-read = { $count ->
    [one] One cell: { $how }
   *[other] { $count } cells: { $how }
  }
intake-read-choices = These words were understood: { $pairs }.
intake-read-choice = “{ $said }” as { $choice } ({ $count })
intake-read-day-number = a bare number was read as a spreadsheet's day number.
intake-read-first-of-month = a month without a day was read as its first day.
intake-read-year-of-date = the year of a date was taken.
intake-left-alone = { $count ->
    [one] One record on file ({ $kind }) is not in the workbook. It stays as it is.
   *[other] { $count } records on file ({ $kind }) are not in the workbook. They stay as they are.
  }

## How sheets and columns were understood

intake-map-sheet = The sheet “{ $sheet }” was read as { $known_as }, with its headings in row { $row }: { $columns }.
intake-map-column = “{ $heading }” as { $column }
intake-map-column-alike = “{ $heading }” as { $column } ({ $score } % alike)
intake-sheet-left-out = The sheet is like none of the layout and was left out.
intake-sheet-left-out-by-profile = The profile leaves this sheet out.
intake-no-headings = The sheet has no row of headings that can be recognised, so none of it was read. Give its columns the names of the layout.
intake-sheet-unclear = The sheet could be { $sheets }, so none of it was read.
intake-column-missing = The sheet has no column “{ $column }”, so none of it was read.
intake-column-unclear = This heading can mean { $columns }, so the column was not read.
intake-profile-remedy = Change the name, or say in a profile what it is.
intake-column-alike = This heading was taken for “{ $column }” ({ $score } % alike).
intake-column-like = The column was left out. It may have meant { $columns }.
intake-column-left-out = The column was left out: the layout has none like it.

## What a person must accept

intake-older-terms = These terms start on { $here }, and later ones, which start on { $on_file }, are on file. The workbook may be of another year.
intake-older-valuation = This valuation is of { $here }, and a later one, of { $on_file }, is on file. The workbook may be of another year.
intake-older-record = This was valued or confirmed on { $here }, and what is on file is of { $on_file }. The workbook may be of another year.
intake-older-remedy = Check it, then accept or correct it.
intake-lines-lost = { $count ->
    [one] One line on file is not in the workbook and would be taken away: { $lines }.
   *[other] { $count } lines on file are not in the workbook and would be taken away: { $lines }.
  }
intake-not-accepted = Nothing was written: the workbook has rows that were refused, or questions. Mend it, or accept it as it is.

## What the load would do

intake-summary = { $name }: { $new } new, { $changed } changed, { $unchanged } unchanged, { $refused } refused, { $asks } to accept.
intake-new = { $account }, new: { $records }.
intake-new-rest = And { $n } more accounts, all new: { $records }.
intake-count = { $kind } ({ $count })
intake-record-name = { $kind } { $name }
intake-record-alone = { $kind }
intake-terms-name = { $stage } terms from { $start }
intake-change = { $account }, { $record }: { $field } was { $old } and becomes { $new }.
intake-line-change = { $account }, { $record }, { $line }: { $field } was { $old } and becomes { $new }.
intake-line-new = { $account }, { $record }: { $line } is added.
intake-line-gone = { $account }, { $record }: { $line } is taken away.
intake-part-line = { $part }, { $coverage }
intake-line-at = { $line } (building { $location })
intake-total-line = totals, { $of } { $where }
intake-shared-limit = { $amount } for several coverages
intake-name = Name
intake-nothing = none

## The annotated copy

intake-copy-sheet = Quarterday
intake-copy-title = What could not be loaded
intake-copy-explains = Each cell named here has a comment that says what is wrong and what to do. Mend them, delete this sheet if you like, and load the workbook again.
intake-copy-where = Sheet
intake-copy-row = Row
intake-copy-column = Column
intake-copy-value = Value
intake-copy-what = What is wrong
intake-copy-remedy = What to do
intake-copy-kind = Kind
intake-kind-refused = refused
intake-kind-asks = to accept
intake-kind-note = note

## Sheets of the layout

sheet-organisations = organisations
sheet-contacts = contacts
sheet-authorities = authorised people
sheet-operations = activities
sheet-buildings = buildings
sheet-valuations = valuations
sheet-terms = terms
line-coverages = coverage
line-premiums = premium
line-totals = total
line-options = option
sheet-coverages = coverages
sheet-premiums = premiums
sheet-totals = totals
sheet-options = options
sheet-claims = claims
sheet-allocation = allocation keys
sheet-interests = lenders and lessors
field-account = Account
