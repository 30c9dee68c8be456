import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'into the machine',
    page: `testing testing is it on yes okay boat checks eighth of april i'm standing at the back end the outboard bracket is corroded round the bolts it needs to come off and be cleaned up and painted probably two hours in all then the drain bung has lost its washer i'll stick a new one in two minutes stern rail is good flag socket is good moving forward the cockpit sole has a soft patch under the tiller about the size of a plate that needs opening up and drying and filling thats a big one thats going to be a whole day and it'll only get worse the tiller itself i varnished last weekend and it looks smashing the mainsheet block is squeaking give it a rinse and a drop of oil five minutes main hatch slides okay now inside the battery is reading twelve point six five and the panel was covered so thats a good one the switch panel the third switch is dead i think its the fuse holder half an hour to find out there's mould on the headlining but i'm not bothered about that no actually it does smell i should wash it down with vinegar an hour for comfort bilge is bone dry the case has got a weep at the back bolt just a dribble nip the bolt up and see and if that doesn't stop it take it out and rebed it an hour with her propped up and the board down side decks fine port plate fine starboard plate has a stain under it which might be rust might be tea keep an eye on it mast is up on the trestles spreader tip tape is coming off both sides wrap new tape round before it tears the sail fifteen minutes thats a mast down job obviously i've lashed the loose trestle with a bungee for now no problem the anchor chain mark paint has worn off re mark it every five metres half an hour some sunny day okay thats it stop`,
    marks: [
      {
        kind: 'job',
        at: 'the outboard bracket is corroded',
        parts: { zone: 'transom', fitting: 'bracket', minutes: 120 },
      },
      { kind: 'job', at: 'the drain bung has lost its washer', parts: { minutes: 2 } },
      { kind: 'job', at: 'the cockpit sole has a soft patch', parts: { zone: 'cockpit', consequence: 'worsens' } },
      { kind: 'job', at: 'the mainsheet block is squeaking', parts: { minutes: 5 } },
      { kind: 'reading', at: 'the battery is reading twelve point six five', parts: {} },
      { kind: 'job', at: 'the third switch is dead', parts: { minutes: 30 } },
      { kind: 'job', at: 'wash it down with vinegar', parts: { minutes: 60, consequence: 'comfort' } },
      { kind: 'job', at: 'the case has got a weep at the back bolt', parts: { zone: 'case', minutes: 60 } },
      { kind: 'job', at: 'spreader tip tape is coming off', parts: { zone: 'rig', minutes: 15 } },
      { kind: 'jury rig', at: "i've lashed the loose trestle with a bungee", parts: {} },
      { kind: 'job', at: 'the anchor chain mark paint has worn off', parts: { zone: 'bow', minutes: 30 } },
    ],
  },
  {
    name: 'after the sail',
    page: `We got back about six and I am writing this before I forget. Lovely day, fifteen knots or so and flat water, she went like a train. My sister steered most of the way and only hit one buoy.

Going out, the jib halyard slipped in its cleat twice. The teeth are worn smooth. I tied it off round the horn of the next cleat, which will do until I can get a new one; the new cleat itself is a ten minute job.

Tacking up the river the lee shroud was slack enough to wave about. The rig needs tuning, mast up of course, and it wants to be a calm day, under eight knots. An hour. I should measure the forestay before and after.

The mainsail has a small tear at the second batten pocket. I have stuck sail tape over it both sides and that is good for a few sails, but it must be stitched, forty minutes on the kitchen table, before the muster.

We took in some water through the board case, perhaps a bucket in four hours, as she always does when she is heeled. No change there.

The echo sounder lost the bottom once, in the weed, and found it again. The compass light works since I cleaned the contact. The loo, the less said the better: the seal on the pump has gone and it needs the repair kit, an hour and a half, nobody is going to volunteer. It is not dangerous, only very unpleasant.

On the slip the winch handle on the trailer skipped a tooth with the boat half out, which gave us all a fright. The pawl spring is broken. A new spring is twenty minutes, but until it is done nobody may stand behind her. Danger, that one.

I topped the battery up overnight when we came home and it stood at 12.7 this morning.

Next week I must still fit the new fenders' lines, no more than a quarter of an hour.`,
    marks: [
      { kind: 'job', at: 'the jib halyard slipped in its cleat', parts: { minutes: 10 } },
      { kind: 'jury rig', at: 'I tied it off round the horn', parts: {} },
      {
        kind: 'job',
        at: 'The rig needs tuning',
        parts: { zone: 'rig', minutes: 60, setUps: { mast: 'up' } },
      },
      { kind: 'job', at: 'it must be stitched', parts: { minutes: 40, outing: 'muster' } },
      { kind: 'jury rig', at: 'I have stuck sail tape over it', parts: {} },
      { kind: 'job', at: 'the seal on the pump has gone', parts: { minutes: 90 } },
      { kind: 'job', at: 'The pawl spring is broken', parts: { zone: 'trailer', minutes: 20, consequence: 'danger' } },
      { kind: 'reading', at: 'it stood at 12.7 this morning', parts: {} },
      { kind: 'job', at: "fit the new fenders' lines", parts: { minutes: 15 } },
    ],
  },
  {
    name: 'rain on the cover',
    page: `Sitting under the cover with a flask because it has come on to rain, so this is from memory and a bit of poking about.

Leaks first. Drip over the port berth, coming from the deck somewhere round the handrail. I think it's the second bolt. Pull the handrail, overdrill, fill and rebed, that'll be most of a day all told but call it four hours of actual work, and it needs a dry spell. Second leak is the window, the rubber has shrunk in the corner, run some sealant in it, twenty minutes.

Is the mast wiring the right colour? No idea. Ask at the club.

The anchor light flickers when you tap the mast so that'll be the plug at the foot. Clean the pins and put grease in, quarter of an hour. The nav lights are fine.

Engine. I had the cover off and everything looks all right to me but it hasn't had its winter oil change so that's overdue, an hour.

I was going to re-line the cupboard but honestly life's too short.

The cabin step is wobbly, two longer screws, ten minutes. Also the fire extinguisher is out of date, it says 2025 on it, we're not legal for the muster with that, so a new one please.

Then it's just the usual: hose her out, cushions back, flag up. I'll do that the day before anyway.

Things we need: a tube of the black sealant, contact grease, and a 2 kg extinguisher.`,
    marks: [
      {
        kind: 'job',
        at: 'Drip over the port berth',
        parts: { minutes: 240, conditions: { dry: true } },
      },
      { kind: 'job', at: 'Second leak is the window', parts: { minutes: 20 } },
      { kind: 'job', at: 'The anchor light flickers', parts: { minutes: 15 } },
      { kind: 'job', at: "it hasn't had its winter oil change", parts: { minutes: 60 } },
      { kind: 'job', at: 'The cabin step is wobbly', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: 'the fire extinguisher is out of date', parts: { consequence: 'unlawful' } },
      { kind: 'store', at: 'a tube of the black sealant', parts: {} },
      { kind: 'store', at: 'contact grease', parts: {} },
      { kind: 'store', at: 'a 2 kg extinguisher', parts: {} },
    ],
  },
];
