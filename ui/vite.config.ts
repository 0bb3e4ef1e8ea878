import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vite";

// TRUGBOOK_PREVIEW lets `vite` alone serve the page while a preview server answers the calls.
const core = process.env["TRUGBOOK_PREVIEW"] ?? "http://127.0.0.1:4173";

export default defineConfig({
  base: "./",
  plugins: [svelte()],
  build: {
    target: ["es2022", "safari16"],
    // A font inlined as base64 is a third larger and cannot be cached apart.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
  },
  server: { host: "127.0.0.1", proxy: { "/call": core, "/photo": core } },
});
