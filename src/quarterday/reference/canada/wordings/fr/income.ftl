## Kinds of income

income-kind-donations = dons
income-kind-rents = loyers
income-kind-tuition = frais d'inscription
income-kind-events = activités
income-kind-other = autres revenus
income-share-of-month = Part de l'année reçue en { $month } ({ $kind })
income-month = { $month } { $year }
income-subject = Perte de revenus

## The worksheet

income-need = Revenus perdus dans la pire fermeture
income-how-need = { $months ->
    [one] Un mois
   *[other] { $months } mois
} sans le bâtiment, si cela commence en { $start } : le début qui coûterait le plus cher dans la prochaine période.
income-lost-in = Revenus perdus en { $month } { $year }
income-how-month = Les revenus du mois, { $income }, moins { $kept } qui rentreraient quand même, moins { $saved } de dépenses qui cesseraient.
income-caution-both = On suppose que tous vos revenus dépendent du bâtiment et qu'aucune dépense ne cesse. Vos réponses au formulaire des activités préciseront le chiffre.
income-caution-expenses = On suppose qu'aucune dépense ne cesse pendant la fermeture. Vos réponses au formulaire des activités préciseront le chiffre.
income-caution-share = On suppose que tous vos revenus dépendent du bâtiment. Votre réponse au formulaire des activités précisera le chiffre.
income-caution-season = La répartition des revenus sur les mois est générale. Vos propres livres sont plus justes.
income-limit = Maximum que le contrat verse pour des revenus perdus
income-how-limit = Le montant prévu pour la perte de revenus dans le contrat qui commence le { $start }.
income-short = Revenus perdus que le contrat ne verserait pas
income-how-short = { $need } nécessaires, moins { $pays } versés.
income-exposure = Revenus d'une année, comme la règle proportionnelle les compte
income-how-exposure = Les revenus de l'année qui dépendent des locaux, { $years ->
    [0] tels que déclarés
    [one] augmentés d'un an de croissance
   *[other] augmentés de { $years } ans de croissance
}{ $counts ->
    [whole] . Les dépenses qui cesseraient ne sont pas déduites
    [less] , moins les dépenses qui cesseraient
   *[part] , moins une partie des dépenses qui cesseraient
}.
income-caution-clause = Le contrat ne dit pas si la règle compte les dépenses qui cesseraient. Les formulaires de revenus bruts les comptent, ceux de bénéfices non. Demandez à l'assureur lequel est le vôtre.
income-required = Montant minimal auquel assurer les revenus
income-how-required = { $exposure } × { $percent }, ce qu'exige la règle proportionnelle.
income-coinsured-share = Part des revenus perdus que le contrat verse
income-paid = Ce que le contrat verserait pour les revenus perdus
income-how-paid = { $need } × { $share }, mais jamais plus de { $limit }.
income-extra = Coût de s'installer ailleurs jusqu'au retour
income-how-extra = { $months ->
    [one] Le loyer d'un mois
   *[other] Le loyer de { $months } mois
} et le déménagement.
income-extra-limit = Maximum que le contrat verse pour s'installer ailleurs
income-how-extra-limit = Les montants pour les frais supplémentaires et pour d'autres locaux, ensemble.
income-extra-short = Coût de s'installer ailleurs que le contrat ne verserait pas

## Income cover that ends too soon

