import type { Component } from "svelte";
import CorrectHarvest from "./CorrectHarvest.svelte";
import Garden from "./Garden.svelte";
import Pick from "./Pick.svelte";

/** Every screen by the first word of its address. */
export const screens: Record<string, Component> = {
  garden: Garden,
  pick: Pick,
  "correct-harvest": CorrectHarvest,
};
