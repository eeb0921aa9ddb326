"""What is sent back, as OpenAPI describes it; the office makes it, and here it only has a form."""
