"""The letter: what to decide, the premium at a glance, what is enclosed and why."""
