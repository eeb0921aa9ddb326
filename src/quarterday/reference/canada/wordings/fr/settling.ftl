## What was lost

settling-loss = { CAPITAL($cause) }, le { $day }
settling-at = { $what }, { $place }
settling-component-building = Bâtiment
settling-component-contents = Contenu
settling-component-equipment = Matériel
settling-component-stained-glass = Vitraux
settling-component-organ-and-fine-arts = Orgue et œuvres d'art
settling-component-outdoor-property = Biens extérieurs
settling-component-property-away = Biens hors des lieux
settling-component-property-of-others = Biens d'autrui
settling-component-valuable-papers = Documents de valeur
settling-component-lock-and-key = Serrures et clés
settling-component-construction-in-progress = Travaux en cours
settling-component-glass = Vitres
settling-component-by-laws = Ce qu'ajoutent les règlements de construction
settling-component-debris = Enlèvement des débris
settling-component-fees = Architectes et ingénieurs
settling-component-extra-expense = Frais supplémentaires
settling-component-rent-elsewhere = Loyer ailleurs
settling-component-income = Revenus perdus
settling-component-civil-authority = Revenus perdus par ordre des autorités
settling-component-off-premises-utilities = Revenus perdus par panne d'un service public
settling-component-money = Argent
settling-component-money-by-employee = Argent détourné par un employé
settling-component-money-by-volunteer = Argent détourné par un bénévole
settling-component-money-transferred = Argent viré sur un faux ordre
settling-component-money-outside = Argent hors des lieux
settling-component-offerings-in-transit = Offrandes en route vers la banque
settling-component-counterfeit = Fausse monnaie
settling-component-cyber-own-losses = Frais propres d'un incident informatique
settling-component-volunteer-accident = Aide à un bénévole blessé
settling-component-travel = Frais d'un voyage qui tourne mal
settling-component-key-person = Coût de la perte d'une personne clé
settling-component-compensatory = Dommages-intérêts qui réparent le tort
settling-component-punitive = Dommages-intérêts punitifs
settling-component-exemplary = Dommages-intérêts exemplaires
settling-component-multiplied = Dommages-intérêts multipliés
settling-component-defence = Avocats et défense
settling-component-therapy = Thérapie
settling-component-medical = Frais médicaux d'un visiteur

## Who pays, and why some is borne

settling-reason-policy = les montants propres du contrat
settling-reason-shared-limit = le montant supplémentaire partagé
settling-reason-umbrella = la responsabilité complémentaire
settling-reason-no-cover = aucune garantie
settling-reason-excluded-cause = cause exclue
settling-reason-damages-excluded = genre de dommages-intérêts exclu
settling-reason-damages-unstated = genre de dommages-intérêts que le contrat ne nomme pas
settling-reason-before-retroactive-date = survenu trop tôt
settling-reason-waiting = délai de carence
settling-reason-depreciation = usure et âge
settling-reason-coinsurance = règle proportionnelle (trop peu assuré)
settling-reason-deductible = franchise (votre part)
settling-reason-over-limit = au-delà du montant d'assurance
settling-reason-over-margin = au-delà du maximum pour un bâtiment
settling-reason-monthly-limit = au-delà du maximum pour trente jours
settling-reason-over-aggregate = montant de l'année épuisé

## Figures

settling-total = Le sinistre entier : { $loss }
settling-paid = Ce que l'assurance paie : { $loss }
settling-borne = Ce que vous assumez : { $loss }
settling-by-payer = Payé par { $of } : { $loss }
settling-by-reason = À votre charge – { $of } : { $loss }
settling-how-total = La somme de tous les montants perdus.
settling-how-paid = Ce qui reste de chaque montant après toutes les étapes, plus ce qu'ajoute un autre montant d'assurance. On arrondit au cent une seule fois.
settling-how-borne = Le sinistre entier, moins ce que l'assurance paie.
settling-how-by-payer = Ce que cette source paie sur tous les montants perdus.
settling-how-by-reason = Ce que cette étape vous laisse sur tous les montants perdus.

