### Plants that may not be used, and names that mean several.
