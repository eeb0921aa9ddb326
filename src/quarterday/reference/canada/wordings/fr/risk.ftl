## How much a record weighs

risk-weight = { $case ->
    [none] Tout vient d'organismes comme le vôtre : votre propre dossier de sinistres n'est pas connu.
    [hardly] Presque tout vient d'organismes comme le vôtre; votre propre dossier est encore court.
    [almost] Presque tout vient de votre propre dossier.
   *[parts] { $own } { $own ->
        [one] part
       *[other] parts
    } de votre dossier, { $others } { $others ->
        [one] part
       *[other] parts
    } d'organismes comme le vôtre.
}

## Credibility on its own

risk-rows-differ = Les valeurs et les poids n'ont pas les mêmes rangées et périodes. Donnez à chaque valeur son poids, null là où rien n'a été vu.
risk-weights-count = Un groupe a { $values } valeurs et { $weights } poids. Donnez son poids à chaque valeur.
risk-weights-negative = Un poids est négatif. Le poids dit combien on a observé; mettez 0 pour une période sans observation.
risk-two-groups = { $groups ->
    [0] Aucun groupe n'a été observé. Il en faut deux pour savoir à quel point les groupes diffèrent.
    [one] Un seul groupe a été observé. Il en faut deux pour savoir à quel point les groupes diffèrent.
   *[other] { $groups } groupes ont été observés.
}
risk-two-periods = Aucun groupe n'a été observé pendant deux périodes. Une seule période ne montre pas ce qui varie par hasard.
risk-full-wrong = Donnez une probabilité entre 0 et 1, un écart et une dispersion supérieurs à 0.
risk-step-structure = Variance à l'intérieur des groupes : { $within }. Variance entre les groupes : { $between }. La moyenne collective est de { $collective }.
risk-step-no-between = Variance à l'intérieur des groupes : { $within }. La variance entre les groupes s'établit à { $between }; ils ne diffèrent donc pas plus que par hasard. Aucun dossier ne reçoit de poids : la moyenne collective, { $collective }, vaut pour tous.
risk-step-group = { $group } : sa propre moyenne, { $own }, avec un poids de { $z }; le reste vient du collectif : { $estimate }.
risk-step-group-unseen = { $group } n'a pas été observé : la moyenne collective, { $estimate }, en tient lieu; son propre dossier a un poids de { $z }.
risk-step-poisson = { $claims ->
    [0] Aucun sinistre
    [one] Un sinistre
   *[other] { $claims } sinistres
} en { $years } ans, alors qu'on en attendait { $prior } par an : il faut maintenant en attendre { $mean } par an.
risk-step-full = À partir de { $full } sinistres, un dossier s'écarte de sa moyenne d'au plus { $within }, { $chance } du temps.

## Limited means on their own

risk-distribution-needs = La loi { $distribution } demande { $names }, au complet et rien d'autre.
risk-no-mean = Avec une forme de { $shape }, les sinistres n'ont pas de moyenne. Donnez une forme supérieure à 1, ou le plus gros sinistre possible.
risk-step-mean = Un sinistre moyen coûte { $mean }.
risk-step-limited = Si l'on ne compte pas plus de { $most } par sinistre, la moyenne est de { $limited }.
risk-step-paid = D'un sinistre moyen, { $paid } sont payés et { $kept } restent à votre charge.

## How often and how large

risk-default-rate = { CAPITAL($cause) } : sinistres par an d'un organisme moyen
risk-default-size = { CAPITAL($cause) } : coût moyen d'un sinistre
risk-book-rate = { CAPITAL($cause) } : sinistres par an d'un organisme comme le vôtre
risk-how-book-rate = Tiré de { $organisations } organismes, qui ont eu { $claims } sinistres en { $years } années au total.
risk-book-size = { CAPITAL($cause) } : coût moyen d'un sinistre chez les organismes comme le vôtre
risk-how-book-size = La moyenne de { $claims } sinistres d'organismes dont nous nous occupons.
risk-rate = { CAPITAL($cause) } : sinistres à prévoir par an chez vous
risk-how-rate = { $claims ->
    [0] Aucun sinistre chez vous
    [one] Un sinistre chez vous
   *[other] { $claims } sinistres chez vous
} en { $years } ans au dossier, à côté de ce qu'on sait des autres. { $weight }
risk-size = { CAPITAL($cause) } : coût moyen à prévoir d'un sinistre
risk-how-size = { $law ->
    [liability] La moyenne des autres, pondérée par vos propres sinistres de cette cause. Quelques réclamations sont très élevées (loi de Pareto).
   *[damage] La moyenne des autres, pondérée par vos propres sinistres de cette cause. La plupart sont petits, quelques-uns très gros (loi lognormale). Aucun ne dépasse la valeur de ce qui est là.
}
risk-caution-illustrative = Ce chiffre repose en partie sur des exemples que personne ne publie. Votre courtier peut en choisir d'autres.
risk-caution-model = C'est un modèle, pas une prévision. Une fourchette ne contient que le hasard de la simulation; elle ne contient pas l'erreur du modèle lui-même.

