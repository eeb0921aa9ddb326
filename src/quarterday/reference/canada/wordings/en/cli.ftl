# What the terminal says around the results.

cli-id = id
cli-name = name
cli-file = file
cli-family = family
cli-water = water
cli-rule = rule
cli-looks-at = looks at
cli-basis = rests on
cli-province-short = in
cli-renewal = renewal
cli-offered = premium
cli-change = change
cli-findings = findings
cli-decisions = decide
cli-first = first of all
cli-premium = premium before tax
cli-state = state

cli-started = The store is ready: { $place }
cli-started-next = Next: quarterday load YOUR-WORKBOOK.xlsx --preview
cli-files = { $n ->
    [one] { $n } file.
   *[other] { $n } files.
}
cli-renews = Renews on { $day }.
cli-no-coverage = There is no coverage { $coverage } in the library; "quarterday coverages" lists them.
cli-does-not = What it does not do: { $text }
cli-board-asks = What a board should ask: { $text }
cli-answers = Causes of loss it answers: { $causes }.
cli-review-of = Review for the renewal of { $renewal }, as of { $day }.
cli-agenda = For the leaders to decide:
cli-why-hint = Where a figure comes from: quarterday why { $file } FIGURE (the word in brackets).
cli-set-aside = Set aside: { $reason }
cli-no-figure = The review has no figure { $figure }. Close to it: { $near }
cli-path-folder = { $path } is a folder, and a file is needed there. Name a file in it.
cli-path-no-folder = Part of { $path } is a file, and a folder is needed there. Name another place.
cli-path-missing = There is no { $path }. Check its spelling, or make the folder first.
cli-path-locked = { $path } may not be read or written by you. Ask who owns it, or name another place.
cli-path-failed = { $path } could not be read or written: { $why }. Free some room or name another place, then repeat.
cli-signed = { $reviewer } signed the review of { $file } as of { $day }.
cli-choose-files = Say which files: name them, or use --due FROM..TO, or --all (one of the three).
cli-reviewing = Reviewing
cli-building = Building
cli-loading = Loading
cli-built-one = Built { $path } (version { $version }).
cli-built-many = { $n ->
    [one] Built { $n } package
   *[other] Built { $n } packages
}{ $drafts ->
    [0] .
   *[other] , { $drafts } of them drafts until a licensed person signs the review.
}
cli-draft = It is a draft: a licensed person must sign the review of { $file } before it is delivered.
cli-not-json = This is not JSON: { $why }
cli-not-object = Give the inputs as one JSON object, like {"{"}"value": "250000"{"}"}.
cli-verified = { $files ->
    [one] { $files } file, { $entries } entries
   *[other] { $files } files, { $entries } entries
}: nothing was altered.
cli-verify-faults = { $n ->
    [one] { $n } fault was found.
   *[other] { $n } faults were found.
}

cli-load-nothing = Nothing was written. Look at the preview, then load without --preview.
cli-load-stopped = Nothing was written: { $n ->
    [one] { $n } row needs
   *[other] { $n } rows need
} mending. To load the good rows now, add --accept-with-errors.
cli-load-annotated = A copy with a note at each fault: { $path }
cli-load-done = { $entries ->
    [0] Nothing new: everything in it was already on file.
    [one] { $entries } entry written in { $files } file.
   *[other] { $entries } entries written in { $files } files.
}
cli-mapping = How the columns were read:

cli-demo-workbook = An invented brokerage's workbook: { $path }
cli-demo-loaded = { $files } organisations loaded, { $entries } entries, each with its sheet and row.
cli-demo-flagship = One file, reviewed as of { $day }:
cli-demo-packages = The packages are in { $path }; start with { $first }
cli-demo-rest = Next: quarterday --store { $store } list, review, why, show, history, verify.
cli-demo-not-ours = { $path } holds something that the demo did not make. Name another folder with --out.
cli-demo-fiction = Every organisation, person, street and insurer in it is invented.
cli-made-book = { $files ->
    [one] { $files } organisation
   *[other] { $files } organisations
} written to { $path }.