income-too-low-title = Après un incendie, il manquerait environ { $about } à votre assurance des revenus
income-too-low-means = Un incendie pourrait fermer vos lieux ({ $building }) pendant environ { $months ->
    [one] un mois
   *[other] { $months } mois
}. Au pire, si la fermeture commence en { $start }, vous perdriez { $need } de revenus. Le contrat verse au plus { $limit }. { $lasts ->
    [0] Cela ne durerait pas un mois.
    [one] Cela dure un mois.
   *[other] Cela dure { $lasts } mois.
}
income-too-low-means-clause = Un incendie pourrait fermer vos lieux ({ $building }) pendant environ { $months ->
    [one] un mois
   *[other] { $months } mois
}. Au pire, si la fermeture commence en { $start }, vous perdriez { $need } de revenus. Le contrat verse au plus { $limit }. La règle proportionnelle (coassurance) ramène aussi chaque réclamation à { $share }, parce que trop peu de revenus sont assurés.
income-too-low-todo-decide = Décidez s'il faut porter le montant à { $need }. Cela ajoute environ { $price } par année avant taxe. Dites-nous, sur le formulaire des activités, quelles factures cesseraient et quels revenus continueraient.
income-too-low-todo-decide-unpriced = Décidez s'il faut porter le montant à { $need }; nous demanderons le prix à l'assureur. Dites-nous, sur le formulaire des activités, quelles factures cesseraient et quels revenus continueraient.
income-too-low-todo-send-back = Dites-nous, sur le formulaire des activités, quels revenus dépendent du bâtiment et quelles factures cesseraient. Nous pourrons alors dire quel montant convient.
income-too-low-todo-know = L'écart est petit. Pensez-y la prochaine fois que le montant sera fixé.
income-offer-price = { $case ->
    [ask] à un prix encore à demander
   *[priced] pour { $price } par année
}
income-too-low-offer-title = Après un incendie, il manquerait environ { $about } à votre assurance des revenus; l'assureur offre { $offered }
income-too-low-offer = L'assureur offre un montant de { $offered } { $for_price }. { $pays ->
    [all] Cela dure jusqu'à la réouverture.
    [cut] La règle proportionnelle réduirait encore chaque réclamation : elle demande { $required }.
   *[part] Cela durerait { $then_lasts ->
        [0] moins d'un mois
        [one] un mois
       *[other] { $then_lasts } mois
    }.
}
income-too-low-offer-todo = { $reach ->
    [all] Décidez : prendre l'option de l'assureur, ou laisser le montant tel quel.
   *[part] Décidez : prendre l'option de l'assureur, nous faire demander { $need }, ou laisser le montant tel quel.
} Dites-nous, sur le formulaire des activités, quelles factures cesseraient et quels revenus continueraient.
income-too-low-reason = Une longue fermeture laisserait { $short } de revenus impayés.

income-extra-expense-low-title = S'installer ailleurs coûterait environ { $about } de plus que ce que le contrat verse
income-extra-expense-low-means = Jusqu'au retour dans votre bâtiment, soit environ { $months ->
    [one] un mois
   *[other] { $months } mois
}, un autre lieu et le déménagement coûteraient { $need }. Le contrat verse au plus { $limit } pour cela.
income-extra-expense-low-todo-send-back = Vérifiez le loyer et les frais de déménagement sur le formulaire des activités. Nous pourrons alors dire quel montant convient.
income-extra-expense-low-todo-know = L'écart est petit. Pensez-y la prochaine fois que le montant sera fixé.
income-extra-expense-low-todo-decide = Décidez s'il faut demander { $need } pour les frais supplémentaires, l'assurance qui paie le surcoût d'un lieu temporaire. Nous demanderons le prix à l'assureur.
income-extra-expense-low-offer-title = S'installer ailleurs coûterait environ { $about } de plus que ce que le contrat verse; l'assureur offre { $offered }
income-extra-expense-low-offer = L'assureur offre un montant de { $offered } { $for_price }.
income-extra-expense-low-offer-todo = { $reach ->
    [all] Décidez : prendre l'option de l'assureur, ou laisser le montant tel quel.
   *[part] Décidez : prendre l'option de l'assureur, nous faire demander { $need }, ou laisser le montant tel quel.
}
income-extra-expense-low-reason = Une longue fermeture laisserait { $short } de frais impayés.

## On its own

income-calc-months = « revenue », { $kind } : { $count } montants. Donnez-en un pour l'année, ou douze à partir de janvier.
income-step-exposure = { $case ->
    [none] Revenus d'une année : { $exposure }.
    [whole-income] Revenus d'une année, en entier, comme la règle les compte : { $exposure }.
    [less-stopping] Revenus d'une année moins les dépenses qui cessent, comme la règle les compte : { $exposure }.
   *[unsaid] Revenus d'une année comme la règle les compte d'habitude, dépenses qui cessent comprises : { $exposure }. Vérifiez le texte du contrat.
}
income-step-worst = Pire mois pour commencer : { $start }, pour une fermeture de { $months } mois.
income-step-need = { $income } de revenus, moins { $kept } encore reçus, moins { $saved } épargnés = { $need } perdus.
income-step-extra = S'installer ailleurs coûte { $extra } pendant la fermeture.
income-step-share = { $months } mois ÷ 12 = { $share } : le plus grand pourcentage de coassurance qui convient à une telle fermeture.
income-step-lasts = Un montant de { $limit } { $lasts ->
    [0] ne dure pas un mois.
    [one] dure un mois.
   *[other] dure { $lasts } mois.
}
income-step-monthly = Chaque mois, { $most } au plus : { $paid } en tout.
