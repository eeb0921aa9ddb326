"""Open Exposure Data: location and account files out, and location files in."""
