"""Tags of the desk's templates."""
