experience-sentence = { $case ->
    [none] Aucun dossier du portefeuille ne montre de prime; il n'y a donc rien à quoi comparer les sinistres.
   *[some] En { $years } années d'assurance jusqu'à aujourd'hui, { $files ->
        [one] un dossier a
       *[other] { $files } dossiers ont
    } eu { $claims ->
        [0] aucun sinistre
        [one] un sinistre
       *[other] { $claims } sinistres
    }. Coût pour les assureurs : { $incurred }, soit { $ratio } de la prime de { $premium }.
}
experience-unknown = non indiqué
experience-by-cause = Par cause
experience-by-province = Par province
experience-by-class = Par genre d'organisme
experience-by-insurer = Par assureur
experience-by-year = Par année de sinistre
experience-head-files = Dossiers
experience-head-claims = Sinistres
experience-head-incurred = Coût
experience-head-premium = Prime
experience-head-ratio = Part
experience-head-capped = Plafonnée
experience-head-loss-year = Année du sinistre
experience-head-latest = Jusqu'ici
experience-head-to-come = Encore à venir
experience-head-error = À peu près
experience-development = De combien les sinistres croissent d'un relevé annuel à l'autre, d'après { $files ->
    [one] un dossier
   *[other] { $files } dossiers
} avec des relevés de deux années de suite. « À peu près » est une erreur-type : deux fois sur trois, le résultat tombe aussi près, si les sinistres croissent comme avant.
experience-no-development = On ne peut dire ce que les sinistres coûteront encore : aucun dossier n'a de relevés de deux années de suite.
experience-note = Coût : payé et réservé, moins récupéré, tel que les assureurs le portent. Prime : celle des conditions qui prennent fin, pour chaque année écoulée; les prix d'avant sont rarement au dossier. Part : coût divisé par la prime; pour une cause, par la prime de tout le portefeuille. Plafonnée : de même, chaque sinistre compté jusqu'à { $cap }. Les sinistres figurent sous l'assureur d'aujourd'hui.
experience-left-out-no-premium = { $n ->
    [one] Un dossier est laissé de côté : ses conditions ne montrent pas de prime.
   *[other] { $n } dossiers sont laissés de côté : leurs conditions ne montrent pas de prime.
}
experience-left-out-other-currency = { $n ->
    [one] Un dossier est laissé de côté : sa prime est dans une autre monnaie.
   *[other] { $n } dossiers sont laissés de côté : leurs primes sont dans une autre monnaie.
}
experience-left-out-no-renewal = { $n ->
    [one] Un dossier est laissé de côté : il ne donne pas de date de renouvellement.
   *[other] { $n } dossiers sont laissés de côté : ils ne donnent pas de date de renouvellement.
}
