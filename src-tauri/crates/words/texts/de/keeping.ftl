### Cooked herbs, and what keeps and for how long.
