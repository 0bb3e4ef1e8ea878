### Numbers that are out of range, and what a mixture cannot be.

unmixable-no-liquid = There is no liquid here. Pour at least one, or add a plant that contains water.
unmixable-temperature = For this liquid the temperature must be between { $low } and { $high }. You entered { $given }.
unmixable-no-stock = There is nothing to pour. Choose at least one liquid from your supplies.
unmixable-no-size = Say how much to make: the volume at the end, the volume poured, or the amount of one liquid.
unmixable-more-than-available = You asked for { $wanted }, but you have only { $there }.
unmixable-unsolved = These amounts could not be worked out. Change one of them a little and try again.

remark-volume-is-estimated = Several things are dissolved here. Volume and density are right to about 1 %, water activity to about 0.03.
remark-acid-ph = This is the pH of the acid alone. Herbs and salts raise it, so measure to be sure.
remark-no-acid = No acid was poured, so there is no pH to give.
remark-sugar-undissolved = That is more sugar than the water can dissolve. Sugar at the bottom does not preserve.
remark-glycerol-outside-fit = The density of glycerin is known well from 15 to 30 °C. Outside that it may be off by 2.5 kg per cubic metre.
remark-may-freeze = Below 0 °C these figures hold only until the liquid starts to freeze.
remark-oil-left-out = Oil floats on top and is not part of these figures.
remark-sugars-of-honey = The sugars of honey, wine and juice are counted as glucose and fructose, with the density of honey tables.
