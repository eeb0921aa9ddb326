# The desk: the broker's web pages.

desk-skip = Skip to the page's content
desk-nav = Main pages
desk-nav-day = The day
desk-nav-diary = Diary
desk-nav-load = Load
desk-nav-people = People
desk-nav-password = Password
desk-nav-out = Sign out
desk-demo = This is a demo. Everybody and everything in it is invented. It is always { $day } here, and no second factor is asked for.
desk-foot = The policy's wording governs. Values are estimates until an appraiser confirms them.
desk-foot-day = Reckoned as of { $day }.

## Signing in

desk-sign-in = Sign in
desk-sign-in-do = Sign in
desk-sign-in-kept = You were signed out. What you typed is kept: sign in, and you can send it again.
desk-sign-in-wrong = The address and the password do not go together. Try again; after five mistakes you must wait a quarter of an hour.
desk-sign-in-locked = Too many mistakes. Wait a while, then try again, or ask your manager for a new password.
desk-email = E-mail address
desk-password = Password
desk-code = Your second factor
desk-code-hint = Open your authenticator and type the six digits it shows now. Without it, type one of your recovery codes.
desk-code-label = Code
desk-code-wrong = That code is not right, or was used already. Wait for the next one. After five mistakes you must wait a quarter of an hour.
desk-go-on = Go on
desk-password-title = Change your password
desk-password-must = Your password was made by somebody else. Choose one that only you know.
desk-password-old = Present password
desk-password-new = New password
desk-password-again = New password again
desk-password-long = At least { $n } characters. Several words are easier to remember than signs.
desk-password-do = Change it
desk-password-done = Your password was changed. You were signed out everywhere else.
desk-password-old-wrong = The present password is not right. Type it again.
desk-password-short = The new password is too short. Add a word or two.
desk-password-same = The new password must not be the old one, your name or your address.
desk-password-differs = The two new passwords differ. Type the same one twice.
desk-factor = Set up your second factor
desk-factor-again = Set up the second factor on another device
desk-factor-one = Open an authenticator on your telephone: any that makes codes of six digits.
desk-factor-two = Let it read the picture, or type the secret into it.
desk-factor-three = Type the code it shows.
desk-factor-picture = The secret as a picture, for the camera of your telephone
desk-factor-secret = The secret:
desk-factor-done = Your second factor is set up
desk-factor-codes = { $n ->
    [one] Keep this recovery code on paper. It replaces your telephone once.
   *[other] Keep these { $n } recovery codes on paper. Each replaces your telephone once. They are not shown again.
}
desk-kept = What you typed is still here
desk-kept-what = You were signed out before it could be saved. Read it over, then send it again.
desk-kept-send = Send it again
desk-kept-leave = Leave it

## Trouble

desk-trouble = That could not be done
desk-trouble-403 = You may not do this
desk-trouble-404 = There is nothing here
desk-trouble-409 = Somebody else changed this meanwhile
desk-typed = What you typed
desk-to-day = To the day
desk-error-bad = The request could not be read. Go back, and try again.
desk-error-forbidden = You may not do this. Ask your manager.
desk-error-missing = There is no such page. It may be a file of another office, or the address is mistyped.
desk-error-broken = The program failed, and nothing was written. Try again. If it fails again, report what you did.
desk-error-csrf = The form was too old, or did not come from this desk, so nothing was written. Go back, load the page again, and send it once more.
desk-clash = { $by } changed the same record ({ $kind })
desk-field = Field
desk-before = Before
desk-after = After
desk-theirs = Theirs, now on file
desk-mine = Yours
desk-keep-mine = Save mine over theirs
desk-keep-theirs = Keep theirs

## The day

