"""The certificate: what is in force on one day, for somebody outside who asks to see it."""
