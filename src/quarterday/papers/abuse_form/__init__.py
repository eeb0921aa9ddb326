"""The abuse prevention declaration: what is truly done, signed by the chair."""
