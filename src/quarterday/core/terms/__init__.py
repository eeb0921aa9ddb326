"""Terms of insurance: what they say, and how two versions differ."""
