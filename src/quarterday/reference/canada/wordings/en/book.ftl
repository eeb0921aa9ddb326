# The whole book, for its manager: on the desk, on the terminal and in exports.

book = The book
book-alternative = { $title }. { $message } { $rows }.

## What the topics are called, and what their pictures show

book-work = Work by week
book-work-chart = Open steps by the week in which they are due
book-states = Where the renewals stand
book-states-chart = Renewals by state
book-values = Sums insured against building costs
book-values-chart = What buildings cost at renewal: reached by the increases, and not
book-offers = Offered, taken, declined
book-offers-chart = Options of the insurers' offers
book-cover = Coverage take-up
book-cover-chart = Organisations that need a coverage: with it, and without
book-causes = Claims by cause, and water's share
book-causes-chart = What claims cost the insurers, by cause
book-years = Claims against premium, by year of loss
book-years-chart = For every 100 of premium: what claims cost, and what is left
book-classes = Claims against premium, by kind of organisation
book-classes-chart = For every 100 of premium: what claims cost, and what is left
book-insurers = Claims against premium, by insurer
book-insurers-chart = For every 100 of premium: what claims cost, and what is left
book-provinces = Claims against premium, by province
book-provinces-chart = For every 100 of premium: what claims cost, and what is left

## What they say

book-week-late = late already
book-week-later = later
book-work-message = { $case ->
    [none] Nothing is due in the next twelve weeks, and nothing is late.
   *[some] { $late ->
        [0] No step is late.
        [one] One step is late.
       *[other] { $late } steps are late.
    } { $soon ->
        [0] None falls due
        [one] One falls due
       *[other] { $soon } fall due
    } this week and next; the week of { $week } has the most: { $most }.
}
book-states-message = { $renewals ->
    [one] One renewal:
   *[other] { $renewals } renewals:
} { $late ->
    [0] nothing is late
    [one] one has something late
   *[other] { $late } have something late
}, and { $impossible ->
    [0] everything can still be done in time.
    [one] one has a step that can no longer be done in time.
   *[other] { $impossible } have a step that can no longer be done in time.
}
book-premium-note = Premium: of the newest terms, before tax.
book-values-bar = { $case ->
    [ahead] { $gap } ahead
   *[behind] { $gap } behind
}
book-values-short = After a total loss of each building, { $short } would be lacking in all, building by building.
book-causes-none = No claim that cost anything is on record.
book-causes-message = Water caused { $share } of what { $claims ->
    [one] one claim
   *[other] { $claims } claims
} cost in { $years } years: { $water } of { $incurred }.
book-years-message = { $year } was the costliest year: { $amount } for { $n ->
    [one] one claim.
   *[other] { $n } claims.
}
book-experience-none = No premium on record to set claims against.
book-experience-message = Claims cost { $share } of the premium of { $years } years, each counted up to { $cap }.
book-experience-largest = { $name }, with the most premium: claims cost { $share } of it ({ $claims ->
    [one] one claim
   *[other] { $claims } claims
}).
book-experience-bar = { $share }, { $claims ->
    [one] one claim
   *[other] { $claims } claims
}
book-causes-note = Cost: paid and set aside, less recovered, as the insurers bear it; capped: each claim counted up to { $cap }. Share: of what all claims cost.
book-experience-note = Premium: that of the terms that end now, for each year that passed; earlier prices are seldom on file. Ratio: what claims cost the insurers, of that premium; capped: each claim counted up to { $cap }. A ratio of few claims says little.
book-offers-message = { $offered ->
    [0] The offers on file hold no options.
    [one] One option was offered: { $taken } taken, { $left } declined, { $open } not decided.
   *[other] { $offered } options were offered: { $taken } taken, { $left } declined, { $open } not decided.
} { $left ->
    [0] { "" }
   *[other] What was declined would have cost { $price } a year.
}
book-offers-bar = { $taken } taken, { $left } declined of { $offered }
book-offers-other = other questions of the agendas
book-offers-note = Of the renewals at work. Not decided: no answer yet, later, or a question to us. An answer to several options at once counts as another question.
book-cover-none = Every organisation has the coverages that it is known to need.
book-cover-message = { $hurting ->
    [0] No gap could really hurt an organisation, as the library sees it.
    [one] One gap could really hurt: { $coverage }.
   *[other] { $hurting } gaps could really hurt; most often { $coverage }: { $n } of the { $needed } who need it.
} In all, what is needed is not in the terms { $missing ->
    [one] once.
   *[other] { $missing } times.
}
book-cover-bar = { $held } of { $needed }
book-cover-note = Needed: as the library's questions and the organisation's answers say. A coverage that stands inside another one, under another name, looks as if it were missing.

