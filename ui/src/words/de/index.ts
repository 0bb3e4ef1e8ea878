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
import type { Words } from "../type";

/** German, complete. Terms are those of the pharmacy and the herb trade; the maker is addressed with "du". */
export const words: Words = { ...shared, ...garden, ...rack, ...pantry, ...jar, ...bottle, ...plan, ...find, ...reckoner, ...safe, ...settings, ...terms };
