"""What the house knows and computes: pure Python, no framework, file, network or clock."""
