/** What to bed, seal or glue a joint with, in sentences; how much of it; and what of the stores that is. */
import type { Book, Id, StoreRecord } from '#boat-book';
import {
  amountQuestions,
  type BeddingKind,
  beddingChoice,
  beddingKinds,
  beddingQuestions,
  type Joint,
} from '#materials';
import { type Answer, type Asked, ask, figureOf } from '#working';
import { answerTold } from './answer-told.ts';
import { figureSaid } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';
import { hasWords } from './recipe-stores.ts';

/** A joint as it is asked about. */
export interface BeddingAsked {
  readonly joint: Joint;
  /** size of the foot or seam that is bedded, and how many alike; null: not measured, so no amount */
  readonly foot: { readonly length_mm: number; readonly width_mm: number; readonly count: number } | null;
}

/** One kind that does: `Butyl tape`, `never sets, so …`. */
export interface BeddingThatDoes {
  readonly kind: BeddingKind;
  readonly title: string;
  readonly sentence: string;
  /** what to look to with it */
  readonly mind: readonly string[];
  readonly cautions: readonly string[];
}

export interface BeddingTold {
  readonly verdict: string;
  /** what it wants, how long it takes, what it must not touch; where nothing does, what would help */
  readonly lines: readonly string[];
  /** best first */
  readonly does: readonly BeddingThatDoes[];
  readonly wrong: readonly { readonly title: string; readonly sentence: string }[];
  /** what fills the joint, waste counted; null: its size is not known. [ml] */
  readonly amount_ml: number | null;
  /** of the joint, whatever it is made with */
  readonly cautions: readonly string[];
  readonly working: readonly WorkingTold[];
}

/** More than fills the joint, for what squeezes out and is wiped off. Common practice. [%] */
const waste_pct = 50;

/** What is told of a joint. Sizes must lie in the ranges of the questions (`materials.bedding-choice`, `materials.bedding`). */
export function beddingTold({ joint, foot }: BeddingAsked): BeddingTold {
  const asked = answered('materials.bedding-choice', {
    a: joint.parts[0],
    b: joint.parts[1],
    held: joint.held,
    apart: joint.apart.replace(' ', '-'),
    where: joint.where.replace(' ', '-'),
    gap: `${joint.gap_mm} mm`,
    movement: `${joint.movement_mm} mm`,
    painted: joint.painted ? 'yes' : 'no',
    // a moisture-cured one sets from its edges in: half the narrower side of a foot
    ...(foot === null ? {} : { in: `${Math.max(1, Math.min(foot.length_mm, foot.width_mm) / 2)} mm` }),
  });
  const { serves, refused, cautions } = beddingChoice(joint);
  const best = serves[0];
  const amount_ml = foot === null ? null : amountOf(joint, foot);
  const { answer } = asked;
  return {
    verdict: best?.title ?? 'Nothing out of a tube, tin or roll does here.',
    lines:
      best === undefined
        ? answer.kind === 'truth'
          ? [sentence(answer.because)]
          : []
        : [
            ...(best.width_mm === null
              ? []
              : [`Between the parts it wants ${figureSaid(best.width_mm)} mm or more, for their movement.`]),
            setLine(answer),
            ...(amount_ml === null ? [] : [`About ${figureSaid(amount_ml)} ml fills it, what squeezes out counted.`]),
            best.attacks.length === 0
              ? 'It harms nothing it is likely to touch.'
              : `Keep it off ${String(figureOf(answer, 'attacks')?.value)}.`,
          ],
    does: serves.map(({ kind, title, because, mind, cautions: hurts }) => ({
      kind,
      title,
      sentence: `${title} ${because}.`,
      mind,
      cautions: hurts,
    })),
    wrong: refused.map(({ title, because }) => ({ title, sentence: `${title} ${because}.` })),
    amount_ml,
    cautions,
    working: answerTold({
      ...asked,
      // the kinds stand on the screen, each with its reason
      answer: { ...answer, working: answer.working.filter(({ formula }) => formula !== 'does' && formula !== 'wrong') },
    }),
  };
}

