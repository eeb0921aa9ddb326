## Language

language-en = anglais
language-fr = français

## Kind of organisation

organisation-class-worship = lieu de culte
organisation-class-charity = organisme de bienfaisance
organisation-class-hall = salle communautaire
organisation-class-camp = camp
organisation-class-food-bank = banque alimentaire
organisation-class-sports = club sportif
organisation-class-arts = centre d'art
organisation-class-school = école
organisation-class-mission = mission
organisation-class-other = organisme

## Role of a contact

role-treasurer = personne responsable de la trésorerie
role-chair = présidence du conseil
role-minister = ministre du culte ou guide spirituel
role-administrator = administration
role-secretary = secrétariat
role-property = personne responsable des bâtiments
role-other = personne-ressource

## What a contact may decide on

area-coverage = les garanties
area-accounts = les comptes
area-claims = les sinistres

## Ownership of a building

ownership-own = propriétaire
ownership-rent = locataire
ownership-mandate = s'en occupe pour autrui

## Construction

construction-frame = ossature de bois
construction-masonry-veneer = parement de maçonnerie sur ossature de bois
construction-heavy-timber = gros bois d'œuvre
construction-masonry = maçonnerie
construction-stone = pierre
construction-concrete = béton
construction-steel = acier
construction-other = autre

## Basement

basement-none = pas de sous-sol
basement-unfinished = sous-sol non fini
basement-finished = sous-sol fini

## What a valuation rests on

basis-formal-appraisal = évaluation en règle
basis-desk-valuation = évaluation sur dossier
basis-cost-manual = manuel de coûts
basis-owner-estimate = estimation du propriétaire
basis-indexed = valeur antérieure indexée
basis-unknown = base inconnue
valuation-basis-formal-appraisal = { basis-formal-appraisal }
valuation-basis-desk-valuation = { basis-desk-valuation }
valuation-basis-cost-manual = { basis-cost-manual }
valuation-basis-owner-estimate = { basis-owner-estimate }
valuation-basis-indexed = { basis-indexed }
valuation-basis-unknown = { basis-unknown }

## What was valued

valued-building = bâtiment
valued-contents = contenu
valued-feature = élément particulier

## Stages of terms

stage-requested = demandé
stage-offered = offert
stage-issued = émis
stage-expiring = échéant

## How a limit applies

limit-basis-per-occurrence = à chaque événement
limit-basis-per-claim = à chaque réclamation
limit-basis-per-building = à chaque bâtiment
limit-basis-blanket = globalement à l'ensemble
limit-basis-aggregate = à toute l'année

## How a loss is settled

settlement-basis-replacement = valeur à neuf
settlement-basis-actual-cash-value = valeur au jour du sinistre, moins l'usure
settlement-basis-functional = valeur fonctionnelle
settlement-basis-reproduction = reproduction à l'identique

## A deductible as a share

percent-of-loss = du sinistre
percent-of-limit = du montant d'assurance
percent-of-value = de la valeur

## Kinds of damages

damages-punitive = dommages-intérêts punitifs
damages-exemplary = dommages-intérêts exemplaires
damages-multiplied = dommages-intérêts multipliés

## Defence costs

defence-inside = compris dans le montant : ils l'entament
defence-outside = en plus du montant

## Whom a shared limit is meant for

meant-for-owner = un organisme propriétaire
meant-for-renter = un organisme locataire

## Kinds of charge

premium-kind-premium = prime
premium-kind-flat = prime forfaitaire
premium-kind-surcharge = surprime
premium-kind-discount = rabais
premium-kind-fee = frais

## Printed totals

total-of-coverage = garantie
total-of-location = lieu
total-of-subtotal = sous-total
total-of-tax = taxe
total-of-total = total

## Claims

claim-status-open = ouvert
claim-status-closed = fermé
party-first = dommage à ce qui est à vous
party-third = dommage à autrui

## Lenders and lessors

interest-role-lender = prêteur
interest-role-lessor = bailleur
interest-status-active = en cours
interest-status-paid-off = remboursé
interest-status-unknown = inconnu

## What an allocation key measures

