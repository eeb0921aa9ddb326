"""Forms that come home: a returned PDF is recognised, read, and shown as proposed changes."""
