# Le pupitre : les pages du courtier.

desk-skip = Aller au contenu de la page
desk-nav = Pages principales
desk-nav-day = La journée
desk-nav-diary = Agenda
desk-nav-load = Charger
desk-nav-people = Accès
desk-nav-password = Mot de passe
desk-nav-out = Fermer la session
desk-demo = Ceci est une démonstration. Les gens et les choses y sont inventés. On y est toujours le { $day }, et aucun second facteur n'est demandé.
desk-foot = Le texte du contrat prévaut. Les valeurs sont des estimations tant qu'un évaluateur ne les a pas confirmées.
desk-foot-day = Calculé en date du { $day }.

## Ouvrir une session

desk-sign-in = Ouvrir une session
desk-sign-in-do = Entrer
desk-sign-in-kept = Votre session a pris fin. Ce que vous avez tapé est conservé : ouvrez une session et vous pourrez l'envoyer de nouveau.
desk-sign-in-wrong = L'adresse et le mot de passe ne vont pas ensemble. Essayez de nouveau; après cinq erreurs, il faut attendre un quart d'heure.
desk-sign-in-locked = Trop d'erreurs. Attendez un peu, puis essayez de nouveau, ou demandez un nouveau mot de passe à votre gestionnaire.
desk-email = Adresse courriel
desk-password = Mot de passe
desk-code = Votre second facteur
desk-code-hint = Ouvrez votre authentificateur et tapez les six chiffres qu'il affiche. Si vous ne l'avez pas, tapez un de vos codes de secours.
desk-code-label = Code
desk-code-wrong = Ce code n'est pas le bon ou a déjà servi. Attendez le suivant. Après cinq erreurs, il faut attendre un quart d'heure.
desk-go-on = Continuer
desk-password-title = Changer votre mot de passe
desk-password-must = Quelqu'un d'autre a choisi votre mot de passe. Prenez-en un que vous seul connaissez.
desk-password-old = Mot de passe actuel
desk-password-new = Nouveau mot de passe
desk-password-again = Nouveau mot de passe, encore une fois
desk-password-long = Au moins { $n } caractères. Plusieurs mots se retiennent mieux que des signes.
desk-password-do = Changer
desk-password-done = Votre mot de passe est changé. Vos autres sessions sont fermées.
desk-password-old-wrong = Le mot de passe actuel n'est pas le bon. Tapez-le de nouveau.
desk-password-short = Le nouveau mot de passe est trop court. Ajoutez un mot ou deux.
desk-password-same = Le nouveau mot de passe ne peut être ni l'ancien, ni votre nom, ni votre adresse.
desk-password-differs = Les deux nouveaux mots de passe diffèrent. Tapez deux fois le même.
desk-factor = Installer votre second facteur
desk-factor-again = Installer le second facteur sur un autre appareil
desk-factor-one = Ouvrez un authentificateur sur votre téléphone : n'importe lequel qui produit des codes à six chiffres.
desk-factor-two = Faites-lui lire l'image, ou tapez-y le secret.
desk-factor-three = Tapez le code qu'il affiche.
desk-factor-picture = Le secret sous forme d'image, pour l'appareil photo de votre téléphone
desk-factor-secret = Le secret :
desk-factor-done = Votre second facteur est installé
desk-factor-codes = { $n ->
    [one] Gardez ce code de secours sur papier. Il remplace votre téléphone une fois.
   *[other] Gardez ces { $n } codes de secours sur papier. Chacun remplace votre téléphone une fois. Ils ne seront plus affichés.
}
desk-kept = Ce que vous avez tapé est encore là
desk-kept-what = Votre session a pris fin avant l'enregistrement. Relisez, puis envoyez de nouveau.
desk-kept-send = Envoyer de nouveau
desk-kept-leave = Abandonner

## Ennuis

