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

risk-weights-count = Un groupe a { $values } valeurs et { $weights } poids. Donnez son poids à chaque valeur.
risk-weights-negative = Un poids est négatif. Le poids dit combien on a observé; mettez 0 pour une période sans observation.
risk-two-groups = { $groups ->
    [0] Aucun groupe n'a été observé. Il en faut deux pour savoir à quel point les groupes diffèrent.
    [one] Un seul groupe a été observé. Il en faut deux pour savoir à quel point les groupes diffèrent.
   *[other] { $groups } groupes ont été observés.
}
risk-two-periods = Aucun groupe n'a été observé pendant deux périodes. Une seule période ne montre pas ce qui varie par hasard.
risk-no-weights = Le modèle buhlmann donne le même poids à toutes les périodes. Retirez les poids ou demandez buhlmann-straub.
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
