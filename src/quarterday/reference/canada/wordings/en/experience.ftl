experience-sentence = { $case ->
    [none] No file of the book shows a premium, so there is nothing to compare claims with.
   *[some] In { $years } policy years up to today { $files ->
        [one] one file
       *[other] { $files } files
    } had { $claims ->
        [one] one claim
       *[other] { $claims } claims
    }. They cost the insurers { $incurred }, { $ratio } of the premium of { $premium }.
}
experience-unknown = not told
experience-by-cause = By cause
experience-by-province = By province
experience-by-class = By kind of organisation
experience-by-insurer = By insurer
experience-by-year = By year of loss
experience-head-files = Files
experience-head-claims = Claims
experience-head-incurred = Cost
experience-head-premium = Premium
experience-head-ratio = Share
experience-head-capped = Capped
experience-head-loss-year = Year of loss
experience-head-latest = So far
experience-head-to-come = Still to come
experience-head-error = Give or take
experience-development = What claims grow by from one year's loss run to the next, learned from { $files ->
    [one] one file
   *[other] { $files } files
} with runs of two years in a row. "Give or take" is one standard error: two times in three the outcome lies that near, if claims go on growing as they did.
experience-no-development = What claims may still come to cannot be told: no file holds loss runs of two years in a row.
experience-note = Cost: paid and set aside, less recovered, as the insurers bear it. Premium: that of the terms that end now, for each year that passed; earlier prices are seldom on file. Share: cost of the premium; of a cause, of the premium of the whole book. Capped: the same with each claim counted up to { $cap }. Claims stand under today's insurer.
experience-left-out-no-premium = { $n ->
    [one] One file was left out: its terms show no premium.
   *[other] { $n } files were left out: their terms show no premium.
}
experience-left-out-other-currency = { $n ->
    [one] One file was left out: its premium is in another currency.
   *[other] { $n } files were left out: their premiums are in another currency.
}
experience-left-out-no-renewal = { $n ->
    [one] One file was left out: it gives no renewal date.
   *[other] { $n } files were left out: they give no renewal date.
}
