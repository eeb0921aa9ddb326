yes = oui
no = non
unknown = inconnu
everywhere = partout
illustrative = à titre d'exemple
listing-more = { $n } de plus

## Unités comptées

unit-days = { $n ->
    [one] { $n } jour
   *[other] { $n } jours
}
unit-months = { $n ->
    [one] { $n } mois
   *[other] { $n } mois
}
unit-years = { $n ->
    [one] { $n } an
   *[other] { $n } ans
}
unit-m2 = { $n } m²

## D'où vient une donnée

source = { $title }, { $publisher }{ $place }
source-checked = { $source }; vérifié le { $day }
in-force-since = En vigueur depuis le { $day }. Source : { $source }.
origin-workbook = Tiré du classeur{ $name }{ $who }, le { $day }
origin-csv = Tiré des fichiers CSV{ $name }{ $who }, le { $day }
origin-form = Tiré du formulaire retourné{ $name }{ $who }, le { $day }
origin-person = Saisi à la main{ $name }{ $who }, le { $day }
origin-room = Répondu dans la salle des dirigeants{ $name }{ $who }, le { $day }
origin-office = Inscrit par le cabinet{ $name }{ $who }, le { $day }
origin-row = feuille { $sheet }, ligne { $row }
origin-rows = feuille { $sheet }, lignes { $row } à { $last }
origin-field = champ { $field }

## Mises en garde

caution-illustrative = Personne ne publie ce chiffre. C'est un exemple de départ; votre courtier peut en fixer un autre.
caution-wording-governs = Ceci résume votre contrat. En cas d'écart, le texte du contrat prévaut.
caution-estimate = Une valeur est une estimation tant qu'un évaluateur qualifié ne l'a pas confirmée.
caution-reviewed = { $reviewer }, courtier titulaire d'un permis ({ $licence }), a revu ceci le { $day }.
caution-local-rules = Les règlements locaux et le service d'incendie décident de ce que la sécurité exige. Consultez-les avant d'agir.
caution-at-risk = Un enfant ou une personne vulnérable est en danger? Appelez d'abord les services d'urgence et la protection de l'enfance, puis nous.
caution-advice = Pour une question de droit ou d'impôt, consultez un avocat ou un comptable.

## Mois

month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre
named-value = { $label } : { $value }
said-then = { $first } { $then }
