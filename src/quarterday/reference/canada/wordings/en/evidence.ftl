# Seals, the evidence of a file, requests to the insurer, and small letters.

## Seals

seal-intact = { $name }: sealed, and not a byte was changed since.
seal-filled = { $name }: sealed, then only filled in. The pages are as they were sealed.
seal-rewritten = { $name } has no seal that holds: its bytes are not those that were sealed. { $n ->
    [0] Even so, its pages, and what its fields hold, are those of the package that is kept here.
   *[other] Beside the package that is kept here, only fields were filled in; the pages are the same.
}
seal-altered = { $name } was altered: more was changed than fields filled in. Do not rely on it.
seal-kept = { $name } is not sealed. It is byte for byte a document that is kept here.
seal-strange = { $name } is not sealed and is not known here. Nothing can be said of it.
seal-by-own = Sealed by { $signer } on { $day } at { $time } UTC, by its own clock, with this brokerage's certificate.
seal-by-own-undated = Sealed by { $signer }, with this brokerage's certificate.
seal-by-other = The seal names { $signer } on { $day } at { $time } UTC, but it was not made with this brokerage's certificate. Anyone can make such a seal.
seal-by-other-undated = The seal names { $signer }, but it was not made with this brokerage's certificate. Anyone can make such a seal.
seal-page-count = The document has { $now ->
    [one] { $now } page
   *[other] { $now } pages
}; { $then } were sent. The first that differs is page { $first }.
seal-pages = { $n ->
    [one] This page differs: { $pages }.
   *[other] { $n } pages differ, among them { $pages }.
}
seal-fields = { $n ->
    [one] A field came or went: { $names }.
   *[other] { $n } fields came or went, such as { $names }.
}
seal-filled-in = { $n ->
    [one] Filled in: { $names }.
   *[other] { $n } fields were filled in, such as { $names }.
}
seal-not-signed = { $file }: there is no package to seal in this language, or it is a draft. Sign the review, build the package, then seal it.
seal-no-key = The certificate { $path } and its key do not belong together, so nothing was sealed. Put the right pair there, or take both away and a new pair is made.
cli-sealed = Sealed: { $path }
cli-sealed-certificate = Fingerprint of the certificate (SHA-256): { $digest }

## The evidence of a file

cli-evidence = { $path }: { $entries ->
    [one] { $entries } entry
   *[other] { $entries } entries
} and { $documents ->
    [one] { $documents } document.
   *[other] { $documents } documents.
}
cli-evidence-left-out = { $n ->
    [one] One workbook is named but not enclosed, because it tells of other organisations too.
   *[other] { $n } workbooks are named but not enclosed, because they tell of other organisations too.
}
evidence-entry = { $seq }. { $moment }, { $by }: { $kind } { $key }. { $origin }
evidence-redacted = The content was removed on lawful request; a later entry says why.
evidence-withdrawn = Taken back.

## Requests to the insurer

request-title = { $organisation }: please change { $n ->
    [one] one thing
   *[other] { $n } things
} in the policy
request-title-gone = { $organisation }: please disregard { $gone ->
    [one] one thing
   *[other] { $gone } things
} that we asked for
request-title-both = { $organisation }: please change { $n ->
    [one] one thing
   *[other] { $n } things
} in the policy, and disregard { $gone ->
    [one] one
   *[other] { $gone }
} that we asked for
request-lead = The organisation has told us, or decided, what follows. Please change the policy from { $start }, or earlier where you agree, and confirm to us in writing with the premium.
request-lead-gone = What we asked for in an earlier request has changed. This letter asks for nothing new.
request-insurer = To the insurer
request-insured = Named insured
request-policy = Policy
request-term = Term
request-number = Request of this renewal
request-what = What
request-was = Today
request-now = Please change to
request-since = Told us on
request-disregard = Please disregard
request-disregard-about = An earlier request asked for what follows. It is asked no more. Leave the policy as it was, or set it back, and confirm to us in writing that you did.
request-earlier = We had asked for
request-earlier-in = In our request
request-number-of = { $number }, sent { $day }
request-instead = { $now }, and no longer { $earlier } as in our request { $number } of { $day }
request-gone = Please disregard: { $earlier }, asked for in our request { $number } of { $day }
request-of = { CAPITAL($subject) }: { $what }
request-decided = decided
request-payment = Payment of the premium
request-answers = { $n ->
    [one] one answer, in the file that comes with this letter
   *[other] { $n } answers, in the file that comes with this letter
}
request-there = to be added
request-removed = to be taken out
request-not-bound = Nothing is changed until you confirm it. Values are estimates until an appraiser confirms them.
request-nothing = { $file }: nothing was changed or decided since the last request to the insurer, so there is nothing to ask.
request-no-terms = { $file }: there are no terms to change. Load the policy or the offer first.
cli-request = { $path }: request { $number } to { $insurer }, { $n ->
    [one] one change.
   *[other] { $n } changes.
}
cli-request-gone = { $left ->
    [0] { $n ->
        [one] It takes back what an earlier request asked for.
       *[other] All of them take back what earlier requests asked for.
    }
   *[other] { $n ->
        [one] One of them takes back what an earlier request asked for.
       *[other] { $n } of them take back what earlier requests asked for.
    }
}
cli-request-not-recorded = Nothing was recorded. When it goes out, run it again with --sent.
cli-bordereau = { $n ->
    [one] One line
   *[other] { $n } lines
} in { $paths }
cli-exported = { $n ->
    [one] One file
   *[other] { $n } files
} written to { $path }.

