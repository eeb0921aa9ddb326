"""The decisions form: the answer to each decision and each option on offer."""
