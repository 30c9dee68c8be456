import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'forty years of it',
    page: `Forty years of this and still I forget the tape. Never mind.

She's wintered well. No blisters, no worm, no nonsense. I went along her with a knuckle and she answers like a drum everywhere but one place, abaft the port shroud plate, a hand's breadth of dull. That's water in the core. Drill a few holes from inside, let it dry a fortnight with the lamp on it, then fill with thickened resin. Two hours, spread about.

Standing rigging is eight seasons. Some say ten, some say twelve. I say look at it. I looked.

Running rigging: the kicker purchase has one sheave split in two. I've led it round with one part fewer and it'll hold for evening sailing, though you want arms like a blacksmith. New block, and reeve it afresh, quarter of an hour.

Pump. I always pump three strokes for luck. First stroke nothing, second nothing, third a sort of cough. Valve flap's gone hard. Get the service kit and do the lot, half an hour.

12.5 on the meter, and that's with the cold. The lamp wires I never liked but they've never failed me either.

The young man next door wants me to fit a chart plotter. I have a chart.

The rudder downhaul: the cleat's good, the line's good, the blade itself floats up because the pivot bolt wants nipping. Half a turn with the big spanner, a minute. No more than half or the lad can't kick it up off the mud.

Trailer. Springs want a coat of oil and grease before the salt gets at them again: twenty minutes on your back. The wheels I did at Easter, and the brakes are the garage's business, they did them for the test.

Mooring warps: turned end for end. Good for another two.

One screw is out of the locker hinge. In it goes again, with glue, when I find it.

Need: pump kit, a small double block, tin of spring grease. You youngsters buy too much.`,
    marks: [
      { kind: 'job', at: 'Drill a few holes from inside', parts: { minutes: 120 } },
      { kind: 'jury rig', at: "I've led it round with one part fewer", parts: {} },
      { kind: 'job', at: 'New block, and reeve it afresh', parts: { minutes: 15 } },
      { kind: 'job', at: 'Get the service kit and do the lot', parts: { fitting: 'pump', minutes: 30 } },
      { kind: 'reading', at: '12.5 on the meter', parts: {} },
      { kind: 'job', at: 'Half a turn with the big spanner', parts: { zone: 'transom', minutes: 1 } },
      { kind: 'job', at: 'Springs want a coat of oil and grease', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'job', at: 'In it goes again, with glue', parts: {} },
      { kind: 'store', at: 'Need: pump kit', parts: {} },
      { kind: 'store', at: 'a small double block', parts: {} },
      { kind: 'store', at: 'tin of spring grease', parts: {} },
    ],
  },
  {
    name: 'getting ready for mast day',
    page: `so mast goes up on the seventeenth that's the plan with four of us if my uncle's knee holds out and before that there's a few things that can't be done after so let me just run through them the wind vane's on that's done I did it Tuesday the VHF aerial was fine last year and nobody's touched it the lower port shroud the bottle screw's got a flat on the thread from when it hit the tow bar so a new bottle screw on that side fifteen minutes the other side's good the spreader ends I want to tape up again with that self bonding tape twenty minutes both the sail track is full of dead flies so wipe it out with a rag on a string and a bit of silicone ten minutes the gin pole rope is frightening last year we used the mainsheet instead and we can do that again so that stays as is the mast step bolt's been replaced by a bit of threaded rod with two nuts which is what I had on the day and it's soft steel and I can see it's bending get a proper ten mil bolt in there a2 stainless five minutes the steaming light works I put twelve volts on it on the bench battery's twelve six five so there's plenty what else the radar reflector fell off in the gale and it's in the hedge I left it there then once she's up there's tensioning her up which I do by feel and everyone tells me I do it wrong and the boom we need the outhaul block turned round because it's chafing turn it round with a new shackle five minutes that can be done any time right what about lunch I'll bring soup shopping for it is a bottle screw the ten mil bolt and bonding tape and if it blows over fifteen knots we don't do it we go to the pub`,
    marks: [
      { kind: 'job', at: 'so a new bottle screw on that side', parts: { zone: 'rig', minutes: 15 } },
      { kind: 'job', at: 'the spreader ends I want to tape up again', parts: { zone: 'rig', minutes: 20 } },
      { kind: 'job', at: 'wipe it out with a rag on a string', parts: { minutes: 10 } },
      { kind: 'jury rig', at: 'replaced by a bit of threaded rod', parts: { zone: 'rig' } },
      { kind: 'job', at: 'get a proper ten mil bolt in there', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'reading', at: "battery's twelve six five", parts: {} },
      { kind: 'job', at: 'turn it round with a new shackle', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'store', at: 'shopping for it is a bottle screw', parts: {} },
      { kind: 'store', at: 'the ten mil bolt and', parts: {} },
      { kind: 'store', at: 'and bonding tape', parts: {} },
    ],
  },
  {
    name: 'numbers on a clipboard',
    page: `Sheet 3, spring inspection, continued from the garage.

3.1 Trailer suspension, ground clearance left 212 mm, right 209 mm. Within the scatter of the tape. No action.

3.2 Tyre pressures as found: left 29 psi, right 34 psi, rated 36. Both inflated to 36 at 10:20; done.

3.3 Left hub, end float 0.35 mm. Limit 0.10. Adjust castle nut one flat, new split pin, check for heat after 10 km. 25 minutes.

3.4 Hitch damper: recovers in 4 s, should be below 3. I know of no remedy short of a new damper. To be ordered and fitted, 1.5 hours, second person to compress it. Until then gentle braking.

3.5 Bunk carpet worn through over 150 mm at the aft end. A folded offcut of fire hose is stapled over it. Adequate until the boat is next off the trailer, when the carpet is to be renewed, both sides, 2 hours.

3.6 Winch post: plumb. U-bolts 40 Nm. Fine.

3.7 Propeller clearance when trailed: 180 mm. Regulation satisfied.

3.8 Electrical, seven-pin plug: pin 4 corroded, 0.9 V drop under 2 A. Replace the plug, 20 minutes. I considered a dielectric grease and rejected it.

3.9 Boat battery, 12.57 V at 8 degrees. Charger float 13.7 V. Good.

3.10 Bow eye, pull test 2.5 kN by the tackle against the gatepost. Neither moved.

3.11 Cabin vent fan draws 0.31 A where 0.15 is stamped and whines. Clean blades, one drop of oil, measure again: 15 minutes. If no better, it can whine.

3.12 Sole bearer, frame 4: cracked through. Sister it with 18 mm ply, epoxy and four screws, 90 minutes plus cure at 15 degrees or above.

3.13 Mast rake: not measured, mast down.

3.14 Rudder blade: balance and profile as drawn. I spent a whole February on it and am not going to touch it again.

Parts: damper, split pins 4 mm, 7-pin plug, carpet 3 m.

Remark. A colleague calculates that I spend six hours of maintenance per hour of sailing. He has omitted the pleasure of the former.`,
    marks: [
      { kind: 'reading', at: 'left 29 psi, right 34 psi', parts: {} },
      { kind: 'job', at: 'Adjust castle nut one flat', parts: { zone: 'trailer', minutes: 25 } },
      { kind: 'job', at: 'To be ordered and fitted', parts: { zone: 'trailer', minutes: 90, hands: 2 } },
      { kind: 'jury rig', at: 'A folded offcut of fire hose is stapled over it', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'when the carpet is to be renewed', parts: { zone: 'trailer', minutes: 120 } },
      { kind: 'job', at: 'Replace the plug, 20 minutes', parts: { minutes: 20 } },
      { kind: 'reading', at: '12.57 V at 8 degrees', parts: {} },
      { kind: 'job', at: 'Clean blades, one drop of oil', parts: { zone: 'cabin', minutes: 15 } },
      { kind: 'job', at: 'Sister it with 18 mm ply', parts: { zone: 'cabin', minutes: 90 } },
      { kind: 'store', at: 'Parts: damper', parts: {} },
      { kind: 'store', at: 'split pins 4 mm', parts: {} },
      { kind: 'store', at: '7-pin plug, carpet', parts: {} },
      { kind: 'store', at: 'carpet 3 m', parts: {} },
    ],
  },
  {
    name: 'asking more than telling',
    page: `Hi, only me again, sorry, I know you said keep a list and not ring up every time. So I'm talking into this instead.

Is it normal that the hatch board sticks? It did when we bought her. I've put a bit of soap on it and now it slides, so maybe that's that.

The thing I actually wanted to say is the steering stick, the tiller. Where it goes into the metal at the back, the bolt's too thin for the hole and it clonks. I've wedged it with a bit of lolly stick. You said at Christmas a bigger bolt, so I'm going to get a bigger bolt, M10 was it, and put that in. Twenty minutes?

Then, the seat by the ladder has a splinter the size of a pencil. Somebody's going to get that in the leg. I'll sand it down and put oil on, half an hour, I've got the oil.

Do I need to do anything to the white stuff on the inside of the keel box? If not, I won't.

The flares are fine till 2029. The lifejackets I've had done. The extinguisher, the needle's on the red bit, so that needs swapping for a new one, doesn't it, before we take the kids out.

I've measured the battery!! By myself! 12.52.

The mainsail has a little tear along the bottom, like where it rubs on the thing. I put a sticky plaster on, a real plaster, it's got ducks on. I know it should have proper sail tape both sides, so I'll do that on the kitchen table, ten minutes.

The man on the next mooring says my antifouling is the wrong colour. Can it be?

Oh and the trailer: the little rubber stopper at the front that the boat bumps up against, it's split and half of it fell off in the road. A new one, please tell me what size, then I'll bolt it on.

I'd love to learn to splice. And could we go out for a night this year?

I'm going to buy sail tape and an extinguisher on Saturday. Anything else?`,
    marks: [
      { kind: 'jury rig', at: "I've wedged it with a bit of lolly stick", parts: { fitting: 'tiller' } },
      { kind: 'job', at: "I'm going to get a bigger bolt", parts: { minutes: 20 } },
      { kind: 'job', at: "I'll sand it down and put oil on", parts: { minutes: 30 } },
      { kind: 'job', at: 'so that needs swapping for a new one', parts: {} },
      { kind: 'reading', at: '12.52', parts: {} },
      { kind: 'jury rig', at: 'I put a sticky plaster on', parts: {} },
      { kind: 'job', at: 'it should have proper sail tape both sides', parts: { minutes: 10 } },
      { kind: 'job', at: "then I'll bolt it on", parts: { zone: 'trailer' } },
      { kind: 'store', at: "I'm going to buy sail tape", parts: {} },
      { kind: 'store', at: 'and an extinguisher', parts: {} },
    ],
  },
];
