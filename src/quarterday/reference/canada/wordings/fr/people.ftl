## Names and reasons

people-in-our-care = Personnes qui vous sont confiées
abuse-prevention = Prévention des abus
reason-people-first = Les personnes qui vous sont confiées passent d'abord.
reason-declaration-free = Revoir le plan et envoyer la déclaration ne coûte rien.

## people.abuse-unqualified

people-abuse-unqualified-title = { $state ->
    [dropped] Votre garantie en cas d'abus ne figure plus dans la nouvelle offre
    [absent] Rien dans votre contrat ne vise les abus envers les personnes qui vous sont confiées
    [unqualified] Votre garantie en cas d'abus attend votre déclaration de prévention
   *[unstated] Votre garantie en cas d'abus n'est pas confirmée
}
people-abuse-unqualified-means = { $state ->
    [dropped] La prévention protège les personnes; l'assurance n'aide qu'après coup. Votre contrat actuel a une garantie en cas d'abus et la nouvelle offre n'en a pas. L'assureur l'offre d'ordinaire à ceux qui montrent un plan de prévention réellement suivi.
    [absent] La prévention protège les personnes; l'assurance n'aide qu'après coup. Les conditions n'ont aucune garantie en cas d'abus. L'assureur l'offre d'ordinaire après avoir vu un plan de prévention réellement suivi.
    [unqualified] La prévention protège les personnes; l'assurance n'aide qu'après coup. L'assureur n'a pas accepté votre plan de prévention : filtrage, formation et toujours deux adultes présents. D'ici là, cette garantie est limitée ou absente.
   *[unstated] La prévention protège les personnes; l'assurance n'aide qu'après coup. Les conditions ne disent pas que l'assureur a accepté votre plan de prévention. Sans cela, cette garantie peut être limitée ou absente.
}
people-abuse-offer = { $means } Une fois le plan accepté, l'assureur offre jusqu'à { $limit }, { $price }.
people-abuse-unqualified-todo = Un enfant ou une personne vulnérable est en danger? Appelez d'abord les services d'urgence et la protection de l'enfance, comme la loi de la province l'exige, puis nous. À votre prochaine réunion, revoyez le plan. Signez et envoyez la déclaration, et ne déclarez que ce que vous faites vraiment.
people-care-unknown-title = Dites-nous si des enfants, des jeunes ou des adultes vulnérables vous sont confiés
people-care-unknown-means = Cela décide de la protection que vous leur devez et de la garantie qu'il vous faut. Il nous faut savoir { $questions }.
people-care-unknown-todo = Répondez sur le formulaire des activités. Un enfant ou une personne vulnérable est en danger? Appelez d'abord les services d'urgence et la protection de l'enfance, comme la loi de la province l'exige, puis nous.

## people.screening-due

people-screening-due-title = { $count ->
    [one] Une étape de votre prévention des abus est à faire
   *[other] { $count } étapes de votre prévention des abus sont à faire
}
people-screening-due-means = D'ici le renouvellement : { $steps }. Votre province ou vos propres règles peuvent les demander plus souvent.
people-screening-due-todo = Faites ce qui doit l'être, inscrivez les dates sur la déclaration et retournez-la. Quelqu'un est en danger? Appelez d'abord les services d'urgence et la protection de l'enfance, comme la loi de la province l'exige, puis nous.
screening-plan = { $case ->
    [late] le plan de prévention était à revoir le { $day } (tous les { $months } mois)
    [due] le plan de prévention est à revoir le { $day } (tous les { $months } mois)
   *[never] aucune révision du plan de prévention n'est au dossier (tous les { $months } mois)
}
screening-training = { $case ->
    [late] la formation au filtrage et à la prévention était à refaire le { $day } (tous les { $months } mois)
    [due] la formation au filtrage et à la prévention est à refaire le { $day } (tous les { $months } mois)
   *[never] aucune formation au filtrage et à la prévention n'est au dossier (tous les { $months } mois)
}
screening-checks = { $case ->
    [late] les vérifications policières étaient à renouveler le { $day } (tous les { $months } mois)
    [due] les vérifications policières sont à renouveler le { $day } (tous les { $months } mois)
   *[never] aucune date de vérification policière n'est au dossier (tous les { $months } mois)
}

## people.activity-uncovered

people-activity-uncovered-title = Rien dans votre contrat ne vise ceci : { $because }
people-activity-uncovered-means = La garantie prévue pour cela est « { $coverage } », et les conditions ne la montrent pas. En cas de malheur, l'organisme pourrait devoir payer seul.
people-activity-uncovered-todo = { $case ->
    [price] Décidez : l'accepter { $price }, la laisser, plus tard, ou nous demander.
   *[ask] Décidez : nous faire demander un prix, cesser l'activité, ou porter le risque.
}
people-activity-unnamed-title = À vérifier dans le texte : { $because }
people-activity-unnamed-means = Les conditions n'ont pas de ligne pour cela : { $coverage }. La responsabilité civile générale l'inclut souvent, mais pas toujours.
people-activity-unnamed-todo = { $case ->
    [price] Lisez le texte. Si ce n'est pas inclus, l'assureur l'ajoute { $price }.
   *[ask] Lisez le texte. Si ce n'est pas inclus, demandez un prix à l'assureur.
}
