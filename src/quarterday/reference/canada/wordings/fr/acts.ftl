# Les actes de l'année : refus, courriel, droits, ce qui a été fait.

acts-no-wish = « { $wish } » n'est pas un changement qui peut s'ajouter à cette offre. Rechargez la page.
acts-no-offer = { $file } n'a pas d'offre pour la période à venir, donc rien ne peut être lié. Chargez d'abord l'offre de l'assureur.
acts-nothing-to-check = { $file } n'a pas de police émise avec une offre ou une note de couverture à comparer. Chargez d'abord les conditions émises.
acts-check-words = { $n ->
    [one] La police donne moins que l'entente sur un point. Dites ce qui a été fait, puis inscrivez la vérification.
   *[other] La police donne moins que l'entente sur { $n } points. Dites ce qui a été fait, puis inscrivez la vérification.
}
acts-check-moved = { $file } a changé après le chargement de votre page, donc la vérification n'a pas été inscrite. Comparez de nouveau, puis inscrivez-la.
acts-no-plan = Il n'y a pas de plan de versements « { $plan } ». Choisissez l'un de ceux que permet l'offre.
acts-went-already = Cette trousse est déjà partie à { $to }, le { $day }. Elle n'a pas été renvoyée. Rechargez la page si elle doit l'être.
acts-no-delivery = Il n'y a pas de telle remise, ou elle est déjà revenue. Rechargez la page.
acts-request-moved = { $file } a changé depuis votre lecture, donc la demande n'a pas été inscrite. Relisez-la : elle demande peut-être davantage.
acts-returns-moved = Le dossier a changé depuis votre lecture de ce formulaire, donc rien n'a été écrit. Voici ce que le formulaire propose maintenant.
mail-no-server = Aucun serveur de courriel n'est nommé, donc rien n'a été envoyé ni inscrit. Donnez son adresse dans { $setting }, ou inscrivez une remise par la poste ou en main propre.
mail-bad-server = { $setting } ne nomme pas un serveur de courriel, donc rien n'a été envoyé. Écrivez-le comme smtp+starttls://utilisateur@mail.example.org.
mail-refused = Le serveur de courriel ne livre pas à { $to }, donc rien n'a été inscrit. Il dit : { $why }
mail-password = Le serveur de courriel refuse notre nom ou notre mot de passe, donc rien n'a été envoyé. Il dit : { $why }
mail-not-taken = Le serveur de courriel n'a pas pris le message, donc rien n'a été inscrit. Il dit : { $why }
mail-not-reached = Le serveur de courriel est injoignable, donc rien n'a été envoyé ni inscrit. Réessayez plus tard. La machine dit : { $why }
mail-on-its-way = Un message à { $to } est en cours d'envoi. Attendez une minute, puis voyez s'il est inscrit.
mail-perhaps = Un message à { $to } a été commencé à { $at } et jamais inscrit : la machine s'est arrêtée. Il est peut-être parti. Demandez s'il est arrivé; sinon, renvoyez-le.
right-ask = demander à l'assureur
right-bind = inscrire que la couverture est liée
right-check = inscrire qu'une police a été vérifiée
desk-act-request = demandé à l'assureur
desk-act-came-back = revenu
desk-act-bind = lié
desk-act-check = vérifié
desk-act-read = lu d'un formulaire

## Ce qui accompagne la trousse par courriel

mail-subject = { $organisation } : le renouvellement de vos assurances du { $renewal }
mail-greeting = { $to },
mail-body = Voici la trousse de renouvellement de { $organisation } pour le { $renewal }. Sa première page énumère ce que vous avez à décider, dans l'ordre, avec le prix de chaque décision et sa date limite.
mail-forms = Les formulaires se remplissent à l'écran et se renvoient à cette adresse. Appelez le { $phone } si quelque chose n'est pas clair : aucune question n'est trop petite.
mail-caution = Le libellé de la police prévaut. Si un enfant ou une personne vulnérable est en danger, appelez d'abord les services d'urgence et la protection de l'enfance, puis nous.
mail-close = { $sender }, { $brokerage }

