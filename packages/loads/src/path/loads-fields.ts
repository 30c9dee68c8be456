import { assuming, choice, length } from '#working';
import { type Use, uses } from './factor.ts';

/** The fields that questions about parts share, each made anew. */
export const sizeField = (meaning: string) => length('mm', 0.5, 60, meaning);

/** Metres as millimetres, to a thousandth: sizes in tables are looked up by them. */
export const inMillimetres = (size: number) => Math.round(size * 1e6) / 1e3;

export const purposeField = () =>
  assuming(
    choice(
      (Object.keys(uses) as Use[]).map((id) => ({ id, title: uses[id] })),
      'what it is for: it sets how far below breaking it may work',
    ),
    'hoist' as Use,
    uses.hoist,
    'it asks for the most room',
  );
