/** What runs in the thread of a search beside a command's own: it looks until it is told to end, and says what it finds. */

import type { MessagePort } from 'node:worker_threads';
import { parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import { SearchBeside, type ToldBeside } from '#workplan';

/** between two slices it hears what it is told. [ms] */
const slice_ms = 15;

const port: MessagePort = workerData.port;
const beside = new SearchBeside((found) => port.postMessage(found));

port.on('message', (told: ToldBeside) => {
  beside.hear(told);
  look();
});
parentPort?.postMessage('ready');

function look(): void {
  let iterations = 1;
  for (;;) {
    const began = performance.now();
    if (!beside.advance(iterations)) return;
    iterations = performance.now() - began < slice_ms ? iterations * 2 : Math.max(1, Math.floor(iterations / 2));
    for (;;) {
      const heard = receiveMessageOnPort(port);
      if (heard === undefined) break;
      beside.hear(heard.message);
    }
  }
}
