# Les formulaires qui reviennent : ce qu'ils proposent, et ce qui ne va pas.

## Ce qu'un formulaire propose

returns-heading = { $name } : formulaires du dossier { $file }, pour le renouvellement du { $renewal }
returns-filled = { CAPITAL($form) }, rempli par { $by }
returns-unsigned = quelqu'un qui n'a pas donné son nom
returns-no-changes = Rien n'y diffère de ce qui est au dossier.
returns-change = { $label }. Aujourd'hui : { $now }. Le formulaire dit : { $said }.
returns-clash = { $label }. Quand le formulaire a été produit : { $was }. Aujourd'hui : { $now }. Le formulaire dit : { $said }.
returns-asks = { $label }. Aujourd'hui : { $now }. Le formulaire dit : { $said }.
returns-unread = { $label }. Le formulaire dit : { $said }.
returns-unread-said = une réponse à laquelle on ne peut se fier
returns-refused = { $label }. Le formulaire dit : { $said }. Cette réponse a déjà été refusée.
returns-nothing = rien
returns-unclear = { $what } { $remedy }
returns-changed-since = Le fait a changé après la production du formulaire. Dites laquelle des deux réponses est la bonne.
returns-emptied = Le formulaire laisse la case vide, et le dossier a une réponse. Demandez si elle vaut encore.
returns-taken-for = On a lu « { $choice } ». Acceptez si c'est bien ce qu'on voulait dire.
returns-far = Le montant est loin de celui d'aujourd'hui. Vérifiez si une virgule ou un zéro a glissé, puis acceptez-le par son nom.
returns-not-exact = La réponse pourrait vouloir dire plus d'une chose.
returns-record-gone = Le dossier n'a plus ce dont parle cette réponse; elle ne peut pas être acceptée.
returns-nobody = Personne n'a inscrit son nom, et seule une personne peut décider. Demandez qui l'a fait.
returns-no-plan = { $why } Demandez comment on veut payer.
returns-no-name = Une nouvelle personne est décrite sans nom. Demandez-le.
returns-namesake = Une personne de ce nom est déjà au dossier. Acceptez si c'est la même.
returns-lapsed-one = Le formulaire est celui du renouvellement du { $renewal }, qui est passé. Demandez si la réponse vaut encore.

## Ce qu'il faut dire d'un formulaire

returns-again = Ce document a déjà été lu, le { $day }. Ce qui a été accepté alors ne l'est pas deux fois.
returns-lapsed = Ce formulaire est celui du renouvellement du { $renewal }, et non de celui qui vient. Envoyez-en un nouveau; rien n'est accepté sans que vous le nommiez.
returns-missing = { $n ->
    [one] Une question du formulaire n'est pas sur ses pages
   *[other] { $n } questions du formulaire ne sont pas sur ses pages
}; la première est « { $first } ». Une page manque peut-être, ou un champ a été renommé. Demandez le formulaire complet; le reste a été lu.
returns-unknown = { $n ->
    [one] Un champ n'est pas de ce formulaire et a été laissé de côté : { $names }.
   *[other] { $n } champs ne sont pas de ce formulaire et ont été laissés de côté, par exemple { $names }.
}
returns-date-unclear = La date du formulaire, « { $said } », n'a pas pu être lue : { $what } La date d'aujourd'hui en tient lieu.
returns-holds-program = { $name } contient un programme. Il n'a pas été exécuté. Aucun de nos formulaires n'en a : demandez qui l'a envoyé avant d'accepter quoi que ce soit.
returns-holds-attachment = { $name } contient un autre fichier. Il n'a pas été ouvert. Demandez-le à part s'il compte.
returns-holds-xfa = { $name } contient un second formulaire d'une autre sorte. Il n'a pas été lu; seul ce qui est sur les pages l'a été.
returns-field-too-long = La réponse a { $n } caractères, plus qu'il n'en faut à une réponse. Elle n'a pas été lue; l'original est gardé.
returns-field-odd = La réponse n'est pas du texte. Elle n'a pas été lue; regardez la page.
returns-field-character = La réponse contient un caractère qui ne peut être conservé ({ $character }). Elle n'a pas été lue; regardez la page.
returns-field-twice = Le champ s'y trouve deux fois avec des réponses différentes. Regardez les pages et demandez.
returns-field-split = La case montre un autre choix que celui que le formulaire contient. Regardez la page et demandez.

## Ce qui est refusé en entier