/** `Dry to the touch in 1 to 24 h, set through in about 4 days on a mild day.` */
function setLine(answer: Answer): string {
  const through = figureOf(answer, 'through');
  const skin = figureOf(answer, 'skin');
  if (through === undefined) return '';
  if (typeof through.value === 'string') return sentence(through.value);
  if (through.value === 0) return 'Nothing to wait for: it never sets.';
  const days = through.value;
  const long =
    days >= 1.5
      ? `${figureSaid(Math.round(days))} days`
      : days >= 0.1
        ? `${figureSaid(Math.round(days * 24))} h`
        : `${Math.round(days * 1440)} min`;
  const touch =
    skin === undefined ? '' : `Dry to the touch in ${figureSaid(skin.low ?? 0)} to ${figureSaid(skin.high ?? 0)} h; `;
  const till =
    through.meaning.startsWith('till it') || through.meaning.startsWith('till both')
      ? through.meaning
      : 'till it has set through';
  return sentence(`${touch}about ${long} ${till}, at 20 °C and 60 %`);
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

function amountOf({ gap_mm }: Joint, { length_mm, width_mm, count }: NonNullable<BeddingAsked['foot']>): number {
  const { answer } = answered('materials.bedding', {
    length: `${length_mm} mm`,
    width: `${width_mm} mm`,
    // under half a millimetre is wiped on as thin as that
    layer: `${Math.min(10, Math.max(0.5, gap_mm))} mm`,
    count,
  });
  const value = figureOf(answer, 'V')?.value;
  if (typeof value !== 'number') throw new RangeError('materials.bedding has no volume');
  return value * (1 + waste_pct / 100);
}

/** Words of the name of a thing in the stores that is of a kind, and what it is sold in. */
const kept: Readonly<Record<BeddingKind, { readonly words: readonly string[]; readonly pack: StoreRecord['pack'] }>> = {
  'butyl-tape': { words: ['butyl'], pack: { word: 'roll', holds: 250 } },
  'polysulphide-sealant': { words: ['polysulphide'], pack: { word: 'tube', holds: 290 } },
  'polyurethane-sealant': { words: ['polyurethane', 'sealant'], pack: { word: 'tube', holds: 290 } },
  'hybrid-sealant': { words: ['hybrid'], pack: { word: 'tube', holds: 290 } },
  'silicone-sealant': { words: ['silicone'], pack: { word: 'tube', holds: 290 } },
  'acrylic-sealant': { words: ['acrylic', 'sealant'], pack: { word: 'tube', holds: 290 } },
  epoxy: { words: ['epoxy', 'resin'], pack: null },
  'thickened-epoxy': { words: ['epoxy', 'resin'], pack: null },
  'polyester-filler': { words: ['polyester', 'filler'], pack: null },
  methacrylate: { words: ['methacrylate'], pack: null },
  'contact-adhesive': { words: ['contact', 'adhesive'], pack: null },
  'wood-glue': { words: ['wood', 'glue'], pack: null },
};

export interface BeddingStore {
  /** the store of the book that it is; null: it is to be put in */
  readonly store: Id | null;
  /** as it is put in where there is none */
  readonly put: StoreRecord;
}

/** What of the stores a kind is, one on hand first; or what is put on the list to get for it. */
export function beddingStore(kind: BeddingKind, book: Book, forWhat: string): BeddingStore {
  const { words, pack = null } = kept[kind];
  const fits = Object.entries(book.stores).filter(([, { name }]) => hasWords(name, words));
  const found = fits.find(([, { onHand }]) => onHand) ?? fits[0];
  const epoxy = kind === 'epoxy' || kind === 'thickened-epoxy';
  return {
    store: found?.[0] ?? null,
    put: {
      name: epoxy ? 'Epoxy resin and hardener' : beddingKinds[kind].title,
      keptAt: '',
      onHand: false,
      expected: null,
      lead_days: null,
      note: `For ‘${forWhat}’.`,
      unit: 'ml',
      pack,
    },
  };
}

function answered(id: string, given: Readonly<Record<string, string | number>>): Extract<Asked, { kind: 'answered' }> {
  const question = [...beddingQuestions(), ...amountQuestions()].find((each) => each.id === id);
  if (!question) throw new RangeError(`there is no question ${id}`);
  const told = ask(question, given);
  if (told.kind === 'refused')
    throw new RangeError(`${id} refused ${told.faults.map(({ where, wrong }) => `${where}: ${wrong}`).join('; ')}`);
  return told;
}
