## Names

coverage-name = { $coverage }
coverages-name = { $coverages }
buildings-name = { $buildings }
coverage-at = { $coverage } ({ $place })
terms-as-a-whole = The terms as a whole
options-together = Options on offer
coverages-not-shown = Coverages the terms do not show
open-questions = Questions still open
shared-limit-name = Shared additional limit
damages-name = Kinds of damages
defence-name = Defence costs
empty-buildings = Empty buildings
place-everywhere = all places
place-named = named places only
damages-stated = stated
damages-not-stated = not stated

## How one version of the terms differs from another
## $direction is better, worse, neutral or cannot-say; $case is new, gone, changed or bare.

difference-of-coverage = { $coverage }, { $place }: { $change }.
difference-of-terms = The terms as a whole: { $change }.
change-at-places = { $change } ({ $places })
changes-of-coverage = { $coverage }: { $changes }
and-more = { $count ->
    [one] one more
   *[other] { $count } more
}

difference-added = { $case ->
    [new] newly covered, up to { $after }
   *[bare] newly covered
}
difference-dropped = { $case ->
    [gone] no longer covered (until now up to { $before })
   *[bare] no longer covered
}
difference-place = it applied to { $before } and now applies to { $after }
difference-limit = { $case ->
    [new] a limit (the most it pays) of { $after } is now stated
    [gone] the limit (the most it pays) of { $before } is no longer stated
   *[changed] { $direction ->
        [better] the limit (the most it pays) rises from { $before } to { $after }
        [worse] the limit (the most it pays) falls from { $before } to { $after }
       *[other] the limit (the most it pays) goes from { $before } to { $after }
    }
}
difference-limit-basis = { $case ->
    [new] the limit is now stated to apply { $after }
    [gone] it is no longer stated that the limit applies { $before }
   *[changed] the limit now applies { $after }, no longer { $before }
}
difference-aggregate = { $case ->
    [new] all losses of a year together are now capped at { $after }
    [gone] the cap of { $before } on all losses of a year is gone
   *[changed] { $direction ->
        [better] the cap on all losses of a year rises from { $before } to { $after }
        [worse] the cap on all losses of a year falls from { $before } to { $after }
       *[other] the cap on all losses of a year goes from { $before } to { $after }
    }
}
difference-sublimit = { $case ->
    [new] its limit is now part of the limit of another cover, { $after }
    [gone] its limit is now its own and no longer part of another cover, { $before }
   *[changed] its limit was part of { $before } and is now part of { $after }
}
difference-deductible = { $case ->
    [new] a deductible (your own part of a loss) of { $after } now applies
    [gone] the deductible (your own part of a loss) of { $before } is gone
   *[changed] { $direction ->
        [better] the deductible (your own part of a loss) falls from { $before } to { $after }
        [worse] the deductible (your own part of a loss) rises from { $before } to { $after }
       *[other] the deductible (your own part of a loss) goes from { $before } to { $after }
    }
}
difference-deductible-form = { $direction ->
    [better] the deductible (your own part of a loss) goes from { $before } to { $after }, which is less
    [worse] the deductible (your own part of a loss) goes from { $before } to { $after }, which is more
   *[other] the deductible (your own part of a loss) goes from { $before } to { $after }
}
difference-deductible-percent = { $case ->
    [new] a deductible (your own part of a loss) of { $after } now applies
    [gone] the deductible (your own part of a loss) of { $before } is gone
   *[changed] { $direction ->
        [better] the deductible (your own part of a loss) falls from { $before } to { $after }
       *[worse] the deductible (your own part of a loss) rises from { $before } to { $after }
    }
}
difference-deductible-percent-of = { $case ->
    [new] the deductible is now stated to be a share { $after }
    [gone] it is no longer stated that the deductible is a share { $before }
   *[changed] the deductible is now a share { $after }, no longer { $before }
}
difference-deductible-minimum = { $case ->
    [new] the deductible (your own part of a loss) is now at least { $after }
    [gone] the smallest deductible (your own part of a loss) of { $before } is gone
   *[changed] the smallest deductible (your own part of a loss) goes from { $before } to { $after }
}
difference-deductible-maximum = { $case ->
    [new] the deductible (your own part of a loss) is now at most { $after }
    [gone] the largest deductible (your own part of a loss) of { $before } is gone, so nothing caps it
   *[changed] the largest deductible (your own part of a loss) goes from { $before } to { $after }
}
difference-waiting = { $case ->
    [new] it now pays only after the first { $after ->
        [one] hour
       *[other] { $after } hours
    }
    [gone] the wait of { $before ->
        [one] one hour
       *[other] { $before } hours
    } before it pays is gone
   *[changed] the wait before it pays goes from { $before } to { $after } hours
}
difference-coinsurance = { $case ->
    [new] a coinsurance rule of { $after } now applies (it cuts what is paid when the sum insured is too low)
    [gone] the coinsurance rule of { $before } is gone (it cut what is paid when the sum insured is too low)
   *[changed] the coinsurance rule (it cuts what is paid when the sum insured is too low) goes from { $before } to { $after }
}
difference-stated-amount = { $case ->
    [new] an amount to insure of { $after } is now stated for the coinsurance rule
    [gone] the amount to insure of { $before } is no longer stated for the coinsurance rule
   *[changed] the amount to insure that the coinsurance rule states goes from { $before } to { $after }
}
difference-agreed-value = { $case ->
    [new] agreed value (the insurer waives coinsurance) now holds until { $after }
    [gone] agreed value (the insurer waived coinsurance until { $before }) is gone
   *[changed] { $direction ->
        [worse] agreed value (the insurer waives coinsurance) now ends within the period, on { $after }
       *[better] agreed value (the insurer waives coinsurance) now holds until { $after }
    }
}
difference-automatic-increase = { $case ->
    [new] the sum insured now rises by itself by { $after } a year
    [gone] the sum insured no longer rises by itself (until now { $before } a year)
   *[changed] the yearly rise of the sum insured goes from { $before } to { $after }
}
difference-basis = { $case ->
    [new] it now says how a loss is settled: { $after }
    [gone] it no longer says how a loss is settled (until now: { $before })
   *[changed] a loss is now settled “{ $after }”, no longer “{ $before }”
}
difference-blanket = { $case ->
    [new] it joins one amount over several items, the blanket limit “{ $after }”
    [gone] it leaves the amount shared by several items, the blanket limit “{ $before }”
   *[changed] it moves from the blanket limit “{ $before }” to “{ $after }”
}
difference-margin = { $case ->
    [new] one building may now draw at most { $after } of its own value from the blanket limit
    [gone] the cap of { $before } of its own value that one building may draw from the blanket limit is gone
   *[changed] what one building may draw from the blanket limit goes from { $before } to { $after } of its own value
}
difference-shared-limit = { $direction ->
    [better] the shared additional limit may now top it up
   *[worse] the shared additional limit may no longer top it up
}
difference-exclusion = { $case ->
    [new] this is now left out: { $after }
   *[gone] this is no longer left out: { $before }
}
difference-damages = { $case ->
    [new] it now pays { $after }
    [gone] it no longer pays { $before }
   *[changed] the kinds of damages it pays were { $before } and are now { $after }
}
difference-defence = { $case ->
    [new] it now says that lawyers are paid { $after ->
        [inside] out of the limit
       *[outside] on top of the limit
    }
    [gone] it no longer says whether lawyers are paid out of the limit or on top of it
   *[changed] lawyers are now paid { $after ->
        [inside] out of the limit, which leaves less for the person harmed
       *[outside] on top of the limit
    }
}
difference-claims-made = { $case ->
    [new] it now says which claims count
    [gone] it no longer says which claims count
   *[changed] { $direction ->
        [worse] only claims first made during the policy period now count
       *[better] what happens during the policy period now counts, whenever the claim is made
    }
}
difference-retroactive-date = { $case ->
    [new] past events are now stated to count from { $after }
    [gone] the day from which past events count ({ $before }) is no longer stated
   *[changed] past events now count from { $after }, until now from { $before }
}
difference-reporting-period = { $case ->
    [new] claims may now be reported for { $after ->
        [one] one day
       *[other] { $after } days
    } after the policy ends
    [gone] the { $before ->
        [one] one day
       *[other] { $before } days
    } for reporting claims after the policy ends are no longer stated
   *[changed] the time for reporting claims after the policy ends goes from { $before } to { $after } days
}
difference-qualified = { $case ->
    [changed] { $direction ->
        [better] the insurer has accepted your prevention plan
       *[worse] the insurer no longer shows your prevention plan as accepted
    }
    [new] it now says whether your prevention plan is accepted
   *[gone] it no longer says whether your prevention plan is accepted
}
difference-wording = { $case ->
    [new] the wording is now named: { $after }
    [gone] the wording ({ $before }) is no longer named
   *[changed] the wording goes from { $before } to { $after }
}
difference-shared-limit-amount = { $case ->
    [new] there is now a shared additional limit of { $after } a year
    [gone] the shared additional limit of { $before } a year is gone
   *[changed] the shared additional limit goes from { $before } to { $after } a year
}
difference-monthly-limit = { $case ->
    [new] at most { $after } of the limit is now paid for thirty days
    [gone] the most for thirty days ({ $before } of the limit) is gone
   *[changed] the most for thirty days goes from { $before } to { $after } of the limit
}
difference-coinsurance-waiver = { $case ->
    [new] the coinsurance rule now spares losses up to { $after }
    [gone] the coinsurance rule no longer spares losses up to { $before }
   *[changed] losses that the coinsurance rule spares go from { $before } to { $after }
}
difference-coinsurance-waiver-share = { $case ->
    [new] the coinsurance rule now spares losses up to { $after } of the amount insured
    [gone] the coinsurance rule no longer spares losses up to { $before } of the amount insured
   *[changed] losses that the coinsurance rule spares go from { $before } to { $after } of the amount insured
}
difference-coinsurance-of = { $case ->
    [new] it is now stated what the coinsurance rule counts: { $after }
    [gone] it is no longer stated what the coinsurance rule counts; it was { $before }
   *[changed] the coinsurance rule now counts { $after }, no longer { $before }
}
difference-settling-order = { $case ->
    [new] the order is now stated: { $after }
    [gone] the order is no longer stated; it was { $before }
   *[changed] the order goes from { $before } to { $after }
}
difference-umbrella-over = { $case ->
    [new] it now lies over this too: { $after }
    [gone] it no longer lies over this: { $before }
   *[changed] what it lies over was { $before } and is now { $after }
}
umbrella-over-stated = stated
umbrella-over-not-stated = not stated
difference-deductible-rule = { $case ->
    [new] when several deductibles meet in one event, { $after } now counts
    [gone] what counts when several deductibles meet in one event is no longer stated; it was { $before }
   *[changed] when several deductibles meet in one event, { $after } now counts, not { $before }
}
difference-vacancy-days = { $case ->
    [new] the days that a building may stand empty are now stated: { $after }
    [gone] the days that a building may stand empty ({ $before }) are no longer stated
   *[changed] the days that a building may stand empty go from { $before } to { $after }
}
difference-insurer = { $case ->
    [new] the insurer is now named: { $after }
    [gone] the insurer ({ $before }) is no longer named
   *[changed] the insurer changes from { $before } to { $after }
}
difference-currency = the currency changes from { $before } to { $after }

