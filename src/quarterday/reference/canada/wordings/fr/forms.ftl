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
statement-of-values-water = Protection contre l'eau
statement-of-values-elsewhere = demandée dans le questionnaire sur l'eau

## What you do

operations-form-title = Que faites-vous, et qu'est-ce qui a changé?
operations-form-lead = Votre assurance suit ce que vous faites. Corrigez ce qui a changé; cochez « inconnu » quand personne ne le sait. Les montants sont en dollars, les jours s'écrivent comme 2027-01-31.
operations-form-people = Les gens
operations-form-care = Les personnes qui vous sont confiées
operations-form-premises = Vos lieux
operations-form-doing = Ce qui s'y passe
operations-form-money = Comment vous gérez l'argent
operations-form-travel = Voyages et véhicules
operations-form-income = Revenus d'une année
operations-form-closed = Si votre bâtiment principal devait fermer
operations-form-closed-lead = Un incendie peut fermer un bâtiment pendant un an ou deux. Votre meilleure estimation suffit; laissez vide ce que vous ne pouvez pas estimer. Écrivez les parts en pour cent.

## Water questionnaire

water-form-title = { $count ->
    [one] Qu'est-ce qui retient l'eau aujourd'hui?
   *[other] Qu'est-ce qui retient l'eau aujourd'hui dans ces { $count } lieux?
}
water-form-lead = Les assureurs posent ces questions après des dégâts d'eau. Dites ce qui est vrai aujourd'hui. De bonnes réponses aident le prix, et une réparation déclarée compte.
water-form-day = Jour
water-form-happened = Ce qui est arrivé
water-form-incurred = Coût à ce jour
water-form-repaired = Qu'est-ce qui a été réparé, et quand?
water-form-cause = Quelle était la cause, et est-elle corrigée?
water-form-now = Ce qui protège le lieu aujourd'hui
water-form-off-floor = Les objets du sous-sol sont-ils à 15 cm ou plus du plancher?
water-form-warm = Toute pièce où passent des tuyaux reste-t-elle à 10 °C ou plus l'hiver?
water-form-shut = L'eau est-elle fermée à l'entrée quand personne ne vient pendant quelques jours?
water-form-hoses = Les boyaux de laveuse et de lave-vaisselle ont-ils été remplacés depuis cinq ans?
water-form-drains = Les drains de plancher et les gouttières sont-ils nettoyés chaque année?
water-form-downspouts = Les descentes de gouttière éloignent-elles l'eau des murs?
water-form-valve-cleaned = Clapet antiretour nettoyé le
water-form-pump-tested = Pompe de puisard vérifiée le
water-form-roof-checked = Toit inspecté le
water-form-more = Quoi d'autre arrête l'eau, ou est prévu?
water-form-caution = Un plombier titulaire d'une licence devrait poser clapets et pompes. Demandez d'abord à votre ville : elle peut exiger un permis, et parfois payer une partie.

## Abuse prevention declaration

