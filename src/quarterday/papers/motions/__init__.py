"""Draft motions for the minutes: each decision put for it and against it."""
