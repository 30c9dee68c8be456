// The thread of the search beside a command's own; started by src/beside/beside-thread.ts.
import { register } from 'tsx/esm/api';

register();
await import(new URL('../src/beside/in-thread.ts', import.meta.url).href);
