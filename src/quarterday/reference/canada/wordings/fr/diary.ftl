## What is due

diary-updates = Mises à jour de l'organisme
diary-valuations = Évaluations reçues
diary-request = Demande à l'assureur
diary-offer = Offre de l'assureur
diary-signature = Examen signé par un courtier titulaire d'un permis
diary-delivery = Dossier de renouvellement chez les dirigeants
diary-decisions = Décisions des dirigeants
diary-payment = Choix du mode de paiement
diary-binding = Protection en vigueur
diary-policy-check = Police émise vérifiée
diary-lender-copies = Copies aux prêteurs et locateurs

## How the days come about

diary-how = { $days ->
    [one] { $days } jour avant le renouvellement du { $renewal }, ou le dernier jour ouvrable qui précède.
   *[other] { $days } jours avant le renouvellement du { $renewal }, ou le dernier jour ouvrable qui précède.
}
diary-after-how = { $days ->
    [one] { $days } jour après le renouvellement du { $renewal }, ou le dernier jour ouvrable qui précède.
   *[other] { $days } jours après le renouvellement du { $renewal }, ou le dernier jour ouvrable qui précède.
}
diary-could-end = Premier jour où cela pourrait être fait : { $what }
diary-could-end-how = Commencé le { $today }, chaque étape encore ouverte prenant le moins de temps possible. Le dernier jour utile est le { $last }.
