"""Copies for lenders and lessors: one page of evidence for each."""