## Figures

figure-more-borne = { $coverage }: the most that you would bear more of a loss
figure-less-borne = { $coverage }: the most that you would bear less of a loss
figure-own-part = { $coverage }: the most you would bear of a loss under the percentage deductible
how-own-part = { $case ->
    [insured] the percentage times the sum insured, within the smallest and largest deductible
    [loss] the percentage times the largest loss there can be, within the smallest and largest deductible
   *[value] the percentage times what replacing costs at the end of the coming term, at each building, within the smallest and largest deductible
}
how-borne = { $kind ->
    [shared-limit-amount] the difference between the two shared limits
    [limit] the difference between the two limits
    [aggregate] the difference between the two yearly caps
    [deductible] the difference between the two deductibles
    [added] the limit of the cover that is new
   *[dropped] the limit of the cover that is gone
}
figure-days-empty = Days that { $building } has stood empty
how-days-empty = the days from the first empty day to { $day }

## Reasons

reason-ends-on = This cover ends on { $day } unless something is done.
reason-because = This matters because { $fact }.
reason-less-than-this-year = The offer gives less than the policy you have now.
reason-good-to-know = Nothing has to be decided.
reason-wording-decides = Only the policy's wording can say what it means.
reason-terms-not-as-requested = The insurer was asked for more before the renewal.
reason-terms-not-as-agreed = The policy already in force gives less than was agreed.
reason-smaller-options = The insurer offers this beside its terms; it is yours to take or leave.
reason-maybe-inside-another = Such cover is often part of another one.
reason-unanswered = Nobody has answered these questions yet.
reason-wrong-basis = The extra amount and what it may pay for depend on owning or renting.
reason-liability-gap = After a lawsuit, this part could fall on the organisation.
reason-past-years = Work of past years could lose its cover.
reason-empty-building = Cover usually shrinks or stops when a building stands empty too long.

