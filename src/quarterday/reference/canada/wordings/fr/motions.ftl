## Draft motions for the minutes: for a question, and against it

motion-cost = pour environ { $cost } par année avant taxe
motion-cost-free = sans frais supplémentaires
motion-cost-open = une fois le prix approuvé par le conseil
motion-stake = que jusqu'à { $amount } d'un sinistre resteraient à la charge de l'organisme
motion-stake-open = qu'un tel sinistre resterait à la charge de l'organisme
motion-insurer = l'assureur
motion-premium = La prime est de { $premium } pour l'année, taxe comprise.
motion-later = La prime sera approuvée quand l'assureur l'aura fixée.

motion-people-abuse-unqualified = Il est proposé que le conseil révise le plan de prévention des abus; que la présidence signe la déclaration; et que celle-ci ne déclare que ce qui se fait vraiment.
motion-people-activity-uncovered = Il est proposé de souscrire cette garantie, { $cost } : { $subject }.
motion-people-activity-uncovered-instead = Il est proposé de ne pas souscrire cette garantie : { $subject }; et d'inscrire au procès-verbal { $stake }.
motion-income-too-low = Il est proposé de porter le montant pour perte de revenus à { $need }, { $cost }.
motion-income-too-low-instead = Il est proposé de laisser le montant pour perte de revenus à { $limit }; et d'inscrire au procès-verbal qu'il pourrait manquer { $short } de revenus.
motion-income-extra-expense-low = Il est proposé que le courtier demande un montant de { $need } pour les frais supplémentaires, à prendre { $cost }.
motion-income-extra-expense-low-instead = Il est proposé de laisser le montant des frais supplémentaires à { $limit }; et d'inscrire au procès-verbal qu'il pourrait manquer { $short }.
motion-income-too-low-offer = Il est proposé de porter le montant pour perte de revenus à { $offered }, comme l'assureur l'offre, { $cost }{ $reach ->
    [all] .
   *[part] ; et que le courtier demande ce que coûteraient { $need }.
}
motion-income-too-low-offer-instead = Il est proposé de laisser le montant pour perte de revenus à { $limit }; et d'inscrire au procès-verbal qu'il pourrait manquer { $short } de revenus.
motion-income-extra-expense-low-offer = Il est proposé de porter le montant des frais supplémentaires à { $offered }, comme l'assureur l'offre, { $cost }{ $reach ->
    [all] .
   *[part] ; et que le courtier demande ce que coûteraient { $need }.
}
motion-income-extra-expense-low-offer-instead = Il est proposé de laisser le montant des frais supplémentaires à { $limit }; et d'inscrire au procès-verbal qu'il pourrait manquer { $short }.
motion-terms-claims-made-switched = Il est proposé que le courtier fasse écrire par l'assureur à partir de quel jour les faits passés comptent; et de déclarer avant le renouvellement tout ce qui pourrait devenir une réclamation.
motion-terms-claims-made-switched-instead = Il est proposé d'accepter ce changement : { $coverage }; et de déclarer avant le renouvellement tout ce qui pourrait devenir une réclamation.
motion-terms-claims-made-moved = Il est proposé que le courtier redemande à l'assureur le jour précédent : { $coverage }; et de déclarer avant le renouvellement tout ce qui pourrait devenir une réclamation.
motion-terms-claims-made-moved-instead = Il est proposé d'accepter le jour plus tardif : { $coverage }; et de déclarer avant le renouvellement tout ce qui pourrait devenir une réclamation.
motion-terms-dropped = Il est proposé de rétablir cette garantie, { $cost } : { $coverage }.
motion-terms-dropped-instead = Il est proposé d'accepter le renouvellement sans cette garantie : { $coverage }; et d'inscrire au procès-verbal { $stake }.
motion-terms-option-open = Il est proposé de souscrire cette garantie, { $cost } : { $coverage }.
motion-terms-option-open-instead = Il est proposé de ne pas souscrire cette garantie cette année : { $coverage }; et d'inscrire au procès-verbal { $stake }.
motion-terms-options-together = { $count ->
    [one] Il est proposé d'accepter cette option, { $cost } : { $options }.
   *[other] Il est proposé de souscrire, parmi les options offertes, celles marquées « accepter » au formulaire des décisions; et de refuser les autres. Ce sont : { $options }.
}
motion-terms-options-together-instead = { $count ->
    [one] Il est proposé de ne pas accepter cette option cette année : { $options }.
   *[other] Il est proposé de ne souscrire aucune des options offertes cette année : { $options }.
}
motion-terms-vacancy = Il est proposé que le courtier demande par écrit à l'assureur la permission de laisser vide : { $buildings }; et d'assurer le chauffage, l'eau et les visites comme l'assureur le demande.
motion-terms-vacancy-instead = Il est proposé de ne demander aucune permission pour : { $buildings }; et d'inscrire au procès-verbal que l'assurance peut cesser tant que c'est vide.
motion-terms-worse = { $priced ->
    [no] Il est proposé de faire redemander les conditions actuelles par le courtier, qui en dira le prix au conseil : { $coverage }.
   *[yes] Il est proposé de faire redemander les conditions actuelles par le courtier, ou de prendre l'option de l'assureur, { $cost } : { $coverage }.
}
motion-terms-worse-instead = Il est proposé d'accepter les conditions réduites : { $coverage }; et d'inscrire au procès-verbal { $stake }.
motion-values-below-replacement = Il est proposé de hausser de { $gap } le montant d'assurance de ce bâtiment, { $cost } : { $building }.
motion-values-below-replacement-instead = Il est proposé de laisser tel quel le montant d'assurance de ce bâtiment : { $building }; et d'inscrire au procès-verbal qu'il manquerait { $gap } après un sinistre total.
motion-values-below-replacement-together = Il est proposé de hausser les montants d'assurance de tous les bâtiments nommés à l'ordre du jour à ce que coûte leur reconstruction, { $cost }.
motion-values-below-replacement-together-instead = Il est proposé de laisser tels quels les montants d'assurance; et d'inscrire au procès-verbal que { $n } bâtiments ne pourraient pas être reconstruits avec ces montants.
motion-values-coinsurance = Il est proposé de signer la déclaration de valeurs de ce bâtiment : { $building }; et que le courtier demande une valeur convenue, qui suspend la règle proportionnelle.
motion-values-coinsurance-instead = Il est proposé de ne demander aucune valeur convenue pour ce bâtiment : { $building }; et d'inscrire au procès-verbal que la règle proportionnelle peut réduire toute réclamation.
motion-values-valuation-stale = Il est proposé de faire évaluer de nouveau ce bâtiment avant le prochain renouvellement : { $building }; et que la trésorerie choisisse entre une expertise et une évaluation à distance.
motion-values-valuation-stale-instead = Il est proposé de garder un an le montant d'assurance actuel de ce bâtiment, sans nouvelle évaluation : { $building }; et de l'inscrire au procès-verbal.
motion-other = Il est proposé que le conseil agisse comme le propose l'ordre du jour, { $cost } : { $question }.
motion-other-instead = Il est proposé que le conseil n'agisse pas pour l'instant : { $question }; et d'inscrire au procès-verbal { $stake }.

motion-accept-about = Le renouvellement du { $start }
motion-accept = { $count ->
    [0] Il est proposé d'accepter l'offre de { $insurer } pour la période du { $start } au { $end }. { $premium }
   *[other] Il est proposé d'accepter l'offre de { $insurer } pour la période du { $start } au { $end }, modifiée par les propositions ci-dessus. { $premium }
}
