## Every page

package-title = Renouvellement d'assurance du { $renewal } : { $organisation }
package-draft = Ébauche à ne pas remettre : aucune personne titulaire d'un permis de courtage n'a signé cet examen.
package-foot = { $organisation } · dossier { $file } · période du { $start } au { $end }
package-built = { CAPITAL($language) } · produit le { $built_on } · version { $version }
package-page = Page
package-of = de
paper-kicker = { CAPITAL($paper) } · { $organisation }
paper-name = { CAPITAL($paper) }
paper-coverage-at = { $coverage }, { $place }
paper-ask-us = à nous demander
chart-alternative = { $title }. { $rows }.
chart-starts = L'échelle commence à { $from }, et non à zéro.

## Letter

letter-reason = Ce qu'il faut décider, et ce qui accompagne cette lettre.
letter-title = { $count ->
    [0] Rien à décider d'ici le { $renewal }
    [1] Une décision à prendre d'ici le { $renewal }
    [2] Deux décisions à prendre d'ici le { $renewal }
    [3] Trois décisions à prendre d'ici le { $renewal }
    [4] Quatre décisions à prendre d'ici le { $renewal }
    [5] Cinq décisions à prendre d'ici le { $renewal }
   *[other] { $count } décisions à prendre d'ici le { $renewal }
}
letter-lead = Votre assurance se renouvelle le { $renewal }. Nous avons comparé l'offre de l'assureur au contrat de cette année et à ce que nous savions de vous le { $as_of }. { $count ->
    [0] Votre conseil n'a rien à décider.
   *[other] Voici ce que votre conseil doit décider, ce que cela coûte et pour quand.
}
letter-lead-no-offer = Votre assurance se renouvelle le { $renewal }. L'assureur n'a pas encore présenté son offre. Nous avons relu le contrat de cette année et ce que nous savions de vous le { $as_of }. { $count ->
    [0] Votre conseil n'a rien à décider pour le moment.
   *[other] Voici ce que votre conseil peut décider dès maintenant.
}
letter-to = { $name }, { $role }
letter-dear = Bonjour { $name },
letter-all = Aux membres du conseil,
letter-glance-premium = Prime de l'année, taxe comprise
letter-not-offered = pas encore offerte
letter-moved-up = { $change } de plus que cette année
letter-moved-down = { $change } de moins que cette année
letter-moved-same = comme cette année
letter-glance-decisions = À décider
letter-glance-by = la première d'ici le { $by }
letter-glance-renewal = Votre assurance se renouvelle le
letter-glance-as-of = chiffres au { $as_of }
letter-words = La prime est le prix de votre assurance. Le montant d'assurance est le plus que l'assureur paie. La franchise est ce que vous payez d'abord lors d'un sinistre. La coassurance vous fait partager un sinistre quand le montant est trop bas.
letter-decide = Ce qu'il faut décider
letter-in-full = Chaque décision en détail
letter-number = Nº
letter-decision = Décision
letter-price = Prix
letter-free = sans frais
letter-at-stake = En jeu
letter-by = D'ici le
letter-send-back = À renvoyer ou à corriger
letter-know = Bon à savoir
letter-enclosed = { $count ->
    [one] Un document est joint, parce qu'il vous concerne
   *[other] { $count } documents sont joints, parce qu'ils vous concernent
}
letter-alike = { $count ->
    [0] { $title }
    [one] { $title } (et un autre cas semblable)
   *[other] { $title } (et { $count } autres cas semblables)
}
letter-pages = pages
letter-part-read = À lire avant la réunion
letter-part-send = À remplir et à renvoyer
letter-part-keep = À garder et à consulter
letter-why = Pourquoi vous le recevez
letter-page = Page
letter-not-signed = Pas encore signé
letter-licence = Permis de courtage { $licence }
letter-reviewed = J'ai examiné ce dossier au { $as_of }.

## What changed