## Steps

settling-step-no-cover = { $what } : rien dans ce contrat ne paie après cette cause : { $cause }. Vous assumez { $moved }.
settling-step-excluded-cause = { $what } : la garantie « { $coverage } » exclut cette cause : { $cause }. Vous assumez { $moved }.
settling-step-damages-excluded = { $what } : la garantie « { $coverage } » exclut ce genre de dommages-intérêts. Vous assumez { $moved }.
settling-step-damages-unstated = { $what } : la garantie « { $coverage } » ne nomme pas ce genre de dommages-intérêts. On compte { $moved } à votre charge.
settling-step-retroactive = { $what } : seuls les faits survenus à partir du { $day } comptent; celui-ci est antérieur. Vous assumez { $moved }.
settling-step-waiting = { $what } : les { $hours } premières heures ne sont pas payées. { $before } moins { $moved } = { $after }.
settling-step-depreciation = { $what } : { $part } de { $before } tient à l'usure et à l'âge et n'est pas payé. { $before } moins { $moved } = { $after }.
settling-step-coinsurance = { $what } : { $insured } d'assurance pour { $required } exigés (règle proportionnelle). { $before } × { $share } = { $after }.
settling-step-coinsurance-enough = { $what } : { $insured } d'assurance pour { $required } exigés (règle proportionnelle). C'est assez; rien n'est retranché.
settling-step-coinsurance-agreed = { $what } : une valeur convenue tient le jour du sinistre; la règle proportionnelle ne s'applique pas.
settling-step-coinsurance-small = { $what } : le sinistre est assez petit pour que la règle proportionnelle ne s'applique pas.
settling-step-deductible = { $what } : { $before } moins la franchise (votre part) de { $amount } = { $after }.
settling-step-deductible-in-part = { $what } : { $before } moins { $moved } de la franchise (votre part) de { $amount } = { $after }.
settling-step-deductible-part = { $what } : { $before } moins une franchise (votre part) de { $moved }, en proportion du sinistre = { $after }.
settling-step-highest = { $what } : de plusieurs franchises dans un même événement, seule la plus élevée compte. { $moved } est payé malgré tout.
settling-step-monthly = { $what } : au plus { $limit } est payé pour trente jours. { $before } moins { $moved } = { $after }.
settling-step-margin = { $what } : une clause de marge paie au plus { $limit } à cet endroit. { $before } moins { $moved } = { $after }.
settling-step-limit = { $what } : le montant d'assurance de { $limit } est atteint. { $before } moins { $moved } = { $after }.
settling-step-limit-above = { $what } : ceci fait partie du montant de « { $coverage } », et ses { $limit } sont atteints. { $before } moins { $moved } = { $after }.
settling-step-limit-enough = { $what } : le montant d'assurance de { $limit } n'est pas atteint.
settling-step-year-limit = { $what } : le montant de { $limit } pour toute l'année est atteint. { $before } moins { $moved } = { $after }.
settling-step-year-limit-enough = { $what } : le montant de { $limit } pour toute l'année n'est pas atteint.
settling-step-in-full = { $what } : les { $paid } sont payés en entier.
settling-step-aggregate = { $what } : le montant de { $limit } pour toute l'année est épuisé. { $before } moins { $moved } = { $after }.
settling-step-shared = { $what } : le montant supplémentaire partagé ({ $limit } par année) paie { $moved } de ce qui dépasse.
settling-step-umbrella = { $what } : la responsabilité complémentaire ({ $limit } de plus) paie { $moved } de ce qui dépasse.
settling-step-umbrella-aggregate = { $what } : la responsabilité complémentaire paie au plus { $limit } par année. { $moved } reste à votre charge.
settling-step-paid = Sur { $total }, l'assurance paie { $paid } et vous assumez { $borne }.

## Cautions

