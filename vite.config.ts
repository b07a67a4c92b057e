import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({ base: './', worker: { format: 'es' }, build: { target: 'es2022' }, plugins: [react()] });