what-changed-reason = L'offre de l'assureur diffère du contrat de cette année, ou son prix a changé.
what-changed-title = Ce que l'offre change
what-changed-title-up = Votre prime augmenterait de { $change }
what-changed-title-down = Votre prime baisserait de { $change }
what-changed-title-same = Votre prime ne changerait pas
what-changed-lead = Nous avons mis le contrat de cette année, qui prend fin le { $before }, à côté de l'offre de { $insurer }. Voici tous les écarts relevés.
what-changed-coverage = Garantie
what-changed-change = Ce qui change
what-changed-borne = À votre charge
what-changed-sentence = { CAPITAL($change) }
what-changed-whole = L'ensemble du contrat
what-changed-dropped = { $count ->
    [one] Une garantie disparaît
   *[other] { $count } garanties disparaissent
}
what-changed-dropped-lead = L'offre ne couvre plus ceci. Redemandez-le si vous en avez besoin.
what-changed-worse = { $count ->
    [one] Une condition se détériore
   *[other] { $count } conditions se détériorent
}
what-changed-worse-lead = La dernière colonne montre ce que vous pourriez payer vous-mêmes en plus ou en moins lors d'un sinistre.
what-changed-added = { $count ->
    [one] Une garantie s'ajoute
   *[other] { $count } garanties s'ajoutent
}
what-changed-added-lead = L'offre couvre ceci pour la première fois.
what-changed-better = { $count ->
    [one] Une condition s'améliore
   *[other] { $count } conditions s'améliorent
}
what-changed-better-lead = La dernière colonne montre ce que vous pourriez payer vous-mêmes en plus ou en moins lors d'un sinistre.
what-changed-other = Différent, sans être en soi meilleur ni pire
what-changed-other-lead = À lire avec soin : l'avantage ou l'inconvénient dépend du sinistre.
what-changed-none = Les conditions ne changent pas
what-changed-none-lead = Nous n'avons relevé aucun écart entre le contrat de cette année et l'offre.
what-changed-premium = Pourquoi la prime a bougé
what-changed-chart = De la prime de cette année à l'offre, en dollars, taxe comprise
what-changed-before = Cette année
what-changed-after = Offerte
what-changed-exposure = Montants assurés
what-changed-rate = Taux
what-changed-added-step = Garanties ajoutées
what-changed-dropped-step = Garanties retirées
what-changed-adjustment = Rabais, surprimes
what-changed-fee = Frais
what-changed-tax-base = Taxe sur l'écart
what-changed-tax-rate = Nouveau taux de taxe
what-changed-cause-exposure = les montants assurés ont changé
what-changed-cause-rate = l'assureur a modifié ses taux
what-changed-cause-added = des garanties s'ajoutent
what-changed-cause-dropped = des garanties sont retirées
what-changed-cause-adjustment = les rabais et les surprimes ont changé
what-changed-cause-fee = les frais ont changé
what-changed-cause-tax-base = la taxe suit la prime
what-changed-cause-tax-rate = le taux de la taxe a changé
what-changed-largest-up = La plus grande part, { $amount } de plus, vient de ce que { $cause }.
what-changed-largest-down = La plus grande part, { $amount } de moins, vient de ce que { $cause }.
what-changed-part = Part de la prime
what-changed-note = Un taux est le prix de chaque dollar assuré. Quand le taux et le montant assuré changent tous deux, chacun reçoit sa juste part de l'écart. Le tout s'additionne au cent près.

## Premium statement

premium-statement-reason = Ce que chaque garantie coûte à chaque endroit, pour vos livres.
premium-statement-title = Vous paieriez { $total } pour l'année
premium-statement-title-issued = Vous payez { $total } pour l'année
premium-statement-lead = Voici le prix de votre assurance du { $start } au { $end }, garantie par garantie et endroit par endroit.
premium-statement-before-tax = Prime et frais
premium-statement-tax = Taxe
premium-statement-total = Total de l'année
premium-statement-part = Endroits, partie { $n } de { $count }
premium-statement-coverage = Garantie (en dollars)
premium-statement-all = Tout
premium-statement-subtotal = Prime avant frais et taxe
premium-statement-sum = De la prime au total
premium-statement-what = Élément
premium-statement-dollars = Dollars
premium-statement-premium = Prime de toutes les garanties
premium-statement-fees = Frais
premium-statement-tax-at = Taxe, { $rate } de { $base }
premium-statement-no-tax = Taxe sur les primes (aucune dans votre province)
premium-statement-stage-offered = Ce sont les conditions que { $insurer } vous offre. Elles ne sont pas encore en vigueur.
premium-statement-stage-requested = Ce sont les conditions demandées à { $insurer }. Rien n'est encore offert.
premium-statement-stage-issued = Ce sont les conditions de votre contrat avec { $insurer }. Rien n'est encore offert pour l'an prochain.
premium-statement-tax-unknown = Nous ne connaissons pas le taux de la taxe pour ce jour. Le total est sans taxe.
premium-statement-surcharge = La prime de la garantie « { $coverage } » comprend une surprime de { $amount } : { $reason }.
premium-statement-discount = La prime de la garantie « { $coverage } » comprend un rabais de { $amount } : { $reason }.
premium-statement-flat = La prime de la garantie « { $coverage } » comprend un montant fixe de { $amount } : { $reason }.