## La même chose au terminal

cli-decide-what = Donnez la question, la réponse et, avec --said-by, qui l'a donnée.
cli-decide-none = Il n'y a rien à décider.
cli-decided = { $by } sur { $question } : { $answer }. C'est inscrit.
cli-payment = { $file } : { $by } paie par { $plan }. C'est inscrit.
cli-delivered = { $file } : la remise à { $to } est inscrite.
cli-mailed = { $file } : envoyé à { $to }, à { $address }, et inscrit.
cli-letter-not-mailed = Un objet et un message partent par courriel : dites avec --mail à quelle adresse, ou retirez-les.
cli-letter-who = La personne qui envoie signe le texte habituel : donnez votre nom avec --by, ou votre propre texte avec --message.
cli-letter-not-text = { $path } n'est pas du texte en UTF-8, donc rien n'a été envoyé. Enregistrez-le en UTF-8, puis essayez de nouveau.
cli-undone = { $file } : l'inscription { $seq } ({ $what }) est annulée par l'inscription { $by }. Ce qui valait avant vaut de nouveau.
cli-undone-gone = { $file } : l'inscription { $seq } ({ $what }) est annulée par l'inscription { $by }. Rien ne valait avant : la fiche ne vaut plus.
cli-wish = changement
cli-limit = limite
cli-price = par an
cli-wish-taken = pris par les dirigeants
cli-bind-next = Nommez qui l'a confirmé avec --confirmed-by, et chaque changement accepté par l'assureur avec --accept.
cli-bound = { $file } : la couverture est liée. { $by } l'a confirmé, { $n ->
    [0] selon l'offre telle quelle.
    [one] selon l'offre avec un changement.
   *[other] selon l'offre avec { $n } changements.
}
cli-check = { $file }, police du { $day } : { $n ->
    [0] elle dit ce qui a été convenu.
    [one] une différence avec ce qui a été convenu.
   *[other] { $n } différences avec ce qui a été convenu.
}
cli-checked = La vérification est inscrite.
cli-check-next = Inscrivez la vérification avec --done; là où la police donne moins, dites avec --about ce qui a été fait.

## Les pages de l'année au bureau

