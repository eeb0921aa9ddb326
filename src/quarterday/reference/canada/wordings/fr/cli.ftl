# Ce que le terminal dit autour des résultats.

cli-id = code
cli-name = nom
cli-file = dossier
cli-family = famille
cli-water = eau
cli-rule = règle
cli-looks-at = porte sur
cli-basis = repose sur
cli-province-short = prov.
cli-renewal = échéance
cli-offered = prime
cli-change = écart
cli-findings = constats
cli-decisions = à décider
cli-first = d'abord
cli-premium = prime avant taxes
cli-state = état

cli-started = La base est prête : { $place }
cli-started-next = Ensuite : quarterday load VOTRE-CLASSEUR.xlsx --preview
cli-files = { $n ->
    [one] { $n } dossier.
   *[other] { $n } dossiers.
}
cli-renews = Échéance : { $day }.
cli-no-coverage = Il n'y a pas de garantie { $coverage } dans le catalogue; « quarterday coverages » en donne la liste.
cli-does-not = Ce qu'elle ne fait pas : { $text }
cli-board-asks = Ce qu'un conseil devrait demander : { $text }
cli-answers = Causes de sinistre auxquelles elle répond : { $causes }.
cli-review-of = Examen pour l'échéance du { $renewal }, en date du { $day }.
cli-agenda = À décider par les dirigeants :
cli-why-hint = D'où vient un chiffre : quarterday why { $file } CHIFFRE (le mot entre crochets).
cli-set-aside = Mis de côté : { $reason }
cli-no-figure = L'examen n'a pas de chiffre { $figure }. Les plus proches : { $near }
cli-path-folder = { $path } est un dossier, et il faut un fichier. Nommez-y un fichier.
cli-path-no-folder = Une partie de { $path } est un fichier, et il faut un dossier. Nommez un autre endroit.
cli-path-missing = Il n'y a pas de { $path }. Vérifiez l'orthographe, ou créez d'abord le dossier.
cli-path-locked = Vous ne pouvez ni lire ni écrire { $path }. Demandez à qui il appartient, ou nommez un autre endroit.
cli-path-failed = { $path } n'a pu être ni lu ni écrit : { $why }. Libérez de l'espace ou nommez un autre endroit, puis recommencez.
cli-signed = { $reviewer } a signé l'examen du dossier { $file } en date du { $day }.
cli-choose-files = Dites quels dossiers : nommez-les, ou utilisez --due DU..AU, ou --all (un seul des trois).
cli-reviewing = Examen
cli-building = Production
cli-loading = Chargement
cli-built-one = Produit : { $path } (version { $version }).
cli-built-many = { $n ->
    [one] { $n } trousse produite
   *[other] { $n } trousses produites
}{ $drafts ->
    [0] .
   *[other] , dont { $drafts } à l'état d'ébauche tant qu'un titulaire de permis n'a pas signé l'examen.
}
cli-draft = C'est une ébauche : un titulaire de permis doit signer l'examen du dossier { $file } avant la remise.
cli-not-json = Ce n'est pas du JSON : { $why }
cli-not-object = Donnez les entrées en un seul objet JSON, comme {"{"}"value": "250000"{"}"}.
cli-verified = { $files ->
    [one] { $files } dossier, { $entries } inscriptions
   *[other] { $files } dossiers, { $entries } inscriptions
} : rien n'a été altéré.
cli-verify-faults = { $n ->
    [one] { $n } anomalie trouvée.
   *[other] { $n } anomalies trouvées.
}

cli-load-nothing = Rien n'a été écrit. Lisez l'aperçu, puis chargez sans --preview.
cli-load-stopped = Rien n'a été écrit : { $n ->
    [one] { $n } ligne est à corriger
   *[other] { $n } lignes sont à corriger
}. Pour charger dès maintenant les bonnes lignes, ajoutez --accept-with-errors.
cli-load-annotated = Une copie annotée à chaque erreur : { $path }
cli-load-done = { $entries ->
    [0] Rien de neuf : tout était déjà au dossier.
    [one] { $entries } inscription ajoutée dans { $files } dossier.
   *[other] { $entries } inscriptions ajoutées dans { $files } dossiers.
}
cli-mapping = Comment les colonnes ont été lues :

cli-demo-workbook = Le classeur d'un cabinet inventé : { $path }
cli-demo-loaded = { $files } organismes chargés, { $entries } inscriptions, chacune avec sa feuille et sa ligne.
cli-demo-flagship = Un dossier, examiné en date du { $day } :
cli-demo-packages = Les trousses sont dans { $path }; commencez par { $first }
cli-demo-rest = Ensuite : quarterday --store { $store } list, review, why, show, history, verify.
cli-demo-not-ours = { $path } contient autre chose que la démonstration. Indiquez un autre dossier avec --out.
cli-demo-fiction = Tous les organismes, personnes, rues et assureurs y sont inventés.
cli-made-book = { $files ->
    [one] { $files } organisme écrit
   *[other] { $files } organismes écrits
} dans { $path }.

review-no-renewal = { $file } : pas d'examen, car le dossier ne donne ni contrat émis ni date d'échéance. Ajoutez l'un ou l'autre.
acts-not-signed = { $file } : la trousse n'a pas été remise, car aucun titulaire de permis n'a signé cette version de l'examen. Signez, produisez de nouveau, puis remettez.

