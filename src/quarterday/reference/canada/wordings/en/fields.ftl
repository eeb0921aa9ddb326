## Organisation

field-name = Legal name
field-known-as = Known as
field-named-insured = Named insured on the policy
field-organisation-class = Kind of organisation
field-registration-number = Charity registration number
field-province = Province or territory
field-address = Address
field-town = City or town
field-postal-code = Postal code
field-language = Language
field-founded-year = Year founded
field-fiscal-year-end = End of the fiscal year (month and day)
field-renewal-date = Renewal date
field-office = Office that looks after the file
field-broker = Broker
field-confirmed-on = Confirmed on
field-notes = Notes
field-id = Id

## People

field-role = Role
field-email = E-mail
field-phone = Telephone
field-is-key = Key contact
field-left-on = Left on
field-contact = Contact
field-area = May decide on
field-since = From
field-until = Until

## What the organisation does

field-owns-premises = Owns its premises
field-rents-premises = Rents its premises
field-attendance = People at a usual gathering
field-employees = Employees
field-volunteers = Volunteers
field-revenue-donations = Donations a year
field-revenue-rents = Rents received a year
field-revenue-tuition = Fees and tuition a year
field-revenue-events = Income from events a year
field-revenue-other = Other income a year
field-income-growth = Yearly growth of income
field-premises-share = Share of income that stops without the main building
field-giving-kept = Share of giving that would go on in another place
field-payroll = Wages and salaries a year
field-payroll-kept = Share of wages to keep paying while closed
field-expenses-stopping = Expenses a year that would stop while closed
field-rent-elsewhere = Rent of another place, a month
field-moving-costs = Cost of moving and setting up elsewhere
field-children = Works with children
field-youth = Works with youth
field-vulnerable-adults = Works with vulnerable adults
field-prevention-plan-reviewed-on = Abuse prevention plan reviewed on
field-screening-training-on = Screening training held on
field-record-checks-on = Police record checks renewed on
field-day-care = Day care
field-school = School
field-camp = Camp
field-hall-rental = Rents its hall to others
field-food-service = Prepares or serves food
field-alcohol-at-events = Alcohol at events
field-trips-in-canada = Trips within Canada
field-trips-abroad = Trips abroad
field-trip-days = Days of travel a year
field-trip-people = People who travel
field-vehicles-owned = Vehicles owned
field-volunteer-drivers = Volunteers drive their own vehicles
field-counselling = Counselling
field-construction-planned = Construction planned this year
field-unoccupied-buildings = Has an unoccupied building
field-two-counters = Two people count the money
field-safe = Keeps money in a safe
field-deposit-same-day = Deposits money the same day
field-online-giving = Receives gifts online
field-personal-data-held = Holds personal data
field-social-media = Uses social media
field-solar-panels = Has solar panels
field-playground = Has a playground
field-cemetery = Has a cemetery
field-largest-event = People at the largest event
field-overnight-stays = People stay overnight
field-snow-by-volunteers = Volunteers clear the snow

## Buildings

field-ownership = Own or rent
field-use = Used for
field-construction = Construction
field-year-built = Year built
field-area-m2 = Floor area (m²)
field-storeys = Storeys
field-basement = Basement
field-contents-below-grade = Contents kept below ground
field-roof-shape = Shape of the roof
field-roof-cover = Roof covering
field-roof-year = Year the roof was renewed
field-wiring-type = Wiring
field-wiring-year = Year the wiring was renewed
field-plumbing-type = Plumbing
field-plumbing-year = Year the plumbing was renewed
field-heating-type = Heating
field-heating-year = Year the heating was renewed
field-sprinklers = Sprinklers
field-fire-alarm = Fire alarm
field-burglar-alarm = Burglar alarm
field-alarm-monitored = Alarm watched by a centre
field-hydrant-m = Metres to the nearest hydrant
field-fire-hall-km = Kilometres to the fire hall
field-backwater-valve = Backwater valve
field-sump-pump = Sump pump
field-sump-battery = Sump pump has a battery
field-water-sensors = Water sensors
field-automatic-shutoff = Automatic water shut-off
field-heritage = Heritage building
field-special-features = Special features
field-unoccupied-since = Unoccupied since
field-unoccupied-days = Days unoccupied in a row
field-updates = Recent work

## Valuations

