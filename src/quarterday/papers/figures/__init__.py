"""The appendix of figures: where each one comes from."""
