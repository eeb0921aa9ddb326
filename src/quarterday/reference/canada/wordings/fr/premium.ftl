## What a premium table says that cannot be right

premium-no-building = On demande { $amount } pour { $coverage } à « { $location } », mais le dossier n'a pas ce bâtiment. Demandez à l'assureur duquel il s'agit.
premium-negative = Le montant de { $amount } figure pour { $coverage } ({ $location }) sans motif. Demandez à l'assureur à quoi tient ce crédit.
premium-taxed-exempt = La taxe indiquée, { $tax }, porte aussi sur { $coverages }, que cette province ({ $province }) ne taxe pas. Elle devrait être de { $right }. Demandez une offre corrigée à l'assureur.

## Who bears which part

allocation-no-keys = La clé de répartition « { $key } » n'existe pas : ce dossier n'en a aucune. Une clé de répartition dit qui supporte quelle part. Chargez-en une dans la feuille « Répartition ».
allocation-no-key = La clé de répartition « { $key } » n'existe pas dans ce dossier; rien ne dit donc qui supporte quoi. Écrivez l'une de celles-ci : { $known }.
allocation-left-over = La clé « { $key } » ne dit rien de ce poste : { $coverage } ({ $location }). Personne ne le supporterait. Ajoutez une ligne pour tout ce qui reste.
allocation-portion = La clé « { $key } » répartit un même poste de plusieurs façons ({ $by }). Donnez à chaque façon une seule proportion, la même sur toutes ses lignes.
allocation-portions = Les proportions de la clé « { $key } » totalisent { $whole } au lieu de 100 %. Corrigez-les dans la feuille « Répartition ».
allocation-measure = La clé « { $key } » n'a pas de mesure pour « { $party } » ({ $by }); sa part est donc inconnue. Ajoutez-la.
allocation-nothing = Les mesures de la clé « { $key } » ({ $by }) sont toutes nulles; elles ne peuvent rien répartir. Donnez-en au moins une.
allocation-no-premium = La prime totale est nulle; elle ne peut servir à répartir les frais et la taxe. Vérifiez le tableau de la prime.
allocation-tax = Taxe
allocation-fees = Frais
allocation-rounding = Cents d'arrondi
allocation-total = Total

## Paying over time

instalments-nothing = La prime est de { $premium }; il n'y a rien à étaler. Vérifiez le montant.
instalments-deposit-above = L'acompte de { $deposit } dépasse la prime de { $premium }. Réduisez-le, ou payez en une fois.
instalments-after-term = Le dernier versement de ce plan tombe le { $due }, alors que l'assurance prend fin le { $end }. Choisissez moins de versements ou un intervalle plus court.
instalments-one-deposit = Un plan comporte un seul acompte. Donnez « deposit » en dollars ou « deposit_rate » en proportion, pas les deux.
instalments-no-plan = Le plan « { $plan } » n'existe pas. Écrivez l'un de ceux-ci : { $known }.
instalments-not-offered = « { $plan } » n'a pas été offert pour ce renouvellement : ses conditions ne prévoient pas de versements. Payez en une fois, ou demandez à l'assureur et inscrivez aux conditions qu'il les accepte.
instalments-not-possible = « { $plan } » ne peut pas servir pour ce renouvellement. { $why }
instalments-not-theirs = { $insurer } n'accepte pas le plan « { $plan } ». { $count ->
    [0] Nous ne lui connaissons aucun plan : demandez-lui.
    [one] Choisissez { $plans }, ou payez en une fois.
   *[other] Choisissez parmi { $plans }, ou payez en une fois.
}
instalments-total = Total des versements ({ $plan })
instalments-total-how = { $count } versements, le premier le { $first }, le dernier le { $last }.
instalments-at-once = Payé en une fois le premier jour
instalments-at-once-how = Prime, frais et taxe au premier jour de la période.
instalments-extra = Ce que coûte de plus ce mode de paiement ({ $plan })
instalments-extra-how = Frais du plan de { $charge }, et { $tax } de taxe parce que les versements ultérieurs portent un autre taux.
instalments-canada = Coût d'emprunt par année ({ $plan })
instalments-canada-how = Frais de { $cost } sur { $years } an pour un solde moyen de { $average }, selon la formule des règles canadiennes sur le coût d'emprunt.
instalments-effective = Taux annuel de tout ce qui est payé en plus ({ $plan })
instalments-effective-how = Le taux auquel les versements datés valent, au premier jour, autant qu'un paiement en une fois.
instalments-plan-costs = { $plan } ({ $extra } de plus, soit { $rate } par année)
instalments-plan-free = { $plan } (rien de plus)