direction-neutral = neutre
desk-year = Les actes de l'année
desk-year-forms = Formulaires reçus
desk-year-ask = Demander à l'assureur
desk-year-compare = Comparer
desk-year-pay = Combien paierait-on?
desk-year-premium = Prime
desk-year-send = Envoyer
desk-year-decisions = Décisions et paiement
desk-year-bind = Lier
desk-year-check = Vérifier la police
desk-done-read = { $taken ->
    [0] Aucune réponse n'a été prise au dossier
    [one] Une réponse a été prise au dossier
   *[other] { $taken } réponses ont été prises au dossier
}{ $refused ->
    [0] {""}.
    [one] , une a été refusée.
   *[other] , { $refused } ont été refusées.
}
desk-done-ask = La demande est inscrite, et sa lettre est conservée.
desk-done-send = Envoyé à { $to }, à { $address }, et inscrit.
desk-done-came-back = Il est inscrit que la trousse est revenue. Elle ne compte plus comme remise.
desk-done-bind = Il est inscrit que la couverture est liée.
desk-done-check = La vérification est inscrite.
desk-forms = Formulaires reçus
desk-forms-about = Envoyez un formulaire revenu : ses réponses s'affichent à côté des faits d'aujourd'hui, et vous prenez ou refusez chacune. L'original est conservé.
desk-forms-send = Un formulaire en PDF
desk-forms-file = Le formulaire
desk-forms-most = PDF, au plus { $most } mégaoctets
desk-forms-read = Voir ce qu'il dit
desk-forms-paper = Un formulaire sur papier
desk-forms-paper-about = Saisissez ce qui y est écrit.
desk-forms-came = Reçus jusqu'ici : { $n }
desk-forms-none = Aucun formulaire n'est encore revenu.
desk-forms-on = Reçu le
desk-forms-by = Rempli par
desk-form = Formulaire
desk-taken = Prises
desk-refused = Refusées
desk-original = Original
desk-form-says = Ce que dit le formulaire
desk-form-of = renouvellement du { $day }
desk-form-question = Question
desk-form-now = Au dossier aujourd'hui
desk-form-said = Sur le formulaire
desk-form-do = Que faire
desk-form-take = prendre
desk-form-refuse = refuser
desk-form-wait = laisser ouvert
desk-form-clash = changé depuis
desk-form-asks = à regarder
desk-form-no-change = Le formulaire ne change rien au dossier.
desk-form-record = Inscrire qu'il est revenu
desk-form-write = Écrire ces choix
desk-form-all = Prendre tout ce qui est clair
desk-form-again = Revenir à la saisie
desk-form-kept = Le formulaire lui-même est conservé tel quel. Ce qui est refusé le reste quand le même formulaire revient.
desk-form-nothing = Rien n'est demandé dans { $form } pour ce dossier aujourd'hui.
desk-flat = Une image d'un formulaire
desk-flat-about = Choisissez de quel formulaire il s'agit, et saisissez ce qui y est écrit. L'image est conservée avec votre saisie.
desk-by-hand = Saisir un formulaire : { $form }
desk-by-hand-about = Chaque champ contient ce qui y serait imprimé. Changez ceux où autre chose est écrit, et laissez les autres.
desk-ask = Demander à l'assureur
desk-ask-lead = La demande { $number } à { $insurer } porte sur { $n ->
    [one] un changement.
   *[other] { $n } changements.
}
desk-ask-gone = { $left ->
    [0] { $n ->
        [one] Il annule un point d'une demande précédente.
       *[other] Tous annulent des points de demandes précédentes.
    }
   *[other] { $n ->
        [one] L'un d'eux annule un point d'une demande précédente.
       *[other] { $n } d'entre eux annulent des points de demandes précédentes.
    }
}
desk-ask-about = Sujet
desk-ask-what = Quoi
desk-ask-was = En vigueur
desk-ask-now = Demandé
desk-ask-since = Depuis
desk-ask-letter = La lettre à envoyer :
desk-ask-pdf = { $language ->
    [fr] PDF français
   *[en] PDF anglais
}
desk-ask-nothing-next = Inscrivez ce que les dirigeants ont décidé, ou modifiez le dossier : la prochaine demande portera là-dessus.
desk-ask-sent = Elle est partie
desk-ask-sent-about = Envoyez la lettre comme l'assureur la reçoit. Inscrivez-la ensuite ici : la prochaine demande commence où celle-ci finit.
desk-ask-language = Langue de la lettre
desk-ask-do = L'inscrire comme demandée
desk-ask-before = Déjà demandé
desk-ask-on = Envoyée le
desk-ask-to = À
desk-ask-changes = Changements
desk-send = Envoyer la trousse
desk-send-to-papers = Vers la signature et les documents
desk-send-what = Ci-joint : la trousse en { $language }, version { $version } du { $day }, examinée par { $reviewer }.
desk-send-other = Envoyer plutôt en { $language }
desk-send-to-whom = Écrire à
desk-send-subject = Objet
desk-send-message = Message
desk-send-kept = Les mots et l'empreinte de la pièce jointe sont conservés avec la remise.
desk-send-do = Envoyer et inscrire
desk-send-before = Déjà remis
desk-send-back = revenu
desk-send-came-back = C'est revenu
desk-send-why = Ce qui a été dit
desk-send-came-back-do = Inscrire que c'est revenu
desk-decisions-page = Décisions et paiement
desk-decisions-title = Ce que les dirigeants ont dit, pour le { $day }
desk-decisions-about = Inscrivez ce qui a été décidé, qui d'entre eux l'a dit, et leurs propres mots. Une réponse donnée plus tard remplace la précédente; les deux restent dans l'historique.
desk-decide-again = Changer la décision
desk-decide-by = d'ici le { $day }
desk-price = { $price } par an
desk-price-ask = prix à demander
desk-no-limit = aucune limite indiquée
desk-not-covered = non couvert
desk-wish = { $coverage }, { $place } : { $limit }
desk-payment-extra = { $n ->
    [one] un paiement, { $extra } de plus qu'en une fois
   *[other] { $n } paiements, { $extra } de plus qu'en une fois
}
desk-bind = Lier
desk-bind-title = Lier la période du { $day }
desk-bind-about = Inscrivez qui, chez { $insurer }, a confirmé la couverture. Ce qui est convenu est l'offre avec les changements cochés ici; la police y sera comparée à son arrivée.
desk-bind-changes = Changements en plus de l'offre
desk-bind-accepted = Accepté
desk-bind-change = Changement
desk-bind-offer = Dans l'offre
desk-bind-price = Par an
desk-bind-why = Pourquoi il est ici
desk-bind-requested = demandé
desk-bind-taken = pris par les dirigeants
desk-bind-by = Qui l'a confirmé chez l'assureur
desk-bind-words = En quels mots
desk-bind-do = Inscrire que la couverture est liée
desk-bound-by = { $by } l'a liée le { $day }, { $n ->
    [0] selon l'offre telle quelle.
    [one] avec un changement en plus de l'offre.
   *[other] avec { $n } changements en plus de l'offre.
}
desk-bound-binder = Note de couverture { $binder }.
desk-bound-words = En ses mots : « { $words } »
desk-bound-written = Inscrit par { $by }.
desk-check = Vérifier la police
desk-check-bound = Comparée à ce que { $by } a lié le { $day } : l'offre { $n ->
    [0] telle quelle.
    [one] avec un changement.
   *[other] avec { $n } changements.
}
desk-check-offer = Comparée à l'offre : aucune note de couverture n'est inscrite.
desk-check-policy = Police { $number }.
desk-checked-by = { $by } a vérifié cette police le { $day } et a trouvé { $n ->
    [0] qu'elle donne ce qui a été convenu.
    [one] un point qui donne moins.
   *[other] { $n } points qui donnent moins.
}
desk-check-more = Assumé en plus (+) ou en moins (−) d'un sinistre, au plus
desk-compare-effect = Effet
desk-compare-clause = Clause
desk-check-same = Elle dit ce qui a été convenu, clause par clause.
desk-check-hint = Lisez aussi la police elle-même : les formulaires et exclusions que personne n'a saisis ne sont pas comparés ici.
desk-check-do = Inscrire la vérification
desk-compare = Comparer les conditions
desk-compare-before = De
desk-compare-after = À
desk-compare-do = Comparer
desk-compare-differences = { $n ->
    [0] Aucune clause ne diffère
    [one] Une clause diffère
   *[other] { $n } clauses diffèrent : { $worse } moins bien, { $better } mieux
}
desk-compare-losses = Les mêmes sinistres sous les deux
desk-compare-losses-about = Ce que l'organisme assumerait lui-même de chaque sinistre de la bibliothèque, à la taille de ce dossier.
desk-compare-versions = { $n ->
    [one] La seule version au dossier
    [2] Les deux versions côte à côte
   *[other] Les { $n } versions côte à côte
}
desk-loss = Sinistre
desk-borne-under = Assumé,
desk-difference = Différence
desk-same = égal
desk-pay = Combien paierait-on?
desk-pay-library = Des sinistres qui arrivent
desk-pay-lost = Perdu
desk-pay-paid = Payé
desk-pay-borne = Assumé
desk-pay-more = Aussi perdu
desk-pay-amount = Combien
desk-pay-do = Essayer ce sinistre
desk-pay-reset = Revenir à la taille habituelle
desk-pay-chart = Payé et assumé selon chaque version
desk-pay-steps = Pas à pas, { $stage ->
    [expiring] conditions qui expirent
    [requested] conditions demandées
    [offered] conditions offertes
   *[issued] conditions émises
}
desk-pay-why = Pourquoi une part est assumée
desk-pay-who = Qui paie
desk-premium-key = Répartie selon
desk-premium-key-of = La clé « { $key } »
desk-premium-key-about = Qui porte quelle part de la prime. Changez une ligne, et la répartition change avec elle.
desk-premium-key-add = Ajouter une ligne à une clé
desk-premium-by = Selon
desk-premium-chosen = { $by } a choisi le mode de paiement le { $day }.

