/** A search beside a command's own, in a thread of its own, where there is a second core for it. */
import { availableParallelism } from 'node:os';
import { MessageChannel, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { BesideLine, type Problem, type Search, type SearchStart } from '#workplan';

export interface BesideThread {
  /** Begins a search beside one of the same problem, which was started so. */
  begin(search: Search, problem: Problem, start: Pick<SearchStart, 'seed' | 'plan'>): void;
  /** Gives the search the best plan found beside it, and tells what it has itself. Waits for nothing. */
  swap(): void;
  /** Ends the search, not the thread. */
  end(): void;
  /** Ends the thread. */
  close(): void;
  /** resolves once it is up; what is begun before is begun then */
  readonly isUp: Promise<void>;
}

/**
 * A thread to search beside; null where there is one core only. Where it cannot start, or fails, the command's own
 * search goes on alone, and nobody need know.
 */
export function besideThread(): BesideThread | null {
  if (availableParallelism() < 2) return null;
  const { port1: port, port2 } = new MessageChannel();
  const worker = new Worker(new URL('../../bin/beside.mjs', import.meta.url), {
    workerData: { port: port2 },
    transferList: [port2],
  });
  const isUp = new Promise<void>((resolve) => {
    worker.once('message', () => {
      // a command that is done does not wait for it
      worker.unref();
      resolve();
    });
    worker.on('error', () => resolve());
  });
  const line = new BesideLine((told) => port.postMessage(told));
  return {
    begin: (search, problem, start) => line.begin(search, problem, start),
    swap() {
      for (;;) {
        const heard = receiveMessageOnPort(port);
        if (heard === undefined) break;
        line.hear(heard.message);
      }
      line.swap();
    },
    end: () => line.end(),
    close() {
      port.close();
      void worker.terminate();
    },
    isUp,
  };
}
