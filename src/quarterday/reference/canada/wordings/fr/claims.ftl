## The record

claims-incurred-label = Coût des sinistres pour l'assureur du { $start } au { $end }
claims-incurred-how = { $n ->
    [0] Aucun sinistre.
    [one] Un sinistre : payé, plus réservé, moins récupéré.
   *[other] La somme de { $n } sinistres : payé, plus réservé, moins récupéré.
}
claims-ground-up-label = Montant des sinistres, franchises comprises, du { $start } au { $end }
claims-ground-up-how = { $n ->
    [0] Aucun sinistre.
    [one] Un sinistre, franchise comprise.
   *[other] La somme de { $n } sinistres, chacun avec sa franchise.
}
claims-water-share-label = Part des sinistres causés par l'eau, du { $start } au { $end }
claims-water-share-how = Les sinistres d'eau, divisés par les { $n } sinistres en tout.
claims-water-cost-share-label = Part de l'eau dans le coût des sinistres, du { $start } au { $end }
claims-water-cost-share-how = Le coût des sinistres d'eau, divisé par le coût des { $n } sinistres en tout.
claims-claim-label = Sinistre du { $day } : { $cause }
claims-claim-how = { $case ->
    [less] Payé, plus réservé, moins récupéré, moins la franchise que le relevé compte; jamais sous zéro.
   *[as-shown] Payé, plus réservé, moins récupéré.
}
claims-claim-ground-up-label = Sinistre du { $day }, franchise comprise : { $cause }
claims-claim-ground-up-how = { $case ->
    [shown] Payé, plus réservé, moins récupéré. Le relevé compte la franchise.
    [unknown] Le coût du sinistre pour l'assureur. La franchise n'est pas au dossier; rien n'est donc ajouté.
   *[more] Le coût du sinistre pour l'assureur, plus la franchise. Rien si l'assureur n'a rien payé.
}
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

## Claims beside the premium

claims-trended = Sinistre du { $day } aux prix du renouvellement : { $cause }
claims-how-not-trended = Tel qu'il était. Aucun indice n'est connu ici pour ce genre de sinistre.
claims-experience-premium = Prime de { $years } ans au prix d'aujourd'hui, pour les jours écoulés
claims-experience-how-premium = La prime annuelle des conditions qui prennent fin, avant taxe, pour chaque année jusqu'à aujourd'hui. Les prix d'avant ne sont pas au dossier.
claims-experience-incurred = Coût des sinistres pour l'assureur en { $years } ans
claims-experience-how-incurred = La somme de tous les sinistres : payé, plus réservé, moins récupéré.
claims-experience-capped = Le même coût, chaque sinistre étant plafonné
claims-experience-how-capped = La somme de tous les sinistres, chacun compté jusqu'au plafond. Un seul gros sinistre ne doit pas représenter plusieurs années.
claims-experience-ratio = Part de la prime prise par les sinistres, { $years } ans
claims-experience-how-ratio = Les sinistres, divisés par la prime. La prime est celle d'aujourd'hui, les sinistres sont aux prix de leur année.
claims-experience-capped-ratio = Part de la prime prise par les sinistres plafonnés, { $years } ans
claims-experience-how-capped-ratio = Les sinistres plafonnés, divisés par la prime. La prime est celle d'aujourd'hui, les sinistres sont aux prix de leur année.
claims-experience-title = Les sinistres ont pris { $share } de { $years ->
    [1] un an
   *[other] { $years } ans
} de votre prime
claims-experience-means = Depuis le { $start }, votre prime au prix d'aujourd'hui donne { $premium }. L'assureur a payé ou réservé { $incurred } pour { $n ->
    [0] aucun sinistre
    [one] un sinistre
   *[other] { $n } sinistres
}, les gros comptés en partie. Un assureur qui paie plus qu'il ne reçoit hausse le prix ou la franchise, la part que vous payez vous-même.
claims-experience-todo = Dites-nous ce que vous avez changé depuis ces sinistres. C'est le meilleur argument pour un meilleur prix.
claims-experience-reason = Les sinistres ont pris { $share } de la prime; l'examen en parle à partir de { $most }.

## Reported late

claims-delay-label = Jours entre le sinistre du { $day } et sa déclaration : { $cause }
claims-delay-how = Le jour où l'assureur a été avisé, moins le jour du sinistre.
claims-delayed = { $cause }, { $day }, déclaré { $days } jours plus tard
claims-reported-late-title = { $n ->
    [one] Un sinistre a été déclaré { $most } jours après coup
   *[other] { $n } sinistres ont été déclarés tard, dont un après { $most } jours
}
claims-reported-late-means = { CAPITAL($each) }. Les conditions demandent de déclarer un sinistre sans tarder. Un assureur avisé tard peut moins bien vérifier; il peut payer moins, ou rien.{ $whose ->
    [others] {" "}Ce que d'autres vous réclament n'est parfois connu que tard; alors personne n'a tardé.
   *[own] {""}
}
claims-reported-late-todo = Déclarez le prochain sinistre tout de suite, même petit, ainsi que tout ce qui pourrait devenir une réclamation. Convenez de qui nous appelle.
claims-reported-late-reason = Plus de { $days } jours entre le sinistre et sa déclaration.

## The same event twice

claims-duplicate-title = Les sinistres { $claim } et { $others } sont un seul événement
claims-duplicate-means = { CAPITAL($cause) }, { $day }, { $amount } : { $n } numéros pour le même jour, la même cause et le même lieu. Il compte une fois, tel que le montre le sinistre { $claim }.
claims-duplicate-todo = Demandez à l'assureur quel numéro est le bon et faites retirer l'autre du relevé.
claims-duplicate-reason = Compté deux fois, il ferait paraître le dossier pire qu'il n'est.

## Claims that cannot be so

claims-contradiction-title = { $case ->
    [closed-with-reserve] Le sinistre { $claim } est fermé, mais { $beside } sont encore en réserve
    [negative-reserve] La réserve du sinistre { $claim } est sous zéro : { $beside }
    [recovered-more] Le sinistre { $claim } a récupéré { $beside }, plus que le payé et le réservé
    [reported-before] Le sinistre { $claim } a été déclaré le { $beside }, avant d'arriver
    [valued-before] Le sinistre { $claim } a été évalué le { $beside }, avant d'arriver
    [in-the-future] La date du sinistre { $claim } est encore à venir
    [before-founded] Le sinistre { $claim } est plus vieux que l'organisme, fondé en { $beside }
   *[above-value] Le sinistre { $claim } a coûté plus que la valeur du bâtiment
}
claims-contradiction-means = { $case ->
    [above-value] { CAPITAL($cause) }, { $day } : coût de { $amount }; le bâtiment vaut { $beside } à la fin de la prochaine période. L'évaluation est peut-être trop basse, ou le montant est faux.
    [before-founded] { CAPITAL($cause) }, { $day }, { $amount }. Il appartient peut-être à quelqu'un d'autre, ou l'année de fondation est fausse.
   *[other] { CAPITAL($cause) }, { $day }, { $amount }. Le relevé se contredit, et l'assureur s'en sert pour fixer le prix.
}
claims-contradiction-todo = { $case ->
    [above-value] Vérifiez le montant auprès de l'assureur, et la valeur du bâtiment.
    [before-founded] Demandez à l'assureur à qui est ce sinistre, et à l'organisme quand il a été fondé.
   *[other] Demandez à l'assureur un relevé corrigé.
}
claims-contradiction-reason = Un sinistre faux fausse tous les chiffres tirés du dossier.