## Why a coverage matters: a clause that follows "because"

reason-profile-owns-premises = you own your premises
reason-profile-rents-premises = you rent premises
reason-profile-playground = you have a playground
reason-profile-cemetery = you have a cemetery
reason-profile-solar-panels = you have solar panels
reason-profile-camp = you run a camp
reason-profile-trips-in-canada = you organise trips within Canada
reason-profile-trips-abroad = you organise trips abroad
reason-profile-volunteers = volunteers work for you
reason-profile-hall-rental = you rent space to others
reason-profile-construction-planned = construction work is planned
reason-profile-revenue-rents = you receive rents
reason-profile-revenue-tuition = you receive fees or tuition
reason-profile-revenue-donations = you receive donations
reason-profile-revenue-events = your events bring in money
reason-profile-food-service = you prepare or serve food
reason-profile-day-care = you run a day care
reason-profile-school = you run a school
reason-profile-employees = you have employees
reason-profile-online-giving = you receive gifts online
reason-profile-two-counters = one person alone counts the money
reason-profile-alcohol-at-events = alcohol is served at events
reason-profile-counselling = you offer counselling
reason-profile-social-media = you publish on social media
reason-profile-volunteer-drivers = people drive their own vehicles for you
reason-profile-children = children are in your care
reason-profile-youth = young people are in your care
reason-profile-vulnerable-adults = vulnerable adults are in your care
reason-profile-personal-data-held = you hold personal information
reason-profile-snow-by-volunteers = volunteers clear your snow
reason-profile-largest-event = your largest event draws a crowd
reason-profile-attendance = your gatherings are large
reason-building-ownership = you are responsible for { $building }
reason-building-special-features = there are special features at { $building }
reason-building-basement = there is a basement at { $building }
reason-building-contents-below-grade = things are kept below ground at { $building }
reason-building-heritage = heritage rules protect { $building }
reason-building-year-built = older building rules shaped { $building }
reason-building-heating-type = oil heats { $building }
reason-building-province = earthquakes can reach { $building }
reason-organisation-province = your province has an earthquake risk
reason-organisation-organisation-class = organisations of your kind usually need it
reason-organisation-registration-number = you are a registered charity