## Coverage summary

coverage-summary-reason = { $count ->
    [0] Ce qui est couvert. Il ne manque rien, à notre avis.
    [one] Ce qui est couvert, et une garantie qui manque.
   *[other] Ce qui est couvert, et { $count } garanties qui manquent.
}
coverage-summary-title = { $count ->
    [0] Vous avez toutes les garanties qui conviennent à vos activités
    [one] Il manque une garantie qui convient à vos activités
   *[other] Il manque { $count } garanties qui conviennent à vos activités
}
coverage-summary-lead = Vous avez { $have } sortes de garanties du { $start } au { $end }. Le montant est le plus que l'assureur paie. La franchise est ce que vous payez d'abord.
coverage-summary-coverage = Garantie
coverage-summary-state = Incluse?
coverage-summary-limit = Montant
coverage-summary-deductible = Franchise
coverage-summary-gaps = Ce qui manque
coverage-summary-pays = Ce qu'elle paie
coverage-summary-why = Pourquoi elle convient
coverage-summary-everyone = Tout organisme peut en avoir besoin.
coverage-summary-have = oui
coverage-summary-needed = non
coverage-summary-ask = à préciser
coverage-summary-because = Parce que { $reasons }.
coverage-summary-tell-us = Nous devons savoir { $questions }.
coverage-summary-rest = Rien dans votre dossier n'appelle : { $names }.
coverage-summary-within = { $case ->
    [shared] Le montant supplémentaire partagé la couvre.
   *[lines] Elle est comprise dans ceci : { $covers }.
}
coverage-summary-shared = montant commun
coverage-summary-hours = { $n ->
    [one] après { $n } heure
   *[other] après { $n } heures
}

## Options

options-reason = { $count ->
    [one] L'assureur offre une garantie de plus. À vous de choisir.
   *[other] L'assureur offre { $count } garanties de plus. À vous de choisir.
}
options-title = { $count ->
    [one] L'assureur ajouterait une garantie si vous la demandez
   *[other] L'assureur ajouterait { $count } garanties si vous les demandez
}
options-lead = Rien de ceci n'est encore dans le prix. Pour chaque option, voici le prix, ce qu'elle paie et une question à vous poser.
options-price = Prix
options-a-year = { $price } par année avant taxe
options-limit = Montant
options-deductible = Franchise
options-now = Dans l'offre
options-covered = couvert
options-not-covered = non couvert
options-question = À vous demander : { $question }
options-change = Ce que chacune changerait pour vous, à côté de l'offre telle quelle
options-change-lead = Une part des sinistres reste à votre charge : franchises, dépassements, ce qui n'est pas couvert. Voici de combien cette part baisserait (ou monterait).
options-not-measured = non mesuré
options-reach = (de { $least } à { $most })
options-rests-on = D'après { $years } années simulées de sinistres, les mêmes pour chaque option, et vos propres sinistres à côté de ceux des autres. Entre parenthèses : où le seul hasard la place. « Pareil » veut dire : aucune différence que le hasard n'explique pas. Coûts et fréquences sont en partie des exemples que personne ne publie. Les montants sont arrondis à ce que le hasard en laisse.
options-deductibles = Une autre franchise
options-deductibles-lead = La franchise est la part de chaque sinistre que vous payez vous-même.
options-caution = Une option ne compte qu'une fois que nous vous l'avons confirmée par écrit.

## Building values

