import { bottle } from "./bottle";
import { find } from "./find";
import { garden } from "./garden";
import { jar } from "./jar";
import { pantry } from "./pantry";
import { plan } from "./plan";
import { rack } from "./rack";
import { reckoner } from "./reckoner";
import { safe } from "./safe";
import { settings } from "./settings";
import { shared } from "./shared";
import { terms } from "./terms";

/** English, complete. Trade terms stay as the trade says them. */
export const words = { ...shared, ...garden, ...rack, ...pantry, ...jar, ...bottle, ...plan, ...find, ...reckoner, ...safe, ...settings, ...terms };