## Certificates and discharges

paper-certificate = certificate of insurance
paper-discharge-request = request for a discharge
certificate-title = { $organisation } is insured on { $day }
certificate-lead = The policy below is in force on { $day }. This is what it holds, as our file has it.
certificate-lead-bound = The insurer has bound the cover below, and it is in force on { $day }. The policy itself is not issued yet.
certificate-binder = Binder
certificate-purpose = For
certificate-applies = The limit applies
certificate-aggregate = { $basis }, { $aggregate } in all for the term
certificate-words = A limit is the most the insurer pays. A deductible is what the insured pays first.
certificate-day = This page tells of one day. It promises nothing for a later day: the policy can change or end, and you may not be told. Ask us for a new page when you need one.
certificate-no-rights = This page gives you no rights, makes nobody an insured and does not change the policy. The policy's own wording governs.
certificate-used = Claims may already have used part of a limit that applies to the whole year.
certificate-by = Issued by { $name }, licence { $licence }
certificate-not-in-force = { $file }: no policy, issued or bound, is in force on { $day }, so there is nothing a certificate may state. Load the issued policy, or name another day with --as-of.
certificate-no-number = { $file }: the policy in force on { $day } has no insurer or no number on file, so nobody could check a certificate. Add them first.
certificate-nothing = { $file }: the policy in force on { $day } has none of the coverages that { $name } would ask about. A certificate would be an empty page.
certificate-unknown-holder = { $file } knows nobody as “{ $holder }”. { $known ->
    [0] Nobody is on file yet.
   *[other] On file: { $names }.
} For somebody new, add --name and, if you have it, --address and --for.
certificate-from-file = “{ $holder }” is { $name } on file, with the address given there. Leave out --name and --address, or correct the file.
certificate-paid-off = { $name } is paid off on file and gets no certificate. Ask for its discharge with: quarterday discharge { $file } { $holder }
discharge-unknown = { $file } has no lender or lessor “{ $holder }”. { $known ->
    [0] There is none on file.
   *[other] On file: { $names }.
}
discharge-not-paid-off = { $name } is not paid off on file, so there is no discharge to ask for. Record first that it is paid off; the interests form asks.
discharge-title-lender = Please confirm that this loan is paid off
discharge-title-lessor = Please confirm that this lease has ended
discharge-lead-lender = Our file says that { $insured } has paid off its loan with you. You are still named on its insurance. Please fill in the reply below and send it back. Only then can the insurer take your name off.
discharge-lead-lessor = Our file says that the lease of { $insured } with you has ended. You are still named on its insurance. Please fill in the reply below and send it back. Only then can the insurer take your name off.
discharge-reply = Your reply
discharge-reply-lender = The loan is paid off. { $name } has no more interest in the insurance above and asks to be taken off.
discharge-reply-lessor = The lease has ended and what was leased is back or paid for. { $name } has no more interest in the insurance above and asks to be taken off.
discharge-since = Since
discharge-name = Name and title
discharge-signature = Signature
discharge-date = Date
discharge-consent = Consent of the insured
discharge-consent-text = { $insured } agrees that you answer this letter.
discharge-not-yet = Nothing changes in the policy until the insurer confirms it.
discharge-privacy = Send no account numbers and no balance. We need none.
record-evidence-sent = evidence sent
kind-evidence-sent = { record-evidence-sent }
cli-certificate = { $path }: for { $name }, as of { $day }
cli-discharge = { $path }: to { $name }, { $day }
cli-evidence-not-recorded = Nothing was recorded. When it goes out, run it again with --sent.
