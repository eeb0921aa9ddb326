# Les sceaux, la preuve d'un dossier, les demandes à l'assureur et les petites lettres.

## Les sceaux

seal-intact = { $name } : scellé, et pas un octet n'a changé depuis.
seal-filled = { $name } : scellé, puis seulement rempli. Les pages sont telles qu'elles ont été scellées.
seal-rewritten = { $name } n'a pas de sceau qui tienne : ses octets ne sont pas ceux qui ont été scellés. { $n ->
    [0] Pourtant, les pages et le contenu des champs sont les mêmes que dans la trousse conservée ici.
   *[other] Comparé à la trousse conservée ici, seuls des champs ont été remplis; les pages sont les mêmes.
}
seal-altered = { $name } a été modifié : on a changé plus que le contenu des champs. Ne vous y fiez pas.
seal-kept = { $name } n'est pas scellé. Il est, octet pour octet, un document conservé ici.
seal-strange = { $name } n'est pas scellé et n'est pas connu ici. On ne peut rien en dire.
seal-by-own = Scellé par { $signer } le { $day } à { $time } UTC, selon sa propre horloge, avec le certificat de ce cabinet.
seal-by-own-undated = Scellé par { $signer }, avec le certificat de ce cabinet.
seal-by-other = Le sceau nomme { $signer }, le { $day } à { $time } UTC, mais il n'a pas été fait avec le certificat de ce cabinet. N'importe qui peut faire un tel sceau.
seal-by-other-undated = Le sceau nomme { $signer }, mais il n'a pas été fait avec le certificat de ce cabinet. N'importe qui peut faire un tel sceau.
seal-page-count = Le document compte { $now ->
    [one] { $now } page
   *[other] { $now } pages
}; { $then } ont été envoyées. La première qui diffère est la page { $first }.
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
seal-not-signed = { $file } : il n'y a pas de trousse à sceller dans cette langue, ou c'est une ébauche. Signez l'examen, produisez la trousse, puis scellez-la.
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
request-title-gone = { $organisation } : veuillez ne plus tenir compte { $gone ->
    [one] d'un point demandé
   *[other] de { $gone } points demandés
} auparavant
request-title-both = { $organisation } : veuillez modifier { $n ->
    [one] un point
   *[other] { $n } points
} de la police et ne plus tenir compte { $gone ->
    [one] d'un point demandé
   *[other] de { $gone } points demandés
} auparavant
request-lead = L'organisme nous a fait savoir, ou a décidé, ce qui suit. Veuillez modifier la police à compter du { $start }, ou plus tôt si vous y consentez, et nous le confirmer par écrit avec la prime.
request-lead-gone = Ce que nous avions demandé a changé depuis. Cette lettre ne demande rien de nouveau.
request-insurer = À l'assureur
request-insured = Assuré désigné
request-policy = Police
request-term = Période
request-number = Demande de ce renouvellement
request-what = Objet
request-was = Aujourd'hui
request-now = Veuillez inscrire
request-since = Appris le
request-disregard = Veuillez ne plus tenir compte de ce qui suit
request-disregard-about = Une demande précédente portait sur ce qui suit. Nous ne le demandons plus. Veuillez laisser la police telle quelle, ou la rétablir, et nous le confirmer par écrit.
request-earlier = Nous avions demandé
request-earlier-in = Dans notre demande
request-number-of = { $number }, envoyée le { $day }
request-instead = { $now }, et non plus { $earlier } comme dans notre demande { $number } du { $day }
request-gone = Ne plus tenir compte de : { $earlier }, selon notre demande { $number } du { $day }
request-of = { CAPITAL($subject) } : { $what }
request-decided = décision
request-payment = Paiement de la prime
request-answers = { $n ->
    [one] une réponse, dans le fichier joint à cette lettre
   *[other] { $n } réponses, dans le fichier joint à cette lettre
}
request-there = à ajouter
request-removed = à retirer
request-not-bound = Rien n'est modifié avant votre confirmation. Les valeurs sont des estimations tant qu'un évaluateur ne les a pas confirmées.
request-nothing = { $file } : rien n'a changé ni n'a été décidé depuis la dernière demande à l'assureur; il n'y a rien à demander.
request-no-terms = { $file } : il n'y a pas de conditions à modifier. Chargez d'abord la police ou l'offre.
cli-request = { $path } : demande { $number } à { $insurer }, { $n ->
    [one] une modification.
   *[other] { $n } modifications.
}
cli-request-gone = { $left ->
    [0] { $n ->
        [one] Elle annule un point d'une demande précédente.
       *[other] Toutes annulent des points de demandes précédentes.
    }
   *[other] { $n ->
        [one] L'une d'elles annule un point d'une demande précédente.
       *[other] { $n } d'entre elles annulent des points de demandes précédentes.
    }
}
cli-request-not-recorded = Rien n'a été inscrit. Quand elle part, relancez avec --sent.
cli-bordereau = { $n ->
    [0] Aucune ligne
    [one] Une ligne
   *[other] { $n } lignes
} dans { $paths }
cli-exported = { $n ->
    [0] Aucun dossier écrit
    [one] Un dossier écrit
   *[other] { $n } dossiers écrits
} dans { $path }.

