## Places a construction index is measured in

index-composite = quinze villes canadiennes réunies
index-ab = Alberta
index-bc = Colombie-Britannique
index-calgary = Calgary
index-edmonton = Edmonton
index-halifax = Halifax
index-mb = Manitoba, mesuré à Winnipeg
index-montreal = Montréal
index-nb = Nouveau-Brunswick
index-nl = Terre-Neuve-et-Labrador
index-ns = Nouvelle-Écosse, mesurée à Halifax
index-on = Ontario
index-ottawa-on = Ottawa–Gatineau, partie ontarienne
index-qc = Québec
index-sk = Saskatchewan
index-toronto = Toronto
index-vancouver = Vancouver
index-winnipeg = Winnipeg
index-given = points fournis

## Index levels

values-quarter = T{ $number } { $year }
values-index-point = Indice de construction, { $place }, { $quarter }
values-index-level = Indice de construction, { $place }, au { $day }
values-how-level-1 = Le chiffre publié pour { $first }.
values-how-level-2 = Entre les chiffres publiés pour { $first } et { $last }; chacun vaut pour le milieu de son trimestre.
values-how-projected = Le chiffre publié pour { $last }, prolongé de { $rate } par année.
values-caution-projected-index = Projection : l'indice publié s'arrête à { $last }. Ensuite, on suppose que les coûts montent de { $rate } par année.
values-caution-composite-index = Ce lieu n'a pas d'indice de construction. Le chiffre repose sur celui de quinze villes canadiennes réunies.
values-caution-projected-composite-index = Ce lieu n'a pas d'indice de construction; celui de quinze villes canadiennes le remplace. Projection : il s'arrête à { $last }; ensuite, on suppose que les coûts montent de { $rate } par année.

## What a building costs

values-cost-at-valuation = { $building } : coût de reconstruction selon l'évaluation du { $day }
values-cost-at-renewal = { $building } : coût de reconstruction au renouvellement, le { $day }
values-cost-at-term-end = { $building } : coût de reconstruction au dernier jour de la prochaine période, le { $day }
values-cost-rebuilt = { $building } : coût si un incendie le détruit à la fin de la prochaine période et qu'on le reconstruit (prix du { $day })
values-how-valuation = Le montant de l'évaluation ({ $basis }) : { $amount }.
values-how-valuation-fees = Le montant de l'évaluation ({ $basis }), { $amount }, plus { $fees } pour les architectes et les ingénieurs, qu'elle ne comprend pas.
values-how-indexed = { $base } au { $start }, multiplié par l'indice de construction du { $day }, divisé par l'indice du { $start }.
values-caution-fees-unknown = Rien n'indique si l'évaluation comprend les honoraires d'architectes et d'ingénieurs. Rien n'a été ajouté pour eux.
values-not-indexed-none = Personne n'a évalué ce bâtiment; on ne peut donc pas comparer son coût au montant d'assurance.
values-not-indexed-old = L'évaluation du { $day } est plus ancienne que l'indice de construction. On ne peut pas en tirer le coût actuel.
values-not-indexed-horizon = Le plus récent indice de construction s'arrête à { $last }. C'est trop ancien pour dire ce que coûte le bâtiment. Chargez une publication plus récente.

## What is insured

values-sum-insured = { $building } : montant d'assurance
values-how-sum-insured = Le montant prévu pour le bâtiment au contrat qui commence le { $start }.
values-available = { $building } : le plus que le contrat verse
values-how-blanket = Le bâtiment partage un seul montant, { $whole }, avec d'autres biens (montant global). Tout ce montant peut servir à ce bâtiment.
values-how-blanket-margin = Le bâtiment partage { $whole } avec d'autres biens (montant global). Une clause de marge limite l'indemnité à { $margin } du montant propre au bâtiment.
values-shortfall = { $building } : ce qui manquerait après un sinistre total
values-how-shortfall = { $cost } pour reconstruire, moins les { $available } que le contrat verse au plus.
values-price-of-raising = { $building } : prime annuelle de plus pour combler l'écart, avant taxe
values-how-price = { $gap } multiplié par le taux propre au bâtiment, soit { $rate } du montant assuré.

## Automatic increases

