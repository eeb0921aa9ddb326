"""Who may come in: people, their second factor, and what each may do in which office."""
