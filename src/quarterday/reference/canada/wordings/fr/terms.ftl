## Names

coverage-name = { $coverage }
coverages-name = { $coverages }
buildings-name = { $buildings }
coverage-at = { $coverage } ({ $place })
terms-as-a-whole = L'ensemble des conditions
options-together = Options offertes
coverages-not-shown = Garanties absentes des conditions
open-questions = Questions sans réponse
shared-limit-name = Montant additionnel commun
damages-name = Genres de dommages-intérêts
defence-name = Frais de défense
empty-buildings = Bâtiments vides
place-everywhere = tous les lieux
place-named = seulement les lieux nommés
damages-stated = précisés
damages-not-stated = non précisés

## How one version of the terms differs from another
## $direction is better, worse, neutral or cannot-say; $case is new, gone, changed or bare.

difference-of-coverage = { $coverage }, { $place } : { $change }.
difference-of-terms = L'ensemble des conditions : { $change }.
change-at-places = { $change } ({ $places })
changes-of-coverage = { $coverage } : { $changes }
and-more = { $count ->
    [one] { $count } autre
   *[other] { $count } autres
}

difference-added = { $case ->
    [new] nouvellement couvert, jusqu'à { $after }
   *[bare] nouvellement couvert
}
difference-dropped = { $case ->
    [gone] n'est plus couvert (jusqu'ici : { $before })
   *[bare] n'est plus couvert
}
difference-place = la garantie visait { $before } et vise maintenant { $after }
difference-limit = { $case ->
    [new] un montant de garantie (le plus que l'assureur paie) de { $after } est maintenant indiqué
    [gone] le montant de garantie (le plus que l'assureur paie) de { $before } n'est plus indiqué
   *[changed] { $direction ->
        [better] le montant de garantie (le plus que l'assureur paie) monte de { $before } à { $after }
        [worse] le montant de garantie (le plus que l'assureur paie) baisse de { $before } à { $after }
       *[other] le montant de garantie (le plus que l'assureur paie) passe de { $before } à { $after }
    }
}
difference-limit-basis = { $case ->
    [new] il est maintenant indiqué que le montant s'applique { $after }
    [gone] il n'est plus indiqué que le montant s'applique { $before }
   *[changed] le montant s'applique maintenant { $after } et non plus { $before }
}
difference-aggregate = { $case ->
    [new] l'ensemble des sinistres d'une année est maintenant plafonné à { $after }
    [gone] le plafond de { $before } pour l'ensemble des sinistres d'une année disparaît
   *[changed] { $direction ->
        [better] le plafond pour l'ensemble des sinistres d'une année monte de { $before } à { $after }
        [worse] le plafond pour l'ensemble des sinistres d'une année baisse de { $before } à { $after }
       *[other] le plafond pour l'ensemble des sinistres d'une année passe de { $before } à { $after }
    }
}
difference-sublimit = { $case ->
    [new] son montant fait maintenant partie de celui d'une autre garantie, { $after }
    [gone] son montant est maintenant distinct et ne fait plus partie de celui d'une autre garantie, { $before }
   *[changed] son montant faisait partie de { $before } et fait maintenant partie de { $after }
}
difference-deductible = { $case ->
    [new] une franchise (votre part du sinistre) de { $after } s'applique maintenant
    [gone] la franchise (votre part du sinistre) de { $before } disparaît
   *[changed] { $direction ->
        [better] la franchise (votre part du sinistre) baisse de { $before } à { $after }
        [worse] la franchise (votre part du sinistre) monte de { $before } à { $after }
       *[other] la franchise (votre part du sinistre) passe de { $before } à { $after }
    }
}
difference-deductible-form = { $direction ->
    [better] la franchise (votre part du sinistre) passe de { $before } à { $after }, ce qui est moins
    [worse] la franchise (votre part du sinistre) passe de { $before } à { $after }, ce qui est plus
   *[other] la franchise (votre part du sinistre) passe de { $before } à { $after }
}
difference-deductible-percent = { $case ->
    [new] une franchise (votre part du sinistre) de { $after } s'applique maintenant
    [gone] la franchise (votre part du sinistre) de { $before } disparaît
   *[changed] { $direction ->
        [better] la franchise (votre part du sinistre) baisse de { $before } à { $after }
       *[worse] la franchise (votre part du sinistre) monte de { $before } à { $after }
    }
}
difference-deductible-percent-of = { $case ->
    [new] il est maintenant indiqué que la franchise est une part { $after }
    [gone] il n'est plus indiqué que la franchise est une part { $before }
   *[changed] la franchise est maintenant une part { $after } et non plus { $before }
}
difference-deductible-minimum = { $case ->
    [new] la franchise (votre part du sinistre) est maintenant d'au moins { $after }
    [gone] la franchise minimale (votre plus petite part du sinistre) de { $before } disparaît
   *[changed] la franchise minimale (votre plus petite part du sinistre) passe de { $before } à { $after }
}
difference-deductible-maximum = { $case ->
    [new] la franchise (votre part du sinistre) est maintenant d'au plus { $after }
    [gone] la franchise maximale (votre plus grande part du sinistre) de { $before } disparaît; rien ne la plafonne plus
   *[changed] la franchise maximale (votre plus grande part du sinistre) passe de { $before } à { $after }
}
difference-waiting = { $case ->
    [new] l'assureur ne paie maintenant qu'après { $after ->
        [one] la première heure
       *[other] les { $after } premières heures
    }
    [gone] l'attente de { $before ->
        [one] { $before } heure
       *[other] { $before } heures
    } avant le paiement disparaît
   *[changed] l'attente avant le paiement passe de { $before } à { $after } heures
}
difference-coinsurance = { $case ->
    [new] une règle proportionnelle (coassurance) de { $after } s'applique maintenant (elle réduit l'indemnité quand le montant d'assurance est trop bas)
    [gone] la règle proportionnelle (coassurance) de { $before } disparaît (elle réduisait l'indemnité quand le montant d'assurance est trop bas)
   *[changed] la règle proportionnelle (coassurance : elle réduit l'indemnité quand le montant d'assurance est trop bas) passe de { $before } à { $after }
}
difference-stated-amount = { $case ->
    [new] un montant à assurer de { $after } est maintenant déclaré pour la règle proportionnelle
    [gone] le montant à assurer de { $before } n'est plus déclaré pour la règle proportionnelle
   *[changed] le montant à assurer déclaré pour la règle proportionnelle passe de { $before } à { $after }
}
difference-agreed-value = { $case ->
    [new] la valeur convenue (l'assureur renonce à la règle proportionnelle) vaut maintenant jusqu'au { $after }
    [gone] la valeur convenue (l'assureur renonçait à la règle proportionnelle jusqu'au { $before }) disparaît
   *[changed] { $direction ->
        [worse] la valeur convenue (l'assureur renonce à la règle proportionnelle) prend maintenant fin en cours de période, le { $after }
       *[better] la valeur convenue (l'assureur renonce à la règle proportionnelle) vaut maintenant jusqu'au { $after }
    }
}
difference-automatic-increase = { $case ->
    [new] le montant d'assurance monte maintenant de lui-même de { $after } par année
    [gone] le montant d'assurance ne monte plus de lui-même (jusqu'ici { $before } par année)
   *[changed] la hausse annuelle du montant d'assurance passe de { $before } à { $after }
}
difference-basis = { $case ->
    [new] le mode de règlement est maintenant indiqué : { $after }
    [gone] le mode de règlement n'est plus indiqué (jusqu'ici : { $before })
   *[changed] le mode de règlement d'un sinistre passe de « { $before } » à « { $after } »
}
difference-blanket = { $case ->
    [new] la garantie entre dans un seul montant pour plusieurs biens, le montant global « { $after } »
    [gone] la garantie sort du montant commun à plusieurs biens, le montant global « { $before } »
   *[changed] la garantie passe du montant global « { $before } » à « { $after } »
}
difference-margin = { $case ->
    [new] un bâtiment peut maintenant tirer au plus { $after } de sa propre valeur du montant global
    [gone] le plafond de { $before } de sa propre valeur qu'un bâtiment peut tirer du montant global disparaît
   *[changed] ce qu'un bâtiment peut tirer du montant global passe de { $before } à { $after } de sa propre valeur
}
difference-shared-limit = { $direction ->
    [better] le montant additionnel commun peut maintenant la compléter
   *[worse] le montant additionnel commun ne peut plus la compléter
}
difference-exclusion = { $case ->
    [new] ceci est maintenant exclu : { $after }
   *[gone] ceci n'est plus exclu : { $before }
}
difference-damages = { $case ->
    [new] la garantie paie maintenant ceci : { $after }
    [gone] la garantie ne paie plus ceci : { $before }
   *[changed] les genres de dommages-intérêts payés étaient { $before } et sont maintenant { $after }
}
difference-defence = { $case ->
    [new] il est maintenant indiqué que les avocats sont payés { $after ->
        [inside] à même le montant
       *[outside] en plus du montant
    }
    [gone] il n'est plus indiqué si les avocats sont payés à même le montant ou en plus
   *[changed] les avocats sont maintenant payés { $after ->
        [inside] à même le montant, ce qui en laisse moins pour la victime
       *[outside] en plus du montant
    }
}
difference-claims-made = { $case ->
    [new] il est maintenant indiqué quelles réclamations comptent
    [gone] il n'est plus indiqué quelles réclamations comptent
   *[changed] { $direction ->
        [worse] seules comptent maintenant les réclamations présentées pour la première fois pendant la durée du contrat
       *[better] ce qui arrive pendant la durée du contrat compte maintenant, peu importe quand vient la réclamation
    }
}
difference-retroactive-date = { $case ->
    [new] les faits passés comptent maintenant à partir du { $after }
    [gone] le jour à partir duquel les faits passés comptent ({ $before }) n'est plus indiqué
   *[changed] les faits passés comptent maintenant à partir du { $after }, jusqu'ici à partir du { $before }
}
difference-reporting-period = { $case ->
    [new] les réclamations peuvent maintenant être déclarées pendant { $after ->
        [one] { $after } jour
       *[other] { $after } jours
    } après la fin du contrat
    [gone] le délai de { $before ->
        [one] { $before } jour
       *[other] { $before } jours
    } pour déclarer après la fin du contrat n'est plus indiqué
   *[changed] le délai pour déclarer après la fin du contrat passe de { $before } à { $after } jours
}
difference-qualified = { $case ->
    [changed] { $direction ->
        [better] l'assureur a accepté votre plan de prévention
       *[worse] l'assureur n'indique plus que votre plan de prévention est accepté
    }
    [new] il est maintenant indiqué si votre plan de prévention est accepté
   *[gone] il n'est plus indiqué si votre plan de prévention est accepté
}
difference-wording = { $case ->
    [new] le texte est maintenant nommé : { $after }
    [gone] le texte ({ $before }) n'est plus nommé
   *[changed] le texte passe de { $before } à { $after }
}
difference-shared-limit-amount = { $case ->
    [new] il y a maintenant un montant additionnel commun de { $after } par année
    [gone] le montant additionnel commun de { $before } par année disparaît
   *[changed] le montant additionnel commun passe de { $before } à { $after } par année
}
difference-monthly-limit = { $case ->
    [new] au plus { $after } du montant est maintenant payé pour trente jours
    [gone] le maximum pour trente jours ({ $before } du montant) disparaît
   *[changed] le maximum pour trente jours passe de { $before } à { $after } du montant
}
difference-coinsurance-waiver = { $case ->
    [new] la règle proportionnelle épargne maintenant les sinistres jusqu'à { $after }
    [gone] la règle proportionnelle n'épargne plus les sinistres jusqu'à { $before }
   *[changed] les sinistres que la règle proportionnelle épargne passent de { $before } à { $after }
}
difference-coinsurance-waiver-share = { $case ->
    [new] la règle proportionnelle épargne maintenant les sinistres jusqu'à { $after } du montant assuré
    [gone] la règle proportionnelle n'épargne plus les sinistres jusqu'à { $before } du montant assuré
   *[changed] les sinistres que la règle proportionnelle épargne passent de { $before } à { $after } du montant assuré
}
difference-coinsurance-of = { $case ->
    [new] ce que la règle proportionnelle compte est maintenant indiqué : { $after }
    [gone] ce que la règle proportionnelle compte n'est plus indiqué; c'était { $before }
   *[changed] la règle proportionnelle compte maintenant { $after }, et non plus { $before }
}
difference-settling-order = { $case ->
    [new] l'ordre est maintenant indiqué : { $after }
    [gone] l'ordre n'est plus indiqué; c'était { $before }
   *[changed] l'ordre passe de { $before } à { $after }
}
difference-umbrella-over = { $case ->
    [new] elle s'ajoute maintenant aussi à ceci : { $after }
    [gone] elle ne s'ajoute plus à ceci : { $before }
   *[changed] ce à quoi elle s'ajoute était { $before } et est maintenant { $after }
}
umbrella-over-stated = indiqué
umbrella-over-not-stated = non indiqué
difference-deductible-rule = { $case ->
    [new] quand plusieurs franchises se rencontrent, ce qui compte est maintenant indiqué : { $after }
    [gone] ce qui compte quand plusieurs franchises se rencontrent n'est plus indiqué; c'était { $before }
   *[changed] quand plusieurs franchises se rencontrent, ce qui compte est maintenant { $after }, et non { $before }
}
difference-vacancy-days = { $case ->
    [new] le nombre de jours où un bâtiment peut rester vide est maintenant indiqué : { $after }
    [gone] le nombre de jours où un bâtiment peut rester vide ({ $before }) n'est plus indiqué
   *[changed] le nombre de jours où un bâtiment peut rester vide passe de { $before } à { $after }
}
difference-insurer = { $case ->
    [new] l'assureur est maintenant nommé : { $after }
    [gone] l'assureur ({ $before }) n'est plus nommé
   *[changed] l'assureur passe de { $before } à { $after }
}
difference-currency = la monnaie passe de { $before } à { $after }

## Figures

figure-more-borne = { $coverage } : le plus que vous auriez à payer de plus par sinistre
figure-less-borne = { $coverage } : le plus que vous auriez à payer de moins par sinistre
figure-own-part = { $coverage } : le plus que vous auriez à payer d'un sinistre avec la franchise en pourcentage
how-own-part = { $case ->
    [insured] le pourcentage multiplié par le montant d'assurance, entre la franchise minimale et la franchise maximale
    [loss] le pourcentage multiplié par le plus gros sinistre possible, entre la franchise minimale et la franchise maximale
   *[value] le pourcentage du coût de remplacement en fin de période, à chaque bâtiment, entre les franchises minimale et maximale
}
how-borne = { $kind ->
    [shared-limit-amount] la différence entre les deux montants additionnels communs
    [limit] la différence entre les deux montants de garantie
    [aggregate] la différence entre les deux plafonds annuels
    [deductible] la différence entre les deux franchises
    [added] le montant de la nouvelle garantie
   *[dropped] le montant de la garantie qui disparaît
}
figure-days-empty = Jours depuis lesquels { $building } est vide
how-days-empty = les jours écoulés du premier jour vide au { $day }

## Reasons

reason-ends-on = Cette garantie cesse le { $day } si rien n'est fait.
reason-because = C'est important, car { $fact }.
reason-less-than-this-year = L'offre donne moins que votre contrat actuel.
reason-good-to-know = Il n'y a rien à décider.
reason-wording-decides = Seul le texte du contrat peut dire ce que cela signifie.
reason-terms-not-as-requested = On avait demandé davantage à l'assureur avant le renouvellement.
reason-terms-not-as-agreed = Le contrat déjà en vigueur donne moins que ce qui a été convenu.
reason-smaller-options = L'assureur l'offre en plus de ses conditions; à vous de l'accepter ou non.
reason-maybe-inside-another = Une telle garantie fait souvent partie d'une autre.
reason-unanswered = Personne n'a encore répondu à ces questions.
reason-wrong-basis = Le montant additionnel et ce qu'il peut payer dépendent du fait d'être propriétaire ou locataire.
reason-liability-gap = Après une poursuite, cette part pourrait retomber sur l'organisme.
reason-past-years = Le travail des années passées pourrait perdre sa protection.
reason-empty-building = La protection diminue ou cesse d'ordinaire quand un bâtiment reste vide trop longtemps.

## Why a coverage matters: a clause that follows "car"

reason-profile-owns-premises = vous êtes propriétaires de vos locaux
reason-profile-rents-premises = vous louez des locaux
reason-profile-playground = vous avez une aire de jeux
reason-profile-cemetery = vous avez un cimetière
reason-profile-solar-panels = vous avez des panneaux solaires
reason-profile-camp = vous tenez un camp
reason-profile-trips-in-canada = vous organisez des voyages au Canada
reason-profile-trips-abroad = vous organisez des voyages à l'étranger
reason-profile-volunteers = des bénévoles travaillent pour vous
reason-profile-hall-rental = vous louez vos locaux à d'autres
reason-profile-construction-planned = des travaux de construction sont prévus
reason-profile-revenue-rents = vous recevez des loyers
reason-profile-revenue-tuition = vous recevez des frais d'inscription ou de scolarité
reason-profile-revenue-donations = vous recevez des dons
reason-profile-revenue-events = vos activités rapportent de l'argent
reason-profile-food-service = vous préparez ou servez des repas
reason-profile-day-care = vous tenez une garderie
reason-profile-school = vous tenez une école
reason-profile-employees = vous avez des employés
reason-profile-online-giving = vous recevez des dons en ligne
reason-profile-two-counters = une seule personne compte l'argent
reason-profile-alcohol-at-events = on sert de l'alcool à vos activités
reason-profile-counselling = vous offrez de l'accompagnement ou de la relation d'aide
reason-profile-social-media = vous publiez sur les réseaux sociaux
reason-profile-volunteer-drivers = des gens conduisent leur propre véhicule pour vous
reason-profile-children = des enfants vous sont confiés
reason-profile-youth = des jeunes vous sont confiés
reason-profile-vulnerable-adults = des adultes vulnérables vous sont confiés
reason-profile-personal-data-held = vous détenez des renseignements personnels
reason-profile-snow-by-volunteers = des bénévoles déneigent chez vous
reason-profile-largest-event = votre plus grande activité attire une foule
reason-profile-attendance = vos rencontres réunissent beaucoup de monde
reason-building-ownership = vous êtes responsables d'un bâtiment ({ $building })
reason-building-special-features = il y a des éléments particuliers ({ $building })
reason-building-basement = il y a un sous-sol ({ $building })
reason-building-contents-below-grade = des biens se trouvent sous le niveau du sol ({ $building })
reason-building-heritage = un bâtiment est patrimonial ({ $building })
reason-building-year-built = un bâtiment suit des règles d'une autre époque ({ $building })
reason-building-heating-type = un bâtiment est chauffé au mazout ({ $building })
reason-building-province = un bâtiment est dans une province à risque de tremblement de terre ({ $building })
reason-organisation-province = votre province est à risque de tremblement de terre
reason-organisation-organisation-class = les organismes comme le vôtre en ont d'ordinaire besoin
reason-organisation-registration-number = vous êtes un organisme de bienfaisance enregistré

## What is still to be asked: a clause that follows "il nous faut savoir"

ask-profile-owns-premises = si vous êtes propriétaires de vos locaux
ask-profile-rents-premises = si vous louez des locaux
ask-profile-playground = si vous avez une aire de jeux
ask-profile-cemetery = si vous avez un cimetière
ask-profile-solar-panels = si vous avez des panneaux solaires
ask-profile-camp = si vous tenez un camp
ask-profile-trips-in-canada = si vous organisez des voyages au Canada
ask-profile-trips-abroad = si vous organisez des voyages à l'étranger
ask-profile-volunteers = combien de bénévoles vous avez
ask-profile-hall-rental = si vous louez vos locaux à d'autres
ask-profile-construction-planned = si des travaux de construction sont prévus
ask-profile-revenue-rents = combien vous recevez en loyers
ask-profile-revenue-tuition = combien vous recevez en frais d'inscription ou de scolarité
ask-profile-revenue-donations = combien vous recevez en dons
ask-profile-revenue-events = combien rapportent vos activités
ask-profile-food-service = si vous préparez ou servez des repas
ask-profile-day-care = si vous tenez une garderie
ask-profile-school = si vous tenez une école
ask-profile-employees = combien d'employés vous avez
ask-profile-online-giving = si vous recevez des dons en ligne
ask-profile-two-counters = si deux personnes comptent l'argent ensemble
ask-profile-alcohol-at-events = si on sert de l'alcool à vos activités
ask-profile-counselling = si vous offrez de l'accompagnement ou de la relation d'aide
ask-profile-social-media = si vous publiez sur les réseaux sociaux
ask-profile-volunteer-drivers = si des gens conduisent leur propre véhicule pour vous
ask-profile-children = si des enfants vous sont confiés
ask-profile-youth = si des jeunes vous sont confiés
ask-profile-vulnerable-adults = si des adultes vulnérables vous sont confiés
ask-profile-personal-data-held = si vous détenez des renseignements personnels
ask-profile-snow-by-volunteers = si des bénévoles déneigent chez vous
ask-profile-largest-event = combien de personnes viennent à votre plus grande activité
ask-profile-attendance = combien de personnes viennent à une rencontre habituelle
ask-building-ownership = si vous êtes propriétaires de chaque bâtiment
ask-building-special-features = ce que chaque bâtiment a de particulier
ask-building-basement = quel genre de sous-sol a chaque bâtiment
ask-building-contents-below-grade = si des biens se trouvent sous le niveau du sol
ask-building-heritage = si chaque bâtiment est patrimonial
ask-building-year-built = quand chaque bâtiment a été construit
ask-building-heating-type = comment chaque bâtiment est chauffé
ask-building-province = dans quelle province se trouve chaque bâtiment
ask-organisation-province = dans quelle province vous êtes
ask-organisation-organisation-class = quel genre d'organisme vous êtes
ask-organisation-registration-number = votre numéro d'organisme de bienfaisance, si vous en avez un

## terms.dropped

terms-dropped-title = { $extent ->
    [some] Ne figure plus dans la nouvelle offre pour { $places } : { $coverage }
   *[all] Ne figure plus dans la nouvelle offre : { $coverage }
}
terms-dropped-means = { $case ->
    [limit] Votre contrat actuel paie jusqu'à { $limit }. À partir du { $day }, un tel sinistre serait entièrement à votre charge.
   *[plain] Votre contrat actuel a cette garantie. À partir du { $day }, un tel sinistre serait entièrement à votre charge.
}
terms-dropped-todo = { $basis ->
    [claims-made] { $act } Avant le { $day }, déclarez tout ce qui pourrait devenir une réclamation; après, il sera peut-être trop tard.
   *[other] { $act }
}
terms-dropped-act = { $kind ->
    [know] Rien à retourner. Écrivez-nous si vous voulez la ravoir.
   *[decide] { $case ->
        [price] Décidez : la reprendre { $price }, ou vous en passer.
       *[ask] Décidez : nous la faire redemander, ou vous en passer.
    }
}

## terms.worse

terms-worse-title = { $case ->
    [grave] { $coverage } : { $change }
    [money] { $coverage } : jusqu'à { $amount } de plus à votre charge par sinistre
   *[plain] { $coverage } : la nouvelle offre vous donne moins
}
terms-worse-means = Par rapport à votre contrat actuel : { $changes }.
and-own-part = { $change } { $part }
own-part-base = { $case ->
    [insured] { $percent } des { $base } assurés
    [loss] { $percent } d'un sinistre de { $base }, le plus gros possible
   *[value] { $percent } des { $base } que coûte le remplacement de ce qui s'y trouve
}
own-part = { $case ->
    [share] Votre part d'un sinistre pourrait atteindre { $amount }, soit { $base }. Aujourd'hui, elle est d'au plus { $before }.
    [least] Votre part d'un sinistre serait de { $amount }, la franchise minimale : { $base } donnerait moins. Aujourd'hui, elle est d'au plus { $before }.
   *[most] Votre part d'un sinistre pourrait atteindre { $amount }, un plafond : { $base }. Aujourd'hui, elle est d'au plus { $before }.
}
terms-worse-with-the-plan = Rien d'autre à retourner : la déclaration de prévention passe d'abord. Ce qu'elle permet de ravoir, nous le demandons à l'assureur.
terms-worse-todo = { $kind ->
    [decide] { $case ->
        [amounts] Décidez : accepter le changement, prendre l'option, ou nous faire redemander les conditions actuelles. L'option donne { $amounts }, { $price }.
        [price] Décidez : accepter le changement, prendre l'option { $price }, ou nous faire redemander les conditions actuelles.
       *[ask] Décidez : accepter le changement, ou nous faire demander le prix des conditions actuelles.
    }
   *[know] Rien à retourner. Écrivez-nous si ce changement ne vous convient pas.
}

## terms.added, terms.better

terms-added-title = { $count ->
    [one] Une garantie est nouvelle dans l'offre
   *[other] { $count } garanties sont nouvelles dans l'offre
}
terms-added-means = Nouveau : { $changes }.
terms-added-todo = Rien à retourner. Vérifiez que vous voulez ce qui est nouveau.
terms-better-title = { $count ->
    [one] Une partie de l'offre est meilleure que votre contrat actuel
   *[other] { $count } parties de l'offre sont meilleures que votre contrat actuel
}
terms-better-means = Mieux : { $changes }.
terms-better-todo = Rien à retourner.
usual-rise = { $case ->
    [one] les montants d'assurance montent d'environ { $most }, comme chaque année
   *[range] les montants d'assurance montent d'environ { $least } à { $most }, comme chaque année
}

## terms.unclear

terms-unclear-title = { $count ->
    [one] Un changement ne se juge qu'en lisant le texte
   *[other] { $count } changements ne se jugent qu'en lisant le texte
}
terms-unclear-means = Ceci peut être mieux ou pire : { $changes }.
terms-unclear-todo = Lisez les deux textes côte à côte et demandez à l'assureur ce qu'ils ne disent pas.

## terms.not-as-requested, terms.not-as-agreed

terms-not-as-requested-title = { $count ->
    [one] L'offre donne moins que la demande sur un point
   *[other] L'offre donne moins que la demande sur { $count } points
}
terms-not-as-requested-means = Par rapport à la demande : { $changes }.
terms-not-as-requested-todo = Demandez à l'assureur de corriger l'offre ou de dire pourquoi il refuse.
terms-not-as-agreed-title = { $count ->
    [one] Le contrat donne moins que l'entente sur un point
   *[other] Le contrat donne moins que l'entente sur { $count } points
}
terms-not-as-agreed-means = Par rapport à ce qui a été convenu : { $changes }.
terms-not-as-agreed-todo = Demandez à l'assureur de corriger le contrat depuis son premier jour et de le confirmer par écrit.
terms-taken-but-missing-title = Option acceptée, mais absente du contrat : { $coverage }
terms-taken-but-missing-means = Les dirigeants ont décidé de prendre cette option. Le contrat émis ne la montre pas.

## terms.option-open

terms-option-open-title = { $case ->
    [price] Non couvert : { $coverage }; l'assureur l'offre { $price }
   *[ask] Non couvert : { $coverage }; prix à demander
}
terms-option-open-means = { $case ->
    [limit] { $why ->
        [because] C'est important, car { $because }. L'assureur offre de payer jusqu'à { $limit }; sans cette garantie, le sinistre est entièrement à votre charge.
       *[always] Tout organisme peut subir un tel sinistre. L'assureur offre de payer jusqu'à { $limit }; sans cette garantie, il est entièrement à votre charge.
    }
   *[plain] { $why ->
        [because] C'est important, car { $because }. Sans cette garantie, un tel sinistre est entièrement à votre charge.
       *[always] Tout organisme peut subir un tel sinistre. Sans cette garantie, il est entièrement à votre charge.
    }
}
terms-option-open-todo = { $case ->
    [price] Décidez : accepter, laisser, plus tard, ou nous demander.
   *[ask] Décidez : nous faire demander un prix, ou vous en passer.
}
terms-options-together-title = { $count ->
    [one] Une option est offerte : { $options }
   *[other] { $count } options sont offertes : à voir ensemble
}
terms-options-together-means = Offert : { $options }.
terms-options-together-todo = { $count ->
    [one] Répondez sur le formulaire des décisions : accepter, laisser, plus tard, ou nous demander.
   *[other] Répondez pour chacune sur le formulaire des décisions : accepter, laisser, plus tard, ou nous demander.
}
yearly-price = { $case ->
    [free] sans frais de plus
   *[priced] pour { $price } par année
}
option-offer = { $act ->
    [raise] { $case ->
        [price] { $coverage }, montant relevé de { $now } à { $amounts } { $price }
       *[ask] { $coverage }, montant relevé de { $now } à { $amounts }, prix sur demande
    }
    [widen] { $case ->
        [price] { $coverage }, garantie élargie { $price }
       *[ask] { $coverage }, garantie élargie, prix sur demande
    }
    [add-up-to] { $case ->
        [price] { $coverage } jusqu'à { $amounts } { $price }
       *[ask] { $coverage } jusqu'à { $amounts }, prix sur demande
    }
   *[add] { $case ->
        [price] { $coverage } { $price }
       *[ask] { $coverage }, prix sur demande
    }
}
deductible-share = { $case ->
    [least] { $share }, au moins { $least }
    [most] { $share }, au plus { $most }
    [least-most] { $share }, au moins { $least } et au plus { $most }
   *[alone] { $share }
}
deductible-share-of = { $percent } { $of }
deductible-share-plain = { $percent }
deductible-share-same = le pourcentage offert
option-amounts = { $case ->
    [limit] { $limit }
    [deductible] une franchise (votre part du sinistre) de { $deductible }
   *[limit-deductible] { $limit } avec une franchise (votre part du sinistre) de { $deductible }
}
terms-not-shown-title = { $count ->
    [one] Une garantie dont l'organisme a besoin n'apparaît pas dans les conditions
   *[other] { $count } garanties dont l'organisme a besoin n'apparaissent pas dans les conditions
}
terms-not-shown-means = Absent : { $coverages }. Certaines font peut-être partie d'une autre garantie.
terms-not-shown-todo = Vérifiez le texte pour chacune; demandez à l'assureur celles qui n'y sont pas.
terms-questions-title = { $count ->
    [one] Une question sans réponse décide des garanties qu'il vous faut
   *[other] { $count } questions sans réponse décident des garanties qu'il vous faut
}
terms-questions-means = Il nous faut savoir { $questions }.
terms-questions-todo = Répondez sur le formulaire ci-joint. « Je ne sais pas » est aussi une réponse.

## terms.additional-limit-basis

terms-additional-limit-basis-title = { $owns ->
    [yes] L'organisme est propriétaire, mais a le montant additionnel d'un locataire
   *[no] L'organisme est locataire, mais a le montant additionnel d'un propriétaire
}
terms-additional-limit-basis-means = Le montant additionnel commun de { $amount } est prévu pour { $meant }. C'est une somme de plus par année qui complète plusieurs garanties.
terms-additional-limit-basis-todo = Demandez à l'assureur de mettre le montant additionnel sur la bonne base.

## terms.damages

terms-damages-title = Votre contrat ne paierait pas tout ce qu'un tribunal peut ordonner : { $damages }
terms-damages-means = Un tribunal peut ajouter de telles sommes à titre de punition. Ces garanties les excluent : { $coverages }. Là où la loi le permet, l'assurance peut les payer.
terms-damages-todo = Rien à retourner. Demandez-nous si l'assureur peut les inclure chez vous.
terms-damages-unstated-title = L'offre ne dit pas si les dommages-intérêts punitifs sont payés
terms-damages-unstated-means = Aucune ligne de responsabilité ne parle des dommages-intérêts punitifs, exemplaires ou multipliés. Un texte muet peut s'interpréter dans les deux sens.
terms-damages-unstated-todo = Demandez la clause à l'assureur et consignez la réponse.

## terms.defence-inside

terms-defence-inside-title = { $count ->
    [one] Les frais d'avocats entameraient l'un de vos montants de garantie
   *[other] Les frais d'avocats entameraient { $count } de vos montants de garantie
}
terms-defence-inside-means = Les frais de défense sont pris à même le montant ici : { $coverages }. Ce que coûtent les avocats manque alors à la victime, et vous devriez le reste.
terms-defence-inside-todo = Rien à retourner. Demandez-nous le prix d'un montant plus élevé ou de frais de défense en plus.

## terms.claims-made

terms-claims-made-switched-title = { $coverage } : seules compteraient les réclamations présentées pendant la durée du contrat
terms-claims-made-switched-means = Votre contrat actuel vise ce qui arrive durant sa période, peu importe quand vient la réclamation. L'offre ne viserait que les réclamations reçues pendant qu'elle est en vigueur.
terms-claims-made-switched-todo = Décidez avec nous. Faites écrire par l'assureur à partir de quel jour les faits passés comptent. Avant le { $day }, déclarez tout ce qui pourrait devenir une réclamation.
terms-claims-made-moved-title = { $coverage } : le travail des années passées perdrait sa protection
terms-claims-made-moved-means = Jusqu'ici, les faits comptent à partir du { $was }. Dans l'offre, seuls compteraient les faits à partir du { $since }.
terms-claims-made-moved-todo = Décidez : nous faire redemander le jour précédent. Avant le { $day }, déclarez tout ce qui pourrait devenir une réclamation.
terms-claims-made-missing-title = { $coverage } : les conditions ne disent pas à partir de quel jour les faits passés comptent
terms-claims-made-missing-means = Une garantie qui compte les réclamations à leur présentation demande une date de rétroactivité (le premier jour dont les faits comptent). Aucune n'est indiquée.
terms-claims-made-missing-todo = Demandez la date à l'assureur, ou la mention écrite « antériorité complète ».
terms-reporting-title = { $coverage } : les conditions ne disent pas combien de temps on peut déclarer ensuite
terms-reporting-means = Quand une telle garantie cesse, les réclamations tardives ne comptent que durant le délai de déclaration. Aucun n'est indiqué.
terms-reporting-todo = Demandez à l'assureur le délai de déclaration et le prix d'un délai plus long.

## terms.vacancy

terms-vacancy-title = { $state ->
    [past] Vide depuis plus longtemps que le contrat ne le permet : { $buildings }
   *[coming] Vide trop longtemps après le { $day } : { $buildings }
}
terms-vacancy-means = Le contrat permet { $days ->
    [one] { $days } jour vide
   *[other] { $days } jours vides
} de suite. Ensuite, la protection diminue ou cesse d'ordinaire, souvent d'abord pour le vol, le vandalisme et l'eau. Le texte décide.
terms-vacancy-todo = Décidez : nous faire demander une permission écrite à l'assureur. Maintenez le chauffage ou vidangez la tuyauterie, faites visiter les lieux et notez chaque visite, comme l'assureur le demande.
terms-vacancy-unknown-title = Vide, et les conditions ne disent pas combien de temps cela peut durer : { $buildings }
terms-vacancy-unknown-means = La plupart des textes limitent les jours de suite où un bâtiment peut rester vide. Le dossier n'a pas ce nombre.
terms-vacancy-unknown-todo = Cherchez-le dans le texte, consignez-le et demandez une permission au besoin.
terms-vacancy-which-title = Dites-nous quel bâtiment est vide, et depuis quand
terms-vacancy-which-means = Vous nous avez dit qu'un bâtiment ne sert pas. La protection diminue ou cesse d'ordinaire quand cela dure trop longtemps.
terms-vacancy-which-todo = Inscrivez le bâtiment et le premier jour vide sur la déclaration de valeurs.

## terms.total-loss-gap, terms.sublimit-thin

reason-total-loss = Un incendie total laisserait cette somme à trouver.
reason-sublimit-thin = Un sinistre comme le vôtre dépasse ce montant.
reason-cannot-be-tried = Personne ne peut dire ce que ce contrat paie tant que ce n'est pas clair.
terms-total-loss-gap-title = { $building } : après un incendie total, environ { $borne } resteraient à votre charge
terms-total-loss-gap-means = Le tout coûterait environ { $lost }, et le contrat paie environ { $paid }. À votre charge : { $gaps }. Les ampleurs sont des exemples, à l'échelle de vos valeurs.
terms-total-loss-gap-part = { $what } ({ $borne })
terms-total-loss-gap-todo = Regardez d'abord le plus grand de ces montants. Demandez-nous ce que coûterait chaque hausse.
terms-sublimit-thin-title = { $coverage } : { $limit } pourrait laisser environ { $over } à votre charge
terms-sublimit-thin-means = { $whose ->
    [own] Vous avez déjà subi un tel sinistre : { $loss }, environ { $lost }. Le même aujourd'hui dépasserait le montant d'assurance (le plus que l'assureur paie).
   *[model] Une fois en cent ans, un tel sinistre coûterait environ { $lost } ou plus chez vous ({ $loss }). C'est plus que le montant de garantie (le plus que l'assureur paie).
} Lieu : { $place }.
terms-sublimit-thin-offer = L'assureur offre { $limit }. { $told }
terms-sublimit-thin-todo = { $kind ->
    [sewer-backup] Demandez-nous ce que coûterait un montant plus élevé. Un clapet antiretour, et rien de précieux rangé bas, réduisent un tel sinistre.
   *[other] Demandez-nous ce que coûterait un montant plus élevé.
}
terms-cannot-be-tried-title = Ce contrat ne peut pas être mis à l'essai sur un sinistre
terms-cannot-be-tried-means = { $why }
terms-cannot-be-tried-todo = Corrigez le contrat au dossier, ou demandez à l'assureur ce qui est voulu.
