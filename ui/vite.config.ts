/// <reference types="vitest/config" />
import { svelte } from "@sveltejs/vite-plugin-svelte";
import licences from "rollup-plugin-license";
import { defineConfig } from "vite";

// TRUGBOOK_PREVIEW lets `vite` alone serve the page while a preview server answers the calls.
const core = process.env["TRUGBOOK_PREVIEW"] ?? "http://127.0.0.1:4173";
// TRUGBOOK_LICENCES names the file that gets the licences of what goes into the page's scripts; only a package asks for it.
const file = process.env["TRUGBOOK_LICENCES"];

export default defineConfig({
  base: "./",
  plugins: [svelte(), ...(file ? [licences({ thirdParty: { output: { file } } })] : [])],
  build: {
    target: ["es2022", "safari16"],
    // A font inlined as base64 is a third larger and cannot be cached apart.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    rolldownOptions: {
      // Two files that need each other are one thing in two places.
      checks: { circularDependency: true },
      onLog(level, log, report) {
        if (log.code !== "CIRCULAR_DEPENDENCY") report(level, log);
        // A component may show itself, as a chain shows the chain of each plant; packages are not ours to mend.
        else if (!/node_modules|: (\S+) -> \1\./.test(log.message)) throw new Error(log.message);
      },
    },
  },
  // Nothing here waits for anything, and a slow machine is no fault.
  test: { testTimeout: 0 },
  server: { host: "127.0.0.1", proxy: { "/call": core, "/photo": core } },
});
