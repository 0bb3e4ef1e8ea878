import type { Component } from "svelte";
import Bin from "./Bin.svelte";
import CorrectHarvest from "./CorrectHarvest.svelte";
import CorrectJar from "./CorrectJar.svelte";
import CorrectTray from "./CorrectTray.svelte";
import Deeds from "./Deeds.svelte";
import FailJar from "./FailJar.svelte";
import Fill from "./Fill.svelte";
import Garden from "./Garden.svelte";
import Harvest from "./Harvest.svelte";
import Herb from "./Herb.svelte";
import Herbs from "./Herbs.svelte";
import Jar from "./Jar.svelte";
import More from "./More.svelte";
import OwnHerb from "./OwnHerb.svelte";
import Pantry from "./Pantry.svelte";
import Pick from "./Pick.svelte";
import Rack from "./Rack.svelte";
import Sample from "./Sample.svelte";
import Settings from "./Settings.svelte";
import Shelf from "./Shelf.svelte";
import StartTray from "./StartTray.svelte";
import Supply from "./Supply.svelte";
import Tray from "./Tray.svelte";
import Weigh from "./Weigh.svelte";
import Weighing from "./Weighing.svelte";

/** Every screen by the first word of its address. */
export const screens: Record<string, Component> = {
  garden: Garden,
  pick: Pick,
  harvest: Harvest,
  "correct-harvest": CorrectHarvest,
  bin: Bin,
  rack: Rack,
  "start-tray": StartTray,
  tray: Tray,
  weigh: Weigh,
  weighing: Weighing,
  "correct-tray": CorrectTray,
  sample: Sample,
  pantry: Pantry,
  fill: Fill,
  jar: Jar,
  "correct-jar": CorrectJar,
  fail: FailJar,
  more: More,
  herbs: Herbs,
  herb: Herb,
  "own-herb": OwnHerb,
  shelf: Shelf,
  supply: Supply,
  settings: Settings,
  deeds: Deeds,
};