values-increases-applied = { $building } : hausses automatiques depuis l'évaluation
values-how-increases = { $times ->
    [one] La hausse d'un renouvellement.
   *[other] Les hausses de { $times } renouvellements, l'une sur l'autre.
}
values-how-increases-assumed = { $times ->
    [one] La hausse d'un renouvellement.
   *[other] Les hausses de { $times } renouvellements, l'une sur l'autre.
} { $assumed ->
    [one] Le contrat de l'un d'eux n'est pas au dossier; on suppose la même hausse que la plus proche connue.
   *[other] Les contrats de { $assumed } d'entre eux ne sont pas au dossier; on suppose la même hausse que la plus proche connue.
}
values-index-change = { $building } : hausse des coûts de construction depuis l'évaluation
values-how-index-change = L'indice de construction du { $day }, divisé par celui du { $start }.
values-increases-behind = { $building } : retard des hausses automatiques sur les coûts de construction
values-how-behind = Un, moins le montant haussé divisé par le coût haussé.
values-increases-gap = { $building } : le même retard en argent
values-how-gap = L'évaluation multipliée par l'écart entre les deux hausses.

## Coinsurance

values-required = { $building } : montant minimal à assurer
values-carried = { $building } : montant assuré
values-how-carried = Le montant prévu pour le bâtiment.
values-how-carried-blanket = Le montant global que partagent tous les bâtiments et contenus visés.
values-share = { $building } : part d'un sinistre que le contrat paie
values-how-share = Le montant assuré, divisé par le montant à assurer; jamais plus de 100 %.
values-margin = { $building } : hausse des coûts encore possible avant une pénalité
values-how-margin = Le montant assuré, divisé par le montant à assurer, moins un. Sous zéro, la pénalité s'applique déjà.
values-how-margin-none = Aucun montant n'est exigé; aucune pénalité n'est donc possible.
values-penalty = { $building } : ce que la règle proportionnelle retranche d'un sinistre de { $percent }
values-how-penalty = Un sinistre de { $loss } réglé sans la clause, moins le même réglé à { $share }. On suppose que la part s'applique avant la franchise; le texte du contrat en décide.
values-penalty-chance = { $building } : probabilité qu'une pénalité s'applique
values-how-penalty-chance = Le coût réel se situe autour de l'estimation, aussi bien au-dessus qu'au-dessous, avec un écart-type de { $error }. C'est la probabilité qu'il dépasse ce que le montant assuré peut couvrir.
values-penalty-expected = { $building } : part moyenne d'un sinistre partiel que la clause retranche
values-how-penalty-expected = La moyenne sur tous les coûts réels que l'évaluation permet, avec un écart-type de { $error }.
values-safe-amount = { $building } : montant qui met à l'abri de la clause, avec une certitude de { $certainty }
values-how-safe-amount = Le montant minimal qu'exige la clause, haussé jusqu'à couvrir le coût réel avec une certitude de { $certainty }. L'estimation peut s'écarter de { $error } (écart-type).
values-price-of-safe = { $building } : prime annuelle ajoutée pour ce montant, avant taxe
values-page-safe = Assuré pour { $amount }, le bâtiment respecterait la clause avec une certitude de { $certainty }. Cela ajoute environ { $price } par année avant taxe.
values-page-safe-unpriced = Assuré pour { $amount }, le bâtiment respecterait la clause avec une certitude de { $certainty }. Nous demanderons le prix à l'assureur.

## Steps of a loss

values-step-no-clause = Aucune règle proportionnelle ne s'applique.
values-step-agreed = Une valeur convenue tient jusqu'au { $until }; aucune règle proportionnelle ne s'applique.
values-step-waived = Le sinistre ne dépasse pas { $amount }; la clause épargne les sinistres aussi petits.
values-step-stated = Le contrat précise le montant à assurer : { $required }.
values-step-required = { $value } × { $percent } = { $required } à assurer.
values-step-share = { $carried } d'assurance sur { $required } exigés : le contrat paie { $share } du sinistre.
values-step-full-share = { $carried } d'assurance sur { $required } exigés : c'est assez, aucune pénalité.
values-step-reduced = { $before } × { $share } = { $after }
values-step-deductible = { $before } moins la franchise de { $deductible } = { $after }
values-step-limit-reached = Le montant maximal de { $limit } est atteint.
values-step-limit-enough = Le montant maximal de { $limit } n'est pas atteint.
values-step-paid = Le contrat paie { $paid }; l'organisme assume { $borne }.
values-step-index = { CAPITAL($place) } : { $first } au { $start }, { $second } au { $day }.
values-step-factor = { $second } ÷ { $first } = { $factor }
values-step-indexed = { $value } × { $factor } = { $result }

