/** The road trailer. Minutes are common practice; the maker's torques and limits win, and the law's. */
import {
  always,
  care,
  each,
  followUp,
  lasts,
  nextOuting,
  number,
  proof,
  recipesOf,
  size,
  step,
  store,
} from './writing.ts';

export const trailer = recipesOf({
  'wheel-bearings': {
    title: 'Clean and grease the wheel bearings',
    group: 'trailer',
    words: ['wheel bearings', 'hub', 'grease the hubs', 'hot hub', 'bearing rumble'],
    when: 'Every 12 months, twice a season in salt, or when a hub is hot to the hand after the road.',
    consequence: 'danger',
    zones: ['trailer', 'wheel'],
    asks: [number('hubs', 'hubs', 1, 4)],
    steps: [
      step('Crack the wheel nuts, jack that side, wheel off, and spin the hub with an ear to it', [15, 25, 40], {
        features: ['level'],
        tools: ['trolley jack', 'axle stand', 'socket set'],
        cautions: [care.jack],
      }),
      step(
        'Draw hub and seal, wash bearings in white spirit, and look for blue, pits or rust on every roller',
        [20, 35, 60],
        {
          stores: [store('White spirit', 'white spirit', each('hubs', 0.3, 0, 'l'))],
          cautions: ['Never spin a bearing with compressed air: it bursts. Spirit vapour: outdoors, no flame.'],
        },
      ),
      step(
        'Pack grease through each race with the palm, new seal, nut up and back off until the wheel just turns free, new split pin',
        [20, 35, 60],
        {
          stores: [
            store('Wheel bearing grease, waterproof', 'bearing grease', each('hubs', 80, 0, 'g'), {
              holds: 400,
              word: 'cartridge',
            }),
            store('Hub seals', 'hub seals', each('hubs')),
            store('Split pins for the hubs', 'split pins', each('hubs', 1, 1)),
          ],
          cautions: [care.jack],
        },
      ),
      step('Wheel on, nuts crosswise to the maker’s torque with her weight on the ground', [10, 15, 25], {
        tools: ['torque wrench'],
        cautions: ['Lower her clear of the stand before the last pull: the bar throws you if the wheel turns.'],
      }),
    ],
    proof: proof(
      'measure',
      'Rock the wheel top and bottom, then tow five kilometres and lay a hand on the hub: warm is right, hot is not',
      [15, 25, 40],
    ),
    followUps: [
      followUp(
        'Torque the wheel nuts again',
        [5, 10, 15],
        'After the first 50 km: paint and rust bed in and the nuts slacken.',
        nextOuting(30),
        'danger',
      ),
    ],
    writeDown: ['bearing and seal numbers', 'torque', 'road temperature of each hub'],
  },
  'trailer-lights': {
    title: 'Make the trailer lights good',
    group: 'trailer',
    words: ['trailer lights', 'brake light', 'indicator', 'light board', 'trailer plug'],
    when: 'A lamp fails the walk round, or one dims when another is lit: an earth.',
    consequence: 'unlawful',
    zones: ['trailer'],
    asks: [number('lamps', 'lamps on the board', 2, 14)],
    steps: [
      step('Have a helper press every switch in turn while you call what lights', [10, 10, 20], {
        notAlone: true,
        cautions: ['Car in neutral, brake on, nobody between car and trailer.'],
      }),
      step('Open the plug, brighten the pins, and put a new earth straight to the board', [15, 25, 45], {
        tools: ['crimping pliers', 'meter'],
        stores: [
          store('Twin cable for the earth', 'twin cable', always(6, 'm', 'board to coupling of a small trailer')),
          store('Contact grease', 'contact grease', each('lamps', 1, 0, 'g')),
        ],
      }),
      step('Renew dead bulbs and cracked lenses, and grease the sockets', [10, 20, 30], {
        stores: [store('Bulbs as the board takes', 'bulbs board', each('lamps', 0.5, 1))],
      }),
    ],
    proof: proof(
      'photograph',
      'Film the board with all on at once after a dunk in the wheelie bin: none dims another',
      [10, 10, 15],
      { features: ['water'] },
    ),
    followUps: [],
    writeDown: ['which pin, which fault', 'bulb kinds'],
  },
  'trailer-brakes': {
    title: 'Adjust the trailer brakes and breakaway',
    group: 'trailer',
    words: ['trailer brakes', 'overrun', 'breakaway cable', 'handbrake', 'brake cable'],
    when: 'Every 12 months; the handbrake lever rises past half way, or she shunts the car.',
    consequence: 'danger',
    zones: ['trailer', 'hitch'],
    asks: [number('drums', 'drums', 2, 4)],
    steps: [
      step(
        'Jack and stand each side in turn, and spin the wheels forward while turning the adjuster up to a drag and back to free',
        [25, 40, 70],
        {
          features: ['level'],
          tools: ['trolley jack', 'axle stand'],
          cautions: [care.jack, 'Brake dust: damp cloth and a mask, never blown out.'],
        },
      ),
      step('Draw drum and shoes where it grabs, measure the lining, wire-brush the cam', [20, 40, 80], {
        dusty: true,
        tools: ['socket set'],
        stores: [store('Brake shoes, set, if linings are under 2 mm', 'brake shoes', each('drums', 0.5))],
        cautions: ['Old linings may hold asbestos: wet wipes and a mask.', care.jack],
      }),
      step('Even the pull on both cables at the compensator and grease the overrun slide', [15, 25, 40], {
        stores: [store('Grease for the coupling slide', 'grease coupling', each('drums', 10, 0, 'g'))],
      }),
      step('Hook the breakaway cable round the bar with slack for the tightest turn and no more', [5, 10, 10], {
        stores: [store('Breakaway cable', 'breakaway', always(1, '', 'one a trailer'))],
      }),
    ],
    proof: proof(
      'pull',
      'On a slope with the handbrake up, unhitch with chocks a hand away: she holds facing up and facing down',
      [10, 10, 20],
      { features: ['slope'], cautions: ['Chocks a hand’s breadth behind the wheels and nobody downhill of her.'] },
    ),
    followUps: [
      followUp(
        'Feel the brake drums after the next tow',
        [5, 5, 10],
        'One hotter than its fellow is dragging.',
        nextOuting(30),
        'danger',
      ),
    ],
    writeDown: ['lining thickness', 'clicks of the lever', 'cable renewed or not'],
  },
  'trailer-rollers': {
    title: 'Renew the keel rollers and pads',
    group: 'trailer',
    words: ['rollers', 'keel roller', 'bunk carpet', 'pads', 'hard to launch'],
    when: 'A roller does not turn by hand, has a flat, or the pad’s screw heads touch the hull.',
    consequence: 'worsens',
    zones: ['trailer', 'bottom'],
    asks: [number('rollers', 'rollers to change', 1, 16)],
    steps: [
      step('Measure bore, length and spindle of the worst roller', [5, 10, 15], { tools: ['calliper'] }),
      step(
        'Take her weight by the keel on blocks ahead of and behind each roller, one station at a time',
        [25, 45, 80],
        {
          notAlone: true,
          features: ['level'],
          tools: ['trolley jack'],
          cautions: ['Blocks each side as well as under: a hull on one row of blocks rolls off. Wheels chocked.'],
          stores: [store('Rollers, bore and length as measured', 'rollers bore', each('rollers'))],
        },
      ),
      step('Grease new spindles, washers either side, split pins in, then lower her evenly', [15, 30, 50], {
        stores: [store('Spindles with washers and pins, galvanised', 'spindles', each('rollers'))],
        cautions: ['Fingers out from between roller and keel as she comes down.'],
      }),
    ],
    proof: proof(
      'run',
      'Winch her a metre aft and home again: every roller turns and carries, no pad creaks',
      [10, 15, 25],
      { cautions: ['The winch handle kicks back: stand beside it, pawl in. The winch strap is no lashing.'] },
    ),
    followUps: [],
    writeDown: ['roller sizes', 'how far each bracket stands from the coupling'],
  },
  'winch-strap': {
    title: 'Renew the trailer’s winch strap',
    group: 'trailer',
    words: ['winch strap', 'winch webbing', 'trailer winch', 'bow snap'],
    when: 'Its edge is cut, its stitching fluffs, or it is two to four years old.',
    consequence: 'danger',
    zones: ['trailer', 'bow'],
    asks: [size('strap', 'length of the strap', 'm', 3, 15)],
    steps: [
      step('Chain the bow eye to the post, then run the old strap off and look at the drum bolt', [5, 15, 20], {
        cautions: ['She is held by the chain, not by you: try it with a push before the strap is slack.'],
      }),
      step(
        'Bolt the new strap’s eye to the drum so that it winds from underneath as the old one did, three turns always left on',
        [10, 15, 25],
        {
          tools: ['spanners'],
          stores: [
            store('Winch strap with snap hook, strength as the winch’s plate', 'winch strap', each('strap', 1, 1, 'm')),
          ],
        },
      ),
      step('Grease gears, oil the pawl’s pivot, and wind on under hand tension', [5, 10, 15], {
        stores: [store('Open-gear grease', 'open gear grease', each('strap', 2, 0, 'g'))],
        cautions: ['Sleeves and hair out of the gears; grip the handle through the last tooth of the pawl.'],
      }),
    ],
    proof: proof(
      'load',
      'Let her down the rollers to half the strap and wind her home: pawl clicks every tooth, snap stays shut',
      [10, 15, 20],
      { cautions: ['Nobody stands behind her or in line with a loaded strap.'] },
    ),
    followUps: [],
    writeDown: ['strap strength and length', 'month it was fitted'],
  },
  'trailer-tyres': {
    title: 'Change aged trailer tyres',
    group: 'trailer',
    words: ['trailer tyre', 'cracked tyre', 'spare wheel', 'tyre age'],
    when: 'The date code says five to seven years, whatever the tread, or its sides are crazed.',
    consequence: 'danger',
    zones: ['trailer', 'wheel'],
    asks: [number('tyres', 'tyres, the spare counted', 1, 5)],
    steps: [
      step(
        'Read date code, size and load index off every sidewall and write them on the mudguard in chalk',
        [5, 10, 15],
      ),
      step('Wheels off one side at a time, to a fitter, back the same day', [30, 60, 120], {
        features: ['level'],
        tools: ['trolley jack', 'axle stand', 'socket set'],
        stores: [store('Tyres, size and load index as the trailer’s plate', 'tyre', each('tyres'))],
        cautions: [care.jack, 'Not on an inflating tyre’s face: it bursts sideways.'],
      }),
      step('Blow them to the plate’s pressure cold and cap the valves', [5, 10, 15], { tools: ['tyre gauge'] }),
    ],
    proof: proof('measure', 'Next morning read the pressures again: none has dropped, the spare included', [5, 5, 10], {
      waits: [lasts('Tyres stand overnight', 720, 'a night shows a slow leak; common practice')],
    }),
    followUps: [
      followUp(
        'Torque the wheel nuts after 50 km',
        [5, 10, 15],
        'New seats settle; slack nuts shear studs.',
        nextOuting(30),
        'danger',
      ),
    ],
    writeDown: ['date codes and load index', 'pressure'],
  },
});
