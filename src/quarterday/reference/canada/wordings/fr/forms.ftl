## All forms

form-tip = { $field } : { $subject }
form-tip-confirm = Rempli par : { $field }
form-confirm = Rempli par
form-confirm-lead = Remplissez ce formulaire à l'écran ou sur papier. Envoyez-le ensuite à { $email }, ou par la poste à l'adresse de la première page.
form-confirmed-by = Votre nom
form-confirmed-role = Votre rôle
form-confirmed-on = Date

## Contacts and authorised people

contacts-form-title = Est-ce toujours les bonnes personnes?
contacts-form-lead = Nous n'agissons que sur la parole des personnes nommées ici. Corrigez ce qui est inexact et ajoutez les nouvelles personnes.
contacts-form-person = { $name }, { $role }
contacts-form-new = Nouvelle personne { $n }
contacts-form-who = Nom
contacts-form-stays-label = Cette personne est-elle toujours avec vous?
contacts-form-stays = oui
contacts-form-left = non, elle est partie
contacts-form-may = Peut décider pour
contacts-form-may-tip = { $who } peut décider pour { $area }

## Statement of values

statement-of-values-title = Vérifiez chaque bâtiment et son montant d'assurance
statement-of-values-lead = Ce qu'est un bâtiment décide de ce que coûte sa reconstruction. Corrigez ce qui a changé. Laissez vide ce que vous ignorez.
statement-of-values-what = Ce qu'il est
statement-of-values-updated = Ce qui a été rénové, et quand
statement-of-values-protection = Ce qui le protège
statement-of-values-sums = Pour combien l'assurer
form-sum = À assurer pour, en dollars : { $coverage }
form-sum-now = Aujourd'hui au contrat : { $amount }.
form-sum-none = Aujourd'hui au contrat : aucun montant.
form-sum-cost = Coût de reconstruction estimé d'ici le { $day } : { $amount }.