desk-trouble = Cela n'a pas pu se faire
desk-trouble-403 = Vous ne pouvez pas faire cela
desk-trouble-404 = Il n'y a rien ici
desk-trouble-409 = Quelqu'un d'autre a changé ceci entre-temps
desk-typed = Ce que vous avez tapé
desk-to-day = À la journée
desk-error-bad = La demande n'a pas pu être lue. Revenez en arrière et essayez de nouveau.
desk-error-forbidden = Vous ne pouvez pas faire cela. Parlez-en à votre gestionnaire.
desk-error-missing = Cette page n'existe pas. C'est peut-être un dossier d'un autre bureau, ou l'adresse est mal tapée.
desk-error-broken = Le programme a échoué et rien n'a été écrit. Essayez de nouveau. S'il échoue encore, signalez ce que vous faisiez.
desk-error-csrf = Le formulaire était trop vieux ou ne venait pas de ce pupitre; rien n'a été écrit. Revenez en arrière, rechargez la page et envoyez-le de nouveau.
desk-clash = { $by } a changé la même fiche ({ $kind })
desk-field = Champ
desk-before = Avant
desk-after = Après
desk-theirs = La sienne, au dossier
desk-mine = La vôtre
desk-keep-mine = Enregistrer la mienne par-dessus
desk-keep-theirs = Garder la sienne

## La journée

desk-day = La journée
desk-day-presses = { $impossible ->
    [0] { "" }
    [one] { $impossible } renouvellement hors délai,{" "}
   *[other] { $impossible } renouvellements hors délai,{" "}
}{ $late ->
    [0] aucun en retard
   *[other] { $late } en retard
}
desk-day-none = Aucun renouvellement ne correspond
desk-day-quiet = Rien n'est en retard
desk-day-figures = Prime avant taxe, comme offerte, et son écart par rapport à la prime qui expire. En date du { $day }; la page du dossier dit pourquoi.
desk-day-expiring = * Pas encore d'offre : la prime qui expire.
desk-day-caption = Renouvellements, un par ligne
desk-search = Chercher
desk-from = Échéance à partir du
desk-until = Échéance jusqu'au
desk-state = État
desk-only = Seulement
desk-any = tous
desk-broker = Courtier
desk-show = Afficher
desk-views = Vues
desk-view-late = Les retards
desk-view-mine = Les miens
desk-view-insurer = En attente de l'assureur
desk-view-back = Revenus des dirigeants
desk-view-keep = Garder cette vue sous le nom
desk-keep = Garder
desk-view-kept = La vue « { $name } » est gardée.
desk-view-forget = Oublier la vue { $name }
desk-count = { $n ->
    [one] { $n } renouvellement
   *[other] { $n } renouvellements
}
desk-stale = Certaines lignes datent encore d'un jour passé. Elles seront à jour dans un instant.
desk-none = Rien ne correspond.
desk-none-all = Afficher tous les renouvellements
desk-pages = Pages de la liste
desk-page-of = Page { $page } de { $pages }
desk-earlier = Page précédente
desk-later = Page suivante
desk-keys = Touches
desk-keys-day = j et k descendent et montent, Entrée ouvre, / va à la recherche, n et p tournent la page.
desk-head-date = Échéance
desk-head-name = Organisme
desk-head-state = État
desk-head-next = Prochaine étape
desk-head-premium = Prime
desk-head-change = Écart
desk-head-presses = Urgent
desk-only-late = en retard
desk-only-impossible = hors délai
desk-only-back = de retour
desk-back-on = de retour { $day }
desk-only-broker = nous attend
desk-only-leaders = attend les dirigeants
desk-only-insurer = attend l'assureur
who-broker = nous
who-leaders = les dirigeants
who-insurer = l'assureur
desk-late = en retard
desk-late-n = { $n } en retard
desk-impossible = hors délai
desk-impossible-n = { $n } hors délai
desk-impossible-until = hors délai : au mieux le { $day }

## L'agenda

desk-diary = Agenda
desk-diary-title = { $late ->
    [0] Rien n'est en retard
    [one] Une étape est en retard
   *[other] { $late } étapes sont en retard
}, { $week ->
    [0] rien n'est dû
    [one] { $week } est due
   *[other] { $week } dues
} d'ici une semaine
desk-diary-late = En retard
desk-diary-week = D'ici une semaine
desk-diary-later = Plus tard
desk-waits = Qui agit
desk-due = Dû le
desk-what = Quoi
desk-begin = Commencer le
desk-renewal = Échéance
desk-steps = { $n ->
    [one] { $n } étape ouverte
   *[other] { $n } étapes ouvertes
}
desk-steps-more = Il y en a d'autres. Cherchez ou choisissez un courtier pour les voir.
desk-steps-none = Rien n'est dû d'ici deux mois.
desk-diary-none = Aucune étape ne correspond
desk-steps-all = Afficher toutes les étapes
desk-feed = Dans votre propre calendrier
desk-feed-about = Un logiciel de calendrier peut afficher l'agenda. Son adresse est secrète : qui l'a peut lire les noms et les dates. Une nouvelle adresse met fin à l'ancienne.
desk-feed-once = Votre adresse, affichée une seule fois :
desk-feed-make = Créer une adresse
desk-feed-renew = Créer une nouvelle adresse
desk-feed-stop = Fermer l'adresse
desk-feed-name = Agenda Quarterday
desk-feed-what = { $name } : { $what }
desk-feed-more = En attente : { $who }. Commencer le { $start }. Échéance du { $renewal }.

