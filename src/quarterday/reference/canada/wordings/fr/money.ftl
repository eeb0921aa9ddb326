## Tax on the premium

money-tax = Taxe sur la prime
money-tax-base = Montant sur lequel la taxe est calculée
money-tax-base-how = Prime taxée { $taxed }, plus frais taxés { $fees }. Prime exonérée : { $exempt }.
money-tax-rate = Taux de la taxe sur les primes ({ $province })
money-tax-how = { $base } × { $rate }, arrondi une seule fois au cent le plus proche, le demi-cent vers le haut.
money-no-tax-how = Cette province ne taxe pas les primes que vous payez ({ $premium }).
money-tax-unknown-how = Aucun taux n'est connu pour le jour où ce contrat de { $premium } commence; aucune taxe n'est comptée.
money-tax-later = À partir du { $since }, les paiements portent plutôt { $rate }. C'est le jour du paiement qui décide; les versements faits ensuite coûtent donc plus de taxe.

## The premium table

money-premium = Prime
money-offer = L'offre de l'assureur
money-whole-policy = Ensemble du contrat
money-table-cell = { $coverage } ({ $location })
money-table-coverage = { $coverage }, tous les emplacements
money-table-location = { $location }, toutes les garanties
money-table-subtotal = Sous-total avant frais et taxe
money-table-total = Total avec frais et taxe
money-cell-how = Montant d'assurance { $exposure } × { $rate }.
money-sum-how = { $count ->
    [one] Une case du tableau, les rabais déduits.
   *[other] La somme de { $count } cases du tableau, les rabais déduits.
}
money-total-how = Prime { $subtotal } + frais { $fees } + taxe { $tax }.
money-printed = Tel qu'imprimé : { $what }
money-fault = { $stated } imprimé pour { $what } au lieu de { $right }

## Why the premium moved

money-before = Prime de la période qui se termine, frais et taxe compris
money-after = Prime offerte pour la prochaine période, frais et taxe compris
money-change = Variation de la prime
money-change-how = { $after } moins { $before }; les éléments ci-dessous en donnent la somme au cent près.
money-line-how = Cette ligne du tableau de la prime était de { $before } et elle est maintenant de { $after }.
effect-exposure = Les montants d'assurance ont changé
effect-exposure-how = Variation du montant d'assurance × la moyenne de l'ancien et du nouveau prix par dollar.
effect-rate = Le prix par dollar assuré a changé
effect-rate-how = Variation du prix par dollar × la moyenne de l'ancien et du nouveau montant d'assurance. Une ligne sans montant d'assurance compte ici en entier.
effect-added = Garanties ajoutées
effect-added-how = Le prix de ce qui figure dans l'offre et ne figurait pas dans la période qui se termine.
effect-dropped = Garanties retirées
effect-dropped-how = Le prix de ce qui figurait dans la période qui se termine et ne figure pas dans l'offre.
effect-adjustment = Surprimes et rabais
effect-adjustment-how = Variation de ce que l'assureur ajoute ou retranche pour une raison particulière.
effect-fee = Frais
effect-fee-how = Variation des frais.
effect-tax-base = Taxe, parce que la prime a changé
effect-tax-base-how = Variation du montant taxé × la moyenne de l'ancien et du nouveau taux de taxe.
effect-tax-rate = Taxe, parce que son taux a changé
effect-tax-rate-how = Variation du taux de taxe × la moyenne de l'ancien et du nouveau montant taxé.

money-premium-moved-up-title = Votre prime augmente de { $change } ({ $share })
money-premium-moved-down-title = Votre prime baisse de { $change } ({ $share })
money-premium-moved-means = Elle passe de { $before } à { $after }, frais et taxe compris. L'élément le plus important vaut { $amount }. { $main }.
money-premium-moved-up-todo = Lisez la feuille « Ce qui a changé ». Avant de décider, demandez-nous d'expliquer tout ce qui vous surprend.
money-premium-moved-down-todo = Lisez la feuille « Ce qui a changé ». Assurez-vous que rien d'utile n'a été retiré pour baisser le prix.

## A table that does not add up

