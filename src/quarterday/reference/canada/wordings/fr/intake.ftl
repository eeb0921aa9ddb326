# Ce que dit le chargement d'un classeur : ce qui est illisible, comment il a été compris, ce qu'il ferait.

## Un fichier refusé en entier

intake-not-found = Il n'y a pas de fichier ni de dossier « { $name } ». Vérifiez le nom et l'emplacement.
intake-empty = Ce fichier est vide : rien n'a été chargé. Enregistrez de nouveau le classeur et chargez cette copie.
intake-not-a-workbook = Ce fichier n'est pas un classeur Excel, quoi qu'en dise son nom : rien n'a été chargé. Enregistrez votre tableau en .xlsx ou en CSV.
intake-truncated = Ce classeur est endommagé ou tronqué : rien n'a été chargé, car des lignes pourraient manquer. Récupérez-le, ou ouvrez-le, enregistrez-le en .xlsx et chargez cette copie.
intake-password = Ce classeur est protégé par un mot de passe : on ne peut rien y lire. Ouvrez-le, retirez le mot de passe, enregistrez-le et chargez cette copie.
intake-macros = Ce classeur contient des macros, c'est-à-dire des programmes qui pourraient nuire : rien n'a été chargé. Enregistrez-le en .xlsx, un format sans macros.
intake-older-format = Dans le format de ce classeur, on ne peut distinguer une cellule en erreur d'une cellule vide : rien n'a été chargé. Enregistrez-le en .xlsx et chargez cette copie.
intake-too-large = Ce fichier dépasse { $most } Mo : rien n'a été chargé. Répartissez les comptes entre plusieurs classeurs.
intake-too-large-unpacked = Une fois décompressé, ce classeur dépasse { $most } Mo, comme le font les fichiers nuisibles : rien n'a été chargé. Divisez-le, ou copiez ses valeurs dans un nouveau classeur.
intake-too-many-parts = Ce classeur compte plus de { $most } éléments, comme les fichiers nuisibles : rien n'a été chargé. Copiez ses valeurs dans un nouveau classeur.
intake-too-many-files = Ce dossier contient plus de { $most } fichiers CSV : rien n'a été chargé. Gardez seulement ceux qui vont ensemble.
intake-too-wide = { $part } s'étend sur plus de { $most } cellules, presque toutes vides : rien n'a été chargé. Supprimez les cellules isolées, loin en bas ou à droite, puis enregistrez.
intake-no-csv = Le dossier { $name } ne contient aucun fichier CSV. Indiquez un classeur, un fichier CSV ou un dossier qui en contient.
intake-csv-broken = On ne peut lire { $name } près de la ligne { $row } : un guillemet n'est pas fermé, ou une cellule est beaucoup trop longue. Rien n'a été chargé. Corrigez cette ligne.
intake-csv-characters = { $name } contient des caractères illisibles : rien n'a été chargé, car des noms pourraient être altérés. Enregistrez-le en CSV UTF-8.
intake-profile-broken = { $name } n'est pas un profil lisible ({ $why }). Corrigez-le, ou omettez-le pour associer les colonnes par leur nom.
intake-profile-sheet = Selon { $name }, la feuille « { $sheet } » est « { $unknown } », qui n'existe pas. Corrigez le nom, ou laissez-le vide pour écarter la feuille.
intake-profile-column = { $name } donne à la feuille « { $sheet } » une colonne « { $unknown } » qu'elle n'a pas. Corrigez-la, ou laissez-la vide pour écarter la colonne.

## Où cela se trouve

intake-where-sheet = { $sheet }
intake-where-column = { $sheet }, colonne « { $column } »
intake-where-row = { $sheet }, ligne { $row }
intake-where-cell = { $sheet }, ligne { $row }, « { $column } »
intake-fault = { $what }
intake-fault-where = { $where } : { $what }
intake-fault-remedy = { $what } { $remedy }
intake-fault-value = « { $value } » : { $what }
intake-fault-where-value = { $where }, « { $value } » : { $what }
intake-fault-where-remedy = { $where } : { $what } { $remedy }
intake-fault-value-remedy = « { $value } » : { $what } { $remedy }
intake-fault-where-value-remedy = { $where }, « { $value } » : { $what } { $remedy }

