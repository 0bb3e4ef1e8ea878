import type { Component } from "svelte";
import Again from "./pantry/jar/Again.svelte";
import Bed from "./garden/Bed.svelte";
import Beds from "./garden/Beds.svelte";
import Bin from "./garden/Bin.svelte";
import BinBottle from "./pantry/bottle/BinBottle.svelte";
import Bottle from "./pantry/bottle/Bottle.svelte";
import Card from "./pantry/jar/Card.svelte";
import Check from "./pantry/bottle/Check.svelte";
import Cook from "./rack/Cook.svelte";
import Class from "./pantry/jar/Class.svelte";
import Compare from "./pantry/jar/Compare.svelte";
import CorrectBottle from "./pantry/bottle/CorrectBottle.svelte";
import CorrectHarvest from "./garden/CorrectHarvest.svelte";
import CorrectJar from "./pantry/jar/CorrectJar.svelte";
import CorrectRecipe from "./pantry/jar/CorrectRecipe.svelte";
import CorrectTray from "./rack/CorrectTray.svelte";
import Deeds from "./safe/Deeds.svelte";
import DriedForFresh from "./pantry/reckon/DriedForFresh.svelte";
import Dropper from "./pantry/bottle/Dropper.svelte";
import Droppers from "./pantry/bottle/Droppers.svelte";
import Due from "./plan/Due.svelte";
import EmptyJar from "./pantry/jar/EmptyJar.svelte";
import FailJar from "./pantry/jar/FailJar.svelte";
import Fill from "./pantry/jar/Fill.svelte";
import FillBottles from "./pantry/bottle/FillBottles.svelte";
import FreshInSpirit from "./pantry/reckon/FreshInSpirit.svelte";
import Garden from "./garden/Garden.svelte";
import Give from "./pantry/bottle/Give.svelte";
import Glass from "./pantry/reckon/Glass.svelte";
import Harvest from "./garden/Harvest.svelte";
import Herb from "./garden/Herb.svelte";
import Herbs from "./garden/Herbs.svelte";
import Jar from "./pantry/jar/Jar.svelte";
import KeepRecipe from "./pantry/jar/KeepRecipe.svelte";
import Keeps from "./pantry/reckon/Keeps.svelte";
import Labels from "./pantry/bottle/Labels.svelte";
import Lot from "./find/Lot.svelte";
import Measures from "./pantry/reckon/Measures.svelte";
import More from "./settings/More.svelte";
import OwnHerb from "./garden/OwnHerb.svelte";
import Pantry from "./pantry/Pantry.svelte";
import Pick from "./garden/Pick.svelte";
import Plan from "./plan/Plan.svelte";
import PlanBottles from "./plan/PlanBottles.svelte";
import Rack from "./rack/Rack.svelte";
import Recipe from "./pantry/jar/Recipe.svelte";
import Recipes from "./pantry/jar/Recipes.svelte";
import Reckoner from "./pantry/reckon/Reckoner.svelte";
import Safe from "./safe/Safe.svelte";
import SafeExport from "./safe/SafeExport.svelte";
import SafeImport from "./safe/SafeImport.svelte";
import SafeLost from "./safe/SafeLost.svelte";
import SafeCheck from "./safe/SafeCheck.svelte";
import SafeRescue from "./safe/SafeRescue.svelte";
import SafeRestore from "./safe/SafeRestore.svelte";
import Sample from "./rack/Sample.svelte";
import Scan from "./find/Scan.svelte";
import Search from "./find/Search.svelte";
import Season from "./plan/Season.svelte";
import Settings from "./settings/Settings.svelte";
import Shelf from "./pantry/Shelf.svelte";
import StartTray from "./rack/StartTray.svelte";
import Strain from "./pantry/jar/Strain.svelte";
import Supply from "./pantry/Supply.svelte";
import TakeIn from "./pantry/jar/TakeIn.svelte";
import Thin from "./pantry/reckon/Thin.svelte";
import TopUp from "./pantry/jar/TopUp.svelte";
import Trace from "./find/Trace.svelte";
import Tray from "./rack/Tray.svelte";
import Use from "./pantry/bottle/Use.svelte";
import Weigh from "./rack/Weigh.svelte";
import Weighing from "./rack/Weighing.svelte";

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
  compare: Compare,
  fail: FailJar,
  empty: EmptyJar,
  again: Again,
  strain: Strain,
  "top-up": TopUp,
  "fill-bottles": FillBottles,
  "keep-recipe": KeepRecipe,
  recipe: Recipe,
  "correct-recipe": CorrectRecipe,
  recipes: Recipes,
  card: Card,
  class: Class,
  "take-in": TakeIn,
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
  reckoner: Reckoner,
  thin: Thin,
  "fresh-in-spirit": FreshInSpirit,
  keeps: Keeps,
  "dried-for-fresh": DriedForFresh,
  measures: Measures,
  glass: Glass,
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
