"""The premium statement: coverage × location, fees, tax and total."""
