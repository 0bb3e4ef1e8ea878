import { vitePreprocess } from "@sveltejs/vite-plugin-svelte";

export default {
  preprocess: vitePreprocess(),
  compilerOptions: {
    runes: true,
    // A form is filled once from what was there when its screen opened; a later answer must not overwrite what is typed.
    warningFilter: ({ code }) => code !== "state_referenced_locally",
  },
};
