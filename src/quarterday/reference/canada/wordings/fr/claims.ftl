## The record

claims-incurred-label = Coût des sinistres du { $start } au { $end }
claims-incurred-how = { $n ->
    [one] Un sinistre : payé, plus réservé, moins récupéré.
   *[other] La somme de { $n } sinistres : payé, plus réservé, moins récupéré.
}
claims-net-label = Coût des sinistres après franchise, du { $start } au { $end }
claims-net-how = { $n ->
    [one] Un sinistre, moins sa franchise.
   *[other] La somme de { $n } sinistres, chacun moins sa franchise.
}
claims-water-share-label = Part des sinistres causés par l'eau, du { $start } au { $end }
claims-water-share-how = Les sinistres d'eau, divisés par les { $n } sinistres en tout.
claims-water-cost-share-label = Part de l'eau dans le coût des sinistres, du { $start } au { $end }
claims-water-cost-share-how = Le coût des sinistres d'eau, divisé par le coût des { $n } sinistres en tout.
claims-claim-label = Sinistre du { $day } : { $cause }
claims-claim-how = Payé, plus réservé, moins récupéré.
claims-claim-net-label = Sinistre du { $day } après franchise : { $cause }
claims-claim-net-how = Le coût du sinistre, moins sa franchise; jamais sous zéro.
claims-claim-net-how-unknown = Le coût du sinistre. Sa franchise n'est pas au dossier; rien n'est donc retranché.
claims-cause = { $cause }

## Water

claims-water-lookback-title = { $building } : { $n ->
    [one] un sinistre d'eau en { $years } ans, le questionnaire sur l'eau est requis
   *[other] { $n } sinistres d'eau en { $years } ans, le questionnaire sur l'eau est requis
}
claims-water-lookback-means = Les dégâts d'eau ont coûté { $amount }; le dernier date du { $day }. L'assureur regarde l'eau de près et peut hausser la franchise, la part que vous payez vous-même.
claims-water-lookback-todo = Remplissez le questionnaire sur l'eau : ce qui a été réparé, et ce qui arrête maintenant l'eau à temps. De bonnes réponses aident le prix.
claims-water-lookback-reason = { $n ->
    [one] Un sinistre d'eau dans les { $years } ans avant le { $renewal }.
   *[other] { $n } sinistres d'eau dans les { $years } ans avant le { $renewal }.
}

## The same again

claims-repeat-title = { CAPITAL($cause) } : { $n } fois en { $years } ans
claims-repeat-means = C'est arrivé aux dates suivantes : { $days }. Le coût total est de { $amount }. Une autre fois pourrait vous coûter la garantie ou une franchise plus élevée.
claims-repeat-todo = Dites-nous ce qui a changé depuis le dernier. Si rien n'a changé, demandez-nous ce qui l'éviterait.
claims-repeat-reason = { $n } sinistres d'une même cause en { $years } ans.

## Open claims

claims-stale-reserve-title = Le sinistre { $claim } est ouvert et rien n'a bougé depuis le { $moved }
claims-stale-reserve-means = La réserve est encore de { $outstanding } ({ $cause }, { $day }). Une réserve compte comme une perte quand on fixe le prix du renouvellement.
claims-stale-reserve-todo = Demandez à l'expert de l'assureur si l'on peut fermer le sinistre ou réduire la réserve avant le renouvellement.
claims-stale-reserve-reason = Aucun mouvement depuis { $months } mois ou plus.