## An average year and bad years

risk-no-terms = Le dossier { $file } ne contient aucune condition d'assurance; personne ne peut donc dire ce qu'elles paieraient. Chargez les conditions, puis reposez la question.
risk-alternative = { $case ->
    [expiring] Les conditions qui prennent fin, encore une fois
   *[offered] L'offre telle quelle
}
risk-amounts = { $case ->
    [limit] { $limit }
    [deductible] franchise de { $deductible }
    [limit-deductible] { $limit }, franchise de { $deductible }
   *[other] aucun montant indiqué
}
risk-option = { $coverage } : { $amounts }
risk-mean = Ce que les sinistres vous coûtent dans une année moyenne : { $alternative }
risk-how-mean = { $case ->
    [sampled] Pour chaque cause : sa fréquence, multipliée par ce qui reste à votre charge. L'effet des maximums annuels vient de { $years } années simulées.
   *[closed] Pour chaque cause : sa fréquence, multipliée par ce qui reste à votre charge. Aucune simulation n'y entre.
}
risk-mean-cause = { CAPITAL($cause) }, dans une année moyenne : { $alternative }
risk-how-cause = La fréquence, multipliée par ce qui reste à votre charge avec ces conditions.
risk-bad = Ce que les sinistres vous coûtent dans une année sur { $one_in } : { $alternative }
risk-how-bad = Une année sur { $one_in } coûte ce montant ou plus, dans { $years } années simulées. Le seul hasard le place entre { $low } et { $high }.
risk-change = { $one_in ->
    [0] Ce qui change pour vous dans une année moyenne : { $alternative }
   *[other] Ce qui change pour vous dans une année sur { $one_in } : { $alternative }
}
risk-how-change = { $case ->
    [closed] À côté de l'offre telle quelle. Aucune simulation n'y entre.
    [unclear] À côté de l'offre telle quelle, dans les mêmes années simulées. Le seul hasard place l'écart entre { $low } et { $high }; aucune différence n'est donc indiquée.
   *[clear] À côté de l'offre telle quelle, dans les mêmes années simulées. Le seul hasard place l'écart entre { $low } et { $high }.
}
risk-closure = Revenus perdus pendant que { $building } ferme { $months } mois après une perte totale
risk-how-closure = La moyenne des mois où la fermeture peut commencer, moins les dépenses qui cessent. Un dommage le ferme une partie de ce temps, en proportion; à partir de { $share } de ce qui s'y trouve, tout ce temps.
risk-income-counted = Les revenus perdus ne sont comptés que pour { $building }, qui ferme le plus longtemps. Après une perte totale : environ { $amount } en { $months } mois; pour moins, en proportion.
risk-left-out-elsewhere = La location d'un autre lieu et le déménagement n'y sont pas.
risk-left-out-income = Les revenus perdus n'y sont pas : le dossier ne dit pas quels revenus un bâtiment apporte.
risk-left-out-income-refused = Les revenus perdus n'y sont pas. { $why }
risk-weight-told = { CAPITAL($cause) } : ce qui vous coûte le plus en année moyenne. Fréquence attendue : { $weight }
risk-loss = Sinistre demandé une fois en { $one_in } ans à la garantie { $coverage }
risk-how-loss = La fréquence de chaque cause, multipliée par la part de ses sinistres qui sont plus gros, donne une fois en { $one_in } ans. Aucune simulation n'y entre.
risk-left-out-duty = Les abus et les blessures de bénévoles n'y sont pas. Le tort fait aux personnes est un devoir, jamais un montant.
risk-left-out-cause = N'y est pas : { $cause }. { $why }
risk-left-out-terms = Un des choix n'y est pas. { $why }

## Options and deductibles

