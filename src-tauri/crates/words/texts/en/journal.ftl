### The journal, its check and its mending.
