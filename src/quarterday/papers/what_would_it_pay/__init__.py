"""What would it pay: four losses walked through, step by step."""
