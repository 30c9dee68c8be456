import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beddingChoice, beddingNames } from './bedding-choice.ts';
import { beddingKinds } from './bedding-kinds.ts';
import { cureLawOf } from './cure-laws.ts';
import { type BeddingKind, type Joint, jointMaterialNames } from './joint.ts';

const deckFitting: Joint = {
  parts: ['grp', 'stainless'],
  held: 'fastened',
  apart: 'some day',
  where: 'weather',
  movement_mm: 0,
  gap_mm: 2,
  painted: false,
};
const serving = (joint: Partial<Joint>): readonly BeddingKind[] =>
  beddingChoice({ ...deckFitting, ...joint }).serves.map(({ kind }) => kind);
const reason = (kind: BeddingKind, joint: Partial<Joint>) =>
  beddingChoice({ ...deckFitting, ...joint }).refused.find((each) => each.kind === kind)?.because;

/** Joints as a source names them, and what it says there. */
const said: readonly {
  readonly what: string;
  readonly source: string;
  readonly seen: 'read' | 'common practice' | 'recalled';
  readonly joint: Partial<Joint>;
  readonly does?: readonly BeddingKind[];
  readonly not?: readonly BeddingKind[];
}[] = [
  {
    what: 'no plastic, to come apart again: polysulphide',
    source: 'article on marine sealants (masticmasters.com, corbin39.org)',
    seen: 'read',
    joint: {},
    does: ['polysulphide-sealant'],
    not: ['polyurethane-sealant'],
  },
  {
    what: 'no polysulphide on a window of acrylic or polycarbonate',
    source: 'the same',
    seen: 'read',
    joint: { parts: ['grp', 'polycarbonate'] },
    does: ['silicone-sealant'],
    not: ['polysulphide-sealant'],
  },
  {
    what: 'nor on a deck fitting of ABS or PVC',
    source: 'the same',
    seen: 'read',
    joint: { parts: ['abs', 'grp'] },
    not: ['polysulphide-sealant'],
  },
  {
    what: 'on a nylon skin fitting under water it may be used',
    source: 'the same',
    seen: 'read',
    joint: { parts: ['grp', 'nylon'], where: 'under water' },
    does: ['polysulphide-sealant'],
  },
  {
    what: 'hull to deck and bonded through-hulls: polyurethane, for good',
    source: 'article of a boat association (americanboating.org)',
    seen: 'read',
    joint: { parts: ['grp', 'bronze'], where: 'under water', apart: 'never' },
    does: ['polyurethane-sealant'],
  },
  {
    what: 'silicone between unlike metals, above the water, to be taken apart',
    source: 'articles (americanboating.org, sailingmates.com)',
    seen: 'read',
    joint: { parts: ['stainless', 'aluminium'], apart: 'each season' },
    does: ['silicone-sealant'],
  },
  {
    what: 'polysulphide at a fuel filler; polyurethane softens in fuel',
    source: 'magazine page (issuhub.com, February 2018); article (boatus.com, April 2013)',
    seen: 'read',
    joint: { parts: ['grp', 'stainless'], where: 'fuel' },
    does: ['polysulphide-sealant'],
    not: ['polyurethane-sealant'],
  },
  {
    what: 'standing under water neither acrylic, butyl nor silicone',
    source: 'Construction Waterproofing Handbook, table 5.3',
    seen: 'read',
    joint: { parts: ['grp', 'bronze'], where: 'under water' },
    does: ['polysulphide-sealant'],
    not: ['acrylic-sealant', 'butyl-tape', 'silicone-sealant'],
  },
  {
    what: 'teak is glued with epoxy, and not with white glue',
    source: 'owners and a resin seller’s tip on glueing teak',
    seen: 'read',
    joint: { parts: ['oily-timber', 'oily-timber'], held: 'glued', apart: 'never', gap_mm: 0.2 },
    does: ['epoxy'],
    not: ['wood-glue'],
  },
  {
    what: 'ABS to glass laminate for good: methacrylate',
    source: 'overview of methacrylate adhesives (fastenerandfixing.com)',
    seen: 'read',
    joint: { parts: ['abs', 'grp'], held: 'glued', apart: 'never', gap_mm: 1 },
    does: ['methacrylate'],
    not: ['epoxy'],
  },
  {
    what: 'nothing sticks to polyethylene, and butyl seals it under screws',
    source: 'boat owners',
    seen: 'common practice',
    joint: { parts: ['polyethylene', 'grp'] },
    does: ['butyl-tape'],
    not: ['polyurethane-sealant', 'hybrid-sealant', 'silicone-sealant', 'polysulphide-sealant'],
  },
  {
    what: 'no silicone near paint',
    source: 'handbook materials.seal.silicone.paint',
    seen: 'common practice',
    joint: { painted: true },
    not: ['silicone-sealant'],
  },
  {
    what: 'beside an exhaust only silicone',
    source: 'engine gaskets',
    seen: 'recalled',
    joint: { parts: ['stainless', 'aluminium'], where: 'hot' },
    does: ['silicone-sealant'],
    not: ['butyl-tape', 'polyurethane-sealant', 'polysulphide-sealant', 'hybrid-sealant'],
  },
  {
    what: 'polyester filler above the waterline, not below',
    source: 'boatyards',
    seen: 'common practice',
    joint: { parts: ['grp', 'grp'], held: 'filled', apart: 'never', where: 'under water', gap_mm: 5 },
    does: ['thickened-epoxy'],
    not: ['polyester-filler'],
  },
];

