"""The water questionnaire: what was repaired, and what now stops water early."""
