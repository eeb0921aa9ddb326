## Why a finding stands where it stands

priority-safety = La sécurité des personnes ou une obligation légale passe en premier.
priority-lapses = La protection pourrait cesser, ou une date qu'on ne peut déplacer approche.
priority-money = Il s'agit d'argent.
priority-record = Le dossier doit être exact avant que quelqu'un s'y fie.
priority-each-dollar = { $cost } par année retirent { $at_risk } de l'enjeu, soit { $each } pour chaque dollar. Ce qui en retire le plus par dollar passe avant.
priority-free-first = Cela ne coûte rien et passe donc avant ce qui coûte.
priority-unpriced = Personne n'a encore nommé de prix; cela vient donc après ce qui en a un.
priority-no-ratio = Le prix est connu, mais pas que cela retire plus que cela ne coûte; cela vient donc après.
priority-by = À régler au plus tard le { $day }.
priority-at-risk = L'enjeu est de { $amount }.
priority-cost = Le régler coûte { $cost }.
priority-free = Le régler ne coûte rien.

## Contacts

office-contacts = Personnes-ressources
office-contact-confirmed = { $name }, confirmation du
office-contact-unconfirmed-title = { $count ->
    [one] Est-ce encore à { $names } qu'il faut écrire?
   *[other] Est-ce encore à ces { $count } personnes qu'il faut écrire : { $names }?
}
office-no-contact-title = Nous n'avons personne à qui écrire dans votre organisme
office-contact-unconfirmed-means = Les documents de renouvellement et les lettres sur les sinistres vont à vos personnes-ressources. Envoyés à la mauvaise personne, ils peuvent faire manquer une date.
office-contacts-form-todo = Corrigez ou confirmez les noms sur le formulaire des personnes-ressources, faites-le signer et retournez-le.

## Who may decide

office-authorised = Personnes autorisées
office-authorised-nobody-title = Personne n'est autorisé à décider pour vous sur ceci : { $areas }
office-authorised-gone-title = { $count ->
    [one] { $names } peut encore décider pour vous, mais n'est plus parmi vos personnes-ressources
   *[other] { $names } peuvent encore décider pour vous, mais ne sont plus parmi vos personnes-ressources
}
office-authorised-means = Nous n'agissons que sur la parole des personnes que vous avez autorisées. Sans elles, une modification ou une réclamation doit attendre.
office-authorised-both-means = Nous n'agissons que sur la parole des personnes que vous avez autorisées. En ce moment, personne ne peut décider sur ceci : { $areas }.

## Operations

office-operations = Activités de l'organisme
office-operations-stale-title = Vos activités nous sont connues au { $confirmed } : dites-nous ce qui a changé
office-operations-never-title = Nous ne connaissons pas encore les activités de votre organisme
office-operations-stale-means = L'assureur fixe le prix et couvre selon ce qu'on lui a dit. Un voyage, une location ou un camp de jour dont il n'a rien su peut ne pas être couvert.
office-operations-stale-todo = Remplissez le formulaire sur vos activités, une page de questions par oui ou non, et retournez-le.

## Lenders and lessors

office-interests = Prêteurs et locateurs
office-interest-of = { $name } : intérêt
office-interests-confirm-title = { $count ->
    [one] Avez-vous encore un prêt ou un bail avec { $names }?
   *[other] Avez-vous encore un prêt ou un bail avec ces { $count } entreprises : { $names }?
}
office-interests-copies-title = { $count ->
    [one] Une copie pour { $names } est jointe
   *[other] Les copies pour { $count } prêteurs et locateurs sont jointes : { $names }
}
office-interests-means = Le prêteur ou le locateur est nommé au contrat et payé en premier après un sinistre. Chaque année, il veut une preuve d'assurance.
office-interests-confirm-todo = Confirmez ou corrigez le tout sur le formulaire des prêteurs et locateurs. Leurs copies sont jointes; nous les enverrons dès l'entrée en vigueur.
office-interests-copies-todo = Rien à faire : nous enverrons les copies dès l'entrée en vigueur.
office-interests-paid-off-title = { $count ->
    [one] { $names } est remboursé, mais encore nommé à votre contrat
   *[other] Ces { $count } prêteurs ou locateurs sont remboursés, mais encore nommés à votre contrat : { $names }
}
office-interests-paid-off-means = Tant qu'ils y sont nommés, le chèque d'une réclamation peut aussi être fait à leur ordre. Votre réparation en serait retardée.
office-interests-paid-off-todo = Demandez une mainlevée ou une quittance, la lettre qui dit que rien n'est dû. Retournez-la avec le formulaire des prêteurs et locateurs.

## Who is insured

office-registration-title = Le numéro d'organisme de bienfaisance { $number } ne peut pas être exact
office-registration-form-means = Le numéro d'enregistrement d'un organisme de bienfaisance compte neuf chiffres, puis RR, puis quatre chiffres. Ce n'est pas le cas ici.
office-registration-check-digit-means = Le neuvième chiffre d'un numéro d'enregistrement se calcule à partir des huit premiers. Ici il ne concorde pas : un chiffre a été mal saisi.
office-registration-todo = Comparez-le avec les reçus officiels ou la liste des organismes de bienfaisance de l'Agence du revenu du Canada, puis corrigez-le.
office-name-mismatch-title = Le contrat assure « { $insured } », mais le nom légal est « { $legal } »
office-name-mismatch-means = L'assureur doit l'indemnité à la personne nommée. Un autre nom lui donne une raison de poser des questions après un sinistre.
office-name-mismatch-todo = Vérifiez le nom légal dans les documents constitutifs. Faites ensuite corriger le contrat par écrit.

## The diary

office-diary = Échéancier
office-deadline-title = { $count ->
    [one] « { $first } » ne peut plus se faire avant le renouvellement du { $renewal }
   *[other] { $count } étapes ne peuvent plus se faire avant le renouvellement du { $renewal }
}
office-deadline-means = Cela commence par ceci : { $first }. Même menée au plus vite, la dernière étape finit le { $ends }; le dernier jour ouvrable utile est le { $last }.
office-deadline-todo = Téléphonez aujourd'hui aux dirigeants et à l'assureur. Demandez par écrit à l'assureur s'il prolonge de quelques jours la protection actuelle.
