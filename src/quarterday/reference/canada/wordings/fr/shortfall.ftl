shortfall-behind = Les hausses automatiques ont ajouté { $increases }; les coûts de construction ont monté de { $index }. Le portefeuille a { $gap } de retard, soit { $share } du coût de ses bâtiments.
shortfall-ahead = Les hausses automatiques ont ajouté { $increases }; les coûts de construction ont monté de { $index }. Le portefeuille a { $gap } d'avance, soit { $share } du coût de ses bâtiments.
shortfall-none = Aucun bâtiment du portefeuille n'a à la fois une évaluation et une hausse automatique connue.
shortfall-alternative = Hausses automatiques depuis les évaluations et hausse des coûts de construction.
shortfall-row = { $province } : hausses { $increases }, coûts { $index }, écart { $gap }.
shortfall-buildings = { $n ->
    [one] { $n } bâtiment
   *[other] { $n } bâtiments
}
shortfall-key-increases = Hausses automatiques depuis les évaluations
shortfall-key-index = Hausse des coûts de construction depuis les évaluations
shortfall-all = Ensemble
shortfall-head-province = Province
shortfall-head-buildings = En retard
shortfall-head-increases = Hausses
shortfall-head-index = Coûts
shortfall-head-share = Retard
shortfall-head-gap = Écart
shortfall-head-short = Manque
shortfall-note = En retard : bâtiments dont les hausses traînent, sur tous ceux comparés. Écart : évaluations haussées selon l'indice, moins haussées automatiquement, à chaque renouvellement. Manque : ce qui ferait défaut après un sinistre total, bâtiment par bâtiment.
shortfall-left-out = { $n ->
    [one] Un bâtiment assuré est laissé de côté, faute d'évaluation utilisable ou de hausse connue.
   *[other] { $n } bâtiments assurés sont laissés de côté, faute d'évaluation utilisable ou de hausse connue.
}
shortfall-no-renewal = { $n ->
    [one] Un dossier est laissé de côté : il n'indique aucune date de renouvellement.
   *[other] { $n } dossiers sont laissés de côté : ils n'indiquent aucune date de renouvellement.
}
shortfall-written = Le graphique est dans { $path }.
values-release-used = Coûts de construction : indice de { $place }, publié le { $day }, jusqu'à { $last } ({ $base } = 100).