## What is still to be asked: a clause that follows "we need to know"

ask-profile-owns-premises = whether you own your premises
ask-profile-rents-premises = whether you rent premises
ask-profile-playground = whether you have a playground
ask-profile-cemetery = whether you have a cemetery
ask-profile-solar-panels = whether you have solar panels
ask-profile-camp = whether you run a camp
ask-profile-trips-in-canada = whether you organise trips within Canada
ask-profile-trips-abroad = whether you organise trips abroad
ask-profile-volunteers = how many volunteers you have
ask-profile-hall-rental = whether you rent space to others
ask-profile-construction-planned = whether construction work is planned
ask-profile-revenue-rents = how much rent you receive
ask-profile-revenue-tuition = how much you receive in fees or tuition
ask-profile-revenue-donations = how much you receive in donations
ask-profile-revenue-events = how much your events bring in
ask-profile-food-service = whether you prepare or serve food
ask-profile-day-care = whether you run a day care
ask-profile-school = whether you run a school
ask-profile-employees = how many employees you have
ask-profile-online-giving = whether you receive gifts online
ask-profile-two-counters = whether two people count the money together
ask-profile-alcohol-at-events = whether alcohol is served at events
ask-profile-counselling = whether you offer counselling
ask-profile-social-media = whether you publish on social media
ask-profile-volunteer-drivers = whether people drive their own vehicles for you
ask-profile-children = whether children are in your care
ask-profile-youth = whether young people are in your care
ask-profile-vulnerable-adults = whether vulnerable adults are in your care
ask-profile-personal-data-held = whether you hold personal information
ask-profile-snow-by-volunteers = whether volunteers clear your snow
ask-profile-largest-event = how many people come to your largest event
ask-profile-attendance = how many people attend a usual gathering
ask-building-ownership = whether you own each building
ask-building-special-features = what is special about each building
ask-building-basement = what kind of basement each building has
ask-building-contents-below-grade = whether things are kept below ground
ask-building-heritage = whether each building is a heritage building
ask-building-year-built = when each building was built
ask-building-heating-type = how each building is heated
ask-building-province = which province each building stands in
ask-organisation-province = which province you are in
ask-organisation-organisation-class = what kind of organisation you are
ask-organisation-registration-number = your charity registration number, if you have one