## Headings of the tables

book-head-id = { $of } (code)
book-head-week = Week
book-head-when = Week from
book-head-us = Us
book-head-leaders = Leaders
book-head-insurer = Insurer
book-head-steps = Steps
book-head-state = State
book-head-renewals = Renewals
book-head-late = Late
book-head-impossible = Out of time
book-head-premium = Premium
book-head-province = Province
book-head-buildings = Buildings
book-head-behind = Behind
book-head-increases = Increases
book-head-costs = Costs
book-head-lag = Lag
book-head-gap = Gap
book-head-short = Short
book-head-cause = Cause
book-head-claims = Claims
book-head-incurred = Cost
book-head-share = Share
book-head-year = Year
book-head-class = Kind
book-head-company = Insurer
book-head-files = Files
book-head-earned = Premium
book-head-capped = Cost, capped
book-head-ratio = Ratio
book-head-capped-ratio = Ratio, capped
book-head-coverage = Coverage
book-head-offered = Offered
book-head-taken = Taken
book-head-left = Declined
book-head-later = Later
book-head-asked = Asked us
book-head-unanswered = No answer
book-head-price = Price a year
book-head-price-taken = Price taken
book-head-price-left = Price declined
book-head-needed = Needed
book-head-needed-held = With it
book-head-missing = Without
book-head-hurting = Could hurt
book-head-take-up = Take-up
book-head-held = Held in all
book-head-unknown = Need unknown

## Keys of the pictures

book-key-us = us
book-key-leaders = the leaders
book-key-insurer = the insurer
book-key-late = with something late
book-key-in-time = nothing late
book-key-grown = reached by the increases
book-key-gap = not reached
book-key-water = water
book-key-other = other causes
book-key-capped = claims, large ones capped
book-key-left-of-premium = left of the premium
book-key-taken = taken
book-key-left = declined
book-key-open = not decided
book-key-held = with it
book-key-missing = without it
book-key-hurting = without it, and it could really hurt

## The page and the command

book-title = The book as of { $day }
book-as-of = Reckoned as of { $day }; made { $at }. { $changed ->
    [0] No file was changed since.
    [one] One file was changed since.
   *[other] { $changed } files were changed since.
}
book-not-made = These figures have not been made yet. The desk's server makes them within minutes of a load; they stay until files or the day change.
book-files = { $n ->
    [one] One file
   *[other] { $n } files
}
book-no-renewal = { $n ->
    [one] One file gives no renewal date: it counts among those that gather.
   *[other] { $n } files give no renewal date: they count among those that gather.
}
book-other-currency = { $n ->
    [one] One file is not in Canadian dollars: its amounts are left out.
   *[other] { $n } files are not in Canadian dollars: their amounts are left out.
}
book-office = Office
book-broker = Owner
book-province = Province
book-first = Renews from
book-last = Renews until
book-every = all
book-topics = Topics
book-table = The table
book-none = Nothing to show.
book-nothing = No file fits this choice.
book-all = Show the whole book
book-export = Export:
book-export-of = { $topic } as { $kind }
book-export-all = Everything as a workbook
book-kind-xlsx = workbook
book-kind-csv = CSV
book-kind-parquet = Parquet
book-about-as-of = as of
book-about-made = made
book-about-currency = currency
book-asked-months = renewals { $first } to { $last }
book-no-topic = There is no topic "{ $topic }". There are: { $topics }.
book-one-table = One CSV or Parquet file holds one table: name a topic too ({ $topics }).
book-written = { $topic }: written to { $path }.
acts-no-office = There is no office "{ $office }", or you do not see its book.
right-book = see the whole book
role-at-desk-read-only-manager = manager, reading only