settling-caution-order = { $coverage } : le contrat ne dit pas si la franchise ou la règle proportionnelle passe en premier. On applique d'abord la règle proportionnelle, comme la plupart des formulaires.
settling-caution-highest = Le contrat ne dit rien de plusieurs franchises dans un même événement. On ne compte que la plus élevée.
settling-caution-value = { $coverage } : personne ne connaît la vraie valeur. On a pris le montant assuré; une réduction proportionnelle peut donc manquer.
settling-caution-income = { $coverage } : le contrat ne dit pas si la règle proportionnelle compte les dépenses qui cesseraient. Les formulaires de revenus bruts les comptent, ceux de bénéfices non. Demandez à l'assureur lequel est le vôtre.
settling-caution-wear = { $coverage } : l'usure est estimée d'après l'âge du bâtiment.
settling-caution-functional = { $coverage } : le contrat paie un bien qui rend le même service. On a pris les montants tels quels; il peut coûter moins.
settling-caution-defence = { $coverage } : le contrat ne dit pas si les frais de défense entament le montant. On suppose que oui.
settling-caution-retroactive = { $coverage } : aucune date de rétroactivité n'est indiquée. On suppose que les faits antérieurs comptent.
settling-caution-qualified = { $coverage } : le plan de prévention n'est pas encore accepté. L'assureur peut payer moins, ou rien.
settling-caution-damages = { $coverage } : le contrat ne nomme pas ce genre de dommages-intérêts. Un texte muet peut jouer dans les deux sens.

## What cannot be honoured

settling-refused-coverage = Il n'y a pas de garantie « { $coverage } ». Employez un code du répertoire des garanties, pour qu'on sache à quoi elle répond.
settling-refused-two-payers = { $line } figure deux fois au contrat. Deux lignes ne peuvent payer le même sinistre; gardez-en une.
settling-refused-two-payers-reason = Deux payeurs se trouvent derrière la raison « { $reason } ». Donnez un seul payeur à chaque raison.
settling-refused-negative = { $line } : « { $clause } » vaut { $amount }. Ce montant ne peut être sous zéro; corrigez-le.
settling-refused-ratio = { $line } : « { $clause } » vaut { $ratio }. La proportion doit aller de 0 % à 100 %; écrivez 0.02 pour 2 %.
settling-refused-absent = { $line } : aucun montant d'assurance n'est donné. Sans lui, personne ne peut dire ce qui est payé; donnez-le.
settling-refused-two-deductibles = { $line } : donne la franchise en argent et en proportion. Gardez-en une; une franchise minimale peut accompagner une proportion.
settling-refused-percent-of-what = { $line } : la franchise est une proportion, mais de quoi? Écrivez loss, limit ou value.
settling-refused-no-limit = { $line } : la franchise est une proportion du montant d'assurance, et il n'y en a pas. Donnez-le.
settling-refused-deductible-bounds = { $line } : la franchise minimale ({ $least }) dépasse la maximale ({ $most }). Corrigez l'une des deux.
settling-refused-highest-of-loss = { $line } : une franchise en proportion du sinistre ne se compare pas aux autres. Retirez la règle « highest », ou donnez-la en argent.
settling-refused-sublimit-circle = { $line } : fait partie du montant de { $of }, qui fait à son tour partie de celui-ci. Rompez le cercle.
settling-refused-sublimit-of-nothing = { $line } : fait partie du montant de { $of }, que ce contrat ne donne pas à cet endroit. Ajoutez cette ligne ou retirez la clause.
settling-refused-sublimit-above = { $line } : son montant de { $limit } dépasse { $whole }, le montant de { $of } dont il fait partie. Corrigez l'un des deux.
settling-refused-attaches-to-nothing = { $line } : s'ajoute à { $coverage }, que ce contrat ne donne pas. Ajoutez cette ligne ou retirez-la de la liste.
settling-refused-shared-negative = Le montant supplémentaire partagé vaut { $amount }. Il ne peut être sous zéro; corrigez-le.
settling-refused-shared-twice = Le montant supplémentaire partagé nomme deux fois une garantie : { $coverages }. Nommez chacune une fois, dans l'ordre d'emploi.
settling-refused-cause = Il n'y a pas de cause « { $cause } ». Employez l'une de celles-ci : { $known }.
settling-refused-component = Il n'y a pas de genre de perte « { $component } ». Employez l'un de ceux-ci : { $known }.
settling-refused-reference = Il n'y a pas de sinistre type « { $loss } ». Employez l'un de ceux-ci : { $known }.
settling-refused-no-amounts = { $loss } : aucun montant n'est donné. Dites ce qui est perdu et combien.
settling-refused-negative-loss = La perte de « { $component } » vaut { $amount }. Une perte ne peut être sous zéro; corrigez-la.
settling-refused-place = Le lieu « { $place } » ne figure pas au contrat. Employez l'un de ceux-ci : { $known }.
settling-refused-needs-place = Dites où « { $component } » a été perdu : ce contrat l'assure lieu par lieu ({ $known }).
settling-refused-months = { $loss } : « { $component } » est donné mois par mois. Seuls les revenus peuvent l'être; donnez un seul montant.
settling-refused-outside = Le { $day } est hors de la période d'assurance, qui va du { $start } au { $end }. Donnez un jour de cette période.
settling-refused-outside-claims-made = { $coverage } vise les réclamations présentées du { $start } au { $end }, et dans le délai de déclaration. Le { $day } est en dehors; donnez le jour de la réclamation.
settling-refused-period = Le contrat prend fin le { $end } et commence le { $start }. Il doit prendre fin après son début.
settling-refused-no-value = { $line } : une clause compare le sinistre à la vraie valeur, qui n'est pas donnée. Donnez-la sous « values ».
settling-refused-no-depreciation = { $line } : paie moins l'usure, et l'usure de « { $component } » n'est pas donnée. Donnez « depreciation » sous « values », par exemple 0.25.