## terms.dropped

terms-dropped-title = { $extent ->
    [some] Gone from the new offer for { $places }: { $coverage }
   *[all] Gone from the new offer: { $coverage }
}
terms-dropped-means = { $case ->
    [limit] Your present policy pays up to { $limit }. From { $day }, such a loss would be all yours.
   *[plain] Your present policy has this cover. From { $day }, such a loss would be all yours.
}
terms-dropped-todo = { $basis ->
    [claims-made] { $act } Before { $day }, report anything that might become a claim; afterwards it may be too late.
   *[other] { $act }
}
terms-dropped-act = { $kind ->
    [know] Nothing to send. Ask us if you want it back.
   *[decide] { $case ->
        [price] Decide: take it back { $price }, or do without it.
       *[ask] Decide: have us ask for it back, or do without it.
    }
}

## terms.worse

terms-worse-title = { $case ->
    [grave] { $coverage }: { $change }
    [money] { $coverage }: up to { $amount } more of a loss would be yours
   *[plain] { $coverage }: the new offer gives you less
}
terms-worse-means = Compared with your present policy: { $changes }.
and-own-part = { $change } { $part }
own-part-base = { $case ->
    [insured] { $percent } of the { $base } insured
    [loss] { $percent } of a loss of { $base }, the largest there can be
   *[value] { $percent } of the { $base } that replacing what stands there costs
}
own-part = { $case ->
    [share] Your own part of a loss could reach { $amount }: { $base }. Today it is at most { $before }.
    [least] Your own part of a loss would be { $amount }, because { $base } comes to less than the smallest deductible. Today it is at most { $before }.
   *[most] Your own part of a loss could reach { $amount }, where a cap stops it: { $base }. Today it is at most { $before }.
}
terms-worse-with-the-plan = Nothing more to send: the prevention declaration comes first. What it brings back, we ask the insurer.
terms-worse-todo = { $kind ->
    [decide] { $case ->
        [amounts] Decide: accept the change, take the option, or have us ask for the present terms. The option gives { $amounts }, { $price }.
        [price] Decide: accept the change, take the option { $price }, or have us ask for the present terms.
       *[ask] Decide: accept the change, or have us ask what the present terms would cost.
    }
   *[know] Nothing to send. Ask us if this change does not suit you.
}

## terms.added, terms.better

terms-added-title = { $count ->
    [one] One cover is new in the offer
   *[other] { $count } covers are new in the offer
}
terms-added-means = New: { $changes }.
terms-added-todo = Nothing to send. Check that you want what is new.
terms-better-title = { $count ->
    [one] One part of the offer is better than your present policy
   *[other] { $count } parts of the offer are better than your present policy
}
terms-better-means = Better: { $changes }.
terms-better-todo = Nothing to send.
usual-rise = { $case ->
    [one] sums insured rise by about { $most }, as they do each year
   *[range] sums insured rise by about { $least } to { $most }, as they do each year
}

## terms.unclear

terms-unclear-title = { $count ->
    [one] One change can only be judged by reading the wording
   *[other] { $count } changes can only be judged by reading the wording
}
terms-unclear-means = These may be better or worse: { $changes }.
terms-unclear-todo = Read both wordings side by side, and ask the insurer where they are silent.

## terms.not-as-requested, terms.not-as-agreed

terms-not-as-requested-title = { $count ->
    [one] The offer gives less than was asked on one point
   *[other] The offer gives less than was asked on { $count } points
}
terms-not-as-requested-means = Compared with the request: { $changes }.
terms-not-as-requested-todo = Ask the insurer to correct the offer, or to say why not.
terms-not-as-agreed-title = { $count ->
    [one] The policy gives less than was agreed on one point
   *[other] The policy gives less than was agreed on { $count } points
}
terms-not-as-agreed-means = Compared with what was agreed: { $changes }.
terms-not-as-agreed-todo = Ask the insurer to correct the policy back to its first day, and to confirm in writing.
terms-taken-but-missing-title = Taken, but not in the policy: { $coverage }
terms-taken-but-missing-means = The leaders decided to take this option. The policy that was issued does not show it.