money-does-not-add-up-title = { $count ->
    [one] Le compte de la prime offerte n'est pas bon : { $difference } à vérifier ({ $what })
   *[other] Le compte de la prime offerte n'est pas bon à { $count } endroits : jusqu'à { $difference } à vérifier ({ $what })
}
money-does-not-add-up-means = Nous avons refait les additions de l'assureur. Les plus grands écarts : { $faults }. Un tableau faux donne une facture fausse.
money-does-not-add-up-todo = Envoyez les deux montants à l'assureur et demandez une offre corrigée avant l'envoi du dossier de renouvellement.

## Paying by instalments

money-instalments-title = Vous pouvez payer cette prime en plusieurs versements : dites-nous ce que vous préférez
money-instalments-means = L'assureur offre un plan de plusieurs versements. Il peut comporter des frais; comparez donc son coût total avec celui d'un seul paiement.
money-instalments-title-costs = Payer en plusieurs versements coûte au moins { $extra } de plus, comme un prêt à { $rate } par année
money-instalments-means-costs = Payée en une fois, la prime est de { $at_once }. Vous pouvez aussi choisir : { $plans }. Le taux est celui d'un prêt qui coûterait autant.
money-instalments-todo = Retournez le formulaire de paiement au plus tard le { $by }.

## Calculations on their own

calc-tax-total = Prime { $premium } + taxe { $tax } = { $total }.
calc-tax-not-known = { $province } : aucun taux de taxe n'est connu au { $day }; la taxe serait devinée. Donnez une date plus récente.
calc-no-province = Il n'y a pas de province ni de territoire « { $province } ». Écrivez l'un de ceux-ci : { $known }.
calc-apportion = { $count ->
    [one] { $total } va à une seule part, en unités de { $unit }.
   *[other] { $total } sur { $count } parts, en unités de { $unit } : chaque part est arrondie vers le bas, le reste va aux plus grandes fractions.
}
apportion-not-whole = { $amount } n'est pas un nombre entier d'unités de { $unit }; aucune répartition ne peut donner cette somme. Arrondissez-le d'abord.
apportion-wrong-sum = Les parts ne peuvent pas être arrondies à { $amount } unités, car leur somme en est trop loin. Vérifiez les parts.
apportion-unit = L'unité est { $unit }; rien ne peut se compter ainsi. Donnez une unité supérieure à zéro.
apportion-negative = Un poids est inférieur à zéro; une part serait moins que rien. Donnez des poids de zéro ou plus.
apportion-no-weight = La somme des poids est zéro; rien ne dit qui reçoit quoi. Donnez au moins un poids supérieur à zéro.

given-unknown = « { $key } » n'est pas une donnée de ce calcul. Vérifiez l'orthographe ou retirez-la.
given-missing = Il manque « { $key } », dont le calcul a besoin. Ajoutez-le.
given-unknown-of = « { $key } » n'est pas une donnée de ce calcul. Vérifiez l'orthographe ou retirez-la. Les données sont { $known }.
given-missing-of = Il manque « { $key } », dont le calcul a besoin. Ajoutez-le. Les données sont { $known }.
given-date = « { $key } » vaut « { $value } », qui n'est pas une date. Écrivez-la comme 2026-11-25.
given-far = « { $key } » vaut « { $value } », qui est trop loin d'aujourd'hui. Vérifiez l'année.
given-number = « { $key } » vaut « { $value } », qui n'est pas un nombre exact. Écrivez-le comme texte, par exemple "12345.67".
given-choice = « { $key } » vaut « { $value } », qui n'est pas un des choix. Écrivez l'un de ceux-ci : { $choices }.
given-wrong = « { $key } » vaut « { $value } », qui n'a pas la bonne forme ou est vide. Une liste se met entre [ ], un objet entre {"{ }"}.
given-ge = « { $key } » vaut { $value }. Il faut { $bound } ou plus.
given-gt = « { $key } » vaut { $value }. Il faut plus que { $bound }.
given-le = « { $key } » vaut { $value }. Il faut { $bound } ou moins.
given-lt = « { $key } » vaut { $value }. Il faut moins que { $bound }.
split-amount-or-rate = La ligne « { $line } » demande un montant, ou un volume et un taux. Donnez l'un ou l'autre.