## Cellules illisibles

intake-error-cell = La cellule affiche une erreur : sa valeur est perdue.
intake-error-cell-remedy = Corrigez la formule, ou tapez la valeur.
intake-uncalculated = La formule n'a jamais été calculée : il n'y a aucune valeur à lire.
intake-uncalculated-remedy = Ouvrez le classeur dans un tableur, enregistrez-le et chargez-le de nouveau.
intake-merged-number = Un seul nombre vaut pour plusieurs lignes : on ne sait pas à laquelle il revient.
intake-merged-number-remedy = Défusionnez les cellules et donnez à chaque ligne son propre nombre.
intake-not-a-number = Ce n'est pas un nombre.
intake-not-a-number-remedy = Écrivez seulement des chiffres, par exemple 1234,50.
intake-not-a-year-remedy = Écrivez l'année en quatre chiffres, par exemple 1998.
intake-not-a-count-remedy = Écrivez un nombre entier en chiffres, par exemple 12.
intake-two-readings = On peut y lire { $smaller } ou { $larger }, et rien dans la colonne ne permet de trancher.
intake-two-readings-remedy = Écrivez le nombre sans séparateur de milliers.
intake-other-currency = Ce montant est dans une autre monnaie; les montants sont conservés dans celle de la police.
intake-other-currency-remedy = Écrivez le montant dans cette monnaie, sans son symbole.
intake-trillion = Le nombre atteint mille milliards, ce qui ne peut être juste ici.
intake-trillion-remedy = Vérifiez les chiffres.
intake-fraction-of-cent = Le montant comporte des fractions de cent : un chiffre ou un signe est sans doute erroné.
intake-fraction-of-cent-remedy = Écrivez-le avec deux décimales.
intake-not-whole = Il faut ici un nombre entier.
intake-not-whole-remedy = Écrivez-le sans décimales.
intake-percent-here = Un pourcentage se trouve là où il faut un montant ou un nombre.
intake-percent-here-remedy = Écrivez le montant ou le nombre lui-même.
intake-date-for-number = Une date se trouve là où il faut un nombre.
intake-date-for-number-remedy = Donnez à la cellule le format Nombre et retapez le nombre.
intake-two-ratios = On peut y lire { $percent } % ou { $ratio } %, car la colonne contient les deux écritures.
intake-two-ratios-remedy = Écrivez chaque cellule de la colonne avec le signe %.
intake-not-a-date = Ce n'est pas une date.
intake-not-a-date-remedy = Écrivez l'année, le mois et le jour, par exemple 2026-03-31.
intake-two-dates = On peut y lire { $first } ou { $second }, et rien dans la colonne ne permet de trancher.
intake-two-dates-remedy = Écrivez l'année, le mois et le jour, par exemple 2026-03-31.
intake-zero-date = C'est la date qu'un tableur affiche pour zéro ou pour rien, et non un de vos jours.
intake-zero-date-remedy = Tapez la date, ou videz la cellule.
intake-far-date = L'année { $year }, ou une année plus lointaine, ne peut être juste.
intake-far-date-remedy = Vérifiez l'année.
intake-not-a-month-day = Ce n'est pas un jour de l'année.
intake-not-a-month-day-remedy = Écrivez le mois et le jour, par exemple 12-31.
intake-date-for-text = Le tableur a changé ce texte en date : ce qui avait été tapé est perdu.
intake-date-for-text-remedy = Donnez à la cellule le format Texte et retapez le texte.
intake-odd-character = Le texte contient un caractère qu'on ne peut conserver ({ $character }).
intake-odd-character-remedy = Retapez le texte.
intake-not-yes-no = Ce n'est ni oui ni non.
intake-not-yes-no-remedy = Écrivez oui, non, ou n/d si on ne le sait pas.
intake-not-a-choice = « { $said } » n'est pas une des réponses de cette colonne.
intake-not-a-choice-remedy = Écrivez l'une de celles-ci : { $choices }.