allocation-by-location = ce qui s'y trouve
allocation-by-area = superficie (m²)
allocation-by-headcount = nombre de personnes
allocation-by-revenue = revenus
allocation-by-share = parts fixes

## Ways of delivery

way-e-mail = par courriel
way-post = par la poste
way-by-hand = en mains propres
way-room = dans la salle des dirigeants

## States of a renewal

state-gathering = collecte
state-reviewing = en examen
state-asked = demandé
state-offered = offert
state-with-leaders = chez les dirigeants
state-settling = en règlement
state-bound = en vigueur
state-checked = vérifié
state-lapsed = expiré

## Kinds of findings

finding-kind-decide = à décider
finding-kind-send-back = à retourner
finding-kind-know = à savoir
finding-kind-fix = à corriger

## Answers

answer-take-it = accepter
answer-leave-it = laisser
answer-later = plus tard
answer-ask-us = nous demander

## Who a finding is for

audience-leaders = dirigeants
audience-broker = courtier
audience-insurer = assureur

## What a finding is about

subject-organisation = organisme
subject-building = bâtiment
subject-coverage = garantie
subject-claim = sinistre
subject-person = personne
subject-terms = conditions
subject-premium = prime
subject-interest = prêteur ou bailleur
subject-operations = activités
subject-diary = agenda

## Tiers of priority

tier-safety-or-duty = la sécurité d'une personne ou un devoir légal
tier-lapses = une garantie qui cesse ou une date fixe
tier-money = de l'argent en jeu
tier-record = l'exactitude du dossier

## Families of coverages

family-property = biens
family-crime = vol et détournement
family-income = revenus et frais supplémentaires
family-liability = responsabilité envers autrui
family-management = décisions et emploi
family-abuse = abus
family-people = personnes et voyages
family-cyber = informatique et données
family-vehicles = véhicules
family-umbrella = responsabilité complémentaire

## Papers of a package

paper-letter = lettre et ordre du jour
paper-what-changed = ce qui a changé
paper-premium-statement = relevé de prime
paper-coverage-summary = sommaire des garanties
paper-options = options
paper-building-values = valeurs des bâtiments
paper-copies-for-lenders = copies pour prêteurs et bailleurs
paper-figures = d'où vient chaque chiffre

## Forms

paper-contacts-form = personnes-ressources et personnes autorisées
paper-statement-of-values = déclaration de valeurs
paper-operations-form = vos activités
paper-water-form = questionnaire sur l'eau
paper-abuse-form = déclaration de prévention des abus
paper-decisions-form = vos décisions
paper-payment-form = mode de paiement
paper-interests-form = prêteurs et bailleurs

## Records of a file

record-organisation = organisme
record-contact = personne-ressource
record-authority = personne autorisée
record-operations = activités
record-building = bâtiment
record-valuation = évaluation
record-terms = conditions
record-claim = sinistre
record-interest = prêteur ou bailleur
record-allocation-key = ligne d'une clé de répartition
record-bound = couverture liée
record-decision = décision
record-delivery = remise
record-finding-set-aside = constat mis de côté
record-form-returned = formulaire retourné
record-note = note
record-package-built = trousse produite
record-payment-choice = choix de paiement
record-policy-checked = police vérifiée
record-redaction = caviardage
record-original-erased = document effacé
record-review-signed = examen signé
kind-organisation = { record-organisation }
kind-contact = { record-contact }
kind-authority = { record-authority }
kind-operations = { record-operations }
kind-building = { record-building }
kind-valuation = { record-valuation }
kind-terms = { record-terms }
kind-claim = { record-claim }
kind-interest = { record-interest }
kind-allocation-key = { record-allocation-key }
kind-bound = { record-bound }
kind-decision = { record-decision }
kind-delivery = { record-delivery }
kind-finding-set-aside = { record-finding-set-aside }
kind-form-returned = { record-form-returned }
kind-note = { record-note }
kind-package-built = { record-package-built }
kind-payment-choice = { record-payment-choice }
kind-policy-checked = { record-policy-checked }
kind-redaction = { record-redaction }
kind-original-erased = { record-original-erased }
kind-review-signed = { record-review-signed }

## When a tax rate changes

turns-on-policy-start = le premier jour du contrat
turns-on-payment-date = le jour du paiement
