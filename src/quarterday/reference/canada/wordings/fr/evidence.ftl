# Les sceaux, la preuve d'un dossier, les demandes à l'assureur et les petites lettres.

## Les sceaux

seal-intact = { $name } : scellé, et pas un octet n'a changé depuis.
seal-filled = { $name } : scellé, puis seulement rempli. Les pages sont telles qu'elles ont été scellées.
seal-rewritten = { $name } n'a pas de sceau qui tienne. Comparé à l'envoi conservé ici, seuls des champs ont été remplis; les pages sont les mêmes.
seal-altered = { $name } a été modifié : on a changé plus que le contenu des champs. Ne vous y fiez pas.
seal-kept = { $name } n'est pas scellé. Il est, octet pour octet, un document conservé ici.
seal-strange = { $name } n'est pas scellé et n'est pas connu ici. On ne peut rien en dire.
seal-by-own = Scellé par { $signer } le { $day } à { $time } UTC, selon sa propre horloge, avec le certificat de ce cabinet.
seal-by-own-undated = Scellé par { $signer }, avec le certificat de ce cabinet.
seal-by-other = Le sceau nomme { $signer }, le { $day } à { $time } UTC, mais il n'a pas été fait avec le certificat de ce cabinet. N'importe qui peut faire un tel sceau.
seal-by-other-undated = Le sceau nomme { $signer }, mais il n'a pas été fait avec le certificat de ce cabinet. N'importe qui peut faire un tel sceau.
seal-pages = { $n ->
    [one] Cette page diffère : { $pages }.
   *[other] { $n } pages diffèrent, dont { $pages }.
}
seal-fields = { $n ->
    [one] Un champ est apparu ou a disparu : { $names }.
   *[other] { $n } champs sont apparus ou ont disparu, par exemple { $names }.
}
seal-filled-in = { $n ->
    [one] Rempli : { $names }.
   *[other] { $n } champs ont été remplis, par exemple { $names }.
}
seal-not-signed = { $file } : il n'y a pas d'envoi à sceller dans cette langue, ou c'est un projet. Signez la revue, produisez l'envoi, puis scellez-le.
seal-no-key = Le certificat { $path } et sa clé ne vont pas ensemble; rien n'a été scellé. Mettez-y la bonne paire, ou retirez les deux et une nouvelle sera faite.
cli-sealed = Scellé : { $path }
cli-sealed-certificate = Empreinte du certificat (SHA-256) : { $digest }

## La preuve d'un dossier

cli-evidence = { $path } : { $entries ->
    [one] { $entries } inscription
   *[other] { $entries } inscriptions
} et { $documents ->
    [one] { $documents } document.
   *[other] { $documents } documents.
}
cli-evidence-left-out = { $n ->
    [one] Un classeur est nommé mais non joint, parce qu'il parle aussi d'autres organismes.
   *[other] { $n } classeurs sont nommés mais non joints, parce qu'ils parlent aussi d'autres organismes.
}
evidence-entry = { $seq }. { $moment }, { $by } : { $kind } { $key }. { $origin }
evidence-redacted = Le contenu a été retiré à la suite d'une demande légitime; une inscription plus récente dit pourquoi.
evidence-withdrawn = Repris.

## Les demandes à l'assureur

request-title = { $organisation } : veuillez modifier { $n ->
    [one] un point
   *[other] { $n } points
} de la police
request-lead = L'organisme nous a fait savoir, ou a décidé, ce qui suit. Veuillez modifier la police à compter du { $start }, ou plus tôt si vous y consentez, et nous le confirmer par écrit avec la prime.
request-insurer = À l'assureur
request-insured = Assuré désigné
request-policy = Police
request-term = Période
request-number = Demande de ce renouvellement
request-what = Objet
request-was = Aujourd'hui
request-now = Veuillez inscrire
request-since = Appris le
request-of = { $subject } : { $what }
request-decided = décision
request-payment = Paiement de la prime
request-answers = { $n ->
    [one] une réponse, dans le fichier joint à cette lettre
   *[other] { $n } réponses, dans le fichier joint à cette lettre
}
request-there = à ajouter
request-not-bound = Rien n'est modifié avant votre confirmation. Les valeurs sont des estimations tant qu'un évaluateur ne les a pas confirmées.
request-nothing = { $file } : rien n'a changé ni n'a été décidé depuis la dernière demande à l'assureur; il n'y a rien à demander.
request-no-terms = { $file } : il n'y a pas de conditions à modifier. Chargez d'abord la police ou l'offre.
cli-request = { $path } : demande { $number } à { $insurer }, { $n ->
    [one] une modification.
   *[other] { $n } modifications.
}
cli-request-not-recorded = Rien n'a été inscrit. Quand elle part, relancez avec --sent.
cli-bordereau = { $n ->
    [one] Une ligne
   *[other] { $n } lignes
} dans { $paths }
cli-exported = { $n ->
    [one] Un dossier écrit
   *[other] { $n } dossiers écrits
} dans { $path }.
