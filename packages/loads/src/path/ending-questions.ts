import { choice, number, type Question, question } from '#working';
import { bendShares, endingShares, leastSheave, sharpBendLoss } from '../../tables/endings.read-2026-11.ts';
import { cautions } from '../cautions.ts';
import { bendShare, type Ending, endingShare } from './ending.ts';
import { factorOf, type Use, uses } from './factor.ts';
import { purposeField } from './loads-fields.ts';

/** The questions about what is lost at ends and bends, and how far below breaking gear may work. */
export function endingQuestions(): readonly Question[] {
  return [endingQuestion(), bendQuestion(), factorQuestion()];
}

function endingQuestion() {
  return question({
    id: 'loads.ending',
    title: 'What does a knot, splice or terminal leave?',
    fields: {
      ending: choice(
        (Object.keys(endingShares) as Ending[]).map((id) => ({ id, title: endingShares[id].title })),
        'how the rope or wire ends',
      ),
    },
    answer: ({ ending }) => {
      const { on, title, shares } = endingShares[ending];
      return {
        kind: 'found',
        results: [
          {
            symbol: 'k',
            meaning: `left of the ${on} with a ${title}, the lowest printed`,
            value: 100 * endingShare(ending),
            unit: '%',
          },
        ],
        working: shares.map(({ table, share_pct, seen, source }) => ({
          symbol: table,
          meaning: seen === 'recalled' ? 'as recalled, not read again' : 'as printed',
          value: share_pct,
          unit: '%',
          formula: source,
        })),
        sources: shares.map(({ source, seen }) => ({ title: source, seen })),
        limits: ['A knot badly drawn up, a splice of too few tucks or a wrong die leaves less, or nothing.'],
        cautions: [cautions.recoil, cautions.guidance],
      };
    },
  });
}

function bendQuestion() {
  return question({
    id: 'loads.bend',
    title: 'What does wire lose over a sheave or pin?',
    fields: { ratio: number('', 0.2, 200, 'diameter of the sheave or pin over that of the wire') },
    answer: ({ ratio }) => {
      const shown = {
        working: [
          {
            symbol: 'loss at a sharp edge',
            meaning: 'about, bent sharply',
            value: sharpBendLoss,
            unit: '',
            formula: 'printed',
          },
          {
            symbol: 'least for wire',
            meaning: 'sheave',
            value: leastSheave.wire,
            unit: '× wire diameter',
            formula: 'printed',
          },
          {
            symbol: 'least for rope',
            meaning: 'sheave',
            value: leastSheave.rope,
            unit: '× rope diameter',
            formula: 'printed: 4 to 8',
          },
        ],
        sources: [
          { title: 'wire-rope handbook table, two copies agree', seen: 'read second-hand' },
          { title: 'Toss, The Complete Rigger’s Apprentice, sheaves', seen: 'read second-hand' },
        ] as const,
        limits: ['Between two printed ratios the lower share stands. Wire run over a small sheave tires as well.'],
        cautions: [cautions.recoil, cautions.guidance],
      };
      const share = bendShare(ratio);
      if (share === null)
        return {
          kind: 'truth',
          statement: 'Unknown: wire is not bent round less than itself',
          because: `the table ends at ${bendShares.at(-1)!.ratio} times the wire; ${ratio} was given`,
          results: [{ symbol: 'k', meaning: 'left over the bend', value: 'unknown', unit: '' }],
          ...shown,
        };
      return {
        kind: 'found',
        results: [{ symbol: 'k', meaning: 'left over the bend', value: 100 * share, unit: '%' }],
        ...shown,
      };
    },
  });
}

function factorQuestion() {
  return question({
    id: 'loads.factor',
    title: 'How far below breaking may it work, and who says so?',
    fields: {
      gear: choice(
        [
          { id: 'rope', title: 'rope' },
          { id: 'wire', title: 'wire' },
          { id: 'chain', title: 'chain' },
          { id: 'lifting-shackle', title: 'marked steel lifting shackle' },
          { id: 'fitting', title: 'stainless shackle, screw, pin, eye' },
        ],
        'what it is',
      ),
      use: purposeField(),
    },
    answer: ({ gear, use }: { readonly gear: string; readonly use: Use }) => {
      const { factor, whose } = factorOf(gear === 'lifting-shackle' ? 'lifting shackle' : (gear as 'rope'), use);
      return {
        kind: 'found',
        results: [{ symbol: 'n', meaning: `breaking over working load, ${uses[use]}`, value: factor, unit: '' }],
        working: [
          {
            symbol: 'W',
            meaning: 'share of the breaking load it may work at',
            value: 100 / factor,
            unit: '%',
            formula: '1/n',
          },
        ],
        sources: [whose],
        limits: ['Jerks, waves and a falling load are several times the steady pull: factors do not cover all of it.'],
        cautions: [cautions.under, cautions.persons, cautions.guidance],
      };
    },
  });
}
