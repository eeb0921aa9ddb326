"""The change request: a letter that asks the insurer to change a policy."""
