import "./styles/index.css";
import { mount } from "svelte";
import App from "./App.svelte";
import { openBook } from "./state";
import { language } from "./words";

document.documentElement.lang = language;
const target = document.getElementById("app");
if (target) mount(App, { target, props: { book: await openBook() } });
