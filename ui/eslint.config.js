import { importX, createNodeResolver } from "eslint-plugin-import-x";
import svelte from "eslint-plugin-svelte";
import ts from "typescript-eslint";
import svelteConfig from "./svelte.config.js";

/** The floors of the page from the lowest; a file imports from its own floor and from those below. */
const floors = ["drawings", "kept", "words", "host", "api", "format", "state", "parts"];
/** A place below another may import what that one shares, in `parts` and `forms`, and not its screens. */
const places = ["garden", "rack", "pantry", "pantry/jar", "pantry/bottle", "pantry/reckon", "plan", "find", "safe", "settings"];
const src = (path) => `./src/${path}`;
const screens = ["*", "pantry/{jar,bottle,reckon}"].map((place) => src(`places/${place}/*.svelte`));

const arrows = [
  ...floors.map((floor, at) => ({
    target: src(floor),
    from: [...floors.slice(at + 1), "places"].map(src),
    message: "A floor imports from itself and from those below: parts, state, format, api, host, words, kept, drawings.",
  })),
  ...places.map((place) => {
    const above = place.split("/").slice(0, -1).join("/");
    const shared = above ? [`./${above}/parts`, `./${above}/forms`] : [];
    return {
      target: src(`places/${place}`),
      from: src("places"),
      except: [`./${place}`, ...shared],
      message: "A place imports itself and what is shared.",
    };
  }),
  {
    target: ["parts/**", "forms/**", "*.svelte"].map((kind) => src(`places/pantry/${kind}`)),
    from: ["jar/**", "bottle/**", "reckon/**"].map((kind) => src(`places/pantry/${kind}`)),
    message: "The pantry's own knows neither jar nor bottle nor reckoner.",
  },
  {
    target: [...screens, src("places/**/parts/**"), src("places/**/forms/**")],
    from: screens,
    message: "A screen is shown by its address alone.",
  },
  {
    target: src("places/**/forms/**"),
    from: [src("places/**/parts/**"), src("parts/**")],
    message: "A form knows nothing of what shows it.",
  },
];

/** What reaches out of the page. */
const doors = ["fetch", "XMLHttpRequest", "WebSocket", "localStorage", "sessionStorage", "indexedDB"];
const owners = ["window", "globalThis", "self"];

/** Attributes and properties that a person reads or hears. */
const read = /^(alt|aria-(description|label|valuetext)|heading|hint|label|legend|more|placeholder|said|text|title)$/;
/** A letter that is no part of an entity such as `&nbsp;`. */
const word = "/(^|[^&#\\p{L}])\\p{L}/u";
/** A text that reads as words and not as a key: with a capital at its head or a space in it. */
const spoken = "/^\\p{Lu}|\\p{L}.* |^ .*\\p{L}/u";
const shown = [":not(SvelteAttribute, SvelteStyleDirective) > SvelteMustacheTag", `SvelteAttribute[key.name=${read}] > SvelteMustacheTag`];
const texts = [
  `:not(SvelteStyleElement) > SvelteText[value=${word}]`,
  `SvelteAttribute[key.name=${read}] > SvelteLiteral[value=${word}]`,
  ...shown.flatMap((tag) => [`${tag} Literal[value=${spoken}]`, `${tag} TemplateElement[value.raw=${word}]`]),
];
const wordless = texts.map((selector) => ({ selector, message: "Every word of the page stands in src/words." }));

export default ts.config(
  { ignores: ["dist", "src/api/bindings.ts"] },
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  {
    files: ["src/**/*.{ts,svelte}"],
    plugins: { "import-x": importX },
    settings: { "import-x/resolver-next": [createNodeResolver({ extensions: [".ts", ".svelte"] })] },
    rules: {
      // What no screen shows needs no reactive map.
      "svelte/prefer-svelte-reactivity": "off",
      // A space at the end of a block is kept by braces alone.
      "svelte/no-useless-mustaches": "off",
      "import-x/no-unresolved": "error",
      "import-x/no-restricted-paths": ["error", { zones: arrows }],
      "no-restricted-globals": ["error", ...doors.map((name) => ({ name, message: "Only host and kept reach out of the page." }))],
      "no-restricted-properties": ["error", ...owners.flatMap((object) => doors.map((property) => ({ object, property })))],
      "no-restricted-imports": ["error", { patterns: [{ group: ["@tauri-apps/*"], message: "Only host knows the window." }] }],
      "@typescript-eslint/no-unused-vars": ["error", { varsIgnorePattern: "^_", argsIgnorePattern: "^_" }],
    },
  },
  {
    files: ["src/{host,kept}/**"],
    rules: { "no-restricted-globals": "off", "no-restricted-properties": "off", "no-restricted-imports": "off" },
  },
  { files: ["**/*.svelte", "**/*.svelte.ts"], languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } } },
  { files: ["src/**/*.svelte"], rules: { "no-restricted-syntax": ["error", ...wordless] } },
  {
    files: [`src/{${floors.slice(0, -1).join()}}/**/*.svelte`, "src/places/**/forms/**/*.svelte"],
    rules: { "no-restricted-syntax": ["error", { selector: "Program", message: "A component stands among the parts or the screens." }] },
  },
);
