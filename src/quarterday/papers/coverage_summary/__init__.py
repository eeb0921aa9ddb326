"""The coverage summary: a checklist by family of what is covered, what is not, what is needed."""
