## Draft motions for the minutes: for a question, and against it

motion-cost = at about { $cost } a year before tax
motion-cost-free = at no extra charge
motion-cost-open = once the board has approved the price
motion-stake = up to { $amount } of a loss would be the organisation's own
motion-stake-open = such a loss would be the organisation's own
motion-insurer = the insurer
motion-premium = The premium is { $premium } for the year, with tax.
motion-later = The premium is to be approved once the insurer has named it.

motion-people-abuse-unqualified = Moved that the board review the abuse prevention plan; that the chair sign the declaration; and that it declare only what is truly done.
motion-people-activity-uncovered = Moved that this cover be bought, { $cost }: { $subject }.
motion-people-activity-uncovered-instead = Moved that this cover not be bought: { $subject }; and that the minutes record that { $stake }.
motion-income-too-low = Moved that the limit for lost income be raised to { $need }, { $cost }.
motion-income-too-low-instead = Moved that the limit for lost income stay at { $limit }; and that the minutes record that { $short } of income could be missing.
motion-income-extra-expense-low = Moved that the broker ask for a limit of { $need } for extra expense, to be taken { $cost }.
motion-income-extra-expense-low-instead = Moved that the limit for extra expense stay at { $limit }; and that the minutes record that { $short } could be missing.
motion-income-too-low-offer = Moved that the limit for lost income be raised to { $offered }, as the insurer offers, { $cost }{ $reach ->
    [all] .
   *[part] ; and that the broker ask what { $need } would cost.
}
motion-income-too-low-offer-instead = Moved that the limit for lost income stay at { $limit }; and that the minutes record that { $short } of income could be missing.
motion-income-extra-expense-low-offer = Moved that the limit for extra expense be raised to { $offered }, as the insurer offers, { $cost }{ $reach ->
    [all] .
   *[part] ; and that the broker ask what { $need } would cost.
}
motion-income-extra-expense-low-offer-instead = Moved that the limit for extra expense stay at { $limit }; and that the minutes record that { $short } could be missing.
motion-terms-claims-made-switched = Moved that the broker ask the insurer to write down from which day past events count; and that anything that might become a claim be reported before the renewal.
motion-terms-claims-made-switched-instead = Moved that this change be accepted: { $coverage }; and that anything that might become a claim be reported before the renewal.
motion-terms-claims-made-moved = Moved that the broker ask the insurer for the earlier day back: { $coverage }; and that anything that might become a claim be reported before the renewal.
motion-terms-claims-made-moved-instead = Moved that the later day be accepted: { $coverage }; and that anything that might become a claim be reported before the renewal.
motion-terms-dropped = Moved that this cover be added again, { $cost }: { $coverage }.
motion-terms-dropped-instead = Moved that the renewal be accepted without this cover: { $coverage }; and that the minutes record that { $stake }.
motion-terms-option-open = Moved that this cover be bought, { $cost }: { $coverage }.
motion-terms-option-open-instead = Moved that this cover not be bought this year: { $coverage }; and that the minutes record that { $stake }.
motion-terms-options-together = { $count ->
    [one] Moved that this option be taken, { $cost }: { $options }.
   *[other] Moved that of the options on offer those marked “take it” on the decisions form be bought; and that the others be declined. They are: { $options }.
}
motion-terms-options-together-instead = { $count ->
    [one] Moved that this option not be taken this year: { $options }.
   *[other] Moved that none of the options on offer be bought this year: { $options }.
}
motion-terms-vacancy = Moved that the broker ask the insurer in writing to let these stand empty: { $buildings }; and that heat, water and visits be kept as the insurer asks.
motion-terms-vacancy-instead = Moved that no permission be asked for: { $buildings }; and that the minutes record that cover may stop while they stand empty.
motion-terms-worse = { $priced ->
    [no] Moved that the broker ask for the present terms again, and tell the board their price: { $coverage }.
   *[yes] Moved that the broker ask for the present terms again, or that the insurer's option be taken, { $cost }: { $coverage }.
}
motion-terms-worse-instead = Moved that the narrower terms be accepted: { $coverage }; and that the minutes record that { $stake }.
motion-values-below-replacement = Moved that the sum insured of { $building } be raised by { $gap }, { $cost }.
motion-values-below-replacement-instead = Moved that the sum insured of { $building } stay as it is; and that the minutes record that { $gap } would be missing after a total loss.
motion-values-below-replacement-together = Moved that the sums insured of all buildings named on the agenda be raised to what they cost to rebuild, { $cost }.
motion-values-below-replacement-together-instead = Moved that the sums insured stay as they are; and that the minutes record that { $n } buildings could not be rebuilt with them.
motion-values-coinsurance = Moved that the statement of values of { $building } be signed; and that the broker ask for an agreed value, which sets the coinsurance clause aside.
motion-values-coinsurance-instead = Moved that no agreed value be asked for { $building }; and that the minutes record that coinsurance may cut any claim.
motion-values-valuation-stale = Moved that { $building } be valued afresh before the next renewal; and that the treasurer choose between an appraisal and a desk valuation.
motion-values-valuation-stale-instead = Moved that the present sum insured of { $building } be kept for a year without a new valuation; and that the minutes record it.
motion-other = Moved that the board act as the agenda proposes, { $cost }: { $question }.
motion-other-instead = Moved that the board not act on this now: { $question }; and that the minutes record that { $stake }.

motion-accept-about = The renewal of { $start }
motion-accept = { $count ->
    [0] Moved that the offer of { $insurer } be accepted for the term from { $start } to { $end }. { $premium }
   *[other] Moved that the offer of { $insurer } be accepted for the term from { $start } to { $end }, as changed by the motions above. { $premium }
}