## Un dossier

desk-jump = Parties de cette page
desk-back-to-file = Retour au dossier
desk-premium-with-tax = Prime, taxe comprise
desk-terms-used = Conditions examinées
desk-signature = Signé par
desk-not-signed = non signé
desk-as-of = En date du { $day }
desk-as-of-short = En date du
desk-matters = Ce qui compte
desk-matters-title = { $n ->
    [0] L'examen n'a rien relevé
   *[other] { $what }
}
desk-matters-decide = { $n ->
    [one] { $n } décision pour les dirigeants
   *[other] { $n } décisions pour les dirigeants
}
desk-matters-send-back = { $n ->
    [one] { $n } chose à retourner par eux
   *[other] { $n } choses à retourner par eux
}
desk-matters-fix = { $n ->
    [one] { $n } point à corriger par nous
   *[other] { $n } points à corriger par nous
}
desk-matters-know = { $n ->
    [one] { $n } chose à savoir
   *[other] { $n } choses à savoir
}
desk-matters-all = les { $n }
desk-unfold = tout déplier
desk-fold = tout replier
desk-on-agenda = À l'ordre du jour des dirigeants, numéro
desk-aside = { $n ->
    [one] Une constatation mise de côté
   *[other] { $n } constatations mises de côté
}
desk-aside-because = Mise de côté : { $reason }
desk-evidence = { $n ->
    [0] Pourquoi elle est ici
    [one] Preuve : un chiffre
   *[other] Preuve : { $n } chiffres
}
desk-why = Pourquoi?
desk-decide = Inscrire une décision
desk-answer = Réponse
desk-decided = Décision de { $by }, le { $day } :
desk-decided-by = Qui l'a dit
desk-their-words = Dans leurs mots
desk-on = Le
desk-set-aside = Mettre de côté
desk-set-aside-do = Mettre de côté
desk-take-up = Reprendre
desk-reason = Raison, qui reste au dossier
desk-due-title = Ce qui est dû
desk-due-next = { $n ->
    [one] Une étape reste, pour le { $day }
   *[other] { $n } étapes restent, la prochaine pour le { $day }
}
desk-due-none = Toutes les étapes sont faites
desk-begin-by = à commencer d'ici le { $day }
desk-is-done = fait
desk-buildings = Bâtiments
desk-buildings-title = { $n ->
    [0] Aucun bâtiment
    [one] Un bâtiment
   *[other] { $n } bâtiments
}
desk-buildings-none = Aucun bâtiment au dossier.
desk-building = Bâtiment
desk-not-insured = Ces conditions n'assurent aucun montant sur ce bâtiment.
desk-facts = Renseignements
desk-in-words = L'image en mots
desk-valuations = Évaluations
desk-valued-on = Évalué le
desk-amount = Montant
desk-basis = Repose sur
desk-by = Par
desk-terms = Conditions côte à côte
desk-terms-none = Aucune condition au dossier.
desk-coverage = Garantie
desk-change = Ce que l'offre change
desk-included = compris
desk-deductible = franchise { $amount }
desk-coinsurance = règle proportionnelle { $share }
desk-more-borne = { $amount } de plus à la charge de l'organisme
direction-better = mieux
direction-worse = moins bien
direction-cannot-say = autrement
direction-same = pareil
desk-less-borne = { $amount } de moins à la charge de l'organisme
desk-premium = Prime
desk-premium-table = La prime, par garantie et par lieu
desk-premium-none = Aucune prime au dossier.
desk-sum = Ensemble
desk-subtotal = Avant frais et taxe
desk-fees = Frais
desk-tax = Taxe
desk-total = Total
desk-claims = Sinistres
desk-claims-title = { $n ->
    [0] Aucun sinistre
    [one] Un sinistre, { $total }
   *[other] { $n } sinistres, { $total } en tout
}
desk-claims-none = Aucun sinistre au dossier.
desk-claims-by-cause = Sinistres par cause : payé et en suspens, moins le récupéré
desk-loss-on = Date du sinistre
desk-cause = Cause
desk-place = Lieu
desk-claim-status = Statut
desk-paid = Payé
desk-outstanding = En suspens
desk-incurred = Engagé
desk-number = Numéro
desk-file-people = Personnes
desk-organisation = Organisme
desk-contacts = Personnes-ressources
desk-role = Rôle
desk-phone = Téléphone
desk-confirmed = Confirmé
desk-left = Parti
desk-key = principale
desk-may-decide = Peut décider de
desk-since = Depuis
desk-ended = Terminé
desk-authorities = Personnes autorisées
desk-authorities-none = Personne n'est autorisé.
desk-interests = Prêteurs et bailleurs
desk-interests-none = Aucun au dossier.
desk-operations = Ce que fait l'organisme
desk-nothing-known = On ne sait encore rien.
desk-papers = Documents
desk-papers-none = Aucune trousse n'a encore été préparée.
desk-package = Envoi
desk-built-on = Préparé en date du
desk-draft = brouillon
desk-delivered = Remis
desk-sign = Signer l'examen
desk-sign-about = Vous signez à titre de { $name }, permis { $licence }, ce que dit cette page en date du { $day }. Tout changement au dossier met fin à la signature.
desk-sign-read = J'ai lu les constatations et leurs preuves.
desk-sign-do = Signer
desk-signed-by = Signé par { $name } le { $day }. Rien n'a changé depuis.
desk-build = Préparer la trousse
desk-build-signed = L'examen est signé : la trousse peut être remise.
desk-build-draft = L'examen n'est pas signé : chaque page dira que c'est un brouillon.
desk-build-in = Préparer en { $language }
desk-deliver = Inscrire une remise
desk-deliver-to = À qui
desk-deliver-way = Comment
desk-deliver-do = Inscrire
desk-decisions = Décisions
desk-payment = Inscrire le mode de paiement
desk-payment-plan = Mode
desk-paid-by = Paiement : { $plan }, selon { $by }, le { $day }.
desk-notes = Notes
desk-notes-none = Personne n'a laissé de note.
desk-note-new = Nouvelle note
desk-note-do = Garder la note
desk-bare = Le dossier ne dit pas de quel organisme il s'agit, ni quand il se renouvelle. Ajoutez-le et il pourra être examiné.
desk-bare-organisation = Dire de quel organisme il s'agit
desk-add-building = Ajouter un bâtiment
desk-add-valuation = Ajouter une évaluation
desk-add-terms = Ajouter des conditions
desk-add-coverage = ajouter une garantie
desk-add-claim = Ajouter un sinistre
desk-add-contact = Ajouter une personne-ressource
desk-add-authority = Ajouter une personne autorisée
desk-add-interest = Ajouter un prêteur ou un bailleur

