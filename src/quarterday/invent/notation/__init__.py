"""A short notation for a whole account, and what it is turned into: the records of its file.

The demo book's files are written in it by hand; books of any size make it by chance.
"""
