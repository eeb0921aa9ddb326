## What is due

diary-updates = The organisation's updates
diary-valuations = Valuations in hand
diary-request = Request to the insurer
diary-offer = The insurer's offer
diary-signature = Review signed by a licensed broker
diary-delivery = Package with the leaders
diary-decisions = The leaders' decisions
diary-payment = Choice of payment
diary-binding = Cover bound
diary-policy-check = Issued policy checked
diary-lender-copies = Copies to lenders and lessors

## How the days come about

diary-how = { $days ->
    [one] One day before the renewal on { $renewal }, or the last working day before that.
   *[other] { $days } days before the renewal on { $renewal }, or the last working day before that.
}
diary-after-how = { $days ->
    [one] One day after the renewal on { $renewal }, or the last working day before that.
   *[other] { $days } days after the renewal on { $renewal }, or the last working day before that.
}
diary-could-end = Earliest day it could be done: { $what }
diary-could-end-how = Begun on { $today }, each open step before it taking its shortest time. The last day that helps is { $last }.
