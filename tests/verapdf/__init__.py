"""veraPDF as a judge of finished papers: its library is in a Python package, run through Java."""