desk-day = The day
desk-day-presses = { $impossible ->
    [0] { "" }
    [one] { $impossible } renewal is out of time,{" "}
   *[other] { $impossible } renewals are out of time,{" "}
}{ $late ->
    [0] none is late
   *[other] { $late } late
}
desk-day-none = No renewal fits
desk-day-quiet = Nothing is late
desk-day-figures = Premium before tax as offered, and its change from the expiring terms. As of { $day }; a file's page says why.
desk-day-expiring = * No offer yet: the expiring premium.
desk-day-caption = Renewals, one a line
desk-search = Search
desk-from = Renews from
desk-until = Renews until
desk-state = State
desk-only = Only
desk-any = any
desk-broker = Broker
desk-show = Show
desk-views = Views
desk-view-late = What is late
desk-view-mine = Mine
desk-view-insurer = Waiting for the insurer
desk-view-back = Back from the leaders
desk-view-keep = Keep this view as
desk-keep = Keep
desk-view-kept = The view "{ $name }" is kept.
desk-view-forget = Forget the view { $name }
desk-count = { $n ->
    [one] { $n } renewal
   *[other] { $n } renewals
}
desk-stale = Some lines are still of an earlier day. They are brought up to date in a moment.
desk-none = Nothing fits.
desk-none-all = Show every renewal
desk-pages = Pages of the list
desk-page-of = Page { $page } of { $pages }
desk-earlier = Page before
desk-later = Next page
desk-keys = Keys
desk-keys-day = j and k move down and up, Enter opens, / goes to the search, n and p turn the page.
desk-head-date = Renews
desk-head-name = Organisation
desk-head-state = State
desk-head-next = Next step
desk-head-premium = Premium
desk-head-change = Change
desk-head-presses = Urgent
desk-only-late = late
desk-only-impossible = out of time
desk-only-back = came back
desk-back-on = back { $day }
desk-only-broker = waits for us
desk-only-leaders = waits for the leaders
desk-only-insurer = waits for the insurer
who-broker = us
who-leaders = the leaders
who-insurer = the insurer
desk-late = late
desk-late-n = { $n } late
desk-impossible = out of time
desk-impossible-n = { $n } out of time
desk-impossible-until = out of time: { $day } at best

## The diary

desk-diary = Diary
desk-diary-title = { $late ->
    [0] Nothing is late
    [one] One step is late
   *[other] { $late } steps are late
}, { $week ->
    [0] nothing due
   *[other] { $week } due
} within a week
desk-diary-late = Late
desk-diary-week = Within a week
desk-diary-later = Later
desk-waits = Waits for
desk-due = Due
desk-what = What
desk-begin = Begin by
desk-renewal = Renewal
desk-steps = { $n ->
    [one] { $n } open step
   *[other] { $n } open steps
}
desk-steps-more = There are more. Search or choose a broker to see them.
desk-steps-none = Nothing is due in the next two months.
desk-diary-none = No step fits
desk-steps-all = Show every step
desk-feed = In your own calendar
desk-feed-about = A calendar program can show the diary. Its address is secret: who has it can read the names and dates. A new address stops the old one.
desk-feed-once = Your address, shown once:
desk-feed-make = Make an address
desk-feed-renew = Make a new address
desk-feed-stop = Stop the address
desk-feed-name = Quarterday diary
desk-feed-what = { $name }: { $what }
desk-feed-more = Waits for { $who }. Begin by { $start }. Renewal on { $renewal }.

## A file