## Ce qu'une ligne doit dire

intake-account-missing = La ligne ne dit pas de quel compte il s'agit.
intake-account-missing-remedy = Inscrivez le compte.
intake-required = Il manque « { $column } », et la ligne ne veut rien dire sans cela.
intake-required-remedy = Remplissez la cellule.
intake-must-be-known = On ne peut laisser cela inconnu.
intake-must-be-known-remedy = Écrivez la valeur (0 s'il n'y en a pas), ou videz la cellule pour garder ce qui est au dossier.
intake-greater-than = Il faut plus que { $bound }.
intake-greater-than-equal = Il faut { $bound } ou plus.
intake-less-than = Il faut moins que { $bound }.
intake-less-than-equal = Il faut { $bound } ou moins.
intake-string-too-long = Le texte dépasse { $bound } caractères.
intake-too-long = La liste dépasse { $bound } éléments.
intake-bound-remedy = Vérifiez la cellule.
intake-ends-early = La période se termine avant d'avoir commencé, ou le jour même.
intake-ends-early-remedy = Vérifiez les deux dates.
intake-not-possible = Ce que dit la ligne ne peut être vrai en même temps.
intake-not-possible-remedy = Vérifiez la ligne.
intake-twice = La ligne répète ce que dit { $sheet }, ligne { $row }. Elle a été prise une seule fois.
intake-contradicts = { $sheet }, ligne { $row } dit « { $there } » là où cette ligne dit « { $here } ». Les deux lignes parlent de la même chose.
intake-contradicts-remedy = Gardez celle qui est juste.

## Ce que désignent les identifiants

intake-no-account = Aucun organisme n'a le compte « { $said } ».
intake-no-account-remedy = Ajoutez-le à la feuille des organismes, ou corrigez le compte.
intake-no-account-near-remedy = Vouliez-vous dire { $near }? Sinon, ajoutez-le à la feuille des organismes.
intake-several = « { $said } » peut désigner { $ids }.
intake-several-remedy = Écrivez l'identifiant au complet.
intake-read-as = « { $said } » lu { $meant }
intake-ids-read = Des identifiants ont repris leur forme au dossier : { $pairs }.
intake-ids-read-more = Des identifiants ont repris leur forme au dossier : { $pairs }, et { $more } autres.
intake-organisation-refused = La ligne de l'organisme { $account } a été refusée : on ne peut rien en conserver.
intake-mend-first-remedy = Corrigez d'abord cette ligne.
intake-same-number = L'organisme { $others } a le même numéro d'enregistrement, alors que chaque organisme a le sien.
intake-same-number-remedy = Vérifiez le numéro des deux.
intake-no-building = Le compte n'a pas de bâtiment « { $said } ».
intake-no-building-remedy = Ajoutez-le à la feuille des bâtiments, ou corrigez l'identifiant.
intake-building-refused = La ligne du bâtiment « { $said } » a été refusée.
intake-no-contact = Le compte n'a pas de personne-ressource « { $said } ».
intake-no-contact-remedy = Ajoutez la personne à la feuille des personnes-ressources.
intake-contact-refused = La ligne de la personne « { $said } » a été refusée.
intake-no-coverage = Aucune garantie (genre de protection) ne s'appelle « { $said } ».
intake-no-coverage-remedy = La commande quarterday coverages les énumère toutes.
intake-no-cause = Aucune cause de sinistre ne s'appelle « { $said } ».
intake-no-cause-remedy = La commande quarterday causes les énumère toutes.
intake-no-province = Aucune province ni aucun territoire ne s'appelle « { $said } ».
intake-no-province-remedy = Écrivez ses deux lettres, par exemple ON ou QC.
intake-did-you-mean = Vouliez-vous dire l'un de ceux-ci : { $ids }?
intake-id-and-name = { $code } ({ $name })
intake-no-terms = Il n'y a pas de conditions de police (étape : { $stage }) qui commencent le { $start }.
intake-no-terms-remedy = Ajoutez-les à la feuille des conditions, ou corrigez la date et l'étape.
intake-terms-held = Les conditions (étape : { $stage }) qui commencent le { $start } ont été retenues, car une ligne qui en fait partie a été refusée. Une demi-police au dossier ferait croire à des garanties supprimées.

