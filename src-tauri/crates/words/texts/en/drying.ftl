### The drying rack.
