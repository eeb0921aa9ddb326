## Open Exposure Data : ce qui a été écrit

oed-written = { $locations ->
    [one] { $locations } emplacement
   *[other] { $locations } emplacements
  } de { $accounts ->
    [one] { $accounts } compte
   *[other] { $accounts } comptes
  } dans { $path }.
oed-lost = La norme n'a pas de place pour ceci ({ $record }) : { $fields }.
oed-lost-times = { $name } ({ $times })
oed-lost-valuation = valeurs antérieures, et valeurs de ce qui n'est pas assuré
oed-lost-coverages = Ces garanties ne sont pas dans les fichiers : { $coverages }.
oed-lost-records = Les personnes, les activités, les sinistres, les primes et les documents n'y sont pas.
oed-left-out = Laissés de côté, car leur numéro est trop long pour la norme : { $buildings }.

## Open Exposure Data : ce qui a été lu

oed-not-a-number = Ce n'est pas un nombre de zéro ou plus. Corrigez-le et chargez le fichier de nouveau.
oed-not-whole = Ce n'est pas un nombre entier. Corrigez-le et chargez le fichier de nouveau.
oed-not-a-day = Ce n'est pas une date. Écrivez-la comme 2026-12-01 et chargez le fichier de nouveau.
oed-no-number = Il faut un numéro de compte et d'emplacement. Sans eux, on ne sait pas de quoi parle la ligne.
oed-not-canada = Ce lieu n'est pas au Canada : la ligne a été laissée de côté. Seuls les taxes et les prix du Canada sont connus.
oed-no-area = Ce n'est ni une province ni un territoire. Inscrivez ses deux lettres, comme QC.
oed-not-dollars = Ces montants ne sont pas en dollars canadiens : la ligne a été laissée de côté. Convertissez-les d'abord en CAD.
oed-several-buildings = La ligne additionne plusieurs bâtiments : elle a été laissée de côté. Donnez une ligne à chacun.
oed-area-unit = La superficie doit être en pieds carrés (11) ou en mètres carrés (12). Corrigez-la et chargez le fichier de nouveau.
oed-not-possible = { $why }
oed-not-read = Ces colonnes disent quelque chose qui n'est pas lu : { $columns }.
oed-no-organisation = Nous ne connaissons pas le compte { $account }. Mettez son fichier de compte, avec AccName et AreaCode, dans le même dossier.
oed-twice = L'emplacement { $location } figure ici deux fois. Gardez une ligne, dont les conditions valent pour toutes les causes.
oed-minimum-alone = Une franchise minimale ou maximale demande une franchise en pourcentage. Inscrivez 1 ou 2 comme type.
oed-deductible-type = La franchise doit être un montant (0), ou une part du sinistre (1) ou de la valeur (2), d'au plus 1.
oed-term-unknown = Nos conditions ne savent pas dire ceci, et l'omettre changerait ce qui est payé. Saisissez ces conditions à la main.
oed-some-perils = Ces conditions ne valent que pour certaines causes; les nôtres valent pour toutes celles qui sont couvertes. Saisissez-les à la main.
oed-no-period = La ligne ne dit pas quand sa garantie commence et finit. Ses montants et ses franchises ont été laissés de côté.
oed-terms-held = Les conditions du compte { $account } ont été retenues, car une de leurs lignes ne peut pas être respectée.