## What a rate is, and when there is none

apr-no-rate = Ces montants n'ont pas de taux annuel : l'argent ne change jamais de sens, ou aucun taux ne les rend égaux. Vérifiez les signes et les montants.
apr-several-rates = L'argent change de sens { $changes } fois; plusieurs taux seraient justes et aucun n'est le coût. Donnez un plan où l'un paie d'abord et l'autre rembourse ensuite.
apr-nothing-financed = Un montant financé de { $financed } ne porte aucun taux. Donnez un montant positif et des versements après le premier jour.
apr-not-repaid = Il manque { $short } aux versements pour rembourser les { $financed } financés. Ajoutez ce qui manque.

## When a term changes in the middle

midterm-outside = Le { $day } est en dehors de la période du { $start } au { $end }; rien ne peut être calculé à partir de cette date. Donnez un jour de la période.
midterm-reversed = La période prend fin le { $end }, ce qui n'est pas après son début, le { $start }. Corrigez les dates.
midterm-other-term = Le tableau vaut pour une période de { $table } jours et celle-ci en a { $days }. Prenez une règle qui compte les jours, comme pro-rata.
midterm-gap = Le tableau publié n'a pas de ligne pour { $day } jours : les plus proches sont celles de { $before } et de { $after } jours. Mettez le tableau de l'assureur dans votre dossier de référence.
midterm-no-rule = La règle de résiliation « { $rule } » n'existe pas. Écrivez l'une de celles-ci : { $known }.
midterm-days = { $days ->
    [one] L'assurance a été en vigueur { $days } jour sur { $of_days }.
   *[other] L'assurance a été en vigueur { $days } jours sur { $of_days }.
}
midterm-leap = La période comprend le 29 février; elle compte 366 jours.
midterm-kept = L'assureur garde { $share }, soit { $earned }. Il rembourse { $returned }.

## Spread over the months

prepaid-year-end = « { $value } » n'est pas une fin d'exercice. Écrivez le mois et le jour, comme 12-31.
journal-prepaid = Assurance payée d'avance
journal-payable = Assurance à payer
journal-expense = Charge d'assurance
journal-bank = Banque
journal-charge = Frais de paiement échelonné
journal-memo-opening = Prime de la période, avec frais et taxe
journal-memo-month = Assurance consommée du { $month } au { $end }
journal-memo-payment = Versement d'assurance { $n } de { $count }
journal-date = date
journal-account = compte
journal-fund = fonds
journal-debit = débit
journal-credit = crédit
journal-memo = libellé

## Calculations on their own

calc-table = { $rows } lignes et { $columns } colonnes, en unités de { $unit }. Chaque case, ligne, colonne et le total prennent l'unité juste au-dessous ou au-dessus de leur valeur exacte.
calc-split = La prime passe de { $before } à { $after } : { $change }. Les effets totalisent cet écart.
calc-instalments-once = En une fois : { $at_once }. Avec ce plan : { $total }, soit { $extra } de plus.
calc-instalments-parts = De cet écart, { $charge } sont des frais du plan et { $tax } de la taxe, parce que le taux dépend du jour du paiement.
calc-instalments-canada = Coût d'emprunt selon la formule canadienne : { $rate } par année.
calc-instalments-effective = Taux effectif de tout ce qui est payé en plus : { $rate } par année.
calc-apr-canada = Coût { $cost } ÷ ({ $years } an × { $average } dus en moyenne) = { $rate } par année.
calc-apr-actuarial = Par périodes unitaires (Regulation Z, annexe J) : { $rate } par année.
calc-apr-effective = Taux annuel effectif de ces mouvements : { $rate }.

## The command