## Revenir sur une inscription

acts-undo-never = On ne peut revenir sur cette inscription : elle raconte une chose faite, ou elle n'existe pas. Revoyez l'historique.
acts-undo-later = Une inscription plus récente dit autre chose de la même fiche. Revenez d'abord sur celle-là.
acts-undo-moved = Quelqu'un a écrit au dossier { $file } après que vous en avez lu l'historique; rien n'a été annulé. Relisez-le et voyez ce qui est nouveau.
desk-act-undo = annulé
desk-act-seal = scellé
desk-undo-do = Revenir sur cette inscription
desk-undo-what = Ce qui valait avant vaut de nouveau. L'inscription reste lisible, et son annulation en est une aussi.
desk-done-undo = L'inscription est annulée. Ce qui valait avant vaut de nouveau.

## Comment les fiches s'appellent

called-terms = { $stage ->
    [requested] demandées
    [offered] offertes
    [issued] émises
   *[expiring] échéantes
}, dès le { $day }
called-number = numéro { $n }
called-package = { $language }, version { $version }

## Ce qui a été tapé dans un formulaire, par champ

typed-by = Qui l'a dit
typed-on = Le
typed-words = Dans leurs mots
typed-binder = Numéro de la note de couverture
typed-reason = Raison
typed-text = Note
typed-to = À qui
typed-address = Adresse
typed-subject = Objet
typed-message = Message
typed-why = Ce qui a été dit
typed-name = Nom
typed-email = Adresse courriel
typed-licence = Numéro de permis
typed-purpose = Pour quoi faire
desk-to-page = Retour à la page

