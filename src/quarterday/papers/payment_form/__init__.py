"""The payment form: one way to pay out of several, each with what it costs."""