cli-premium-of = Prime des conditions qui débutent le { $start } ({ $stage })
cli-premium-doubts = À demander d'abord à l'assureur
cli-premium-table = Garanties et lieux
cli-premium-moved = Pourquoi elle a changé : { $change } par rapport à l'an dernier ({ $share })
cli-premium-no-change = Il n'y a pas de prime de l'an dernier à laquelle la comparer.
cli-premium-allocation = Qui supporte quelle part, selon la clé « { $key } »
cli-premium-by-place = La même répartition par lieu
cli-premium-keys = Clés au dossier : { $keys }. Affichez-en une avec --allocate.
cli-premium-plans = Payer en plusieurs fois
cli-premium-plan = { $plan } : { $extra } de plus qu'en une fois; coût d'emprunt de { $canada } par année, taux effectif de { $effective }
cli-premium-prepaid = Consommée mois par mois
cli-premium-no-premium = Ces conditions n'ont pas de tableau de la prime; il n'y a rien à montrer. Chargez-le d'abord, ou choisissez d'autres conditions avec --terms.
cli-journal-written = Le journal est dans { $file } : { $count } lignes, débits { $debit }, crédits { $credit }.
premium-head-coverage = Garantie
premium-head-place = Lieu
premium-head-premium = Prime
premium-head-due = Échéance
premium-head-tax = Taxe
premium-head-charge = Frais
premium-head-amount = Montant
premium-head-effect = Motif
premium-head-from = Du
premium-head-days = Jours
premium-head-fiscal-year = Exercice se terminant le

## The premium statement: who bears it, how it is paid, how it is used up

premium-statement-bears = La plus grande part revient à : { $party }, { $amount }
premium-statement-bears-lead = La prime est répartie selon la clé « { $key } » que vous nous avez donnée. Les lignes et les colonnes tombent juste au cent.
premium-statement-place = Lieu (en dollars)
premium-statement-plans = Payer en plusieurs fois coûte au moins { $extra } de plus
premium-statement-plans-lead = En une fois, le premier jour, vous payez { $at_once }. Chaque plan indique ce qu'il coûte en plus. { premium-statement-plans-rates }
premium-statement-plans-rates = Le taux légal compte les frais du plan; le taux annuel réel, tout ce que vous payez de plus.
premium-statement-plans-elsewhere = Les façons de payer et les échéances sont sur le formulaire « Mode de paiement ».
premium-statement-plans-example = Ces plans sont des exemples tant que l'assureur n'a pas donné les siens. Parlez-nous-en avant de compter dessus.
premium-statement-plan = { $plan } : { $extra } de plus. Taux légal de { $canada }; taux annuel réel de { $effective }
premium-statement-due = Échéance
premium-statement-paid-premium = Prime et frais
premium-statement-paid-tax = Taxe
premium-statement-paid-charge = Frais du plan
premium-statement-paid = À payer
premium-statement-months = { $amount } appartiennent à l'exercice qui se termine le { $year }
premium-statement-months-lead = Vous payez toute la période d'avance. Chaque mois en consomme ses jours; le reste est payé d'avance et vous appartient encore.
premium-statement-from = Du
premium-statement-days = Jours
premium-statement-year = Fin de l'exercice
premium-statement-used = Consommé (en dollars)

## The payment form

payment-form-reason = Dites-nous comment vous voulez payer.
payment-form-title = Comment voulez-vous payer { $total }?
payment-form-lead = Cochez une seule façon. Elle vaut pour cette période seulement. Si rien n'est coché d'ici le { $by }, parlez-nous avant la première échéance.
payment-form-ways = Ce que coûte chaque façon
payment-form-way = Façon
payment-form-first = Premier versement
payment-form-last = Dernier versement
payment-form-all = Tous les versements
payment-form-extra = De plus qu'en une fois
payment-form-rate = Taux par année
payment-form-plans = Chaque versement de chaque plan, pour votre agenda
payment-form-question = Votre façon de payer
payment-form-bank = N'écrivez aucun numéro de compte ou de carte sur ce formulaire. Si vous choisissez les prélèvements, l'assureur vous enverra son propre formulaire.
payment-form-cheques = Si vous choisissez les chèques, datez chacun de son échéance et envoyez-les tous avec ce formulaire.
payment-at-once = en une fois, le premier jour