## Sums insured too low

values-below-replacement-title = { $building } : il manquerait environ { $about } après un sinistre total
values-below-replacement-means = Le montant d'assurance est le plus que le contrat verse : { $available }. Reconstruire coûterait environ { $cost } aux prix du { $rebuilt_on }. Vous devriez trouver la différence, soit { $share } du coût.
values-below-replacement-todo = Décidez s'il faut hausser le montant d'assurance de { $gap }. Au taux actuel du bâtiment, cela ajoute environ { $price } par année avant taxe.
values-below-replacement-todo-unpriced = Décidez s'il faut hausser le montant d'assurance de { $gap }. Nous demanderons à l'assureur ce que cela coûte.
values-below-replacement-todo-unsure = Décidez s'il faut hausser dès maintenant le montant d'assurance de { $gap }, pour environ { $price } par année avant taxe. Faites aussi réévaluer le bâtiment : l'évaluation derrière ce chiffre est fragile.
values-below-replacement-todo-unsure-unpriced = Décidez s'il faut hausser dès maintenant le montant d'assurance de { $gap }; nous demanderons le prix à l'assureur. Faites aussi réévaluer le bâtiment : l'évaluation derrière ce chiffre est fragile.
values-below-replacement-todo-joined = Ce bâtiment fait partie de la question sur tous les bâtiments, à l'ordre du jour.
values-below-replacement-todo-know = L'écart est petit. Pensez-y la prochaine fois que le montant d'assurance sera fixé.
values-below-replacement-reason = Un sinistre total laisserait { $gap } à trouver.
values-below-replacement-together-title = { $n } bâtiments sont assurés pour moins que leur coût de reconstruction
values-below-replacement-together-means = Ce sont : { $buildings }. Le plus grand écart touche { $building } : il vous manquerait { $gap } après un sinistre total. La page de chaque bâtiment montre le sien.
values-below-replacement-together-todo = Décidez s'il faut tous les assurer à leur coût. Aux taux actuels, cela ajoute environ { $price } par année avant taxe.
values-below-replacement-together-todo-unpriced = Décidez s'il faut tous les assurer à leur coût. Nous demanderons le prix à l'assureur.
values-below-replacement-together-todo-unsure = Décidez s'il faut tous les assurer à leur coût. Aux taux actuels, cela ajoute environ { $price } par année avant taxe. Faites réévaluer ceux-ci, dont les chiffres sont fragiles : { $doubtful }.
values-below-replacement-together-todo-unpriced-unsure = Décidez s'il faut tous les assurer à leur coût; nous demanderons le prix à l'assureur. Faites réévaluer ceux-ci, dont les chiffres sont fragiles : { $doubtful }.
values-below-replacement-together-reason = Le plus grand écart est de { $gap } ({ $building }).

## Coinsurance clause

values-coinsurance-title-penalised = { $building } : les sinistres ne seraient payés qu'à { $share }
values-coinsurance-title-likely = { $building } : une réclamation serait réduite, avec une probabilité de { $chance }
values-coinsurance-title-unlikely = { $building } : une déclaration des valeurs signée écarterait la règle proportionnelle
values-coinsurance-title-unknown = { $building } : on ne sait pas si un sinistre serait payé en entier
values-coinsurance-means = La règle proportionnelle (coassurance) réduit toute réclamation, même petite, quand on assure trop peu. La vôtre exige { $required } du coût réel. Le montant d'assurance est de { $sum_insured }.
values-coinsurance-todo = Remplissez et signez la déclaration des valeurs. Nous demanderons alors à l'assureur une valeur convenue, qui suspend la clause.
values-coinsurance-todo-know = Hausser le montant d'assurance, comme le propose l'ordre du jour, règle aussi ce point. Signez quand même la déclaration des valeurs.
values-coinsurance-reason-penalised = Sur un sinistre de { $loss }, il manquerait { $penalty }.
values-coinsurance-reason-likely = L'estimation laisse une probabilité de pénalité de { $chance }.
values-coinsurance-reason-unlikely = Le montant suffit aujourd'hui; les coûts peuvent encore le dépasser.
values-coinsurance-reason-unknown = Sans évaluation, personne ne sait combien il faut assurer.