desk-jump = Parts of this page
desk-back-to-file = Back to the file
desk-premium-with-tax = Premium with tax
desk-terms-used = Terms judged
desk-signature = Signed by
desk-not-signed = not signed
desk-as-of = As of { $day }
desk-as-of-short = As of
desk-matters = What matters
desk-matters-title = { $n ->
    [0] The review noticed nothing
   *[other] { $what }
}
desk-matters-decide = { $n ->
    [one] { $n } decision for the leaders
   *[other] { $n } decisions for the leaders
}
desk-matters-send-back = { $n ->
    [one] { $n } thing for them to send back
   *[other] { $n } things for them to send back
}
desk-matters-fix = { $n ->
    [one] { $n } thing for us to fix
   *[other] { $n } things for us to fix
}
desk-matters-know = { $n ->
    [one] { $n } thing to know
   *[other] { $n } things to know
}
desk-matters-all = all { $n }
desk-unfold = unfold all
desk-fold = fold all
desk-on-agenda = On the leaders' agenda, number
desk-aside = { $n ->
    [one] One finding set aside
   *[other] { $n } findings set aside
}
desk-aside-because = Set aside: { $reason }
desk-evidence = { $n ->
    [0] Why it stands here
    [one] Evidence: one figure
   *[other] Evidence: { $n } figures
}
desk-why = Why?
desk-decide = Record a decision
desk-answer = Answer
desk-decided = { $by } decided on { $day }:
desk-decided-by = Who said so
desk-their-words = In their words
desk-on = On
desk-set-aside = Set aside
desk-set-aside-do = Set it aside
desk-take-up = Take it up again
desk-reason = Reason, which stays on record
desk-due-title = What is due
desk-due-next = { $n ->
    [one] One step is open, due { $day }
   *[other] { $n } steps are open, the next due { $day }
}
desk-due-none = Every step is done
desk-begin-by = begin by { $day }
desk-is-done = done
desk-buildings = Buildings
desk-buildings-title = { $n ->
    [0] No buildings
    [one] One building
   *[other] { $n } buildings
}
desk-buildings-none = No building is on file.
desk-building = Building
desk-not-insured = These terms insure no amount on it.
desk-facts = Facts
desk-in-words = The picture in words
desk-valuations = Valuations
desk-valued-on = Valued on
desk-amount = Amount
desk-basis = Rests on
desk-by = By
desk-terms = Terms side by side
desk-terms-none = No terms are on file.
desk-coverage = Coverage
desk-change = What the offer changes
desk-included = included
desk-deductible = deductible { $amount }
desk-coinsurance = coinsurance { $share }
desk-more-borne = { $amount } more of a loss is theirs
direction-better = better
direction-worse = worse
direction-cannot-say = different
direction-same = same
desk-less-borne = { $amount } less of a loss is theirs
desk-premium = Premium
desk-premium-table = The premium, by coverage and place
desk-premium-none = No premium is on file.
desk-sum = Together
desk-subtotal = Before fees and tax
desk-fees = Fees
desk-tax = Tax
desk-total = Total
desk-claims = Claims
desk-claims-title = { $n ->
    [0] No claims
    [one] One claim, { $total }
   *[other] { $n } claims, { $total } together
}
desk-claims-none = No claim is on file.
desk-claims-by-cause = Claims by cause: paid and outstanding, less recovered
desk-loss-on = Day of loss
desk-cause = Cause
desk-place = Place
desk-claim-status = Status
desk-paid = Paid
desk-outstanding = Outstanding
desk-incurred = Incurred
desk-number = Number
desk-file-people = People
desk-organisation = Organisation
desk-contacts = Contacts
desk-role = Role
desk-phone = Telephone
desk-confirmed = Confirmed
desk-left = Left
desk-key = key contact
desk-may-decide = May decide on
desk-since = Since
desk-ended = Ended
desk-authorities = Authorised people
desk-authorities-none = Nobody is authorised.
desk-interests = Lenders and lessors
desk-interests-none = None is on file.
desk-operations = What it does
desk-nothing-known = Nothing is known yet.
desk-papers = Papers
desk-papers-none = No package was built yet.
desk-package = Package
desk-built-on = Built as of
desk-draft = draft
desk-delivered = Delivered
desk-sign = Sign the review
desk-sign-about = You sign as { $name }, licence { $licence }, what this page says as of { $day }. A later change to the file ends the signature.
desk-sign-read = I have read the findings and their evidence.
desk-sign-do = Sign
desk-signed-by = { $name } signed on { $day }. Nothing has changed since.
desk-build = Build the package
desk-build-signed = The review is signed: the package may be delivered.
desk-build-draft = The review is not signed: every page will say that it is a draft.
desk-build-in = Build in { $language }
desk-deliver = Record a delivery
desk-deliver-to = To whom
desk-deliver-way = How
desk-deliver-do = Record it
desk-decisions = Decisions
desk-payment = Record how they pay
desk-payment-plan = Plan
desk-paid-by = Payment: { $plan }, said { $by } on { $day }.
desk-notes = Notes
desk-notes-none = Nobody has left a note.
desk-note-new = New note
desk-note-do = Keep the note
desk-bare = The file does not say which organisation it is about, or when it renews. Add that, and it can be reviewed.
desk-bare-organisation = Say which organisation it is about
desk-add-building = Add a building
desk-add-valuation = Add a valuation
desk-add-terms = Add terms
desk-add-coverage = add a coverage
desk-add-claim = Add a claim
desk-add-contact = Add a contact
desk-add-authority = Add an authorised person
desk-add-interest = Add a lender or lessor