## Ce qui a été écarté, ou lu d'une manière à connaître

intake-hidden-sheet = La feuille est masquée et a été écartée.
intake-hidden-sheet-remedy = Si elle fait partie du chargement, affichez-la et enregistrez.
intake-linked-cells = { $count ->
    [one] Une cellule tire sa valeur d'un autre classeur, telle qu'elle était à la dernière ouverture.
   *[other] { $count } cellules tirent leur valeur d'autres classeurs, telle qu'elle était à la dernière ouverture. Voici la première.
  }
intake-linked-cells-remedy = Acceptez-les, ou collez-les en valeurs.
intake-links-unused = Le classeur connaît d'autres classeurs, mais aucune cellule n'en tire sa valeur.
intake-csv-encoding = { $name } n'est pas en UTF-8. On l'a lu comme un texte d'Europe de l'Ouest : vérifiez les accents.
intake-total-row = La ligne « { $text } » en additionne d'autres et a été écartée.
intake-remark-row = La ligne ne contient qu'une remarque et a été écartée : « { $text } ».
intake-headings-again = Les en-têtes reviennent ici; la ligne a été écartée.
intake-merged = La cellule fusionnée a été lue pour les lignes { $first } à { $last }.
intake-read = { $count ->
    [one] Une cellule : { $how }
   *[other] { $count } cellules : { $how }
  }
intake-read-choices = Ces mots ont été compris : { $pairs }.
intake-read-choice = « { $said } » lu comme { $choice } ({ $count })
intake-read-day-number = un simple nombre a été lu comme un numéro de jour de tableur.
intake-read-first-of-month = un mois sans jour a été lu comme le premier du mois.
intake-read-year-of-date = on a pris l'année d'une date.
intake-left-alone = { $count ->
    [one] Un élément au dossier ({ $kind }) n'est pas dans le classeur. Il reste tel quel.
   *[other] { $count } éléments au dossier ({ $kind }) ne sont pas dans le classeur. Ils restent tels quels.
  }

## Comment les feuilles et les colonnes ont été comprises

intake-map-sheet = La feuille « { $sheet } » a été lue comme { $known_as }, avec ses en-têtes à la ligne { $row } : { $columns }.
intake-map-column = « { $heading } » comme { $column }
intake-map-column-alike = « { $heading } » comme { $column } (ressemblance de { $score } %)
intake-sheet-left-out = La feuille ne ressemble à aucune de celles du modèle et a été écartée.
intake-sheet-left-out-by-profile = Le profil écarte cette feuille.
intake-no-headings = La feuille n'a aucune ligne d'en-têtes reconnaissable : rien n'en a été lu. Donnez à ses colonnes les noms du modèle.
intake-sheet-unclear = La feuille pourrait être { $sheets } : rien n'en a été lu.
intake-column-missing = La feuille n'a pas de colonne « { $column } » : rien n'en a été lu.
intake-column-unclear = Cet en-tête peut désigner { $columns } : la colonne n'a pas été lue.
intake-profile-remedy = Changez le nom, ou dites dans un profil ce que c'est.
intake-column-alike = Cet en-tête a été pris pour « { $column } » (ressemblance de { $score } %).
intake-column-like = La colonne a été écartée. Elle désignait peut-être { $columns }.
intake-column-left-out = La colonne a été écartée : le modèle n'en a pas de semblable.

