import type { Component } from "svelte";
import Again from "./Again.svelte";
import Bed from "./Bed.svelte";
import Beds from "./Beds.svelte";
import Bin from "./Bin.svelte";
import BinBottle from "./BinBottle.svelte";
import Bottle from "./Bottle.svelte";
import Check from "./Check.svelte";
import Cook from "./Cook.svelte";
import CorrectBottle from "./CorrectBottle.svelte";
import CorrectHarvest from "./CorrectHarvest.svelte";
import CorrectJar from "./CorrectJar.svelte";
import CorrectTray from "./CorrectTray.svelte";
import Deeds from "./Deeds.svelte";
import Dropper from "./Dropper.svelte";
import Droppers from "./Droppers.svelte";
import Due from "./Due.svelte";
import EmptyJar from "./EmptyJar.svelte";
import FailJar from "./FailJar.svelte";
import Fill from "./Fill.svelte";
import FillBottles from "./FillBottles.svelte";
import Garden from "./Garden.svelte";
import Give from "./Give.svelte";
import Harvest from "./Harvest.svelte";
import Herb from "./Herb.svelte";
import Herbs from "./Herbs.svelte";
import Jar from "./Jar.svelte";
import KeepRecipe from "./KeepRecipe.svelte";
import Labels from "./Labels.svelte";
import Lot from "./Lot.svelte";
import More from "./More.svelte";
import OwnHerb from "./OwnHerb.svelte";
import Pantry from "./Pantry.svelte";
import Pick from "./Pick.svelte";
import Plan from "./Plan.svelte";
import PlanBottles from "./PlanBottles.svelte";
import Rack from "./Rack.svelte";
import Recipe from "./Recipe.svelte";
import Recipes from "./Recipes.svelte";
import Safe from "./Safe.svelte";
import SafeExport from "./SafeExport.svelte";
import SafeImport from "./SafeImport.svelte";
import SafeLost from "./SafeLost.svelte";
import SafeCheck from "./SafeCheck.svelte";
import SafeRescue from "./SafeRescue.svelte";
import SafeRestore from "./SafeRestore.svelte";
import Sample from "./Sample.svelte";
import Scan from "./Scan.svelte";
import Search from "./Search.svelte";
import Season from "./Season.svelte";
import Settings from "./Settings.svelte";
import Shelf from "./Shelf.svelte";
import StartTray from "./StartTray.svelte";
import Strain from "./Strain.svelte";
import Supply from "./Supply.svelte";
import TopUp from "./TopUp.svelte";
import Trace from "./Trace.svelte";
import Tray from "./Tray.svelte";
import Use from "./Use.svelte";
import Weigh from "./Weigh.svelte";
import Weighing from "./Weighing.svelte";

/** Every screen by the first word of its address; the garden alone is there before all others. */
export const screens: Record<string, Component> = {
  garden: Garden,
  pick: Pick,
  harvest: Harvest,
  "correct-harvest": CorrectHarvest,
  bin: Bin,
  beds: Beds,
  bed: Bed,
  rack: Rack,
  cook: Cook,
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
  empty: EmptyJar,
  again: Again,
  strain: Strain,
  "top-up": TopUp,
  "fill-bottles": FillBottles,
  "keep-recipe": KeepRecipe,
  recipe: Recipe,
  recipes: Recipes,
  bottle: Bottle,
  use: Use,
  give: Give,
  check: Check,
  "bin-bottle": BinBottle,
  "correct-bottle": CorrectBottle,
  labels: Labels,
  lot: Lot,
  scan: Scan,
  droppers: Droppers,
  dropper: Dropper,
  due: Due,
  trace: Trace,
  plan: Plan,
  "plan-bottles": PlanBottles,
  season: Season,
  search: Search,
  more: More,
  herbs: Herbs,
  herb: Herb,
  "own-herb": OwnHerb,
  shelf: Shelf,
  supply: Supply,
  settings: Settings,
  deeds: Deeds,
  safe: Safe,
  "safe-restore": SafeRestore,
  "safe-merge": SafeRestore,
  "safe-export": SafeExport,
  "safe-import": SafeImport,
  "safe-check": SafeCheck,
  "safe-rescue": SafeRescue,
  "safe-lost": SafeLost,
};
