"""What changed: the terms that got better, got worse, came or went, and why the premium moved."""