## Ce qu'une personne doit accepter

intake-older-terms = Ces conditions commencent le { $here }, et des conditions plus récentes, du { $on_file }, sont au dossier. Le classeur est peut-être d'une autre année.
intake-older-valuation = Cette évaluation est du { $here }, et une plus récente, du { $on_file }, est au dossier. Le classeur est peut-être d'une autre année.
intake-older-record = Cet élément a été évalué ou confirmé le { $here }, et celui au dossier, le { $on_file }. Le classeur est peut-être d'une autre année.
intake-older-remedy = Vérifiez, puis acceptez ou corrigez.
intake-lines-lost = { $count ->
    [one] Un poste au dossier n'est pas dans le classeur et serait retiré : { $lines }.
   *[other] { $count } postes au dossier ne sont pas dans le classeur et seraient retirés : { $lines }.
  }
intake-not-accepted = Rien n'a été écrit : le classeur contient des lignes refusées ou des questions. Corrigez-le, ou acceptez-le tel quel.

## Ce que ferait le chargement

intake-summary = { $name } : { $new ->
    [one] { $new } nouvel élément
   *[other] { $new } nouveaux éléments
}, { $changed ->
    [one] { $changed } modifié
   *[other] { $changed } modifiés
}, { $unchanged ->
    [one] { $unchanged } inchangé
   *[other] { $unchanged } inchangés
}, { $refused ->
    [one] { $refused } refusé
   *[other] { $refused } refusés
}, { $asks } à accepter.
intake-new = { $account }, nouveau : { $records }.
intake-new-rest = Et { $n } autres comptes, tous nouveaux : { $records }.
intake-count = { $kind } ({ $count })
intake-record-name = { $kind } { $name }
intake-record-alone = { $kind }
intake-terms-name = conditions du { $start } ({ $stage })
intake-change = { $account }, { $record } : { $field }, de { $old } à { $new }.
intake-line-change = { $account }, { $record }, { $line } : { $field }, de { $old } à { $new }.
intake-line-new = { $account }, { $record } : { $line } s'ajoute.
intake-line-gone = { $account }, { $record } : { $line } est retiré.
intake-part-line = { $part }, { $coverage }
intake-line-at = { $line } (bâtiment { $location })
intake-total-line = totaux, { $of } { $where }
intake-shared-limit = { $amount } pour plusieurs garanties
intake-name = Nom
intake-nothing = aucun

## La copie annotée

intake-copy-sheet = Quarterday
intake-copy-title = Ce qui n'a pu être chargé
intake-copy-explains = Chaque cellule nommée ici porte un commentaire qui dit ce qui ne va pas et quoi faire. Corrigez-les, supprimez cette feuille au besoin, et chargez de nouveau le classeur.
intake-copy-where = Feuille
intake-copy-row = Ligne
intake-copy-column = Colonne
intake-copy-value = Valeur
intake-copy-what = Ce qui ne va pas
intake-copy-remedy = Quoi faire
intake-copy-kind = Genre
intake-kind-refused = refusé
intake-kind-asks = à accepter
intake-kind-note = remarque

## Feuilles du modèle

sheet-organisations = organismes
sheet-contacts = personnes-ressources
sheet-authorities = personnes autorisées
sheet-operations = activités
sheet-buildings = bâtiments
sheet-valuations = évaluations
sheet-terms = conditions
line-coverages = garantie
line-premiums = prime
line-totals = total
line-options = option
sheet-coverages = garanties
sheet-premiums = primes
sheet-totals = totaux
sheet-options = options offertes
sheet-claims = sinistres
sheet-allocation = clés de répartition
sheet-interests = créanciers et locateurs
field-account = Compte