values-agreed-value-lapsing-title = { $building } : la valeur convenue prend fin le { $until }
values-agreed-value-lapsing-means = Jusque-là, l'assureur accepte le montant comme suffisant. Après ce jour, la règle proportionnelle réduit toute réclamation si moins de { $required } du coût réel est assuré.
values-agreed-value-lapsing-means-no-clause = Jusque-là, l'assureur accepte le montant comme suffisant. Après ce jour, il peut le contester lors d'une réclamation.
values-agreed-value-lapsing-todo = Signez la déclaration des valeurs avant le { $until }, pour que l'assureur puisse convenir d'une nouvelle valeur.
values-agreed-value-lapsing-reason = L'entente prend fin le { $until }.

## Automatic increases behind the index

values-index-too-low-title = { $building } : les hausses automatiques accusent un retard de { $behind } sur les coûts
values-index-too-low-means = Depuis le { $since }, les hausses automatiques ont ajouté { $applied } au montant d'assurance. Les coûts de construction ({ $place }) ont monté de { $index }. L'écart est d'environ { $gap } au renouvellement.
values-index-too-low-todo = Ne comptez pas seulement sur la hausse annuelle. Comparez chaque année le montant au coût, et faites évaluer le bâtiment régulièrement.
values-index-too-low-reason = Les hausses ont { $gap } de retard sur les coûts de construction.

## Valuations

values-valuation-stale-title-none = { $building } : personne ne l'a évalué
values-valuation-stale-title-indexed = { $building } : jamais évalué, seulement indexé
values-valuation-stale-title-unknown = { $building } : personne ne sait d'où vient sa valeur
values-valuation-stale-title-old = { $building } : l'évaluation date du { $day }
values-valuation-stale-means = Le bâtiment est assuré pour { $amount }. Sans évaluation sérieuse de moins de { $years } ans, personne ne sait si cela permet de le reconstruire.
values-valuation-stale-todo = Choisissez. L'évaluation à distance se fait à partir de plans et de photos; elle coûte moins cher et prend de 30 à 45 jours. L'évaluation professionnelle se fait sur place et reste la plus sûre.
values-valuation-stale-todo-know = Faites-le évaluer au moment de fixer le montant d'assurance. L'évaluation à distance prend de 30 à 45 jours; l'évaluation sur place est plus sûre. Une visite peut servir à plusieurs bâtiments.
values-valuation-stale-todo-unknown = Dites-nous qui a évalué le bâtiment, quand et comment. Si personne ne le sait, demandez-nous une évaluation.
values-valuation-stale-reason-none = Aucune évaluation n'est au dossier.
values-valuation-stale-reason-indexed = Le dossier ne contient que des valeurs indexées.
values-valuation-stale-reason-unknown = On ignore sur quoi repose l'évaluation.
values-valuation-stale-reason-old = Au renouvellement, l'évaluation aura plus de { $years } ans.

values-heritage = le bâtiment patrimonial lui-même
values-special-features-title = { $building } : { $n ->
    [one] un élément que personne n'a évalué
   *[other] { $n } éléments que personne n'a évalués
}
values-special-features-means = Sans évaluation propre : { $features }. Les guides de coûts ignorent un tel travail d'artisan; la valeur du bâtiment en omet peut-être la plus grande part.
values-special-features-todo = Inscrivez chacun sur la déclaration des valeurs, avec des photos et le nom de l'artisan s'il est connu. L'évaluation professionnelle sur place est la voie sûre.
values-special-features-reason = Sans évaluation : { $features }.

values-contents-unlisted-title = { $building } : le contenu n'a jamais été inventorié
values-contents-unlisted-title-everywhere = Votre contenu n'a jamais été inventorié
values-contents-unlisted-means = Le contenu est assuré pour { $amount }. Après un incendie ou un vol, vous devrez montrer ce que vous aviez; l'inventaire en est la preuve.
values-contents-unlisted-todo = Filmez chaque pièce avec un téléphone. Inscrivez ensuite les objets les plus chers sur la déclaration des valeurs.
values-contents-unlisted-reason = Aucun inventaire n'est au dossier.