## Modifier

desk-edit = Modifier : { $kind }
desk-edit-new = Ajouter : { $kind }
desk-edit-do = modifier
desk-edit-of = Modifier { $what }
desk-edit-faults = { $n ->
    [one] Un champ ne peut être lu. Rien n'a été écrit, et rien de ce que vous avez tapé n'est perdu.
   *[other] { $n } champs ne peuvent être lus. Rien n'a été écrit, et rien de ce que vous avez tapé n'est perdu.
}
desk-edit-clash = Rien n'a été écrit. Quelqu'un a enregistré cette fiche après que vous l'avez ouverte. Le formulaire garde ce que vous avez tapé.
desk-required = (nécessaire)
desk-not-known = inconnu
desk-date-form = 2026-11-25
desk-save = Enregistrer
desk-cancel = Annuler
desk-remove = Retirer ceci
desk-remove-what = Cela ne comptera plus. Cela reste lisible dans l'historique.
desk-remove-do = Retirer

## Historique

desk-history = Historique
desk-history-title = Historique de { $file }
desk-fingerprint = Empreinte de l'entrée : { $digest }
desk-universal = Les heures sont en temps universel (UTC).
desk-known = Tel que connu à la fin du
desk-kind = Genre de fiche
desk-entries = { $n ->
    [one] { $n } inscription
   *[other] { $n } inscriptions
}
desk-entries-none = Rien de ce genre n'était inscrit à ce moment.
desk-entries-all = Afficher tout l'historique
desk-entries-left = Les { $n } précédentes ne sont pas affichées. Choisissez un genre ou un jour plus ancien.
desk-changes = { $n ->
    [one] Un champ
   *[other] { $n } champs
}
desk-redacted = Le contenu a été retiré à la suite d'une demande légitime. Une inscription ultérieure dit pourquoi.
desk-act-load = chargé
desk-act-edit = modifié
desk-act-withdraw = retiré
desk-act-set-aside = mis de côté
desk-act-decide = décidé
desk-act-choose-payment = paiement choisi
desk-act-note = noté
desk-act-sign = signé
desk-act-build = préparé
desk-act-deliver = remis
desk-act-redact = caviardé

