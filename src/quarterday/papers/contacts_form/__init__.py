"""The contacts form: who speaks for the organisation and who may decide."""
