/** Load paths in sentences with their numbers. Shared by the screens and the command line. */
import type { LoadCaseRecord } from '#boat-book';
import {
  type CaseBorne,
  type LoadPart,
  loadCautions,
  type Misfit,
  type PartStrength,
  type PathBears,
  type PathUse,
  partInWords,
  placesUnknown,
  stepped,
} from '#loads';
import { standardGravity_m_s2 } from '#units';
import { figureSaid, sourceInWords, workingInWords } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';

/** A force as it is said: `930 N (95 kg)`, `2.8 kN (286 kg)` */
export function forceInWords(force_N: number): string {
  const kg = Math.round(force_N / standardGravity_m_s2);
  return force_N < 1000
    ? `${Math.round(force_N)} N (${kg} kg)`
    : `${(force_N / 1000).toFixed(force_N < 10_000 ? 2 : 1)} kN (${kg} kg)`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const sentence = (text: string): string => `${capital(text)}.`;
const percent = (share: number): string => `${share > 0.995 && share <= 1 ? 100 : Math.round(share * 100)} %`;
const places = (n: number): string => (n === 1 ? '1 place' : `${n} places`);
const unsure = (seen: string): string => (seen === 'recalled' || seen === 'our assumption' ? `; ${seen} in part` : '');

/** What a part bears where it stands. */
export function bearsInWords(strength: PartStrength, times: number | null): string {
  const carries =
    times === null
      ? ' What it carries is not known.'
      : Math.abs(times - 1) < 0.005
        ? ''
        : ` It carries ${figureSaid(Number(times.toFixed(2)))} times the load of the path.`;
  switch (strength.kind) {
    case 'with its eye':
      return 'Bears with the eye it lies in.';
    case 'unknown':
      return `Not known: ${strength.because}. Wanted: ${strength.right}.${carries}`;
    case 'replace':
      return `Replace it: ${strength.because}.`;
    case 'known': {
      const breaking = strength.breaking_N === null ? '' : `, breaks at ${forceInWords(strength.breaking_N)}`;
      return `May work at ${forceInWords(strength.working_N)}${breaking}${unsure(strength.seen)}.${carries}`;
    }
  }
}

/** How a part’s figure came about. */
export function partWorking(strength: PartStrength, times: number | null): readonly WorkingTold[] {
  if (strength.kind === 'replace') return [{ title: 'From', lines: [sourceInWords(strength.whose)] }];
  if (strength.kind !== 'known') return [];
  return [
    {
      title: 'Worked out',
      lines: [
        ...strength.working.map(workingInWords),
        sentence(`it may work at ${forceInWords(strength.working_N)}`),
        ...(times === null || Math.abs(times - 1) < 0.005
          ? []
          : [sentence(`it carries ${figureSaid(times)} times the load of the path`)]),
      ],
    },
    { title: 'From', lines: [...new Set(strength.sources.map(sourceInWords))] },
  ];
}

/** What the path bears and where it is unknown. */
export function atMostInWords(path: PathBears, nameOf: (i: number) => string): readonly string[] {
  const n = placesUnknown(path);
  const { weakest, atMost_N, notLookedAt } = path;
  return [
    weakest === null || atMost_N === null
      ? 'No part of it is of known strength.'
      : n > 0
        ? `Of the parts that are known, the first to reach its working load is ${nameOf(weakest)}, at ${forceInWords(atMost_N)}.`
        : `It may work at ${forceInWords(atMost_N)}: then ${nameOf(weakest)} is first.`,
    ...(n > 0 ? [`Unknown at ${places(n)}.`] : []),
    ...(notLookedAt.length > 0 ? [`Not looked at, and counted as sound: ${notLookedAt.map(nameOf).join(', ')}.`] : []),
  ];
}

/** Whether the path bears one load, which part is first, and to what wind it is good. */
export function caseInWords(
  path: PathBears,
  { name, force_N, wind_kn, from }: LoadCaseRecord,
  { verdict, shares, goodTo_kn }: CaseBorne,
  nameOf: (i: number) => string,
): readonly string[] {
  const load = `${name}: ${forceInWords(force_N)}${wind_kn === null ? '' : ` at ${wind_kn} knots`}${from.trim() === '' ? '' : ` (${from})`}.`;
  const said = (i: number): string => {
    const share = shares[i];
    if (path.replace.includes(i)) return `${nameOf(i)} is to be replaced`;
    return share != null && share > 1
      ? `${nameOf(i)} at ${percent(share)} of its working load`
      : `${nameOf(i)} does not fit`;
  };
  const { weakest } = path;
  const first =
    weakest === null || shares[weakest] == null
      ? null
      : `${nameOf(weakest)} works at ${percent(shares[weakest])} of its working load`;
  const holds =
    verdict.kind === 'holds'
      ? `It holds. ${first ?? 'Nothing bears it'}, the most of any part.`
      : verdict.kind === 'unknown'
        ? `Whether it holds is unknown at ${places(verdict.places)}.${first === null ? '' : ` Of the parts that are known, ${first}, the most of any.`}`
        : `It does not hold: ${verdict.parts.map(said).join('; ')}.`;
  const wind =
    goodTo_kn === null || weakest === null
      ? []
      : [
          `${placesUnknown(path) > 0 || path.replace.length > 0 ? 'By the parts that are known, good' : 'Good'} to ${Math.floor(goodTo_kn)} knots, then ${nameOf(weakest)} is first.`,
        ];
  return [load, holds, ...wind];
}

type Notice = Pick<Misfit, 'at' | 'gravity' | 'right'> & { readonly wrong: string };

const order: readonly Misfit['gravity'][] = ['does not go together', 'not known', 'look to it'];

/** What is wrong in a path: what to replace, what does not go together, what is not known, what to look to. */
export function noticesOf(path: PathBears, nameOf: (i: number) => string): readonly Notice[] {
  const replace = path.replace.map((i): Notice => {
    const { strength } = path.parts[i]!;
    return {
      at: [i],
      gravity: 'does not go together',
      wrong: sentence(`${nameOf(i)}: ${strength.kind === 'replace' ? strength.because : 'gone'}`),
      right: 'Replace it: no figure stands for it as it is.',
    };
  });
  const gaps = path.gaps.map(
    ({ after, because, right }): Notice => ({
      at: [after, after + 1],
      gravity: 'not known',
      wrong: sentence(because),
      right: sentence(right),
    }),
  );
  const unknown = path.unknown.flatMap((i): Notice[] => {
    const { strength } = path.parts[i]!;
    return strength.kind === 'unknown'
      ? [
          {
            at: [i],
            gravity: 'not known',
            wrong: sentence(`${nameOf(i)}: ${strength.because}`),
            right: sentence(strength.right),
          },
        ]
      : [
          {
            at: [i],
            gravity: 'not known',
            wrong: sentence(`${nameOf(i)}: what it carries is not known`),
            right: 'The ratio of the winch before it.',
          },
        ];
  });
  const misfits = path.misfits.map(
    ({ at, gravity, what, right }): Notice => ({ at, gravity, wrong: sentence(what), right: sentence(right) }),
  );
  const all = [...replace, ...misfits, ...gaps, ...unknown];
  return order.flatMap((each) => all.filter(({ gravity }) => gravity === each));
}

/** What the next sizes of a part would change: what the path may then work at, which part is then first, what would not fit. */
export function steppedInWords(
  parts: readonly LoadPart[],
  i: number,
  use: PathUse,
  now: PathBears,
  nameOf: (i: number) => string,
): readonly string[] {
  const apart = (path: PathBears) => path.misfits.filter(({ gravity }) => gravity === 'does not go together');
  return (['up', 'down'] as const).flatMap((way) => {
    const step = stepped(parts, i, way, use);
    if (step === null || step.path.atMost_N === null || step.path.weakest === null || now.atMost_N === null) return [];
    const fails = apart(step.path).filter(({ at }) => at.includes(step.at));
    const then = `A size ${way}, ${partInWords(step.part)}, new: the path may work at ${forceInWords(step.path.atMost_N)} instead of ${forceInWords(now.atMost_N)}, and ${nameOf(step.path.weakest)} is first.`;
    return [fails.length === 0 ? then : `${then} But ${fails.map(({ what }) => what).join('; ')}.`];
  });
}

/** What can hurt at a path of this use. */
export function loadPathCautions(use: PathUse): readonly string[] {
  const { under, recoil, persons, guidance, slip } = loadCautions;
  return use === 'hoist' ? [under, slip, recoil, persons, guidance] : [recoil, persons, guidance];
}
