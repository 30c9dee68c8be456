import { assuming, choice, type Field, force, length, type Source } from '#working';
import { sizeField } from '../path/loads-fields.ts';
import { type RiggingScrew, type ScrewThread, screwThreadTitles, threadPitch_mm } from './rigging-screw.ts';
import { type Laid, modulus_kN_mm2 } from './wire-stretch.ts';

/** The fields and sources that questions about the rig share. */
export const laidField = (): Field<Laid> =>
  choice(
    (Object.keys(modulus_kN_mm2) as Laid[]).map((id) => ({ id, title: id })),
    'how the wire is laid',
  ) as Field<Laid>;
export const wireSizeField = () => sizeField('wire across');
export const stayLengthField = () => length('m', 0.5, 30, 'the stay, from pin to pin');
export const threadField = (): Field<ScrewThread> =>
  choice(
    (Object.keys(threadPitch_mm) as ScrewThread[]).map((id) => ({ id, title: screwThreadTitles[id] })),
    'thread of the rigging screw',
  ) as Field<ScrewThread>;
export const endsField = (): Field<RiggingScrew['ends']> =>
  assuming(
    choice(
      [
        { id: 'both', title: 'at both ends, one left-handed' },
        { id: 'one', title: 'at one end' },
      ],
      'where the body of the screw has thread',
    ) as Field<RiggingScrew['ends']>,
    'both',
    'at both ends',
    'the usual rigging screw',
  );
export const tensionField = (meaning: string) => force('N', 0, 100_000, meaning);

export const rigSources = {
  hooke: { title: 'elastic stretch, T = E·A·δ/L', seen: 'common practice' },
  threads: { title: 'unified fine threads (ASME B1.1) and metric coarse (ISO 261)', seen: 'recalled' },
  moments: {
    title: 'moments about a hinge, then the balance of forces: physics textbook, hinged strut and boom',
    seen: 'read second-hand',
  },
  lever: { title: 'raising a mast, pull by levers (boatdesign.net thread 42513)', seen: 'read second-hand' },
  geometry: { title: 'the balance of a stay pulled sideways, its two parts as straight lines', seen: 'our derivation' },
  tuning: {
    title: 'cap shrouds at 15 to 20 % of breaking, 10 to 15 % on light masthead rigs, never over 25 % (sailing forums)',
    seen: 'read second-hand',
  },
  book: { title: 'Toss, The Complete Rigger’s Apprentice, page 167', seen: 'read second-hand' },
} as const satisfies Record<string, Source>;

export const rigCautions = {
  wires:
    'No mast goes up or down near overhead lines: look up and along the whole way first. Touching or coming near one kills, through a wet stay too.',
  path: 'Nobody stands under the mast nor where it could fall, to either side as well as aft.',
  sideways:
    'A mast falls sideways: shrouds that hang slack hold nothing. Guy mast and pole to both sides at the height of the hinge’s own line before it leaves its crutch.',
  alone:
    'Alone only with side guys set, the tackle made fast at every pause, and someone told what is being done and when it should be done by.',
  stored:
    'A stay under tension is a spring: ease a rigging screw, never knock a pin out of it, and pin or wire the screw afterwards.',
} as const;