abuse-form-title = Que faites-vous vraiment pour protéger les gens?
abuse-form-lead = Ne déclarez que ce que vous faites vraiment. « Pas encore » est une réponse honnête, et un plan daté vaut mieux qu'un oui qui n'est pas vrai.
abuse-form-do = nous le faisons
abuse-form-not-yet = pas encore
abuse-form-not-ours = sans objet
abuse-form-plan = Le plan
abuse-form-screening = Avant que quelqu'un commence
abuse-form-training = Formation
abuse-form-together = Quand les gens sont ensemble
abuse-form-step-written = Nous avons un plan écrit, et le conseil l'a adopté.
abuse-form-step-known = Les parents et l'équipe connaissent le plan et savent à qui parler.
abuse-form-step-reporting = Chacun sait qu'il faut appeler tout de suite la protection de la jeunesse ou la police, et que nous n'enquêtons jamais d'abord nous-mêmes.
abuse-form-step-kept = Les notes sur les vérifications, les formations et les signalements sont gardées en lieu sûr, sans date de fin.
abuse-form-step-application = Toute personne qui s'occupe de gens confiés à nous remplit une demande.
abuse-form-step-interview = Deux personnes mènent une entrevue.
abuse-form-step-references = Nous appelons au moins deux références.
abuse-form-note-references = Repère : toujours plus d'une vérification de références (Volunteer Alberta).
abuse-form-step-checks = Nous voyons, avant le début, une vérification policière avec recherche pour personnes vulnérables, et nous la renouvelons.
abuse-form-note-checks = Repère : tous les trois ans (Scouts Canada, section 3000, édition ancienne). Tous les cinq ans, avec une déclaration chaque année entre deux (règles des garderies en Ontario).
abuse-form-step-waiting = Les nouvelles personnes attendent quelques mois avant de s'occuper de gens confiés à nous.
abuse-form-step-start = La formation précède le premier jour de travail.
abuse-form-step-yearly = Chacun est formé de nouveau chaque année.
abuse-form-step-two-adults = Deux adultes vérifiés sont toujours présents; personne n'est seul avec un enfant.
abuse-form-note-two-adults = Repère : un second adulte vérifié est toujours en vue (Association canadienne des entraîneurs, règle de deux).
abuse-form-step-open = Les portes restent ouvertes ou ont une fenêtre, et un responsable fait la tournée.
abuse-form-step-messages = Personne n'écrit seul à un enfant : un parent ou un second adulte est toujours inclus.
abuse-form-note-messages = Repère : pas de messages d'un adulte à un enfant seul (Association canadienne des entraîneurs, règle de deux).
abuse-form-step-away = Sorties, transports et nuitées ont des règles écrites et le consentement d'un parent.
abuse-form-step-renters = Les groupes qui louent nos salles pour des enfants nous montrent leur propre plan.
abuse-form-numbers = Jours et nombres
abuse-form-people = Personnes qui s'occupent de gens confiés à nous
abuse-form-checked = Dont la vérification policière est encore bonne
abuse-form-trained = Formées depuis un an
abuse-form-open = Qu'est-ce qui n'est pas encore fait, qui le fera, et pour quand?
abuse-form-standards = Les normes nommées ici sont des repères. Les dix étapes du filtrage sont dans le Guide de filtrage (Bénévoles Canada pour Sécurité publique Canada, 2012).
abuse-form-law = La loi de votre province et les règles de votre propre organisme passent d'abord. Consultez un avocat en cas de doute.
abuse-form-signed = Signée par la présidence
abuse-form-signed-lead = La présidence signe au nom du conseil. Signez seulement si chaque réponse est vraie aujourd'hui; une réponse fausse peut vous coûter la garantie.
abuse-form-adopted = Déclaration adoptée par le conseil le
abuse-form-signature = Signature de la présidence

## Your decisions

decisions-form-reason = { $case ->
    [decisions] { $decisions ->
        [one] À renvoyer : votre réponse à la décision.
       *[other] À renvoyer : vos réponses aux { $decisions } décisions.
    }
    [options] { $options ->
        [one] À renvoyer : votre réponse à l'option chiffrée.
       *[other] À renvoyer : vos réponses aux { $options } options chiffrées.
    }
   *[both] { $decisions ->
        [one] À renvoyer : votre réponse à la décision, et à ce qui a un prix.
       *[other] À renvoyer : vos réponses aux { $decisions } décisions, et à ce qui a un prix.
    }
}
decisions-form-title = { $count ->
    [one] Une question à trancher par votre conseil
   *[other] { $count } questions à trancher par votre conseil
}
decisions-form-lead = Cochez une réponse pour chacune. Rien ne change avant notre confirmation écrite.
decisions-form-means-take-it = Nous faisons ce que propose la lettre, au prix indiqué.
decisions-form-means-leave-it = Vous vous en passez. Nous notons au dossier que vous étiez informés et l'avez décidé.
decisions-form-means-later = Il vous faut du temps. Surveillez la date : après, l'offre peut ne plus tenir.
decisions-form-means-ask-us = Nous vous appelons avant que vous décidiez.
decisions-form-decisions = Décisions de la lettre
decisions-form-options = Options chiffrées
decisions-form-answer = Votre réponse
decisions-form-words = Dans vos mots, si vous le voulez
decisions-form-signed-lead = Une personne qui peut décider des garanties remplit ceci au nom du conseil.

## Lenders and lessors

interests-form-title = { $count ->
    [one] Ce prêteur ou bailleur a-t-il encore un intérêt?
   *[other] Ces prêteurs et bailleurs ont-ils encore un intérêt?
}
interests-form-lead = Un prêteur ou un bailleur nommé au contrat est payé le premier après un sinistre. S'il a été remboursé, il ne devrait plus y figurer.
interests-form-status = A-t-il encore un intérêt?
interests-form-active = oui
interests-form-paid-off = non, remboursé
interests-form-unknown = inconnu
interests-form-name = Prêteur ou bailleur
interests-form-location = Pour quel bâtiment
interests-form-discharge = S'il a été remboursé : faites-le confirmer par écrit et envoyez-nous la lettre. L'assureur ne peut retirer le nom qu'alors.
interests-form-paid-off-on = Remboursé le
interests-form-letter = La lettre de quittance est-elle jointe?
interests-form-new = Quelqu'un de nouveau
interests-form-caution = Ne nous donnez ni numéro de compte ni mot de passe. Le numéro du prêt ou du bail suffit.
