/**
 * How each kind of bedding, sealant or glue gets on with what it touches. Source: sealants.source.md.
 *
 * - `sound`: holds and does no harm;
 * - `primed`: holds with its primer, or roughened and wiped with solvent, as the tin says;
 * - `named`: sources differ; only where its tube names that material;
 * - `attacks`: crazes, softens or cracks it;
 * - `loose`: lets go of it.
 *
 * r: read, second-hand; m: recalled; p: common practice.
 */
export const jointMaterials = {
  grp: 'glass laminate, gelcoat',
  acrylic: 'acrylic',
  polycarbonate: 'polycarbonate',
  abs: 'ABS',
  pvc: 'PVC',
  nylon: 'nylon, acetal',
  polyethylene: 'polyethylene, polypropylene',
  glass: 'glass',
  timber: 'timber, plywood',
  'oily-timber': 'teak and other oily timber',
  stainless: 'stainless steel',
  aluminium: 'aluminium',
  bronze: 'bronze, brass, copper',
  galvanised: 'galvanised steel',
  rubber: 'rubber',
} as const;

// biome-ignore format: one kind, one block; one material, one place
export const beddingTouch = {
  'butyl-tape': {
    grp: 'sound p', acrylic: 'sound p', polycarbonate: 'sound p', abs: 'sound p', pvc: 'sound p', nylon: 'sound p', polyethylene: 'sound m',
    glass: 'sound p', timber: 'sound p', 'oily-timber': 'sound p', stainless: 'sound p', aluminium: 'sound p', bronze: 'sound p',
    galvanised: 'sound p', rubber: 'sound m',
  },
  'polysulphide-sealant': {
    grp: 'sound r', acrylic: 'attacks r', polycarbonate: 'attacks r', abs: 'attacks r', pvc: 'attacks r', nylon: 'sound r', polyethylene: 'loose m',
    glass: 'primed r', timber: 'sound r', 'oily-timber': 'primed r', stainless: 'sound r', aluminium: 'sound r', bronze: 'sound r',
    galvanised: 'sound r', rubber: 'loose m',
  },
  'polyurethane-sealant': {
    grp: 'sound r', acrylic: 'named r', polycarbonate: 'attacks r', abs: 'attacks r', pvc: 'named r', nylon: 'sound r', polyethylene: 'loose r',
    glass: 'primed m', timber: 'sound r', 'oily-timber': 'primed m', stainless: 'sound r', aluminium: 'sound r', bronze: 'sound r',
    galvanised: 'sound r', rubber: 'loose m',
  },
  'hybrid-sealant': {
    grp: 'sound p', acrylic: 'primed p', polycarbonate: 'primed p', abs: 'primed p', pvc: 'primed p', nylon: 'primed p', polyethylene: 'loose m',
    glass: 'primed m', timber: 'sound p', 'oily-timber': 'primed m', stainless: 'sound p', aluminium: 'sound p', bronze: 'sound p',
    galvanised: 'sound p', rubber: 'loose m',
  },
  'silicone-sealant': {
    grp: 'sound r', acrylic: 'sound r', polycarbonate: 'sound r', abs: 'sound r', pvc: 'sound r', nylon: 'sound r', polyethylene: 'loose m',
    glass: 'sound p', timber: 'loose m', 'oily-timber': 'loose m', stainless: 'sound r', aluminium: 'sound r', bronze: 'sound p',
    galvanised: 'sound p', rubber: 'loose m',
  },
  'acrylic-sealant': {
    grp: 'sound m', acrylic: 'sound m', polycarbonate: 'sound m', abs: 'sound m', pvc: 'sound m', nylon: 'loose m', polyethylene: 'loose m',
    glass: 'loose m', timber: 'sound p', 'oily-timber': 'loose m', stainless: 'loose m', aluminium: 'sound m', bronze: 'loose m',
    galvanised: 'loose m', rubber: 'loose m',
  },
  epoxy: {
    grp: 'sound p', acrylic: 'loose m', polycarbonate: 'loose m', abs: 'loose m', pvc: 'loose m', nylon: 'loose m', polyethylene: 'loose m',
    glass: 'loose m', timber: 'sound p', 'oily-timber': 'primed r', stainless: 'primed p', aluminium: 'primed p', bronze: 'primed p',
    galvanised: 'primed m', rubber: 'loose m',
  },
  'thickened-epoxy': {
    grp: 'sound p', acrylic: 'loose m', polycarbonate: 'loose m', abs: 'loose m', pvc: 'loose m', nylon: 'loose m', polyethylene: 'loose m',
    glass: 'loose m', timber: 'sound p', 'oily-timber': 'primed r', stainless: 'primed p', aluminium: 'primed p', bronze: 'primed p',
    galvanised: 'primed m', rubber: 'loose m',
  },
  'polyester-filler': {
    grp: 'sound p', acrylic: 'attacks m', polycarbonate: 'attacks m', abs: 'attacks m', pvc: 'attacks m', nylon: 'loose m', polyethylene: 'loose m',
    glass: 'loose m', timber: 'loose p', 'oily-timber': 'loose p', stainless: 'loose m', aluminium: 'primed m', bronze: 'loose m',
    galvanised: 'loose m', rubber: 'loose m',
  },
  methacrylate: {
    grp: 'sound r', acrylic: 'sound r', polycarbonate: 'sound r', abs: 'sound r', pvc: 'sound r', nylon: 'named m', polyethylene: 'loose m',
    glass: 'loose m', timber: 'loose m', 'oily-timber': 'loose m', stainless: 'sound r', aluminium: 'sound r', bronze: 'named m',
    galvanised: 'named m', rubber: 'loose m',
  },
  'contact-adhesive': {
    grp: 'sound p', acrylic: 'attacks m', polycarbonate: 'attacks m', abs: 'attacks m', pvc: 'named m', nylon: 'sound m', polyethylene: 'loose m',
    glass: 'sound m', timber: 'sound p', 'oily-timber': 'primed m', stainless: 'sound p', aluminium: 'sound p', bronze: 'sound m',
    galvanised: 'sound m', rubber: 'sound p',
  },
  'wood-glue': {
    grp: 'loose p', acrylic: 'loose p', polycarbonate: 'loose p', abs: 'loose p', pvc: 'loose p', nylon: 'loose p', polyethylene: 'loose p',
    glass: 'loose p', timber: 'sound p', 'oily-timber': 'loose r', stainless: 'loose p', aluminium: 'loose p', bronze: 'loose p',
    galvanised: 'loose p', rubber: 'loose p',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<keyof typeof jointMaterials, `${'sound' | 'primed' | 'named' | 'attacks' | 'loose'} ${'r' | 'm' | 'p'}`>>>>;
