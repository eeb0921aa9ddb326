# Le portefeuille entier, pour sa direction : au bureau, au terminal et dans les exports.

book = Le portefeuille
book-alternative = { $title }. { $message } { $rows }.

## Le nom des sujets et de leurs images

book-work = Travail par semaine
book-work-chart = Étapes ouvertes selon la semaine où elles sont dues
book-states = Où en sont les renouvellements
book-states-chart = Renouvellements par état
book-values = Montants assurés et coûts de construction
book-values-chart = Coût des bâtiments au renouvellement : atteint par les hausses, et non atteint
book-offers = Offert, accepté, refusé
book-offers-chart = Options des offres des assureurs
book-cover = Adhésion aux garanties
book-cover-chart = Organismes qui ont besoin d'une garantie : avec elle, et sans elle
book-causes = Sinistres par cause, et part de l'eau
book-causes-chart = Coût des sinistres pour les assureurs, par cause
book-years = Sinistres et primes, par année du sinistre
book-years-chart = Pour 100 de prime : le coût des sinistres, et ce qui reste
book-classes = Sinistres et primes, par type d'organisme
book-classes-chart = Pour 100 de prime : le coût des sinistres, et ce qui reste
book-insurers = Sinistres et primes, par assureur
book-insurers-chart = Pour 100 de prime : le coût des sinistres, et ce qui reste
book-provinces = Sinistres et primes, par province
book-provinces-chart = Pour 100 de prime : le coût des sinistres, et ce qui reste

## Ce qu'ils disent

book-week-late = en retard
book-week-later = plus tard
book-work-message = { $case ->
    [none] Rien n'est dû dans les douze prochaines semaines, et rien n'est en retard.
   *[some] { $late ->
        [0] Aucune étape n'est en retard.
        [one] Une étape est en retard.
       *[other] { $late } étapes sont en retard.
    } { $soon ->
        [0] Aucune n'est due
        [one] Une est due
       *[other] { $soon } sont dues
    } cette semaine et la suivante; la semaine du { $week } en compte le plus : { $most }.
}
book-states-message = { $renewals ->
    [0] Aucun renouvellement :
    [one] Un renouvellement :
   *[other] { $renewals } renouvellements :
} { $late ->
    [0] rien n'est en retard
    [one] un a quelque chose en retard
   *[other] { $late } ont quelque chose en retard
}, et { $impossible ->
    [0] tout peut encore se faire à temps.
    [one] un a une étape qui ne peut plus se faire à temps.
   *[other] { $impossible } ont une étape qui ne peut plus se faire à temps.
}
book-premium-note = Prime : celle des conditions les plus récentes, avant taxes.
book-values-bar = { $case ->
    [ahead] { $gap } d'avance
   *[behind] { $gap } de retard
}
book-values-short = Après la perte totale de chaque bâtiment, il manquerait { $short } en tout, bâtiment par bâtiment.
book-causes-none = Aucun sinistre qui ait coûté quelque chose n'est inscrit.
book-causes-message = L'eau a causé { $share } de ce qu'ont coûté { $claims ->
    [one] un sinistre
   *[other] { $claims } sinistres
} en { $years } ans : { $water } sur { $incurred }.
book-years-message = { $year } a été l'année la plus coûteuse : { $amount } pour { $n ->
    [0] aucun sinistre.
    [one] un sinistre.
   *[other] { $n } sinistres.
}
book-experience-none = Aucune prime inscrite à laquelle comparer les sinistres.
book-experience-message = Les sinistres ont coûté { $share } de la prime de { $years } ans, chacun compté jusqu'à { $cap }.
book-experience-largest = { $name }, où la prime est la plus forte : les sinistres en ont coûté { $share } ({ $claims ->
    [0] aucun sinistre
    [one] un sinistre
   *[other] { $claims } sinistres
}).
book-experience-bar = { $share }, { $claims ->
    [0] aucun sinistre
    [one] un sinistre
   *[other] { $claims } sinistres
}
book-causes-note = Coût : payé et réservé, moins ce qui est recouvré, tel que les assureurs le supportent; plafonné : chaque sinistre compté jusqu'à { $cap }. Part : de ce que coûtent tous les sinistres.
book-experience-note = Prime : celle des conditions qui prennent fin, pour chaque année écoulée; les prix d'avant sont rarement au dossier. Rapport : ce que les sinistres coûtent aux assureurs, sur cette prime; plafonné : chaque sinistre compté jusqu'à { $cap }. Un rapport fondé sur peu de sinistres dit peu.
book-offers-message = { $offered ->
    [0] Les offres au dossier ne contiennent aucune option.
    [one] Une option a été offerte : { $taken } acceptée, { $left } refusée, { $open } non décidée.
   *[other] { $offered } options ont été offertes : acceptées, { $taken }; refusées, { $left }; non décidées, { $open }.
} { $left ->
    [0] { "" }
   *[other] Ce qui a été refusé aurait coûté { $price } par an.
}
book-offers-bar = { $taken } oui, { $left } non, sur { $offered }
book-offers-other = autres questions de l'ordre du jour
book-offers-note = Pour les renouvellements en cours. Non décidé : sans réponse, remis à plus tard, ou question à nous poser. Une réponse donnée à plusieurs options à la fois compte comme une autre question.
book-cover-none = Chaque organisme a les garanties dont on sait qu'il a besoin.
book-cover-message = { $hurting ->
    [0] Aucune lacune ne pourrait vraiment nuire à un organisme, selon la bibliothèque.
    [one] Une lacune pourrait vraiment nuire : { $coverage }.
   *[other] { $hurting } lacunes pourraient vraiment nuire; le plus souvent { $coverage } : { $n } des { $needed } qui en ont besoin.
} En tout, ce qui est nécessaire manque aux conditions { $missing ->
    [one] une fois.
   *[other] { $missing } fois.
}
book-cover-bar = { $held } sur { $needed }
book-cover-note = Nécessaire : selon les questions de la bibliothèque et les réponses de l'organisme. Une garantie comprise dans une autre, sous un autre nom, semble manquer.

