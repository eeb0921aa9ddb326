"""The discharge request: a letter to a lender or lessor that is paid off but still named."""