risk-title = Ce que les sinistres pourraient vous coûter dans l'année à partir du { $renewal }, en plus de la prime
risk-options-lead = Ce que chaque option changerait, à côté de l'offre telle quelle
risk-head-terms = Conditions
risk-head-option = Option
risk-head-state = État
risk-head-price = Prix par an
risk-head-average = Année moyenne
risk-head-ten = 1 année sur 10
risk-head-hundred = 1 année sur 100
risk-state = { $state ->
    [taken] acceptée
    [left] refusée
   *[open] à décider
}
risk-same = pareil
risk-less = { $amount } de moins
risk-more = { $amount } de plus
risk-why-not = { $case ->
    [duty] Le tort fait aux personnes se juge par devoir, pas en argent.
    [refused] Les conditions se contredisent avec cette option.
    [as-now] L'option ne nomme que ce que les conditions donnent déjà. Demandez-nous ce qu'elle change.
    [no-amount] L'offre n'indique aucun montant. Demandez-nous.
   *[not-modelled] Il n'y a pas encore de chiffres sur ce que cette garantie couvre.
}
risk-option-told = { $case ->
    [less-less] Avec elle, environ { $average } de moins à votre charge dans une année moyenne, et environ { $bad } de moins une année sur 100.
    [less-same] Avec elle, environ { $average } de moins à votre charge dans une année moyenne. Une année sur 100, aucune différence ne se voit.
    [same-less] Avec elle, environ { $bad } de moins à votre charge une année sur 100. Dans une année moyenne, cela se voit à peine.
    [less-more] Avec elle, environ { $average } de moins à votre charge dans une année moyenne, mais environ { $bad } de plus une année sur 100.
    [more-less] Avec elle, environ { $average } de plus à votre charge dans une année moyenne, mais environ { $bad } de moins une année sur 100.
    [more-more] Avec elle, environ { $average } de plus à votre charge dans une année moyenne, et environ { $bad } de plus une année sur 100.
    [more-same] Avec elle, environ { $average } de plus à votre charge dans une année moyenne. Une année sur 100, aucune différence ne se voit.
    [same-more] Avec elle, environ { $bad } de plus à votre charge une année sur 100. Dans une année moyenne, cela se voit à peine.
   *[same-same] Aucune différence ne se voit, ni dans une année moyenne ni une année sur 100.
}
risk-not-measured = { $option }. { $why }
risk-losses = Sinistres par an où ce choix fait une différence
risk-how-losses = La fréquence de chaque cause, multipliée par la part de ses sinistres qui sont assez gros.
risk-break-even = Sinistres par an où les deux choix coûtent autant
risk-per-loss = Le plus que ce choix change d'un sinistre
risk-how-per-loss = Ce qui reste à votre charge d'un sinistre avec l'une et l'autre franchise, pour toutes les tailles; le plus grand écart.
risk-how-break-even = { $years ->
    [0] L'écart de prime, divisé par le plus que ce choix change d'un sinistre.
    [1] L'écart de prime, divisé par le plus que ce choix change d'un sinistre : un tel sinistre chaque année.
   *[other] L'écart de prime, divisé par le plus que ce choix change d'un sinistre : un tel sinistre tous les { $years } ans.
}
risk-deductible-title = Une autre franchise (la part d'un sinistre que vous payez vous-même) : { $name }
risk-deductible-premium = { $case ->
    [costs] La prime augmente de { $amount } par an.
    [saves] La prime baisse de { $amount } par an.
    [ask-saves] Demandez-nous le prix. Jusqu'à { $amount } par an, ce choix se paie de lui-même.
    [ask-keeps] Demandez-nous le prix. Ce choix ne vaut la peine que si la prime baisse de plus de { $amount } par an.
   *[free] La prime ne change pas.
}
risk-deductible-kept = { $case ->
    [less] Dans une année moyenne, { $amount } de moins resteraient à votre charge.
    [more] Dans une année moyenne, { $amount } de plus resteraient à votre charge.
   *[same] Dans une année moyenne, il en resterait autant à votre charge.
}
risk-deductible-bad = { $case ->
    [less] Une année sur 100, ce serait { $amount } de moins.
    [more] Une année sur 100, ce serait { $amount } de plus.
   *[same] Une année sur 100, aucune différence ne se voit.
}
risk-deductible-break-even = Ce choix change au plus { $per_loss } d'un sinistre. Les deux choix coûtent autant si un tel sinistre arrive { $even }. Nous prévoyons un sinistre touché par ce choix { $expected }. { $case ->
    [rare] Une moyenne dit peu d'un sinistre aussi rare. Demandez-vous si vous pourriez payer ce montant d'un coup.
    [dearer] À la longue, cela parle pour la petite franchise et sa prime.
   *[cheaper] À la longue, cela parle pour la grande franchise, si vous pouviez la payer.
}
risk-every = { $case ->
    [rare] moins d'une fois en { $n } ans
    [often] { $n ->
        [one] une fois par an
       *[other] { $n } fois par an
    }
   *[years] { $n ->
        [1] une fois par an
       *[other] une fois en { $n } ans
    }
}

## On the screen

cli-risk-learning = Lecture du portefeuille
cli-risk-why = Pour voir d'où vient un chiffre : quarterday risk { $file } --why { $figure }
