"""Reference data of the places Quarterday knows: files only, each value with its source."""
