import type { Composition, JarCard, JarPage, Proposal, Reply, Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";
import { unroll, type Paging } from "./roll.svelte";

/** A jar looks new where it was poured or strained, so a photo is offered there. */
const ofJar = ({ jar }: { jar: JarPage }) => ({ kind: "jar" as const, id: jar.id });

/** The jars in the pantry, and what may become one. */
export class Jars {
  private readonly shelf: Paging<"jar.list", JarCard> = {
    name: "jar.list",
    nouns: ["jar", "straining", "bottle"],
    after: (last) => (last ? { after: last.id } : {}),
    lines: (reply) => reply.jars,
    more: (reply) => reply.more,
    pages: 1,
  };

  constructor(private readonly desk: Desk) {}

  /** The jars, as far down as is looked. */
  list() {
    return unroll(this.desk, this.shelf);
  }

  /** The jars that stand, by whether they may be strained yet. */
  standing(state: "due" | "steeping") {
    return hold(this.desk, new Held(this.desk, "jar.list", { state, limit: 1000 }, ["jar", "straining"]));
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "jar.show", { id }, ["jar", "harvest", "shake", "straining", "bottle", "use", "check", "recipe", "portrait"]));
  }

  /** The same, read once. */
  async shown(id: string): Promise<JarPage> {
    return (await this.desk.ask("jar.show", { id })).jar;
  }

  lots() {
    return hold(this.desk, new Held(this.desk, "lot.list", { limit: 1000 }, ["harvest", "tray", "jar"]));
  }

  preparations() {
    return hold(this.desk, new Held(this.desk, "preparation.list", {}, []));
  }

  compose(composition: Composition): Promise<Proposal> {
    return this.desk.ask("jar.compose", composition);
  }

  /** The page of a jar that was poured or strained, which its form goes on to. */
  private readonly ahead = ({ jar: { id } }: Reply<"jar.pour">) => this.desk.askAhead("jar.show", { id });

  async pour(request: Request<"jar.pour">) {
    return (await this.desk.write("jar.pour", request, words.jar.poured, { of: ofJar, ahead: this.ahead })).jar;
  }

  async correct(request: Request<"jar.correct">) {
    return (await this.desk.write("jar.correct", request, words.jar.corrected)).jar;
  }

  async fail(id: string, reason: string) {
    return (await this.desk.write("jar.fail", { id, reason }, words.jar.setAside)).jar;
  }

  async shake(jar: string) {
    return (await this.desk.write("jar.shake", { jar }, words.life.shaken)).jar;
  }

  async topUp(request: Request<"jar.top_up">) {
    return (await this.desk.write("jar.top_up", request, words.life.toppedUp)).jar;
  }

  async strain(request: Request<"jar.strain">) {
    return (await this.desk.write("jar.strain", request, words.life.strained, { of: ofJar, ahead: this.ahead })).jar;
  }

  async empty(request: Request<"jar.empty">) {
    return (await this.desk.write("jar.empty", request, words.life.emptied)).jar;
  }

  async keepRecipe(request: Request<"jar.keep_recipe">) {
    return (await this.desk.write("jar.keep_recipe", request, words.recipe.kept)).recipe;
  }

  recipes() {
    return hold(this.desk, new Held(this.desk, "recipe.list", {}, ["recipe"]));
  }

  readCode(request: Request<"recipe.read_code">) {
    return this.desk.ask("recipe.read_code", request);
  }

  async takeIn(request: Request<"recipe.take_in">) {
    return (await this.desk.write("recipe.take_in", request, words.recipe.kept)).recipe;
  }

  async correctRecipe(request: Request<"recipe.correct">) {
    return (await this.desk.write("recipe.correct", request, words.recipe.corrected)).recipe;
  }
}
