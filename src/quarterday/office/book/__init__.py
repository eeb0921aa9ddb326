"""The whole book for its manager: made when files change, asked for with the right to see it."""
