import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

// what is built is what people get, also when a test run (NODE_ENV=test) asks for the build
if (process.argv.includes('build')) process.env.NODE_ENV = 'production';

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    // the planner and the book are Workers of their own; everything is kept for use without a network
    chunkSizeWarningLimit: 400,
  },
  worker: { format: 'es' },
  plugins: [
    react(),
    VitePWA({
      strategies: 'generateSW',
      // a new version is offered; it never takes over under the keeper's hands
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['icon.svg', 'icon-192.png', 'icon-512.png', 'icon-maskable-512.png'],
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,wasm,json,fettle}'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        navigateFallback: 'index.html',
        cleanupOutdatedCaches: true,
        // the first visit is usable offline at once, without a reload
        clientsClaim: true,
        importScripts: ['notice-tap.js'],
      },
      manifest: {
        id: '/',
        name: 'Fettle',
        short_name: 'Fettle',
        description: 'What needs doing on a small boat, laid into the days there are.',
        lang: 'en-GB',
        start_url: '/',
        scope: '/',
        display: 'standalone',
        background_color: '#f8f5ee',
        theme_color: '#f8f5ee',
        icons: [
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
});
