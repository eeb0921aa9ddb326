"""A file: everything known about one organisation, as records, entries and their fold."""
