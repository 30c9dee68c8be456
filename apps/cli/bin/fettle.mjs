#!/usr/bin/env node
// Starts the command line from any folder: the program is TypeScript, which tsx reads as it is.
import { register } from 'tsx/esm/api';

register();
const { main } = await import(new URL('../src/main.ts', import.meta.url).href);
process.exitCode = await main(process.argv.slice(2));
