import type { Verdict } from "../../../api";
import type { IconName } from "../../../parts/Icon.svelte";

/** A drawing beside each verdict, so that no colour has to say it. */
export const verdictIcons: Record<Verdict, IconName> = {
  keeps: "check",
  "keeps cold": "cold",
  "use now": "clock",
  "do not make": "cross",
};
