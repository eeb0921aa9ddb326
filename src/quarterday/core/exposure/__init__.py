"""Locations and their simple terms in Open Exposure Data, the open standard; pure mapping."""
