"""The model of cloth that steps are rehearsed on."""