## Ce qui accompagne par courriel une demande à l'assureur

mail-ask-subject = { $organisation }, police { $policy } : demande { $number } pour la période du { $renewal }
mail-ask-body = Vous trouverez ci-joint notre demande sur la police { $policy } de { $organisation } pour la période qui commence le { $renewal }. Elle { $n ->
    [0] ne porte sur aucun nouveau changement
    [one] porte sur un changement, à côté de ce qui est en vigueur
   *[other] porte sur { $n } changements, chacun à côté de ce qui est en vigueur
}.{ $gone ->
    [0] { "" }
    [one] { " " }Un point demandé auparavant ne l'est plus : veuillez ne plus en tenir compte, comme le dit la lettre.
   *[other] { " " }{ $gone } points demandés auparavant ne le sont plus : veuillez ne plus en tenir compte, comme le dit la lettre.
}

    Confirmez-nous par écrit ce que vous acceptez et ce qu'il en coûte, ou ce que vous devez savoir d'abord. On nous joint au { $phone }.
mail-ask-close = { $sender }, { $brokerage }
desk-ask-mail = L'envoyer par courriel
desk-ask-mail-about = La lettre est jointe. Ce qui a été envoyé, et à quelle adresse, est conservé avec la demande.
desk-ask-mail-do = Envoyer et inscrire
desk-done-ask-mail = Envoyée à { $address } et inscrite. La lettre est conservée.
desk-ask-where = Adresse courriel
desk-sealed = scellé
desk-form-title = { $n ->
    [0] Le formulaire ne change rien au dossier
    [one] Une réponse diffère du dossier
   *[other] { $n } réponses diffèrent du dossier
}
desk-form-pages = Afficher les pages telles que reçues
paper-unprintable = Aucun document ne peut être imprimé avec « { $text } » : les polices n'ont pas { $letters }. Écrivez-le en lettres latines au dossier; la graphie d'origine reste dans l'historique.
