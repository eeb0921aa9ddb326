## Names and reasons

people-in-our-care = People in your care
abuse-prevention = Abuse prevention
reason-people-first = The people in your care come first.
reason-declaration-free = Reviewing the plan and sending the declaration costs nothing.

## people.abuse-unqualified

people-abuse-unqualified-title = { $state ->
    [dropped] Your abuse cover is not in the new offer
    [absent] Nothing in your policy answers for abuse of people in your care
    [unqualified] Your abuse cover waits for your prevention declaration
   *[unstated] Your abuse cover is not confirmed
}
people-abuse-unqualified-means = { $state ->
    [dropped] Prevention protects people; insurance only helps afterwards. Your present policy has abuse cover and the new offer has none. Insurers usually offer it to those who show a prevention plan that is followed.
    [absent] Prevention protects people; insurance only helps afterwards. There is no abuse cover in the terms. Insurers usually offer it once they have seen a prevention plan that is followed.
    [unqualified] Prevention protects people; insurance only helps afterwards. The insurer has not accepted your prevention plan: screening, training, and two adults always present. Until it does, this cover is limited or missing.
   *[unstated] Prevention protects people; insurance only helps afterwards. The terms do not say that the insurer has accepted your prevention plan. Without that, this cover may be limited or missing.
}
people-abuse-offer = { $means } Once the plan is accepted, the insurer offers up to { $limit }, { $price }.
people-abuse-unqualified-todo = Is a child or vulnerable person at risk? Call emergency services and child protection first, as provincial law requires, then us. At your next meeting, review the plan. Sign and send the declaration, and declare only what you truly do.
people-care-unknown-title = Tell us whether children, youth or vulnerable adults are in your care
people-care-unknown-means = It decides which protection people need from you, and which cover you need. We need to know { $questions }.
people-care-unknown-todo = Answer on the operations form. Is a child or vulnerable person at risk? Call emergency services and child protection first, as provincial law requires, then us.

## people.screening-due

people-screening-due-title = { $count ->
    [one] One step of your abuse prevention is due
   *[other] { $count } steps of your abuse prevention are due
}
people-screening-due-means = By the renewal: { $steps }. Your province or your own rules may ask for them more often.
people-screening-due-todo = Do what is due, write the dates on the declaration, and send it back. Is someone at risk? Call emergency services and child protection first, as provincial law requires, then us.
screening-plan = { $case ->
    [late] a review of the prevention plan was due on { $day } (every { $months } months)
    [due] a review of the prevention plan falls due on { $day } (every { $months } months)
   *[never] no review of the prevention plan is on file (every { $months } months)
}
screening-training = { $case ->
    [late] screening and prevention training was due on { $day } (every { $months } months)
    [due] screening and prevention training falls due on { $day } (every { $months } months)
   *[never] no screening and prevention training is on file (every { $months } months)
}
screening-checks = { $case ->
    [late] new police record checks were due on { $day } (every { $months } months)
    [due] new police record checks fall due on { $day } (every { $months } months)
   *[never] no date of police record checks is on file (every { $months } months)
}

## people.activity-uncovered

people-activity-uncovered-title = Nothing in your policy answers for this: { $because }
people-activity-uncovered-means = The cover meant for it is “{ $coverage }”, and the terms do not show it. If something goes wrong, the organisation could have to pay by itself.
people-activity-uncovered-todo = { $case ->
    [price] Decide: take it { $price }, leave it, later, or ask us.
   *[ask] Decide: have us ask for a price, stop the activity, or carry the risk.
}
people-activity-unnamed-title = Check that the wording includes this: { $because }
people-activity-unnamed-means = The terms show no line for it: { $coverage }. General liability often includes it, but not always.
people-activity-unnamed-todo = { $case ->
    [price] Read the wording. If it is not included, the insurer adds it { $price }.
   *[ask] Read the wording. If it is not included, ask the insurer for a price.
}
