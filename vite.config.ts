import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

/** Keeps the whole page on the device after one visit; registered by src/main.tsx, which offers a newer version and forces none. */
const offline = VitePWA({
  registerType: 'prompt',
  injectRegister: null,
  workbox: {
    globPatterns: ['**/*.{js,css,html,svg,png,woff2,ttf,wasm,json}'],
    // Above the largest part of the page, the 3D view: a part that is left out would be missed offline.
    maximumFileSizeToCacheInBytes: 6_000_000,
    navigateFallback: 'index.html',
    cleanupOutdatedCaches: true,
    // The first visit is served from the store as soon as that is full.
    clientsClaim: true,
  },
  manifest: {
    name: 'Voussoir',
    short_name: 'Voussoir',
    description: 'Planning workbench for curved LED stages.',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#f7f5ef',
    theme_color: '#f7f5ef',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
});

// One file configures the page, the command line's build and the tests (see DEVELOPERS.md).
export default defineConfig({
  base: './',
  publicDir: 'src/ui/icons',
  plugins: [react(), offline],
  worker: { format: 'es' },
  build: { target: 'baseline-widely-available', chunkSizeWarningLimit: 1200 },
  preview: { host: '127.0.0.1', port: 4173, strictPort: false },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    setupFiles: ['tests/same-seed.ts'],
    // The core is pure: test files share the modules that they load, which takes a third of the time.
    isolate: false,
    testTimeout: 60_000,
  },
});
