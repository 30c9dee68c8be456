import { readFileSync, writeFileSync } from 'node:fs';
import { besideThread } from './beside/beside-thread.ts';
import { ask } from './commands/ask.ts';
import { check, checkUsage } from './commands/check.ts';
import { demo, demoUsage } from './commands/demo.ts';
import { dues, duesUsage } from './commands/dues.ts';
import { fit, fitUsage } from './commands/fit.ts';
import { morning, morningUsage } from './commands/morning.ts';
import { plan, planUsage } from './commands/plan.ts';
import { power, powerUsage } from './commands/power.ts';
import { trailer, trailerUsage } from './commands/trailer.ts';
import { type ExitCode, exit, type Surroundings } from './surroundings.ts';

interface Command {
  readonly usage: readonly string[];
  readonly run: (args: readonly string[], surroundings: Surroundings) => ExitCode;
}

const commands: Readonly<Record<string, Command>> = {
  plan: { usage: planUsage, run: plan },
  fit: { usage: fitUsage, run: fit },
  dues: { usage: duesUsage, run: dues },
  morning: { usage: morningUsage, run: morning },
  power: { usage: powerUsage, run: power },
  trailer: { usage: trailerUsage, run: trailer },
  check: { usage: checkUsage, run: check },
  ask: {
    usage: [
      'fettle ask QUESTION --field value … [--json]',
      '  answers a question of the trade with its working; fettle ask --list names the questions',
    ],
    run: (args, { out }) => (ask(args, out) === 0 ? exit.done : exit.refused),
  },
  demo: { usage: demoUsage, run: demo },
};

const help = [
  'fettle: what a small sailing boat needs doing, laid into the days there are.',
  '',
  ...Object.values(commands).flatMap(({ usage }) => [...usage, '']),
  'Exit codes: 0 done, 1 refused or something is wrong in the file, 2 called wrongly.',
];

/** Runs one command. @returns its exit code */
export function main(args: readonly string[], surroundings: Surroundings = realSurroundings()): ExitCode {
  const [name, ...rest] = args;
  const { out } = surroundings;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    for (const line of help) out(line);
    return name === undefined ? exit.usage : exit.done;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!command) {
    out(`there is no command '${name}'; there are ${Object.keys(commands).join(', ')}. See fettle --help`);
    return exit.usage;
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    for (const line of command.usage) out(line);
    return exit.done;
  }
  return command.run(rest, surroundings);
}

function realSurroundings(): Surroundings {
  return {
    out: (line) => process.stdout.write(`${line}\n`),
    readFile: (path) => readFileSync(path),
    writeNewFile: (path, bytes) => writeFileSync(path, bytes, { flag: 'wx' }),
    now: () => Date.now(),
    elapsed: () => performance.now(),
    besideThread,
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  };
}