## Editing

desk-edit = Edit: { $kind }
desk-edit-new = New: { $kind }
desk-edit-do = edit
desk-edit-of = Edit { $what }
desk-edit-faults = { $n ->
    [one] One field cannot be read. Nothing was written, and nothing you typed is lost.
   *[other] { $n } fields cannot be read. Nothing was written, and nothing you typed is lost.
}
desk-edit-clash = Nothing was written. Somebody saved this record after you opened it. The form below still holds what you typed.
desk-required = (needed)
desk-not-known = not known
desk-date-form = 2026-11-25
desk-save = Save
desk-cancel = Cancel
desk-remove = Take this back
desk-remove-what = It will no longer count. It stays readable in the history.
desk-remove-do = Take it back

## History

desk-history = History
desk-history-title = History of { $file }
desk-fingerprint = Fingerprint of the entry: { $digest }
desk-universal = Times are universal time (UTC).
desk-known = As known at the end of
desk-kind = Kind of record
desk-entries = { $n ->
    [one] { $n } entry
   *[other] { $n } entries
}
desk-entries-none = Nothing of this kind was on record by then.
desk-entries-all = Show the whole history
desk-entries-left = The { $n } before these are not shown. Choose a kind or an earlier day.
desk-changes = { $n ->
    [one] One field
   *[other] { $n } fields
}
desk-redacted = The content was removed on lawful request. A later entry says why.
desk-act-load = loaded
desk-act-edit = edited
desk-act-withdraw = taken back
desk-act-set-aside = set aside
desk-act-decide = decided
desk-act-choose-payment = payment chosen
desk-act-note = noted
desk-act-sign = signed
desk-act-build = built
desk-act-deliver = delivered
desk-act-redact = redacted

## Loading

desk-load = Load a workbook
desk-load-about = Quarterday reads it and says what it would change. Nothing is written until you accept.
desk-load-file = Workbook (.xlsx) or CSV file
desk-load-most = At most { $most } megabytes.
desk-load-preview = Read it
desk-preview = What loading it would do
desk-preview-moved = The book changed since you read this, so nothing was written. Read it again, then accept.
desk-preview-faults = { $n ->
    [one] One thing is refused or asked below. The good rows can go on without it.
   *[other] { $n } things are refused or asked below. The good rows can go on without them.
}
desk-preview-left = { $n } more sentences are not shown.
desk-preview-mapping = How the sheets and columns were read
desk-preview-nothing = It would change nothing.
desk-preview-accept-faults = Load the good rows, leave out the others
desk-preview-accept = Accept
desk-preview-leave = Leave it

## People of the brokerage

desk-people = Who may come in
desk-people-about = A role counts for the files of one office, or of every office.
desk-people-once = { $name } ({ $email }) signs in with this password, shown once. It must be changed at the first sign-in:
desk-people-out = may not come in
desk-people-active = May come in
desk-people-renew = Give a new password, and let them set up a new second factor
desk-people-add = Add somebody
desk-people-add-do = Add
desk-people-name = Name
desk-people-licence = Licence number, when licensed to advise
desk-people-language = Language
desk-people-every = Every office
desk-people-none = no role
role-at-desk-owner = account broker
role-at-desk-colleague = colleague
role-at-desk-manager = manager
role-at-desk-read-only = reader
right-view = see this
right-load = load files
right-edit = change facts
right-record = record what was said
right-build = build packages
right-deliver = record a delivery
right-certify = give evidence to outsiders
right-set-aside = set findings aside
right-sign = sign the review
right-people = say who may come in

