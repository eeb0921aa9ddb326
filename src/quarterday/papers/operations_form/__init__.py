"""The operations form: what the organisation does, asked every year."""