returns-too-large = { $name } dépasse { $most } Mo et n'a pas été lu. Demandez le formulaire seul, et non la numérisation du tout.
returns-not-pdf = { $name } n'est pas un PDF et n'a pas été lu. Enregistrez ou numérisez le formulaire en PDF.
returns-locked = { $name } est protégé par un mot de passe; rien n'a pu être lu. Demandez-le sans mot de passe.
returns-broken = { $name } est endommagé et n'a pas pu être lu. Demandez qu'on le renvoie.
returns-too-much = { $name } demande trop de temps ou de mémoire, ce qu'aucun de nos formulaires ne fait. Rien n'a été lu; demandez qui l'a envoyé.
returns-not-ours = { $name } est un formulaire, mais aucun de ceux que nous avons envoyés. Vérifiez si c'est le bon document.
returns-several = { $name } contient des formulaires de plus d'une trousse, mêlés de sorte qu'on ne peut pas les distinguer. Rien n'a été lu; séparez-les, ou demandez chaque formulaire à part.
returns-no-feet = { $name } a perdu la marque de nos formulaires, et le bas des pages ne dit pas lequel c'est. Demandez le formulaire tel qu'il a été envoyé.
returns-bad-stamp = { $name } ressemble à un de nos formulaires, mais sa marque a été changée; rien n'a été lu. Envoyez-en un nouveau.
returns-no-file = { $name } est un formulaire du dossier « { $file } », que ce portefeuille n'a pas. Il n'a pas été lu.
returns-other-file = { $name } est un formulaire du dossier { $file }, et non de { $expected }. Il n'a pas été lu; ouvrez { $file } et lisez-le là.
returns-not-built = { $name } nomme une trousse du dossier { $file } qui n'a jamais été produite ici; on ne peut pas s'y fier. Envoyez-en un nouveau.
returns-flat = { $name } n'a pas de champ à lire : il a été imprimé et numérisé, ou aplati. Rien n'a été deviné.
returns-flat-next = Entrez-le côte à côte : quarterday read --enter { $form } --file { $file } montre les questions; donnez les réponses avec --answers REPONSES.json { $name }
returns-no-question = « { $name } » n'est pas une question de ce formulaire ({ $form }). --enter sans --answers montre les questions.
returns-no-form = Il n'y a pas de formulaire « { $form } ». Il y a : { $forms }.
returns-no-proposal = Aucune réponse de ce formulaire ne s'appelle « { $name } ». Les noms sont ceux qui sont au-dessus de chaque réponse.
returns-cannot-take = « { $label } » ne peut pas être accepté tel quel. { $why }

## Au terminal

cli-read-what = Nommez les formulaires revenus, ou utilisez --enter FORMULAIRE avec --file DOSSIER.
cli-read-enter = Les questions de : { $form }, dossier { $file }. Écrivez les réponses en JSON : champ et réponse. Omettez ce qui ne change pas.
cli-read-printed = Imprimé d'avance : { $said }.
cli-read-answers = { $path } doit contenir un objet JSON de champs et de réponses, toutes du texte.
cli-read-kept = { $n ->
    [0] Rien de nouveau n'a été inscrit.
    [one] Une inscription : { $taken } acceptées, { $refused } refusées. L'original est gardé.
   *[other] { $n } inscriptions : { $taken } acceptées, { $refused } refusées. L'original est gardé.
}
cli-read-next = Rien n'a été inscrit. Acceptez ce qui est clair avec --accept, une réponse avec --take CHAMP, ou écartez-en une avec --refuse CHAMP.

## Les fiches qui en viennent

record-answers = réponses
record-request-sent = demande à l'assureur
record-package-sealed = trousse scellée
kind-answers = { record-answers }
kind-request-sent = { record-request-sent }
kind-package-sealed = { record-package-sealed }

cli-beside-page = Page { $page }
cli-beside-alt = { $n ->
    [0] La page { $page } telle qu'elle est revenue.
   *[other] La page { $page } telle qu'elle est revenue; encadré et numéroté : { $numbers }.
}
cli-beside-undrawn = La page { $page } n'a pas pu être dessinée. Le document est gardé tel quel.
cli-beside-nowhere = Dit sans place sur une page
cli-beside-now = Aujourd'hui
cli-beside-was = À l'impression
cli-beside-said = Le formulaire dit
cli-beside-state = État
cli-beside-change = clair : --accept le prend
cli-beside-clash = modifié entre-temps : --take le prend
cli-beside-asks = à trancher par une personne
cli-beside-refused = écarté
cli-beside-why = Pourquoi
cli-beside-form = Formulaire
cli-beside-printed = Imprimé d'avance
cli-beside-choices = Choix
cli-beside-written = Côte à côte : { $path }

returns-flat-code = { $n ->
    [one] D'après le code imprimé à la page { $pages }
   *[other] D'après le code imprimé aux pages { $pages }
}, c'est : { $form }, dossier { $file }, renouvellement du { $renewal }, version { $version }.
returns-flat-no-code = { $n ->
    [one] La page { $pages } n'a pas de code lisible
   *[other] Les pages { $pages } n'ont pas de code lisible
} : regardez-y aussi.