field-building = Building
field-valued = What was valued
field-feature = Feature
field-amount = Amount
field-valued-on = Valued on
field-basis = Basis
field-by = By
field-itemised = Listed item by item
field-includes-fees = Includes professional fees
field-includes-by-laws = Includes what by-laws require

## Terms

field-stage = Stage
field-start = First day
field-end = End (not included)
field-insurer = Insurer
field-policy-number = Policy number
field-currency = Currency
field-coverages = Coverages
field-shared-limit = Shared additional limit
field-shared-limit-amount = Shared additional limit: amount
field-shared-limit-tops-up = Shared additional limit: tops up
field-shared-limit-meant-for = Shared additional limit: meant for
field-deductible-rule = Several deductibles in one event
field-premiums = Premiums
field-totals = Printed totals
field-options = Options
field-rounding = Rounded to
field-instalments-available = Instalments available
field-vacancy-days = Days a building may stand empty
field-answer-by = Answer by
field-coverage = Coverage
field-location = Location
field-limit = Limit
field-limit-basis = Limit applies
field-aggregate = Limit for the whole year
field-sublimit-of = Part of the limit of
field-deductible = Deductible
field-deductible-percent = Deductible as a share
field-deductible-percent-of = Deductible is a share
field-deductible-minimum = Smallest deductible
field-deductible-maximum = Largest deductible
field-waiting-hours = Waiting period in hours
field-monthly-limit = Most for thirty days, as a share of the limit
field-coinsurance = Coinsurance
field-coinsurance-of = Coinsurance of income counts
field-coinsurance-stated-amount = Stated amount for coinsurance
field-coinsurance-waived-up-to = Coinsurance spares losses up to
field-coinsurance-waived-share = Coinsurance spares losses up to a share of the amount insured
field-settling-order = Coinsurance or deductible first
field-agreed-value-until = Agreed value until
field-automatic-increase = Automatic increase a year
field-blanket = Blanket limit
field-margin = Margin clause
field-in-shared-limit = May use the shared additional limit
field-excluded-causes = Causes excluded
field-damages = Kinds of damages covered
field-defence = Defence costs
field-claims-made = Counts claims made in the term
field-retroactive-date = Retroactive date
field-reporting-days = Days to report afterwards
field-attaches-to = Umbrella lies over
field-qualified = Prevention plan accepted
field-wording = Form and edition
field-tops-up = Tops up
field-meant-for = Meant for
field-kind = Kind of charge
field-exposure = Amount it is charged on
field-rate = Rate
field-reason = Reason
field-of = Total of
field-price = Price

## Claims

field-number = Claim number
field-cause = Cause
field-date-of-loss = Date of loss
field-reported-on = Reported on
field-description = What happened
field-paid = Paid
field-outstanding = Still set aside
field-recovered = Recovered
field-includes-deductible = Amounts count the deductible in
field-status = Status
field-last-movement-on = Last movement

## Lenders and lessors

field-reference = Loan or lease number
field-item = Leased item

## Allocation keys

field-party = Who bears it
field-family = Family of coverages
field-measure = Measure
field-portion = Ratio of the part divided this way
field-fund = Fund in the books

## What was done and decided

field-renewal = Renewal
field-question = Question
field-answer = Answer
field-decided-on = Decided on
field-words = In their words
field-document = Document
field-to = To
field-way = Sent by
field-delivered-on = Delivered on
field-finding = Finding
field-form = Form
field-returned-on = Returned on
field-text = Text
field-version = Version
field-built-on = Built on
field-seq = Number of the entry
field-plan = Payment plan
field-chosen-on = Chosen on
field-as-of = As of
field-reviewer = Reviewed by
field-licence = Licence
field-review-digest = Fingerprint of the review
field-signed-on = Signed on
field-taken = Answers taken
field-refused = Answers refused
field-subject = About
field-answers = Answers
field-answered-on = Answered on
field-sent-on = Sent on
field-changes = Number of changes
field-taken-back = Number of changes asked no more
field-sealed = Fingerprint of the sealed file
field-sealed-on = Sealed on
field-certificate = Fingerprint of the certificate
field-attachments = Enclosed, by SHA-256
field-message = Message
field-came-back-on = Came back on
field-came-back = Why it came back
field-bound-on = Bound on
field-binder = Binder number
field-accepted = Accepted beyond the offer
field-agreed = Terms agreed
field-checked-on = Checked on
field-differences = Points that give less
field-done-about = What was done about it
field-paper = Paper
field-holder = Who got it
field-purpose = What they need it for
