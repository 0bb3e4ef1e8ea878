### Cautions, strengths, limits of moisture, look-alikes, months of harvest.
