"""The papers of a renewal: what goes in, what each says, and how it is set and made fillable."""