values-contents-worksheet = { $building } : contenu selon l'inventaire
values-how-contents-lines = { $n ->
    [one] Une catégorie : { $categories }.
   *[other] { $n } catégories additionnées : { $categories }.
}
values-how-contents-whole = L'évaluation de tout le contenu du { $day }.
values-contents-too-low-title = { $building } : il manque environ { $about } d'assurance sur le contenu
values-contents-too-low-means = Racheter à neuf ce qui s'y trouve coûterait { $listed }. Le contrat verse au plus { $limit } pour le contenu. Vous devriez trouver la différence, soit { $share } du coût.
values-contents-too-low-todo = Décidez s'il faut hausser le montant du contenu de { $gap }. Au taux actuel, cela ajoute environ { $price } par année avant taxe.
values-contents-too-low-todo-unpriced = Décidez s'il faut hausser le montant du contenu de { $gap }. Nous demanderons le prix à l'assureur.
values-contents-too-low-todo-know = L'écart est petit. Pensez-y la prochaine fois que le montant sera fixé.
values-contents-too-low-reason = Un sinistre total laisserait { $gap } de contenu à remplacer.

## Facts of a building

values-sum-insured-field = Montant d'assurance
values-incomplete-building-title = { $building } : { $n ->
    [one] il manque un renseignement
   *[other] il manque { $n } renseignements
}
values-incomplete-building-means = L'assureur suppose le pire de ce qu'on ne lui dit pas, ou il refuse. Il manque : { $missing }.
values-incomplete-building-todo = Remplissez les renseignements manquants sur la déclaration des valeurs et retournez-la.
values-incomplete-building-reason = Il manque : { $missing }.

values-mismatch-area-m2 = superficie de { $ours } m² au dossier, de { $theirs } m² à l'évaluation
values-mismatch-storeys = { $ours } étages au dossier, { $theirs } à l'évaluation
values-mismatch-year-built = construit en { $ours } selon le dossier, en { $theirs } selon l'évaluation
values-area-mismatch-title = { $building } : deux sources se contredisent
values-area-mismatch-means = { CAPITAL($items) }. Si l'évaluateur a mesuré un autre bâtiment, son montant est faux aussi.
values-area-mismatch-todo = Demandez à l'organisme laquelle est juste et corrigez le dossier. Si l'évaluation est fausse, faites-la refaire.
values-area-mismatch-reason = { CAPITAL($items) }.

values-brought-forward = { $building } : évaluation antérieure aux prix du { $day }
values-valuations-disagree-title = { $building } : deux évaluations à { $apart } l'une de l'autre
values-valuations-disagree-means = Celle du { $older } donne { $was }, soit { $brought } aux prix du { $newer }. Celle de ce jour-là donne { $amount }. Les deux ne peuvent être justes.
values-valuations-disagree-todo = Demandez aux deux évaluateurs ce qu'ils ont compté : honoraires, règlements, mêmes étages. Gardez la plus solide et notez pourquoi.
values-valuations-disagree-reason = Aux mêmes prix, deux évaluations sont à { $apart } l'une de l'autre.

values-value-per-m2 = { $building } : valeur au mètre carré
values-how-per-m2 = Le montant de l'évaluation, divisé par la superficie.
values-implausible-value-title = { $building } : { $each } le mètre carré, à vérifier
values-implausible-value-means = L'évaluation du { $day } donne { $amount } pour { $area } m². Un bâtiment coûte le plus souvent de { $least } à { $most } le mètre carré. Un chiffre de trop, ou des pieds carrés pris pour des mètres, donnerait ce résultat.
values-implausible-value-todo = Comparez le montant et la superficie avec l'évaluation même et corrigez le dossier. Si les deux sont justes, écartez ce point en notant la raison.
values-implausible-value-reason = { $each } le mètre carré sort de la fourchette de { $least } à { $most }.

## On its own

values-calc-one-of = Donnez soit « geography », soit « points » : l'indice doit venir de l'un des deux.
values-calc-no-geography = Il n'y a pas d'indice de construction pour « { $geography } ». Choisissez parmi : { $known }.
values-calc-quarter = « { $quarter } » n'est pas un trimestre. Écrivez-le comme 2025Q4.
values-calc-before = L'indice commence à { $first } et ne dit rien du { $day }. Donnez un jour plus tardif.
values-calc-no-rate = L'indice s'arrête à { $last } et n'atteint pas le { $day }. Donnez « projected_rate », par exemple « 0.03 » pour 3 % par année.
values-calc-horizon = L'indice s'arrête à { $last }. Le { $day } vient plus de { $years } ans après, trop loin pour projeter. Donnez un jour jusqu'au { $end }.
