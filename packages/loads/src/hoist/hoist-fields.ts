import { inBase } from '#units';
import { assuming, choice, count, type Field, force, length, number, type Source } from '#working';
import { type Bearing, bearings } from './tackle.ts';

/** The fields, sources and cautions that questions about hoisting share. */
export const loadField = () => force('N', 0, 50_000, 'load on the moving block');

export const bearingField = (meaning: string): Field<Bearing> =>
  assuming(
    choice(
      (Object.keys(bearings) as Bearing[]).map((id) => ({ id, title: bearings[id].title })),
      meaning,
    ) as Field<Bearing>,
    'plain',
    'plain bearing',
    'the worse of the two that are sold',
  );

export const movingField = () => count(0, 8, 'sheaves in the block that moves with the load');
export const fixedField = () =>
  count(0, 8, 'sheaves in the block that stands; blocks that only turn the fall count apart');
export const endField = (): Field<'moving' | 'fixed'> =>
  choice(
    [
      { id: 'fixed', title: 'at the standing block, or beside it' },
      { id: 'moving', title: 'at the becket of the moving block' },
    ],
    'where the rope’s end is made fast',
  ) as Field<'moving' | 'fixed'>;

export const waterField = (): Field<'air' | 'sea'> =>
  choice(
    [
      { id: 'air', title: 'in air, on the trailer' },
      { id: 'sea', title: 'afloat, the plate under water' },
    ],
    'where the boat is',
  ) as Field<'air' | 'sea'>;

export const densityField = () =>
  assuming(
    number('kg/m³', 1030, 12_000, 'density of what the plate is made of'),
    7850,
    '7850 kg/m³',
    'steel; cast iron 7200, stainless 8000, lead 11340, aluminium 2700 (recalled)',
  );

export const gearField = () => assuming(number('', 1, 20, 'turns of the crank to one of the drum'), 1, '1', 'no gears');
export const handleField = () => length('mm', 50, 600, 'from the shaft to the hand');
export const drumField = () => length('mm', 10, 400, 'drum across, bare');
export const wireField = () =>
  assuming(length('mm', 1, 16, 'wire or cord across'), inBase('length', 4, 'mm'), '4 mm', 'a usual pendant');
export const lossField = (usual: number) =>
  assuming(
    number('', 0, 0.8, 'share of the work lost in the winch'),
    usual,
    String(usual),
    'as measured on well-kept winches at a middling load',
  );

export const sources = {
  sheave: {
    title:
      'block and tackle efficiency by a sheave factor, fxsolver.com (symbols read, formula recalled); K 1.04 ball, 1.09 plain bearing; 1.15 for stiff ones is our assumption',
    seen: 'recalled',
  },
  tenth: { title: 'Admiralty Manual of Seamanship, one tenth of the load a sheave', seen: 'recalled' },
  parts: { title: 'statics: the parts at the moving block share the load (goodoldboat.com)', seen: 'read second-hand' },
  rope: {
    title: 'rope friction, T = F·e^(µα), engineering mechanics exercises (pickedshares.com)',
    seen: 'read second-hand',
  },
  winch: {
    title: 'lever and gear ratios of winches (practical-sailor.com; a club lecture on winches)',
    seen: 'read second-hand',
  },
  moments: { title: 'moments about a hinge: physics textbook, hinged strut and boom', seen: 'read second-hand' },
  density: { title: 'densities of metals and of sea water, handbooks', seen: 'recalled' },
  hand: { title: 'a person pulls 200 N on a fall and 120 N at a crank, again and again', seen: 'our assumption' },
  noBrake: {
    title: 'friction is not counted as a brake: a wet or greased sheave holds nothing',
    seen: 'our assumption',
  },
} as const satisfies Record<string, Source>;
