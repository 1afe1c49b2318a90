"""What lies on the cloth, and what may meet what: read from a table that a person who sews can read."""
