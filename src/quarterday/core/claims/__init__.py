"""Claims: windows, totals by year and cause, the share of water."""