## Titres des tableaux

book-head-id = { $of } (code)
book-head-week = Semaine
book-head-when = Semaine du
book-head-us = Nous
book-head-leaders = Dirigeants
book-head-insurer = Assureur
book-head-steps = Étapes
book-head-state = État
book-head-renewals = Renouvellements
book-head-late = En retard
book-head-impossible = Hors délai
book-head-premium = Prime
book-head-province = Province
book-head-buildings = Bâtiments
book-head-behind = En retard
book-head-increases = Hausses
book-head-costs = Coûts
book-head-lag = Retard
book-head-gap = Écart
book-head-short = Manque
book-head-cause = Cause
book-head-claims = Sinistres
book-head-incurred = Coût
book-head-share = Part
book-head-year = Année
book-head-class = Type
book-head-company = Assureur
book-head-files = Dossiers
book-head-earned = Prime
book-head-capped = Coût plafonné
book-head-ratio = Rapport
book-head-capped-ratio = Rapport plafonné
book-head-coverage = Garantie
book-head-offered = Offertes
book-head-taken = Acceptées
book-head-left = Refusées
book-head-later = Plus tard
book-head-asked = Demandé
book-head-unanswered = Sans réponse
book-head-price = Prix par an
book-head-price-taken = Prix accepté
book-head-price-left = Prix refusé
book-head-needed = Nécessaire
book-head-needed-held = Avec
book-head-missing = Sans
book-head-hurting = Peut nuire
book-head-take-up = Adhésion
book-head-held = En tout
book-head-unknown = Besoin inconnu

## Légendes des images

book-key-us = nous
book-key-leaders = les dirigeants
book-key-insurer = l'assureur
book-key-late = avec un retard
book-key-in-time = sans retard
book-key-grown = atteint par les hausses
book-key-gap = non atteint
book-key-water = eau
book-key-other = autres causes
book-key-capped = sinistres, les grands plafonnés
book-key-left-of-premium = reste de la prime
book-key-taken = acceptées
book-key-left = refusées
book-key-open = non décidées
book-key-held = avec elle
book-key-missing = sans elle
book-key-hurting = sans elle, et cela pourrait vraiment nuire

## La page et la commande

book-title = Le portefeuille au { $day }
book-as-of = Calculé au { $day }; établi le { $at }. { $changed ->
    [0] Aucun dossier n'a changé depuis.
    [one] Un dossier a changé depuis.
   *[other] { $changed } dossiers ont changé depuis.
}
book-not-made = Ces chiffres ne sont pas encore établis. Le serveur du bureau les établit dans les minutes qui suivent un chargement; ils restent jusqu'à ce que les dossiers ou le jour changent.
book-files = { $n ->
    [0] Aucun dossier
    [one] Un dossier
   *[other] { $n } dossiers
}
book-no-renewal = { $n ->
    [one] Un dossier n'indique aucune date de renouvellement : il compte parmi ceux en collecte.
   *[other] { $n } dossiers n'indiquent aucune date de renouvellement : ils comptent parmi ceux en collecte.
}
book-other-currency = { $n ->
    [one] Un dossier n'est pas en dollars canadiens : ses montants sont laissés de côté.
   *[other] { $n } dossiers ne sont pas en dollars canadiens : leurs montants sont laissés de côté.
}
book-office = Bureau
book-broker = Responsable
book-province = Province
book-first = Renouvelle de
book-last = Renouvelle jusqu'à
book-every = tous
book-topics = Sujets
book-table = Le tableau
book-none = Rien à montrer.
book-nothing = Aucun dossier ne correspond à ce choix.
book-all = Afficher tout le portefeuille
book-export = Exporter :
book-export-of = { $topic } en { $kind }
book-export-all = Le tout en classeur
book-kind-xlsx = classeur
book-kind-csv = CSV
book-kind-parquet = Parquet
book-about-as-of = au
book-about-made = établi
book-about-currency = devise
book-asked-months = renouvellements de { $first } à { $last }
book-no-topic = Il n'y a pas de sujet « { $topic } ». Il y a : { $topics }.
book-one-table = Un fichier CSV ou Parquet contient un seul tableau : nommez aussi un sujet ({ $topics }).
book-written = { $topic } : écrit dans { $path }.
acts-no-office = Il n'y a pas de bureau « { $office } », ou vous n'en voyez pas le portefeuille.
right-book = voir le portefeuille entier
role-at-desk-read-only-manager = direction, en lecture seule