cli-verified-seals = { $originals ->
    [one] { $originals } original et
   *[other] { $originals } originaux et
} { $seals ->
    [one] { $seals } sceau sont intacts
   *[other] { $seals } sceaux sont intacts
}; { $unsealed ->
    [0] toutes les inscriptions sont scellées.
    [one] { $unsealed } inscription plus récente n'est pas encore scellée.
   *[other] { $unsealed } inscriptions plus récentes ne sont pas encore scellées.
}
acts-no-brokerage = Il manque { $path } : ce fichier dit quel cabinet répond des documents. Écrivez-le, ou indiquez-en un autre avec --brokerage.

cli-loss = sinistre
cli-lost = perdu
cli-paid = l'assureur paie
cli-borne = à votre charge
cli-borne-before = à votre charge avant
cli-borne-after = après
cli-more-borne = de plus (−: de moins)
cli-cannot-say = on ne peut dire
cli-no-loss = Il n'y a pas de sinistre { $loss } dans le catalogue, ni de fichier de ce nom. Il contient { $known }.
cli-pay-hint = Étape par étape : quarterday pay { $file } --loss CODE (le mot entre crochets).
cli-compare-same = Aucune clause ne diffère.
cli-direction-better = mieux
cli-direction-worse = moins bien
cli-direction-neutral = autre
cli-direction-cannot-say = on ne peut dire
cli-compare-past = { $n ->
    [one] Votre propre sinistre des dix dernières années : { $before } seraient restés à votre charge selon les premières conditions, { $after } selon les secondes.
   *[other] Vos { $n } sinistres des dix dernières années : { $before } seraient restés à votre charge selon les premières conditions, { $after } selon les secondes.
}
acts-no-terms = { $file } n'a pas de conditions au stade « { $terms } » pour l'échéance du { $day }. Chargez-les, ou nommez-en d'autres.

cli-backed-up = { $path } contient tout le dépôt ({ $megabytes } Mo). Gardez-le aussi bien que le dépôt lui-même : il contient des renseignements personnels et les clés.
cli-backed-up-next = Essayez-le de temps en temps : « quarterday --store NOUVEAU-DOSSIER restore { $path } » le restaure ailleurs et le vérifie en entier.
cli-restored = Le dépôt est à { $place }, tel qu'il était le { $made }. La vérification est en cours.
cli-seal-key-changed = Une nouvelle clé signe désormais. Les sceaux jusqu'au numéro { $seal } restent prouvés par l'ancienne clé, qui a signé pour la nouvelle et a été supprimée. Faites une sauvegarde, et supprimez les anciennes si quelqu'un a pu voir l'ancienne clé.
cli-redacted = Le contenu de l'inscription { $seq } du dossier { $file } est supprimé. Son empreinte reste, et l'historique dit qui l'a supprimé et pourquoi.
cli-redacted-still = { $count ->
    [one] Ce document du dossier le dit peut-être encore :
   *[other] Ces { $count } documents du dossier le disent peut-être encore :
}
cli-redacted-next = Regardez chacun d'eux. « quarterday erase { $file } DOCUMENT --reason TEXTE » en supprime un, en entier. Les sauvegardes antérieures et les documents déjà envoyés sont à retrouver par vous.
cli-erased = Le contenu de { $document } est supprimé pour de bon; son empreinte, son nom et sa taille restent. Ce qui en a été inscrit reste dans les dossiers.
redact-no-document = { $file } ne nomme aucun document qui commence par { $document }, ou en nomme plusieurs. « quarterday history { $file } » montre d'où vient chaque inscription; donnez une plus grande partie du numéro du document.
cli-verified-removed = Supprimé à la suite d'une demande légitime : { $redacted ->
    [one] le contenu de { $redacted } inscription
   *[other] le contenu de { $redacted } inscriptions
}, { $erased ->
    [one] { $erased } document
   *[other] { $erased } documents
}.


package-unprintable = { $file } : trousse retenue. { $why }
package-failed = { $file } : trousse retenue à cause d'une défaillance du programme ({ $where }). Ses données n'ont pas changé; avisez la personne qui s'occupe du programme.
package-worker-gone = Un processus de travail a été arrêté de l'extérieur, peut-être par manque de mémoire. Chaque trousse terminée est gardée; relancez la même commande et elle reprendra où elle s'est arrêtée.
cli-run-built = { $n ->
    [one] { $n } trousse produite, dont { $drafts } à l'état d'ébauche
   *[other] { $n } trousses produites, dont { $drafts } à l'état d'ébauche
}; déjà là : { $earlier }; retenues : { $withheld }.
cli-run-report = Ce qui a été produit, ce qui a été retenu et pourquoi : { $path }
cli-run-more = et { $n } autres; le rapport les nomme toutes.
package-unusable = { $file } : trousse retenue. { $why }

## Image de marque

cli-brand = { $name } : l'image de marque peut servir ({ $path })
cli-brand-logo = Logo : { $logo }
cli-brand-colours = Couleurs : texte { $accent }, fond { $tint }
cli-brand-signatures = Signatures : { $names }
cli-brand-wordings = Textes propres ({ $language }) : { $n } : { $ids }
