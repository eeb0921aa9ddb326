## Organisation

field-name = Nom légal
field-known-as = Nom courant
field-named-insured = Assuré désigné au contrat
field-organisation-class = Genre d'organisme
field-registration-number = Numéro d'enregistrement d'organisme de bienfaisance
field-province = Province ou territoire
field-address = Adresse
field-town = Ville
field-postal-code = Code postal
field-language = Langue
field-founded-year = Année de fondation
field-fiscal-year-end = Fin de l'exercice (mois et jour)
field-renewal-date = Date de renouvellement
field-office = Bureau responsable du dossier
field-broker = Courtier
field-confirmed-on = Confirmé le
field-notes = Notes
field-id = Identifiant

## People

field-role = Fonction
field-email = Courriel
field-phone = Téléphone
field-is-key = Personne-ressource principale
field-left-on = A quitté le
field-contact = Personne-ressource
field-area = Peut décider de
field-since = À compter du
field-until = Jusqu'au

## What the organisation does

field-owns-premises = Propriétaire des lieux
field-rents-premises = Locataire des lieux
field-attendance = Personnes à une rencontre habituelle
field-employees = Employés
field-volunteers = Bénévoles
field-revenue-donations = Dons par année
field-revenue-rents = Loyers reçus par année
field-revenue-tuition = Frais d'inscription et de scolarité par année
field-revenue-events = Revenus d'activités par année
field-revenue-other = Autres revenus par année
field-income-growth = Croissance annuelle des revenus
field-premises-share = Part des revenus qui cesse sans le bâtiment principal
field-giving-kept = Part des dons qui continuerait dans un autre lieu
field-payroll = Salaires par année
field-payroll-kept = Part des salaires à maintenir pendant la fermeture
field-expenses-stopping = Dépenses annuelles qui cesseraient pendant la fermeture
field-rent-elsewhere = Loyer mensuel d'un autre lieu
field-moving-costs = Frais de déménagement et d'installation
field-children = Travaille avec des enfants
field-youth = Travaille avec des jeunes
field-vulnerable-adults = Travaille avec des adultes vulnérables
field-prevention-plan-reviewed-on = Plan de prévention des abus revu le
field-screening-training-on = Formation à la vérification tenue le
field-record-checks-on = Vérifications policières renouvelées le
field-day-care = Garderie
field-school = École
field-camp = Camp
field-hall-rental = Loue sa salle à d'autres
field-food-service = Prépare ou sert des repas
field-alcohol-at-events = Alcool lors d'activités
field-trips-in-canada = Voyages au Canada
field-trips-abroad = Voyages à l'étranger
field-trip-days = Jours de voyage par année
field-trip-people = Personnes qui voyagent
field-vehicles-owned = Véhicules possédés
field-volunteer-drivers = Des bénévoles conduisent leur véhicule
field-counselling = Consultation
field-construction-planned = Travaux prévus cette année
field-unoccupied-buildings = A un bâtiment inoccupé
field-two-counters = Deux personnes comptent l'argent
field-safe = Garde l'argent dans un coffre-fort
field-deposit-same-day = Dépose l'argent le jour même
field-online-giving = Reçoit des dons en ligne
field-personal-data-held = Détient des données personnelles
field-social-media = Utilise les médias sociaux
field-solar-panels = A des panneaux solaires
field-playground = A un terrain de jeux
field-cemetery = A un cimetière
field-largest-event = Personnes à la plus grande activité
field-overnight-stays = Des personnes passent la nuit
field-snow-by-volunteers = Des bénévoles déneigent

## Buildings

field-ownership = Propriétaire ou locataire
field-use = Usage
field-construction = Construction
field-year-built = Année de construction
field-area-m2 = Superficie (m²)
field-storeys = Étages
field-basement = Sous-sol
field-contents-below-grade = Biens gardés sous le niveau du sol
field-roof-shape = Forme du toit
field-roof-cover = Revêtement du toit
field-roof-year = Année de réfection du toit
field-wiring-type = Câblage
field-wiring-year = Année de réfection du câblage
field-plumbing-type = Plomberie
field-plumbing-year = Année de réfection de la plomberie
field-heating-type = Chauffage
field-heating-year = Année de réfection du chauffage
field-sprinklers = Gicleurs
field-fire-alarm = Alarme incendie
field-burglar-alarm = Alarme contre le vol
field-alarm-monitored = Alarme reliée à une centrale
field-hydrant-m = Mètres jusqu'à la borne d'incendie
field-fire-hall-km = Kilomètres jusqu'à la caserne
field-backwater-valve = Clapet antiretour
field-sump-pump = Pompe de puisard
field-sump-battery = Pompe de puisard avec batterie
field-water-sensors = Détecteurs d'eau
field-automatic-shutoff = Coupure d'eau automatique
field-heritage = Bâtiment patrimonial
field-special-features = Éléments particuliers
field-unoccupied-since = Inoccupé depuis
field-unoccupied-days = Jours d'inoccupation de suite
field-updates = Travaux récents

## Valuations