## terms.option-open

terms-option-open-title = { $case ->
    [price] Not covered: { $coverage }; the insurer offers it { $price }
   *[ask] Not covered: { $coverage }; nobody has priced it yet
}
terms-option-open-means = { $case ->
    [limit] { $why ->
        [because] This matters because { $because }. The insurer offers to pay up to { $limit }; without it, such a loss is all yours.
       *[always] Every organisation can meet such a loss. The insurer offers to pay up to { $limit }; without it, the loss is all yours.
    }
   *[plain] { $why ->
        [because] This matters because { $because }. Without this cover, such a loss is all yours.
       *[always] Every organisation can meet such a loss. Without this cover, it is all yours.
    }
}
terms-option-open-todo = { $case ->
    [price] Decide: take it, leave it, later, or ask us.
   *[ask] Decide: have us ask for a price, or do without it.
}
terms-options-together-title = { $count ->
    [one] One option is on offer: { $options }
   *[other] { $count } options are on offer: look at them together
}
terms-options-together-means = On offer: { $options }.
terms-options-together-todo = { $count ->
    [one] Mark it on the decisions form: take it, leave it, later, or ask us.
   *[other] Mark each one on the decisions form: take it, leave it, later, or ask us.
}
yearly-price = { $case ->
    [free] at no extra charge
   *[priced] for { $price } a year
}
option-offer = { $act ->
    [raise] { $case ->
        [price] { $coverage } raised from { $now } to { $amounts } { $price }
       *[ask] { $coverage } raised from { $now } to { $amounts }, price on request
    }
    [widen] { $case ->
        [price] { $coverage } made wider { $price }
       *[ask] { $coverage } made wider, price on request
    }
    [add-up-to] { $case ->
        [price] { $coverage } up to { $amounts } { $price }
       *[ask] { $coverage } up to { $amounts }, price on request
    }
   *[add] { $case ->
        [price] { $coverage } { $price }
       *[ask] { $coverage }, price on request
    }
}
deductible-share = { $case ->
    [least] { $share }, at least { $least }
    [most] { $share }, at most { $most }
    [least-most] { $share }, at least { $least } and at most { $most }
   *[alone] { $share }
}
deductible-share-of = { $percent } { $of }
deductible-share-plain = { $percent }
deductible-share-same = the percentage as offered
option-amounts = { $case ->
    [limit] { $limit }
    [deductible] a deductible (your own part of a loss) of { $deductible }
   *[limit-deductible] { $limit } with a deductible (your own part of a loss) of { $deductible }
}
terms-not-shown-title = { $count ->
    [one] One cover that this organisation needs is not shown in the terms
   *[other] { $count } covers that this organisation needs are not shown in the terms
}
terms-not-shown-means = Not shown: { $coverages }. Some may be part of another cover.
terms-not-shown-todo = Check the wording for each one; ask the insurer for those that are not there.
terms-questions-title = { $count ->
    [one] One unanswered question decides which cover you need
   *[other] { $count } unanswered questions decide which cover you need
}
terms-questions-means = We need to know { $questions }.
terms-questions-todo = Answer them on the form that is enclosed. “Not known” is an answer too.

## terms.additional-limit-basis

terms-additional-limit-basis-title = { $owns ->
    [yes] The organisation owns its building but has the shared limit of a renter
   *[no] The organisation rents but has the shared limit of an owner
}
terms-additional-limit-basis-means = The shared additional limit of { $amount } is meant for { $meant }. It is one extra amount a year that tops up several covers.
terms-additional-limit-basis-todo = Ask the insurer to set the shared limit on the right basis.

## terms.damages

terms-damages-title = Your policy would not pay all that a court can order: { $damages }
terms-damages-means = A court may add such sums as a punishment. These covers leave them out: { $coverages }. Where the law allows, insurance can pay them.
terms-damages-todo = Nothing to send. Ask us whether the insurer can include them where you are.
terms-damages-unstated-title = The offer does not say whether punitive damages are paid
terms-damages-unstated-means = No liability line names punitive, exemplary or multiplied damages. A silent wording may go either way.
terms-damages-unstated-todo = Ask the insurer for the clause, and record the answer.

## terms.defence-inside