## Attestations et mainlevées

paper-certificate = attestation d'assurance
paper-discharge-request = demande de mainlevée
certificate-title = { $organisation } : assurance en vigueur le { $day }
certificate-lead = Le contrat ci-dessous est en vigueur le { $day }. Voici ce qu'il contient, selon notre dossier.
certificate-lead-bound = L'assureur a lié la couverture ci-dessous, et elle est en vigueur le { $day }. Le contrat lui-même n'est pas encore délivré.
certificate-binder = Note de couverture
certificate-purpose = Pour
certificate-applies = Le montant s'applique
certificate-aggregate = { $basis }, { $aggregate } en tout pour la période
certificate-words = Le montant est le plus que l'assureur paie. La franchise est ce que l'assuré paie d'abord.
certificate-day = Cette page parle d'un seul jour. Elle ne promet rien pour la suite : le contrat peut changer ou prendre fin sans que vous en soyez avisé. Demandez-nous une nouvelle page au besoin.
certificate-no-rights = Cette page ne vous donne aucun droit, ne fait de personne un assuré et ne change rien au contrat. Seul le texte du contrat fait foi.
certificate-used = Des sinistres ont pu entamer un montant qui vaut pour toute l'année.
certificate-by = Délivrée par { $name }, permis { $licence }
certificate-not-in-force = { $file } : aucun contrat, délivré ou lié, n'est en vigueur le { $day }; une attestation n'aurait donc rien à dire. Chargez le contrat délivré, ou donnez un autre jour avec --as-of.
certificate-no-number = { $file } : le contrat en vigueur le { $day } n'a pas d'assureur ou de numéro au dossier; personne ne pourrait vérifier l'attestation. Ajoutez-les d'abord.
certificate-nothing = { $file } : le contrat en vigueur le { $day } n'a aucune des garanties que { $name } voudrait voir. L'attestation serait vide.
certificate-unknown-holder = { $file } ne connaît personne sous « { $holder } ». { $known ->
    [0] Personne n'est encore au dossier.
   *[other] Au dossier : { $names }.
} Pour quelqu'un de nouveau, ajoutez --name et, si vous les avez, --address et --for.
certificate-from-file = « { $holder } » est { $name } au dossier, avec l'adresse qui s'y trouve. Enlevez --name et --address, ou corrigez le dossier.
certificate-paid-off = { $name } est remboursé selon le dossier et ne reçoit pas d'attestation. Demandez la mainlevée : quarterday discharge { $file } { $holder }
discharge-unknown = { $file } n'a ni prêteur ni bailleur « { $holder } ». { $known ->
    [0] Il n'y en a aucun au dossier.
   *[other] Au dossier : { $names }.
}
discharge-not-paid-off = { $name } n'est pas remboursé selon le dossier; il n'y a donc pas de mainlevée à demander. Inscrivez d'abord le remboursement; le formulaire des prêteurs et bailleurs le demande.
discharge-title-lender = Veuillez confirmer que ce prêt est remboursé
discharge-title-lessor = Veuillez confirmer que ce bail a pris fin
discharge-lead-lender = Selon notre dossier, { $insured } a remboursé le prêt que vous lui aviez consenti. Vous figurez encore à son assurance. Veuillez remplir la réponse ci-dessous et nous la retourner. L'assureur ne pourra retirer votre nom qu'ensuite.
discharge-lead-lessor = Selon notre dossier, le bail qui liait { $insured } à vous a pris fin. Vous figurez encore à son assurance. Veuillez remplir la réponse ci-dessous et nous la retourner. L'assureur ne pourra retirer votre nom qu'ensuite.
discharge-reply = Votre réponse
discharge-reply-lender = Le prêt est remboursé. { $name } n'a plus d'intérêt dans l'assurance ci-dessus et demande que son nom en soit retiré.
discharge-reply-lessor = Le bail a pris fin et ce qui était loué est rendu ou payé. { $name } n'a plus d'intérêt dans l'assurance ci-dessus et demande que son nom en soit retiré.
discharge-since = Depuis le
discharge-name = Nom et titre
discharge-signature = Signature
discharge-date = Date
discharge-consent = Consentement de l'assuré
discharge-consent-text = { $insured } accepte que vous répondiez à cette lettre.
discharge-not-yet = Rien ne change au contrat tant que l'assureur ne l'a pas confirmé.
discharge-privacy = N'envoyez ni numéro de compte ni solde. Nous n'en avons pas besoin.
record-evidence-sent = preuve envoyée
kind-evidence-sent = { record-evidence-sent }
cli-certificate = { $path } : pour { $name }, en date du { $day }
cli-discharge = { $path } : à { $name }, le { $day }
cli-evidence-not-recorded = Rien n'a été inscrit. À l'envoi, relancez avec --sent.
