"""Read: YAML to a located spec."""