terms-defence-inside-title = { $count ->
    [one] Lawyers' bills would use up one of your limits
   *[other] Lawyers' bills would use up { $count } of your limits
}
terms-defence-inside-means = Defence costs come out of the limit here: { $coverages }. What lawyers cost is then missing for the person harmed, and you would owe the rest.
terms-defence-inside-todo = Nothing to send. Ask us what a higher limit, or defence on top of it, would cost.

## terms.claims-made

terms-claims-made-switched-title = { $coverage }: only claims made during the policy period would count
terms-claims-made-switched-means = Your present policy counts what happens during its period, whenever the claim comes. The offer would count only claims that come in while it is in force.
terms-claims-made-switched-todo = Decide with us. Ask the insurer to write down from which day past events count. Before { $day }, report anything that might become a claim.
terms-claims-made-moved-title = { $coverage }: work of past years would lose its cover
terms-claims-made-moved-means = Until now, events from { $was } on count. In the offer, only events from { $since } on would count.
terms-claims-made-moved-todo = Decide: have us ask for the earlier day back. Before { $day }, report anything that might become a claim.
terms-claims-made-missing-title = { $coverage }: the terms do not say from which day past events count
terms-claims-made-missing-means = Cover that counts claims when they are made needs a retroactive date (the first day whose events count). None is shown.
terms-claims-made-missing-todo = Ask the insurer for the date, or for “full prior acts” in writing.
terms-reporting-title = { $coverage }: the terms do not say how long claims may be reported afterwards
terms-reporting-means = When such cover ends, claims that come later count only within the reporting period. None is shown.
terms-reporting-todo = Ask the insurer for the reporting period and what a longer one costs.

## terms.vacancy

terms-vacancy-title = { $state ->
    [past] Empty longer than the policy allows: { $buildings }
   *[coming] Empty too long after { $day }: { $buildings }
}
terms-vacancy-means = The policy allows { $days ->
    [one] one empty day
   *[other] { $days } empty days
} in a row. After that, cover usually shrinks or stops, often for theft, vandalism and water first. The wording decides.
terms-vacancy-todo = Decide: have us ask the insurer for a written permission. Keep the heat on or drain the water, and have someone walk through and note it, as the insurer asks.
terms-vacancy-unknown-title = Empty, and the terms do not say for how long that may last: { $buildings }
terms-vacancy-unknown-means = Most wordings limit the days in a row that a building may stand empty. The file does not hold that number.
terms-vacancy-unknown-todo = Look it up in the wording, record it, and ask for a permission if needed.
terms-vacancy-which-title = Tell us which building stands empty, and since when
terms-vacancy-which-means = You told us that a building is not in use. Cover usually shrinks or stops when that lasts too long.
terms-vacancy-which-todo = Write the building and the first empty day on the statement of values.

## terms.total-loss-gap, terms.sublimit-thin

reason-total-loss = A total fire would leave this to find.
reason-sublimit-thin = A loss like yours is larger than the amount.
reason-cannot-be-tried = Nobody can say what these terms pay until this is clear.
terms-total-loss-gap-title = If { $building } burned down, about { $borne } of the cost would be yours
terms-total-loss-gap-means = All of it would cost about { $lost }, and the terms pay about { $paid }. Yours would be: { $gaps }. The sizes are examples, scaled to your own values.
terms-total-loss-gap-part = { $what } ({ $borne })
terms-total-loss-gap-todo = Look at the largest of these first. Ask us what raising each amount would cost.
terms-sublimit-thin-title = { $coverage }: { $limit } could leave about { $over } to you
terms-sublimit-thin-means = { $whose ->
    [own] You have had such a loss: { $loss }, about { $lost }. The same loss today would be more than the limit (the most the insurer pays).
   *[model] Once in a hundred years, such a loss would come to about { $lost } or more where you are ({ $loss }). That is more than the limit (the most the insurer pays).
} Place: { $place }.
terms-sublimit-thin-offer = The insurer offers { $limit }. { $told }
terms-sublimit-thin-todo = { $kind ->
    [sewer-backup] Ask us what a higher limit would cost. A backwater valve, and nothing of value kept low, make such a loss smaller.
   *[other] Ask us what a higher limit would cost.
}
terms-cannot-be-tried-title = These terms cannot be tried on a loss
terms-cannot-be-tried-means = { $why }
terms-cannot-be-tried-todo = Correct the terms on file, or ask the insurer what is meant.