## Charger

desk-load = Charger un classeur
desk-load-about = Quarterday le lit et dit ce qu'il changerait. Rien n'est écrit avant votre accord.
desk-load-file = Classeur (.xlsx) ou fichier CSV
desk-load-most = Au plus { $most } mégaoctets.
desk-load-preview = Lire
desk-preview = Ce que le chargement ferait
desk-preview-moved = Les dossiers ont changé depuis votre lecture; rien n'a été écrit. Relisez, puis acceptez.
desk-preview-faults = { $n ->
    [one] Un point est refusé ou à confirmer ci-dessous. Les bonnes lignes peuvent passer sans lui.
   *[other] { $n } points sont refusés ou à confirmer ci-dessous. Les bonnes lignes peuvent passer sans eux.
}
desk-preview-left = { $n } autres phrases ne sont pas affichées.
desk-preview-mapping = Comment les feuilles et les colonnes ont été lues
desk-preview-nothing = Il ne changerait rien.
desk-preview-accept-faults = Charger les bonnes lignes et laisser les autres
desk-preview-accept = Accepter
desk-preview-leave = Abandonner

## Les gens du cabinet

desk-people = Qui peut entrer
desk-people-about = Un rôle vaut pour les dossiers d'un bureau ou de tous les bureaux.
desk-people-once = { $name } ({ $email }) entre avec ce mot de passe, affiché une seule fois. Il faudra le changer à la première session :
desk-people-out = ne peut pas entrer
desk-people-active = Peut entrer
desk-people-renew = Donner un nouveau mot de passe et laisser installer un nouveau second facteur
desk-people-add = Ajouter quelqu'un
desk-people-add-do = Ajouter
desk-people-name = Nom
desk-people-licence = Numéro de permis, s'il y en a un
desk-people-language = Langue
desk-people-every = Tous les bureaux
desk-people-none = aucun rôle
role-at-desk-owner = courtier responsable
role-at-desk-colleague = collègue
role-at-desk-manager = gestionnaire
role-at-desk-read-only = lecture seule
right-view = voir ceci
right-load = charger des fichiers
right-edit = changer des renseignements
right-record = inscrire ce qui a été dit
right-build = préparer des trousses
right-deliver = inscrire une remise
right-certify = donner une attestation à des tiers
right-set-aside = mettre des constatations de côté
right-sign = signer l'examen
right-people = dire qui peut entrer

## Fait

desk-done-edit = Enregistré.
desk-done-nothing = Rien n'avait changé; rien n'a été écrit.
desk-done-withdraw = Cela ne compte plus. L'historique le montre encore.
desk-done-set-aside = La constatation est mise de côté pour ce renouvellement.
desk-done-take-up = La constatation compte de nouveau.
desk-done-decide = La décision est au dossier.
desk-done-payment = Le mode de paiement est au dossier.
desk-done-note = La note est gardée.
desk-done-sign = L'examen est signé.
desk-done-build = La trousse est prête.
desk-done-draft = La trousse est prête, en ébauche.
desk-done-deliver = La remise est au dossier.
desk-done-load = Chargé : { $entries ->
    [one] une inscription
   *[other] { $entries } inscriptions
} dans { $files ->
    [one] un dossier
   *[other] { $files } dossiers
}.
desk-done-left = Abandonné; rien n'a été écrit.
desk-done-person = { $name } : enregistré.

