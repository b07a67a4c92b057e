// `npm start`: the app with live reload, on this machine only.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const server = await createServer({
  configFile: join(dirname(fileURLToPath(import.meta.url)), '..', 'vite.config.ts'),
  root: join(dirname(fileURLToPath(import.meta.url)), '..'),
  server: { host: '127.0.0.1', port: Number(process.env.PORT ?? 5173) },
});
await server.listen();
const { port } = server.httpServer.address();
console.log(`\nConewright is open at http://127.0.0.1:${port}/   (Ctrl+C ends it)\n`);
