# Ce que le dépôt refuse, et ce que sa vérification trouve.

## Refus

store-bad-place = « { $place } » ne désigne aucun dépôt. Indiquez un dossier, ou une adresse qui commence par postgresql://.
store-not-started = Il n'y a pas de dépôt de cette version à { $place }. Lancez d'abord « quarterday start »; le contenu d'un dépôt est conservé.
store-not-reached = Impossible d'ouvrir le dépôt à { $place } : { $why }. Vérifiez le dossier, ou si la base de données fonctionne.
store-not-written = La base de données n'a pu être écrite, rien ne l'a donc été : { $why }. Vérifiez le disque et la base de données, puis réessayez.
store-busy = La base de données a été occupée pendant une demi-minute : rien n'a été écrit. Réessayez; rien n'est perdu.
store-unknown-file = Il n'y a pas de dossier « { $file } ». Vérifiez son numéro dans la liste des renouvellements.
store-conflict = Rien n'a été écrit : { $by } a modifié les mêmes éléments du dossier { $file } ({ $records }) depuis que vous l'avez ouvert. Comparez les deux versions, puis enregistrez de nouveau.
store-bad-text = « { $text } » ({ $what }) est vide, trop long ou contient des caractères qu'on ne peut conserver. Saisissez-le de nouveau.
store-bad-draft = L'élément « { $kind } { $key } » est incomplet et n'a pas été écrit. C'est un défaut du programme : veuillez le signaler.
store-bad-time = Le dossier { $file } a déjà une inscription du { $last }; on ne peut rien inscrire avant elle, au { $at }. Vérifiez la date.
store-nothing-to-redact = L'inscription { $seq } du dossier { $file } n'a aucun contenu à retirer. « quarterday history » montre les inscriptions et leurs numéros.
store-original-missing = Le document { $digest } n'est pas dans le dépôt : on ne peut montrer ce qui en a été tiré. Récupérez-le d'une copie de sauvegarde.
store-original-altered = Le document { $digest } n'est plus celui qui a été reçu : son contenu a été modifié. Récupérez-le d'une copie de sauvegarde.

## Constats de la vérification

store-chain-sequence = Dossier { $file } : une inscription manque ou a été ajoutée avant l'inscription { $seq }.
store-chain-previous = Dossier { $file } : l'inscription { $seq } ne découle pas de la précédente, qui a été modifiée ou retirée.
store-chain-body = Dossier { $file } : le contenu de l'inscription { $seq } a été modifié après coup.
store-chain-envelope = Dossier { $file } : la date, l'auteur, le genre ou l'origine de l'inscription { $seq } a été modifié après coup.
store-chain-redaction = Dossier { $file } : le contenu de l'inscription { $seq } a disparu, et aucune inscription ne dit pourquoi.
store-seal-cut = Dossier { $file } : l'inscription { $seq } avait été scellée et n'y est plus. La fin du dossier a été coupée.
store-seal-rewritten = Dossier { $file } : l'inscription { $seq } n'est pas celle qui a été scellée. Le dossier a été réécrit.
store-seal-number = Le numéro du sceau { $number } ne suit pas celui du sceau précédent.
store-seal-previous = Le sceau { $number } ne découle pas du précédent, qui a été modifié ou retiré.
store-seal-digest = Le sceau { $number } a été modifié après sa signature.
store-seal-signature = La signature du sceau { $number } n'est pas authentique.
store-seal-key = Le sceau { $number } a été signé avec une autre clé que celle de ce dépôt.
store-seal-missing = Le sceau { $number } figure dans la liste tenue à côté du dépôt, mais pas tel quel dans la base de données.
store-index-differs = Dossier { $file } : la table { $table } ne montre pas ce que disent les inscriptions. On peut la refaire à partir d'elles.
store-index-unreadable = Dossier { $file } : ses inscriptions ne sont plus lisibles; ses tables n'ont pu être comparées.
store-guard-missing = Le garde-fou { $guard }, qui refuse les changements, a disparu. « quarterday start » le remet; cherchez qui l'a retiré.

# Sauvegardes.
store-backup-postgresql = Ce dépôt est dans sa propre base de données ({ $place }), qui a ses propres moyens de sauvegarde et de restauration. La page « running.md » de la documentation dit comment faire.
store-backup-exists = Le fichier { $path } existe déjà. Donnez un autre nom; une sauvegarde n'est jamais écrasée.
store-backup-inside = { $path } se trouve dans le dossier du dépôt et se perdrait avec lui. Choisissez un endroit à l'extérieur, de préférence sur un autre disque.
store-backup-unwritten = La sauvegarde { $path } n'a pas pu être écrite, et il n'en reste rien : { $why }.
store-backup-unreadable = { $path } n'a pas pu être restauré, et rien n'a été écrit : { $why }.
store-backup-none = { $path } n'est pas une sauvegarde faite par Quarterday : il y manque la liste de ses parties. Indiquez un autre fichier.
store-backup-altered = Dans la sauvegarde { $path }, la partie { $name } manque ou a été modifiée. Rien n'a été restauré; prenez une sauvegarde plus ancienne.
store-restore-not-empty = { $place } n'est pas vide. Une sauvegarde se restaure seulement dans un nouveau dossier : nommez-en un avec --store.
store-original-erased = Le document { $digest } a été supprimé à la suite d'une demande légitime. L'historique de son dossier dit quand, par qui et pourquoi.
store-original-not-again = { $name } a été supprimé à la suite d'une demande légitime et n'est pas conservé de nouveau. Retirez ce qui devait disparaître, puis chargez la copie.
