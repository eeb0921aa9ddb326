"""The interests form: whether each lender and lessor still has a stake."""