review-no-renewal = { $file }: no review, because the file gives neither issued terms nor a renewal date. Add one of them.
acts-not-signed = { $file }: the package was not delivered, because no licensed person has signed this version of the review. Sign it, build again, then deliver.

cli-verified-seals = { $originals ->
    [one] { $originals } original and
   *[other] { $originals } originals and
} { $seals ->
    [one] { $seals } seal hold
   *[other] { $seals } seals hold
}; { $unsealed ->
    [0] every entry is under a seal.
    [one] { $unsealed } newer entry is not sealed yet.
   *[other] { $unsealed } newer entries are not sealed yet.
}
acts-no-brokerage = { $path } is missing: it says which brokerage answers for the papers. Write one, or name another with --brokerage.

cli-loss = loss
cli-lost = lost
cli-paid = insurer pays
cli-borne = you bear
cli-borne-before = you bear before
cli-borne-after = after
cli-more-borne = more (−: less)
cli-cannot-say = cannot say
cli-no-loss = There is no loss { $loss } in the library, and no file of that name. It has { $known }.
cli-pay-hint = Step by step: quarterday pay { $file } --loss ID (the word in brackets).
cli-compare-same = No clause differs.
cli-direction-better = better
cli-direction-worse = worse
cli-direction-neutral = other
cli-direction-cannot-say = cannot say
cli-compare-past = { $n ->
    [one] Your own claim of the last ten years: you would have borne { $before } under the first terms, { $after } under the second.
   *[other] Your own { $n } claims of the last ten years: you would have borne { $before } under the first terms, { $after } under the second.
}
acts-no-terms = { $file } has no { $terms } terms for the renewal of { $day }. Load them, or name other terms.

cli-backed-up = { $path } holds the whole store ({ $megabytes } MB). Keep it as safe as the store itself: personal data and the keys are in it.
cli-backed-up-next = Try it now and then: "quarterday --store NEW-FOLDER restore { $path }" puts it back elsewhere and verifies all of it.
cli-restored = The store is at { $place }, as it was on { $made }. It is being verified.
cli-seal-key-changed = A new key signs from now on. Seals up to number { $seal } stay proven by the old key, which signed for the new one and was removed. Make a backup, and remove older ones if the old key may have been seen.
cli-redacted = The content of entry { $seq } of file { $file } is removed. Its digest stays, and the history says who removed it and why.
cli-redacted-still = { $count ->
    [one] This document of the file may still say it:
   *[other] These { $count } documents of the file may still say it:
}
cli-redacted-next = Look at each. "quarterday erase { $file } DOCUMENT --reason TEXT" removes one, whole. Earlier backups, and papers already sent, are yours to find.
cli-erased = The content of { $document } is removed for good; its digest, name and size stay. What was recorded from it stays with the files.
redact-no-document = { $file } names no document that begins with { $document }, or several. "quarterday history { $file }" shows where each entry came from; give more of the document's number.
cli-verified-removed = Removed on lawful request: { $redacted ->
    [one] the content of { $redacted } entry
   *[other] the content of { $redacted } entries
}, { $erased ->
    [one] { $erased } document
   *[other] { $erased } documents
}.


package-unprintable = { $file }: withheld. { $why }
package-failed = { $file }: withheld, because of a fault in the program ({ $where }). Its data is as it was; tell whoever looks after the program.
package-worker-gone = A worker process was ended from outside, perhaps for lack of memory. Every package that was finished is kept; run the same command again and it goes on where it stopped.
cli-run-built = { $n ->
    [one] { $n } package built, { $drafts } as a draft
   *[other] { $n } packages built, { $drafts } as drafts
}; there already: { $earlier }; withheld: { $withheld }.
cli-run-report = What was built, what was withheld and why: { $path }
cli-run-more = and { $n } more; the report lists them all.
package-unusable = { $file }: withheld. { $why }

## Brand

cli-brand = { $name }: the brand can be used ({ $path })
cli-brand-logo = Logo: { $logo }
cli-brand-colours = Colours: accent { $accent }, tint { $tint }
cli-brand-signatures = Signatures: { $names }
cli-brand-wordings = Own wordings ({ $language }): { $n }: { $ids }