## An account's own values and losses

settling-worth = Coût de reconstruction au { $day } : { $building }
settling-past-before = Ce que vous auriez assumé de vos sinistres passés selon le premier contrat
settling-past-after = Ce que vous auriez assumé de vos sinistres passés selon le second contrat
settling-how-past = { $n ->
    [one] Un sinistre passé, réglé de nouveau selon ce contrat.
   *[other] { $n } sinistres passés, réglés de nouveau selon ce contrat, année par année.
}
losses-not-yours = Votre organisme ne peut pas subir ce sinistre.
losses-not-insured = Aucun de vos contrats n'assure ceci : { $what }.
losses-no-largest = Aucun bâtiment au dossier ne convient à ce sinistre.
losses-no-basement = Aucun bâtiment au dossier n'a de sous-sol.
losses-nothing-lost = Rien au dossier ne dit quelle ampleur aurait ce sinistre.
losses-assumed-deductible = { $n ->
    [one] La franchise d'un sinistre n'est pas au dossier. On a pris ce que l'assureur a payé comme le sinistre entier.
   *[other] Les franchises de { $n } sinistres ne sont pas au dossier. On a pris ce que l'assureur a payé comme le sinistre entier.
}
losses-assumed-one-thing = Les relevés ne disent pas ce qui a été perdu. On a pris chaque sinistre comme un dommage à une seule chose, selon sa cause.
losses-assumed-open = Certains sinistres sont encore ouverts. On a pris l'estimation actuelle de l'assureur.
losses-assumed-prices = Les montants sont ceux de l'époque; les prix ont monté depuis.

## Choices that terms may state

coinsurance-of-whole-income = les revenus d'une année, en entier
coinsurance-of-less-stopping = les revenus d'une année, moins les dépenses qui cesseraient
settling-order-coinsurance-first = coassurance d'abord
settling-order-deductible-first = franchise d'abord
deductible-rule-highest = seulement la plus élevée
deductible-rule-each = chacune d'elles