## Done

desk-done-edit = Saved.
desk-done-nothing = Nothing had changed, so nothing was written.
desk-done-withdraw = It no longer counts. The history still shows it.
desk-done-set-aside = The finding is set aside for this renewal.
desk-done-take-up = The finding counts again.
desk-done-decide = The decision is on record.
desk-done-payment = The payment choice is on record.
desk-done-note = The note is kept.
desk-done-sign = The review is signed.
desk-done-build = The package is built.
desk-done-draft = The package is built, as a draft.
desk-done-deliver = The delivery is on record.
desk-done-load = Loaded: { $entries ->
    [one] one entry
   *[other] { $entries } entries
} in { $files ->
    [one] one file
   *[other] { $files } files
}.
desk-done-left = It was left, and nothing was written.
desk-done-person = { $name }: saved.

## Refused acts

acts-forbidden = Your role does not let you { $act }. Ask your manager.
acts-no-licence = Only a licensed person signs a review, and no licence number is on record for you. Ask your manager.
acts-same-key = A record with the id "{ $key }" is on file already. Edit that one, or choose another id.
acts-key-fixed = The id "{ $key }" cannot be changed. Take the record back, and add a new one.
acts-keeps-organisation = The organisation itself cannot be taken back. Edit it instead.
acts-no-finding = The review has no finding "{ $finding }" any more. Load the page again.
acts-future = { $day } is still to come. Give a day that has been.
acts-no-day = "{ $text }" is not a day. Write it like 2026-11-25.
acts-empty = "{ $what }" was left empty, and it is needed. Fill it in and try again.
acts-not-possible = What was sent does not fit. Go back, load the page again, and try once more.
acts-not-read = The review was not signed. Say that you have read it, then sign.
acts-moved = { $file } was changed after you loaded its page, so the review was not signed. Read it again, then sign.
acts-too-often = That was done very often within an hour. Wait a while, then try again.
acts-upload-none = No file came. Choose one, then send it.
acts-upload-kind-book = "{ $name }" is of a kind that cannot be read. Send a workbook (.xlsx) or a CSV file.
acts-upload-kind-form = "{ $name }" is no PDF. Send the form as it came, as a PDF; a photograph can be saved as one.
acts-upload-empty = "{ $name }" is empty. Send the file again.
acts-upload-large = "{ $name }" is larger than { $most } megabytes. Split it, or load it from the terminal.
acts-upload-gone = That file is not waiting any more. Send it again.
acts-person-taken = Somebody already signs in as { $email }.
acts-person-email = "{ $email }" is not an e-mail address. Type it again.
acts-person-self = You would lock yourself out. Let another manager change your own role.
acts-not-demo = { $path } is not the folder of a demo. Sign-ins for show are made in a demo alone.

## Serving

cli-serve-at = The desk is at { $address }. Stop it with Ctrl-C.
cli-serve-nobody = Nobody may come in yet. Add a manager: quarterday person --help
cli-demo-desk = Open the desk: quarterday --store { $store } serve, then go to { $address }
cli-demo-visitor = { $name }, { $role }: { $email } with the password { $password }
cli-person-added = { $name } signs in as { $email }. The password is shown once, and must be changed at the first sign-in: { $password }

## Papers for others

desk-outside = Papers for others
desk-outside-paper = Paper
desk-outside-to = For whom
desk-certify = Make a paper for somebody outside
desk-certify-about = A certificate says what is in force today. Who is paid off gets a request for a discharge instead. It is recorded as sent today.
desk-certify-new = somebody new, named below
desk-certify-name = Name, when new
desk-certify-address = Address, in one line
desk-certify-purpose = What they need it for
desk-certify-do = Make and record it
desk-done-certify = The paper is made, kept and on record. Download it below.
desk-act-certify = evidence given
