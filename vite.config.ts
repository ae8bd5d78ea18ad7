import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

// One file configures the page, the command line's build and the tests (see DEVELOPERS.md).
export default defineConfig({
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: { target: 'baseline-widely-available', chunkSizeWarningLimit: 1200 },
  preview: { host: '127.0.0.1', port: 4173, strictPort: false },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    testTimeout: 60_000,
  },
});
