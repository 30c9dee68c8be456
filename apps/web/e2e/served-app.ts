/** Serves the built app on loopback for the journeys; builds it first when its sources changed. */
import { type PreviewServer, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { ensureBuilt } from '../../../scripts/built.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** address of the served app, ending in a slash */
    address: string;
  }
}

let server: PreviewServer | undefined;

export async function setup(project: TestProject) {
  ensureBuilt();
  server = await preview({
    root: 'apps/web',
    configFile: 'apps/web/vite.config.ts',
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 4630, strictPort: false },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('the served app has no port');
  project.provide('address', `http://127.0.0.1:${address.port}/`);
}

export async function teardown() {
  await server?.close();
}