## Actes refusés

acts-forbidden = Votre rôle ne vous permet pas de { $act }. Parlez-en à votre gestionnaire.
acts-no-licence = Seule une personne titulaire d'un permis signe un examen, et aucun numéro n'est inscrit pour vous. Parlez-en à votre gestionnaire.
acts-same-key = Une fiche portant l'identifiant « { $key } » existe déjà. Modifiez-la ou choisissez un autre identifiant.
acts-key-fixed = L'identifiant « { $key } » ne peut pas changer. Retirez la fiche et ajoutez-en une nouvelle.
acts-keeps-organisation = L'organisme lui-même ne peut être retiré. Modifiez-le plutôt.
acts-no-finding = L'examen n'a plus de constatation « { $finding } ». Rechargez la page.
acts-future = Le { $day } n'est pas encore venu. Donnez un jour passé.
acts-no-day = « { $text } » n'est pas un jour. Écrivez-le ainsi : 2026-11-25.
acts-empty = La case « { $what } » est restée vide, et elle est nécessaire. Remplissez-la, puis essayez de nouveau.
acts-not-possible = Ce qui a été envoyé ne convient pas. Revenez en arrière, rechargez la page et essayez de nouveau.
acts-not-read = L'examen n'a pas été signé. Indiquez que vous l'avez lu, puis signez.
acts-moved = Le dossier { $file } a changé après l'ouverture de sa page; l'examen n'a pas été signé. Relisez, puis signez.
acts-too-often = Cela a été fait très souvent en une heure. Attendez un peu, puis essayez de nouveau.
acts-upload-none = Aucun fichier n'est arrivé. Choisissez-en un, puis envoyez-le.
acts-upload-kind-book = « { $name } » est d'un genre qui ne se lit pas. Envoyez un classeur (.xlsx) ou un fichier CSV.
acts-upload-kind-form = « { $name } » n'est pas un PDF. Envoyez le formulaire tel qu'il est venu, en PDF; une photo peut être enregistrée ainsi.
acts-upload-empty = « { $name } » est vide. Envoyez le fichier de nouveau.
acts-upload-large = « { $name } » dépasse { $most } mégaoctets. Divisez-le ou chargez-le depuis le terminal.
acts-upload-gone = Ce fichier n'attend plus. Envoyez-le de nouveau.
acts-person-taken = Quelqu'un entre déjà avec l'adresse { $email }.
acts-person-email = « { $email } » n'est pas une adresse courriel. Tapez-la de nouveau.
acts-person-self = Vous vous fermeriez la porte. Laissez un autre gestionnaire changer votre rôle.
acts-not-demo = { $path } n'est pas le dossier d'une démonstration. Les accès de démonstration ne se créent que là.

## Servir

cli-serve-at = Le pupitre est à { $address }. Ctrl-C l'arrête.
cli-serve-nobody = Personne ne peut encore entrer. Ajoutez un gestionnaire : quarterday person --help
cli-demo-desk = Ouvrez le pupitre : quarterday --store { $store } serve, puis allez à { $address }
cli-demo-visitor = { $name }, { $role } : { $email }, mot de passe { $password }
cli-person-added = { $name } entre avec l'adresse { $email }. Le mot de passe, affiché une seule fois, doit être changé à la première session : { $password }

## Documents pour des tiers

desk-outside = Documents pour des tiers
desk-outside-paper = Document
desk-outside-to = Pour qui
desk-certify = Faire un document pour un tiers
desk-certify-about = Une attestation dit ce qui est en vigueur aujourd'hui. Qui est remboursé reçoit plutôt une demande de mainlevée. L'envoi est inscrit en date d'aujourd'hui.
desk-certify-new = une nouvelle personne, nommée ci-dessous
desk-certify-name = Nom, s'il est nouveau
desk-certify-address = Adresse, sur une ligne
desk-certify-purpose = À quoi cela leur sert
desk-certify-do = Faire et inscrire
desk-done-certify = Le document est fait, conservé et inscrit. Téléchargez-le ci-dessous.
desk-act-certify = preuve donnée