describe('what to bed a joint with', () => {
  it.each(said.map((each) => [`${each.what} (${each.source}; ${each.seen})`, each] as const))('%s', (_, each) => {
    const serves = serving(each.joint);
    for (const kind of each.does ?? []) expect(serves).toContain(kind);
    for (const kind of each.not ?? []) expect(serves).not.toContain(kind);
  });

  it('puts first what the trade reaches for first', () => {
    // common practice
    expect(serving({})[0]).toBe('butyl-tape');
    expect(serving({ where: 'under water' })[0]).toBe('polysulphide-sealant');
    expect(serving({ apart: 'never' })[0]).toBe('polyurethane-sealant');
    expect(serving({ parts: ['timber', 'timber'], held: 'glued', apart: 'never', gap_mm: 2 })[0]).toBe(
      'thickened-epoxy',
    );
    expect(serving({ parts: ['rubber', 'stainless'], held: 'stuck', apart: 'never', gap_mm: 0.2 })[0]).toBe(
      'contact-adhesive',
    );
  });

  it('asks for the room that the movement wants, as the handbook sizes joints', () => {
    // table 5.3: silicone 4 times the movement, butyl 20 times; the pane moves 0.8 mm
    const pane = { parts: ['acrylic', 'grp'], movement_mm: 0.8 } as const;
    expect(beddingChoice({ ...deckFitting, ...pane, gap_mm: 2 })).toMatchObject({ serves: [], widenTo_mm: 3.2 });
    expect(serving({ ...pane, gap_mm: 3.2 })).toEqual(['silicone-sealant']);
    expect(reason('butyl-tape', { ...pane, gap_mm: 3.2 })).toBe(
      'wants 16 mm between the parts where they move 0.8 mm, and there is 3.2 mm',
    );
  });

  it('says which metal goes, and that glue alone is not to be trusted with somebody', () => {
    expect(beddingChoice({ ...deckFitting, parts: ['stainless', 'aluminium'] }).cautions[0]).toMatch(
      /^aluminium goes where it touches stainless steel/,
    );
    expect(beddingChoice({ ...deckFitting, parts: ['stainless', 'stainless'] }).cautions).toEqual([]);
    expect(beddingChoice({ ...deckFitting, held: 'glued' }).cautions[0]).toMatch(/is bolted too/);
  });
});

const material = fc.constantFrom(...jointMaterialNames);
const anyJoint: fc.Arbitrary<Joint> = fc.record({
  parts: fc.tuple(material, material),
  held: fc.constantFrom('fastened', 'stuck', 'glued', 'filled'),
  apart: fc.constantFrom('each season', 'some day', 'never'),
  where: fc.constantFrom('indoors', 'weather', 'under water', 'fuel', 'hot'),
  movement_mm: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 10, noNaN: true })),
  gap_mm: fc.double({ min: 0.05, max: 50, noNaN: true }),
  painted: fc.boolean(),
});

describe('for any joint', () => {
  it('every kind either does or is refused with a reason, never both', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { serves, refused } = beddingChoice(joint);
        expect([...serves, ...refused].map(({ kind }) => kind).sort()).toEqual([...beddingNames].sort());
        for (const { because, title } of [...serves, ...refused])
          expect(`${title} ${because}`).toMatch(/^[A-Z][^\n]{15,}[^.]$/);
      }),
    );
  });

  it('the order of the two parts says nothing, and a harder use never lets a kind in', () => {
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0, max: 5, noNaN: true }), (joint, more) => {
        const now = beddingChoice(joint);
        const [a, b] = joint.parts;
        expect(beddingChoice({ ...joint, parts: [b, a] }).serves.map(({ kind }) => kind)).toEqual(
          now.serves.map(({ kind }) => kind),
        );
        const kinds = new Set(now.serves.map(({ kind }) => kind));
        const harder: readonly Joint[] = [
          { ...joint, movement_mm: joint.movement_mm + more },
          { ...joint, painted: true },
          { ...joint, apart: joint.apart === 'never' ? 'some day' : 'each season' },
        ];
        for (const each of harder)
          for (const { kind } of beddingChoice(each).serves)
            expect(kinds.has(kind), `${kind}, ${JSON.stringify(each)}`).toBe(true);
      }),
    );
  });

  it('made as wide as is said, something does', () => {
    let widened = 0;
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0.1, max: 4, noNaN: true }), (any, movement_mm) => {
        const joint: Joint = { ...any, held: 'fastened', where: 'weather', gap_mm: 0.3, movement_mm };
        const { widenTo_mm } = beddingChoice(joint);
        if (widenTo_mm === null) return;
        widened += 1;
        expect(beddingChoice({ ...joint, gap_mm: widenTo_mm }).serves.length).toBeGreaterThan(0);
      }),
    );
    expect(widened).toBeGreaterThan(30);
  });
});

describe('the kinds', () => {
  it('each have a cure law', () => {
    for (const kind of beddingNames) expect(cureLawOf(beddingKinds[kind].product).id).toBe(beddingKinds[kind].product);
  });
});
