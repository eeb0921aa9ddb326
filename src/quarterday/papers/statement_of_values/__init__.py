"""The statement of values: what each building is, and what it should be insured for."""
