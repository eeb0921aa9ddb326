"""One module for each thing a person does from the terminal."""
