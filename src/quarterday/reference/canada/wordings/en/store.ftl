# What the store refuses, and what its verification finds.

## Refused

store-bad-place = "{ $place }" names no store. Give a folder, or an address that starts with postgresql://.
store-not-started = There is no store of this version at { $place }. Run "quarterday start" first; what a store holds stays.
store-not-reached = The store at { $place } cannot be opened: { $why }. Check the folder, or whether the database runs.
store-not-written = The database could not be written, so nothing was: { $why }. Check the disk and the database, then try again.
store-busy = The database was busy for half a minute, so nothing was written. Try again; nothing was lost.
store-unknown-file = There is no file "{ $file }". Check its number in the list of renewals.
store-conflict = Nothing was written: { $by } changed the same records of file { $file } ({ $records }) after you opened it. Compare the two versions and save again.
store-bad-text = "{ $text }" ({ $what }) is empty, too long, or holds characters that cannot be kept. Type it again.
store-bad-draft = The record "{ $kind } { $key }" is not whole, so it was not written. This is a fault of the program: please report it.
store-bad-time = File { $file } already has an entry of { $last }; nothing can be recorded before it, at { $at }. Check the date.
store-nothing-to-redact = Entry { $seq } of file { $file } has no content to remove. "quarterday history" shows the entries and their numbers.
store-original-missing = The document { $digest } is not in the store, so what was read from it cannot be shown. Restore it from a backup.
store-original-altered = The document { $digest } is not what was received: its content was changed. Restore it from a backup.

## Found by the verification

store-chain-sequence = File { $file }: an entry is missing or added before entry { $seq }.
store-chain-previous = File { $file }: entry { $seq } does not follow from the entry before it, which was changed or removed.
store-chain-body = File { $file }: the content of entry { $seq } was changed after it was recorded.
store-chain-envelope = File { $file }: the date, author, kind or origin of entry { $seq } was changed after it was recorded.
store-chain-redaction = File { $file }: the content of entry { $seq } is gone, and no entry says why.
store-seal-cut = File { $file }: entry { $seq } was sealed and is no longer there. Entries were cut off the end.
store-seal-rewritten = File { $file }: entry { $seq } is not the one that was sealed. The file was written anew.
store-seal-number = Seal { $number } does not follow the seal before it in number.
store-seal-previous = Seal { $number } does not follow from the seal before it, which was changed or removed.
store-seal-digest = Seal { $number } was changed after it was signed.
store-seal-signature = The signature of seal { $number } is not genuine.
store-seal-key = Seal { $number } was signed with another key than this store's.
store-seal-missing = Seal { $number } is in the list beside the store, and not as such in the database.
store-index-differs = File { $file }: the table { $table } does not show what the entries say. It can be rebuilt from them.
store-index-unreadable = File { $file }: its entries cannot be read any more, so its tables could not be compared.
store-guard-missing = The guard { $guard }, which refuses changes, is gone. "quarterday start" puts it back; find out who removed it.

# Backups.
store-backup-postgresql = This store is in a database of its own ({ $place }), which has its own means to back it up and put it back. The page "running.md" of the documentation says how.
store-backup-exists = There is a file { $path } already. Name another; a backup is never written over.
store-backup-inside = { $path } lies in the store's own folder, and would be lost with it. Name a place outside it, best on another disk.
store-backup-unwritten = The backup { $path } could not be written, and nothing was left of it: { $why }.
store-backup-unreadable = { $path } could not be put back, and nothing was written: { $why }.
store-backup-none = { $path } is not a backup that Quarterday made: it has no list of its parts. Name another file.
store-backup-altered = In the backup { $path }, the part { $name } is missing or was altered. Nothing was put back; use an older backup.
store-restore-not-empty = { $place } is not empty. A backup is put back into a new folder only: name one with --store.
store-original-erased = The document { $digest } was removed on lawful request. The history of its file says when, by whom and why.
store-original-not-again = { $name } was removed on lawful request and is not kept again. Take out what had to go, and load the copy.
