"""What is kept: the ledger's entries, their index tables, originals and seals, in a database."""
