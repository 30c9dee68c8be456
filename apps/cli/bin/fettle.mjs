#!/usr/bin/env node
// Starts the command line from any folder: the program is TypeScript, which tsx reads as it is.
import { register } from 'tsx/esm/api';

// a reader that has had enough (`fettle plan … | head`) is no fault
process.stdout.on('error', (error) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});
register();
const { main } = await import(new URL('../src/main.ts', import.meta.url).href);
process.exitCode = await main(process.argv.slice(2));
