import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only in the build: the development server needs an inline script, inline styles and a web socket. */
const contentSecurityPolicy = (): Plugin => ({
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
      injectTo: 'head-prepend',
    },
  ],
});

// Every path is relative, so that the folder `dist` works from any address and from a plain file server.
export default defineConfig({
  base: './',
  worker: { format: 'es' },
  build: { target: 'es2022', sourcemap: true },
  plugins: [
    react(),
    contentSecurityPolicy(),
    VitePWA({
      // A newer version waits until the person says so: their work is on the screen.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Conewright',
        short_name: 'Conewright',
        description:
          'A loudspeaker design workbench: box, port and crossover before wood is cut and parts are soldered.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f3f5f4',
        theme_color: '#f3f5f4',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: { globPatterns: ['**/*.{js,css,html,svg,woff2,json}'], cleanupOutdatedCaches: true },
    }),
  ],
});
