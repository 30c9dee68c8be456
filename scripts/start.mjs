// `npm start`: installs what is missing, builds when the sources changed, serves the app on this machine alone.
import { ensureBuilt } from './built.mjs';
import { ensureInstalled, fail, root } from './installed.mjs';

const port = Number(process.env.PORT ?? 4620);
if (!Number.isInteger(port) || port < 1 || port > 65535) {
  fail(`PORT must be a whole number from 1 to 65535, got '${process.env.PORT}'.`);
}
ensureInstalled();
ensureBuilt();
const { preview } = await import('vite');
try {
  await preview({
    root: `${root}apps/web`,
    configFile: `${root}apps/web/vite.config.ts`,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port, strictPort: true },
  });
} catch (error) {
  if (/port .* in use/i.test(String(error))) {
    fail(`Port ${port} is busy. End what uses it, or choose another: PORT=4621 npm start`);
  }
  throw error;
}
console.log(`Fettle is at http://127.0.0.1:${port}/  (Ctrl-C ends it)`);