field-building = Bâtiment
field-valued = Ce qui a été évalué
field-feature = Élément
field-amount = Montant
field-valued-on = Évalué le
field-basis = Base
field-by = Par
field-itemised = Dressé article par article
field-includes-fees = Comprend les honoraires professionnels
field-includes-by-laws = Comprend les exigences des règlements

## Terms

field-stage = Étape
field-start = Premier jour
field-end = Fin (non comprise)
field-insurer = Assureur
field-policy-number = Numéro de contrat
field-currency = Monnaie
field-coverages = Garanties
field-shared-limit = Montant supplémentaire partagé
field-shared-limit-amount = Montant supplémentaire partagé : montant
field-shared-limit-tops-up = Montant supplémentaire partagé : s'ajoute à
field-shared-limit-meant-for = Montant supplémentaire partagé : destiné à
field-deductible-rule = Plusieurs franchises dans un même événement
field-premiums = Primes
field-totals = Totaux imprimés
field-options = Options
field-rounding = Arrondi à
field-instalments-available = Versements offerts
field-vacancy-days = Jours où un bâtiment peut rester vide
field-answer-by = Répondre d'ici le
field-coverage = Garantie
field-location = Lieu
field-limit = Montant d'assurance
field-limit-basis = Le montant s'applique
field-aggregate = Montant pour toute l'année
field-sublimit-of = Compris dans le montant de
field-deductible = Franchise
field-deductible-percent = Franchise en proportion
field-deductible-percent-of = La franchise est une part
field-deductible-minimum = Franchise minimale
field-deductible-maximum = Franchise maximale
field-waiting-hours = Délai de carence en heures
field-monthly-limit = Maximum pour trente jours, en proportion du montant
field-coinsurance = Coassurance
field-coinsurance-of = La coassurance des revenus compte
field-coinsurance-stated-amount = Montant déclaré pour la coassurance
field-coinsurance-waived-up-to = La coassurance épargne les sinistres jusqu'à
field-coinsurance-waived-share = La coassurance épargne les sinistres jusqu'à une part du montant
field-settling-order = Coassurance ou franchise d'abord
field-agreed-value-until = Valeur convenue jusqu'au
field-automatic-increase = Hausse automatique par année
field-blanket = Montant global
field-margin = Clause de marge
field-in-shared-limit = Peut puiser dans le montant partagé
field-excluded-causes = Causes exclues
field-damages = Dommages-intérêts couverts
field-defence = Frais de défense
field-claims-made = Vise les réclamations présentées pendant la période
field-retroactive-date = Date de rétroactivité
field-reporting-days = Jours pour déclarer ensuite
field-attaches-to = Complémentaire au-dessus de
field-qualified = Plan de prévention accepté
field-wording = Formulaire et édition
field-tops-up = S'ajoute à
field-meant-for = Destiné à
field-kind = Genre de frais
field-exposure = Assiette de la prime
field-rate = Taux
field-reason = Raison
field-of = Total de
field-price = Prix

## Claims

field-number = Numéro de sinistre
field-cause = Cause
field-date-of-loss = Date du sinistre
field-reported-on = Déclaré le
field-description = Ce qui s'est passé
field-paid = Payé
field-outstanding = Encore en réserve
field-recovered = Récupéré
field-includes-deductible = Les montants comptent la franchise
field-status = État
field-last-movement-on = Dernier mouvement

## Lenders and lessors

field-reference = Numéro de prêt ou de bail
field-item = Bien loué

## Allocation keys

field-party = Qui le supporte
field-family = Famille de garanties
field-measure = Mesure
field-portion = Part répartie de cette façon
field-fund = Fonds aux livres

## What was done and decided

field-renewal = Renouvellement
field-question = Question
field-answer = Réponse
field-decided-on = Décidé le
field-words = Dans leurs mots
field-document = Document
field-to = À
field-way = Envoyé par
field-delivered-on = Remis le
field-finding = Constat
field-form = Formulaire
field-returned-on = Retourné le
field-text = Texte
field-version = Version
field-built-on = Produit le
field-seq = Numéro de l'inscription
field-plan = Mode de paiement
field-chosen-on = Choisi le
field-as-of = En date du
field-reviewer = Revu par
field-licence = Permis
field-review-digest = Empreinte de l'examen
field-signed-on = Signé le
field-taken = Réponses acceptées
field-refused = Réponses refusées
field-subject = Sujet
field-answers = Réponses
field-answered-on = Répondu le
field-sent-on = Envoyé le
field-changes = Nombre de changements
field-taken-back = Nombre de changements qui ne sont plus demandés
field-sealed = Empreinte du fichier scellé
field-sealed-on = Scellé le
field-certificate = Empreinte du certificat
field-attachments = Pièces jointes, par SHA-256
field-message = Message
field-came-back-on = Revenu le
field-came-back = Motif du retour
field-bound-on = Couverture liée le
field-binder = Numéro de la note de couverture
field-accepted = Accepté en plus de l'offre
field-agreed = Conditions convenues
field-checked-on = Vérifié le
field-differences = Points qui donnent moins
field-done-about = Suite donnée
field-paper = Document
field-holder = Qui l'a reçu
field-purpose = À quoi cela leur sert
