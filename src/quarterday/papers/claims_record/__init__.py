"""The claims record: ten years of claims by cause, and what prevents them."""