building-values-reason = { $short ->
    [0] { $count ->
        [one] Votre bâtiment est assez assuré pour être reconstruit. Voici pourquoi.
       *[other] Vos { $count } bâtiments sont assez assurés pour être reconstruits. Voici pourquoi.
    }
    [one] Un bâtiment ne pourrait pas être reconstruit avec son montant d'assurance.
   *[other] { $short } bâtiments ne pourraient pas être reconstruits avec leur montant d'assurance.
}
building-values-title-short = { $building } : il manquerait environ { $amount } après un sinistre total
building-values-title-enough = { $building } : le montant suffit pour reconstruire
building-values-title-unknown = { $building } : personne ne sait ce que coûte la reconstruction
building-values-lead = Un sinistre total pourrait survenir juste avant la fin de la période, le { $end }. Reconstruire prend du temps : nous comptons les coûts jusqu'au { $day }.
building-values-insured = Le plus que paie le contrat
building-values-available = sa part d'un montant commun
building-values-cost = Coût de reconstruction
building-values-by = d'ici le { $day }
building-values-short = Il manque
building-values-spare = Il reste
building-values-share = { $share } du coût
building-values-chart = Montant d'assurance et coût de reconstruction, en dollars
building-values-line-cost = coût de reconstruction
building-values-line-insured = montant d'assurance
building-values-projected = projeté
building-values-day-valued = évalué
building-values-day-renewal = renouvelé
building-values-day-rebuilt = reconstruit
building-values-alternative = { $building } : reconstruire aurait coûté { $valued } le { $valued_on }, { $at_renewal } le { $renewal } et { $rebuilt } d'ici le { $day }, la dernière partie étant projetée. Le bâtiment est assuré pour { $insured }.
building-values-increases-behind = Depuis l'évaluation du { $day }, le montant d'assurance a monté de lui-même de { $applied }. Les coûts de construction ont monté de { $index }.
building-values-increases-ahead = Depuis l'évaluation du { $day }, le montant d'assurance a monté de lui-même de { $applied }. Les coûts de construction ont monté de { $index } : il a suivi.
building-values-clause-title-short = Même un petit sinistre ne serait payé qu'à { $share }
building-values-clause-title-full = Un sinistre partiel serait payé en entier, après la franchise
building-values-clause-title-suspended = La règle proportionnelle est suspendue
building-values-clause-short = La règle proportionnelle (coassurance) demande d'assurer au moins { $required }. Vous assurez { $carried }. L'assureur paie donc { $share } d'un sinistre, moins la franchise.
building-values-clause-full = La règle proportionnelle (coassurance) demande d'assurer au moins { $required }, sinon vous partagez chaque sinistre. Vous assurez { $carried } : c'est assez.
building-values-clause-suspended = La règle proportionnelle (coassurance) vous ferait partager chaque sinistre si le montant était trop bas. Une valeur convenue la suspend pour cette période.
building-values-losses = Qui paie un sinistre de cette taille
building-values-paid = l'assureur paie
building-values-borne = vous payez
building-values-pays = assureur { $paid }, vous { $borne }
building-values-todo = Ce qu'il faut faire
building-values-todo-none = Rien pour le moment. Avertissez-nous avant de rénover, d'agrandir ou de vider le bâtiment.
building-values-caution = { caution-estimate } Celle-ci part de ceci : { $basis }, { $day }, { $by }.
building-values-by-unknown = évaluateur non nommé
building-values-caution-none = Aucune évaluation n'est au dossier : nous ne pouvons pas dire si le montant d'assurance suffit.

## Copies for lenders and lessors

copies-reason = Il faut montrer à { $names } que vous êtes assurés.
copies-title-lender = Preuve d'assurance pour un prêteur
copies-title-lessor = Preuve d'assurance pour un bailleur
copies-lead-issued = L'assurance ci-dessous est en vigueur pour la période indiquée.
copies-lead-offered = L'assurance ci-dessous est offerte pour la période indiquée. Elle n'est pas en vigueur avant que l'assureur délivre le contrat.
copies-lead-requested = L'assurance ci-dessous a été demandée. L'assureur ne l'a pas encore offerte.
copies-insured = Assuré
copies-address = Adresse
copies-insurer = Assureur
copies-policy = Contrat
copies-term = Période
copies-from-to = du { $start } au { $end }
copies-reference = Votre référence
copies-location = Bien
copies-item = Équipement
copies-amount = Votre intérêt
copies-coverage = Garantie
copies-limit = Montant
copies-deductible = Franchise
copies-caution = Cette page informe. Elle ne change rien au contrat et ne donne aucun droit par elle-même; seul le texte du contrat fait foi.
copies-signed = { $name }, le { $on }

## Where each figure comes from

figures-reason = { $count ->
    [one] D'où vient le chiffre qui appuie les constats.
   *[other] D'où viennent les { $count } chiffres qui appuient les constats.
}
figures-title = D'où vient chaque chiffre
figures-lead = Chaque chiffre porte un numéro. À côté, voici comment nous l'avons calculé et les numéros de ce dont il est fait. Un repère comme *1 renvoie à une mise en garde, à lire d'abord.
figures-number = Nº
figures-value = Valeur
figures-figures = Les chiffres que nous avons calculés
figures-figure = Chiffre, et comment il est obtenu
figures-facts = Les faits de votre dossier
figures-parameters = Les valeurs publiées et supposées
figures-from = À partir de { $numbers }.
figures-credits = Mention : { $text }

## Claims record

