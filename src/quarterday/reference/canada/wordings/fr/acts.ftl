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
acts-went-already = Ce dossier de renouvellement est déjà parti à { $to }, le { $day }. Il n'a pas été renvoyé. Rechargez la page s'il doit l'être.
acts-no-delivery = Il n'y a pas de telle remise, ou elle est déjà revenue. Rechargez la page.
acts-request-moved = { $file } a changé après le chargement de votre page, donc la demande n'a pas été inscrite. Relisez-la : elle demande peut-être davantage.
acts-returns-moved = Le dossier a changé depuis votre lecture de ce formulaire, donc rien n'a été écrit. Voici ce que le formulaire propose maintenant.
mail-no-server = Aucun serveur de courriel n'est nommé, donc rien n'a été envoyé ni inscrit. Donnez son adresse dans { $setting }, ou inscrivez une remise par la poste ou en main propre.
mail-bad-server = { $setting } ne nomme pas un serveur de courriel, donc rien n'a été envoyé. Écrivez-le comme smtp+starttls://utilisateur@mail.example.org.
mail-refused = Le serveur de courriel ne livre pas à { $to }, donc rien n'a été inscrit. Il dit : { $why }
mail-password = Le serveur de courriel refuse notre nom ou notre mot de passe, donc rien n'a été envoyé. Il dit : { $why }
mail-not-taken = Le serveur de courriel n'a pas pris le message, donc rien n'a été inscrit. Il dit : { $why }
mail-not-reached = Le serveur de courriel est injoignable, donc rien n'a été envoyé ni inscrit. Réessayez plus tard. La machine dit : { $why }
mail-on-its-way = Un message à { $to } avec ces documents est en cours d'envoi. Attendez une minute, puis rechargez la page.
mail-perhaps = Un message à { $to } a été commencé à { $at } et jamais inscrit : la machine s'est arrêtée. Il est peut-être parti. Demandez s'il est arrivé; sinon, renvoyez-le.
right-ask = demander à l'assureur
right-bind = inscrire que la couverture est liée
right-check = inscrire qu'une police a été vérifiée
desk-act-request = demandé à l'assureur
desk-act-came-back = revenu
desk-act-bind = lié
desk-act-check = vérifié
desk-act-read = lu d'un formulaire

## Ce qui accompagne les documents par courriel

mail-subject = { $organisation } : le renouvellement de vos assurances du { $renewal }
mail-greeting = { $to },
mail-body = Voici les documents de renouvellement de { $organisation } pour le { $renewal }. La première page énumère ce que vous avez à décider, dans l'ordre, avec le prix de chaque décision et sa date limite.
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