paper-claims-record = historique des sinistres
claims-record-reason = { $count ->
    [one] Votre sinistre en { $years } ans, et ce qui prévient le prochain.
   *[other] Vos { $count } sinistres en { $years } ans, et ce qui prévient le prochain.
}
claims-record-title = { $case ->
    [none] { $count ->
        [one] Un sinistre en { $years } ans, et ce n'était pas l'eau
       *[other] { $count } sinistres en { $years } ans, aucun causé par l'eau
    }
    [all] { $count ->
        [one] Votre seul sinistre en { $years } ans venait de l'eau
       *[other] Les { $count } sinistres en { $years } ans venaient tous de l'eau
    }
   *[some] { $water ->
        [one] L'eau a causé un de vos { $count } sinistres en { $years } ans
       *[other] L'eau a causé { $water } de vos { $count } sinistres en { $years } ans
    }
}
claims-record-lead = Voici les sinistres que nous connaissons, du { $start } au { $end }. Les assureurs les regardent pour fixer votre prix.
claims-record-claims = Sinistres
claims-record-in-years = en { $years } ans
claims-record-cost = Ce qu'ils ont coûté
claims-record-cost-note = payé, et mis de côté pour ceux en cours
claims-record-water-cost = Dont l'eau
claims-record-water-share = { $share } du coût
claims-record-chart = Ce que coûtent les sinistres, par cause
claims-record-key-water = eau
claims-record-key-other = autres causes
claims-record-counted = { $count ->
    [one] un sinistre, { $amount }
   *[other] { $count } sinistres, { $amount }
}
claims-record-each = Chaque sinistre, le plus récent d'abord
claims-record-day = Jour
claims-record-cause = Cause
claims-record-place = Où
claims-record-cost-header = Coût
claims-record-status = État
claims-record-nowhere = non indiqué
claims-record-prevention = Ce qui le prévient
claims-record-late = Déclaré plus de { $days } jours après le sinistre : { $each }. Un assureur peut payer moins ce qu'il apprend tard.
claims-record-caution = Le registre de l'assureur prévaut. Dites-nous ce qui manque ou ce qui est inexact.
claims-record-caution-day = Selon le registre de l'assureur au { $day }; les dossiers ouverts peuvent changer. Dites-nous ce qui manque ou ce qui est inexact.

## Draft motions

paper-motions = projets de résolutions
motions-reason = { $count ->
    [one] Des mots pour votre procès-verbal, pour la décision à prendre.
   *[other] Des mots pour votre procès-verbal, pour chacune des { $count } décisions.
}
motions-title = { $count ->
    [one] Une résolution, prête pour votre procès-verbal
   *[other] { $count } résolutions, prêtes pour votre procès-verbal
}
motions-lead = Reprenez, changez ou laissez ces textes. Si le conseil refuse, inscrivez-le aussi : cela montre qu'il savait et qu'il a choisi.
motions-or = Ou, si le conseil décide autrement :
motions-mover = Proposé par
motions-seconder = Appuyé par
motions-result = Adopté, ou non
motions-caution = Vos propres règlements disent qui peut proposer, appuyer et voter. Consultez un avocat s'ils ne sont pas clairs.

## What would it pay

paper-what-would-it-pay = ce que l'assurance paierait
would-pay-reason = { $count ->
    [one] Un sinistre suivi pas à pas.
   *[other] { $count } sinistres suivis pas à pas.
}
would-pay-title = { $case ->
    [some] { $loss } : environ { $amount } à votre charge
   *[none] Dans ces sinistres, votre assurance paierait tout
}
would-pay-lead = { $count ->
    [one] Un sinistre qui pourrait vous arriver, et ce que votre assurance paierait.
   *[other] { $count } sinistres qui pourraient vous arriver, et ce que votre assurance paierait.
} Les montants sont des exemples, à votre taille. Le reste sort de vos propres fonds.
would-pay-chart = Qui paie chaque sinistre
would-pay-loss = Sinistre
would-pay-part = Ce qui est perdu
would-pay-lost = Combien
would-pay-reason-of = { $amount } ({ $why })
would-pay-because = Pourquoi c'est à votre charge : { $reasons }.
would-pay-total = Sinistre entier
would-pay-pays = L'assureur paie
would-pay-borne = Vous payez
would-pay-before = Vous payez avec le contrat de cette année
would-pay-result = { $case ->
    [all] L'assureur paie tout le sinistre de { $total }.
    [none] L'assureur ne paie rien. Vous payez tout le sinistre de { $total }.
   *[part] Sur { $total }, l'assureur paie { $paid } et vous payez { $borne }.
}
would-pay-caution = Ce sont des exemples, non des promesses. Une vraie réclamation dépend de ses propres faits, et un expert en sinistre en décide.

## Image de marque

brand-logo = Logo de { $name }
brand-signature = Signature de { $name }
