import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'without a full stop',
    page: `right so I'm at the front of the boat it's after work and it's not raining for once um bow roller turns nicely no complaints there I greased that in February and it's still fine the anchor shackle hasn't got any wire through the pin I keep looking at it and walking off again so mouse that five minutes and then coming back along the left hand side the um what d'you call it the toe rail no the rubbing strake there's a bit about as long as my forearm that's come away from the hull and you can get a fingernail behind it I suppose it wants gluing and clamping back say an hour and it'll have to be dry for that the deck itself is fine on this side no soft spots I jumped on it you remember last year I had that great hole by the step well that's all filled and painted and you'd never know okay other side the shroud plate here has a brown dribble coming out from under it and when I was in the cabin on Sunday there was damp on the lining just below so that's where it's getting in it'll all have to come off and be cleaned up and bedded down again mast down obviously two hours give or take the flag halyard's tatty but it's only a flag it can stay as it is cockpit now the rubber joint on the tiller extension has split and I've got it bound up with that stretchy tape which is all right for the pond but I wouldn't trust it on a windy day the new joint's ordered so when it turns up swap it over ten minutes the drain plugs are both there good the locker lid on the right one of its hinges has lost two screws and the whole lid goes sideways when you sit on it longer screws I think twenty minutes inside then the battery thing says twelve point five two with nothing switched on the light over the sink was dead but that was only the bulb I did that on Sunday as well the bilge is dry mind you when I pressed the switch for the bilge pump it only hummed and I poured a bucket in and nothing came out of the side so take it out and see what's jammed in it half an hour I'd hope outside again the rudder's at home in the garage I sanded it last weekend and now it's waiting for varnish three coats when it gets warm enough trailer the left hand light isn't working the right one is it's probably the earth it always is find that and fix it before we go anywhere because it's not legal like that shopping then seizing wire a tin of varnish and some longer screws and um the club's supposed to be mending the slipway not my problem thank goodness and one day one day I'm going to have proper cushions in that cockpit right tea`,
    marks: [
      { kind: 'job', at: 'so mouse that five minutes', parts: { minutes: 5 } },
      { kind: 'job', at: 'it wants gluing and clamping back', parts: { zone: 'topsides', minutes: 60 } },
      {
        kind: 'job',
        at: "it'll all have to come off and be cleaned up",
        parts: { minutes: 120, setUps: { mast: 'down' } },
      },
      { kind: 'jury rig', at: "I've got it bound up with that stretchy tape", parts: {} },
      { kind: 'job', at: 'when it turns up swap it over', parts: { minutes: 10 } },
      { kind: 'job', at: 'lid goes sideways when you sit on it longer screws I think', parts: { minutes: 20 } },
      { kind: 'reading', at: 'twelve point five two', parts: {} },
      { kind: 'job', at: "take it out and see what's jammed in it", parts: { minutes: 30 } },
      { kind: 'job', at: "it's waiting for varnish three coats", parts: {} },
      { kind: 'job', at: 'find that and fix it', parts: { consequence: 'unlawful' } },
      { kind: 'store', at: 'seizing wire', parts: {} },
      { kind: 'store', at: 'a tin of varnish', parts: {} },
      { kind: 'store', at: 'some longer screws', parts: {} },
    ],
  },
  {
    name: 'few words',
    page: `Thurs 8 Apr. Dry. Cold hands. Tape measure left in the van, so sizes by eye.

BOW
Roller ok. Bow light ok.
Stem band: two screws proud. No, three. Dig out, plug the holes, refix. 1 h.
Anchor fine. Chain turned end for end last yr, fine.

RIG (mast on trestles)
Sheave at top seized solid. Old wasps' nest in there?? Free it + grease, 40 min, while mast is down.
Aerial fine. Wind vane bent, still points.
Port lower shroud - one strand gone at the swage. Thought it was a bit of fluff. It wasn't. Rigger to make up a new one, I fit it. Danger. Not sailing on that.
Spreaders ok, boots done Oct.
Main halyard good for another yr.

CABIN
Batt 12.31 at 0710, all off, cover on.
Sole board creaks. Always has.
Stbd window: drip on the bunk all last summer. Smear of mastic round the outside since Sept, holding. Leave it till June. Then frame out, clean, rebed, 2 h.
Extinguisher ok, in date to '29. Stove ok.
Headlining: small sag. Looked at it. It looked at me. No.

BOARD CASE
Pendant furry where it goes over the block. Same last season, got away with it. Not again. New 6 mm, reeve w/ old one as messenger, 45 min.
Case gasket a bit wavy. Hm. See how it goes.

COCKPIT
Winch port: one pawl lazy, slips under load. Strip, clean, oil. 30 min. Stbd winch had same in Jan, done.
Mainsheet blocks ok. Jam cleat ok-ish.
Compass bubble there since she was built.

STERN
Lower pintle 2 mm slop. Nylon washer in there for now, quietens it, no more than that. Chap w/ lathe is turning me a bush. When I get it: press in, ream, 1 h.
Outboard: serviced March, runs sweet.
Kill cord perished, cracks when bent. Fit new, 2 min. Don't run engine till then.

TRAILER
Bearings + seals done Feb. Cool after 20 miles.
Lights all work. Surprised.
Tyres good. Spare soft. Pump up, see if it holds.
Winch strap frayed a hand's width from the hook. Restitch? No. Change strap. By 24th.
Mudguard dented. That was me. Stays.

BUY
6 mm cord 8 m
kill cord
winch strap
No. 8 screws, 30 mm

NOT MINE
Club does the mooring chains this yr.
Neighbour's got my big cramps, glueing his oars.

SOME DAY
Electric anchor winch. Ha.

Home 1115. Rain 1120.`,
    marks: [
      { kind: 'job', at: 'Dig out, plug the holes, refix', parts: { minutes: 60 } },
      { kind: 'job', at: 'Free it + grease', parts: { minutes: 40, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'Rigger to make up a new one, I fit it', parts: { consequence: 'danger' } },
      { kind: 'reading', at: 'Batt 12.31', parts: {} },
      { kind: 'jury rig', at: 'Smear of mastic round the outside', parts: {} },
      { kind: 'job', at: 'Then frame out, clean, rebed', parts: { minutes: 120 } },
      { kind: 'job', at: 'New 6 mm, reeve', parts: { minutes: 45 } },
      { kind: 'job', at: 'Strip, clean, oil', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'jury rig', at: 'Nylon washer in there for now', parts: {} },
      { kind: 'job', at: 'press in, ream', parts: { zone: 'transom', minutes: 60 } },
      { kind: 'job', at: 'Kill cord perished, cracks when bent. Fit new', parts: { minutes: 2 } },
      { kind: 'job', at: 'Spare soft. Pump up', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Change strap', parts: { zone: 'trailer', due: '2027-04-24' } },
      { kind: 'store', at: '6 mm cord 8 m', parts: {} },
      { kind: 'store', at: 'kill cord', parts: {} },
      { kind: 'store', at: 'winch strap', parts: {} },
      { kind: 'store', at: 'No. 8 screws', parts: {} },
    ],
  },
  {
    name: 'in his second language',
    page: `Hello, I speak now for the boat list. Sorry for my English, my wife says I must speak slowly for the telephone.

So, I begin behind. The motor is good, I have made the service by myself in March with new oil and new candle, how do you say, spark plug. But the bracket of the motor, there is one screw that turns and turns and does not hold nothing. The hole is too big. It must come a thicker one with a big washer from inside, half hour I think.

The rudder, he is okay. Last year it was terrible, we must make new all the varnish, seven coats! This year only to enjoy.

In the cockpit the floor is very smooth, my daughter has fallen there already two times. I will paint there this paint with sand inside. First I have to rough it, and I need one day without rain, so perhaps three hours of work all together.

The pump makes noise but it is the normal noise. The battery has twelve comma six this morning, before the sun. That is good, no?

Hm. The rope who lifts the board. It is not broken. But there where it goes over the wheel it is become thin, one can see the inside, and if it goes then falls the board, maybe on somebody. My friend has made a knot around the bad place, so that we can at least lift it here on the trailer. With this knot we go not sailing. I will pull in a new rope, one hour.

On the left side the window swims. Not swims, sweats! In the morning is water on it but this is only from the breathing. I have tried with the hose, it is tight.

But the little door on the foredeck, the hatch, there is the rubber hard like stone, and with the hose came the water in on the bed. The new rubber is in the post, it should come Tuesday. Then I scratch out the old one and glue the new one, forty minutes.

The mast is lying, so I can see the top. The small wheel turns good. The lamp up there gives no light. First I change the bulb, and if it is still dark then it is the cable, and then I don't know how long.

The wire to the front is from last year, but low down, I don't know, there stands one hair out that has cut my finger. Is this bad? I ask the rigger that he looks at it before the night on the estuary.

The big sail, in the corner below the ring is half out of the cloth. I don't sew. Saturday I bring it to the lady at the club with the strong machine, she makes it for a bottle of wine.

On the trailer the lights are good, the wheels are good, the tyres we have bought new in autumn. Only the wheel in front, the small one for to push, it has no air. I put a new tube, twenty minutes.

I must buy rope of eight millimetre, ten metres, the sand paint, and one bulb. And my neighbour shall please bring back my ladder.

One time I would like to have also a small kitchen inside. But this is a dream and not for the list. Thank you, goodbye. How do I stop this now?`,
    marks: [
      { kind: 'job', at: 'It must come a thicker one with a big washer', parts: { fitting: 'bracket', minutes: 30 } },
      { kind: 'job', at: 'I will paint there this paint with sand inside', parts: { zone: 'cockpit', minutes: 180 } },
      { kind: 'reading', at: 'twelve comma six', parts: {} },
      { kind: 'jury rig', at: 'My friend has made a knot around the bad place', parts: {} },
      { kind: 'job', at: 'I will pull in a new rope', parts: { minutes: 60 } },
      {
        kind: 'job',
        at: 'Then I scratch out the old one and glue the new one',
        parts: { zone: 'foredeck', minutes: 40 },
      },
      { kind: 'job', at: 'The lamp up there gives no light. First I change the bulb', parts: { zone: 'rig' } },
      { kind: 'job', at: 'I ask the rigger that he looks at it', parts: { outing: 'estuary' } },
      { kind: 'job', at: 'Saturday I bring it to the lady', parts: {} },
      { kind: 'job', at: 'it has no air. I put a new tube', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'store', at: 'rope of eight millimetre', parts: {} },
      { kind: 'store', at: 'the sand paint', parts: {} },
      { kind: 'store', at: 'and one bulb', parts: {} },
    ],
  },
  {
    name: 'with the figures',
    page: `Condition of the vessel on the eighth of April. Air 9 degrees, relative humidity 71 per cent. I go from forward to aft and give figures where I have them.

One. Forestay. The clevis pin measures 7.6 mm where it was 8.0 new. I set the limit at four per cent in my working life and see no reason to be kinder now that I am retired. Replace, 15 minutes, with a halyard taken forward to hold the mast.

Two. Ground tackle. Anchor 7.5 kg. Chain measured in four places, the smallest 5.8 mm against 6.0. Accepted.

Three. Port shroud plate. Four M6 bolts, of which two took an eighth of a turn at 5 newton metres, that is to say they had relaxed, and there is a tea-coloured stain below. I had the starboard one off in 2025; it took 90 minutes and has been dry since. I would expect no more of this one. It is to be lifted, the holes countersunk, and rebedded on butyl, mast down, before the shakedown sail.

Four. Battery. At 06:40, panel covered and loads off since the evening, 12.58 volts, case at 8 degrees. The panel itself I washed in March and its output is what it should be. With the stern lamp lit I lose 0.9 volts between battery and lamp, some seven per cent, which is a poor show for three metres of cable. The first crimp behind the switch panel is green. I shall cut back to bright copper and make it afresh, with adhesive sleeve this time: 30 minutes.

Five. Board hoist. 240 newtons at the handle. My notebook has 170 for the same test three years ago, and the plate has not grown heavier. The winch was stripped last winter and spins freely, so the winch it is not. That leaves the turning block at the head of the case. Take it out and press in a new bush; 60 minutes, and a further 15 to prop the board.

Six. Rudder. Clearance at the upper pintle 0.30 mm, at the lower 0.35, limit 1.0. Nothing required.

Seven. Tiller. The laminations have opened over 120 mm at the forward end. At present two hose clips hold it together, and I would allow them Force 3 and two outings, not more. Epoxy and cramps, 45 minutes, and then 24 hours undisturbed above 12 degrees.

Eight. Foredeck moisture, by a borrowed meter: eleven places, highest 14 per cent, lowest 12. No action. I mention it because my wife asked.

Nine. Trailer. Nose weight 48 kg, limit 75. The tyres are stamped week 14 of 2020, hence seven years old, and I change at six. The fitter does the work but the wheels have to be taken to him, 1 hour including the drive. The nearside brake drags: 31 newtons to turn the wheel against 12 on the other side. Back off the adjuster half a turn and measure again, 20 minutes.

Ten. Lifejackets. Two of the three cylinders are within a gram of the stamped weight. The third is rusted in and could not be weighed. That jacket goes to the service agent.

To be procured: one clevis pin 8 mm, butyl tape 20 mm wide, ring crimps for 2.5 square, and a bush.

I have gone back and forth over whether the standing rigging, at nine years, ought to be renewed. It ought not, yet. In some future year I should like a load cell in the backstay, purely for amusement.`,
    marks: [
      { kind: 'job', at: 'Replace, 15 minutes', parts: { minutes: 15 } },
      {
        kind: 'job',
        at: 'It is to be lifted, the holes countersunk, and rebedded',
        parts: { setUps: { mast: 'down' }, outing: 'spring' },
      },
      { kind: 'reading', at: '12.58 volts', parts: {} },
      { kind: 'job', at: 'I shall cut back to bright copper and make it afresh', parts: { minutes: 30 } },
      { kind: 'job', at: 'Take it out and press in a new bush', parts: { zone: 'case' } },
      { kind: 'jury rig', at: 'two hose clips hold it together', parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'Epoxy and cramps', parts: { minutes: 45 } },
      { kind: 'job', at: 'the wheels have to be taken to him', parts: { minutes: 60 } },
      { kind: 'job', at: 'Back off the adjuster half a turn', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'job', at: 'That jacket goes to the service agent', parts: {} },
      { kind: 'store', at: 'one clevis pin 8 mm', parts: {} },
      { kind: 'store', at: 'butyl tape 20 mm wide', parts: {} },
      { kind: 'store', at: 'ring crimps', parts: {} },
      { kind: 'store', at: 'and a bush', parts: {} },
    ],
  },
  {
    name: 'to her sister',
    page: `Well, hello you. You said write it all down, so here I am with the dog and a flask, and I'm putting in everything I can think of and you can sort it into sensible things, because you're the sensible one.

I started in the cabin as it was spitting. It's lovely and dry in there, I was ever so pleased. You remember the spring we bailed it out with the baby bath? None of that. The one thing, and it's only small, the little door under the step won't stay shut, it swings open when she heels and out come the tins. A turn button, that's all it wants, I could do it in a quarter of an hour if somebody gave me back the good screwdriver.

I tried all the lights and they all lit. Ooh, and I did the battery like you showed me, red on red, and it was 12.4, I wrote it on the back of my hand.

The cushion covers I've washed already, don't all thank me at once.

Then the ropes. The jib sheets are fine. Pink, but fine. The main halyard though, there's a place about a yard from the end where the outside has worn right through and the white stuff is poking out like a toe out of a sock. Dad always said you chop the bad bit off and start again, and there's plenty of length. So that, and a whipping on the end, and you do a nicer whipping than me. Twenty minutes?

Now you'll laugh. You know I tied that bit of washing line round the outboard to stop it flopping about, because the catch had gone? It's still on there. Eighteen months! I sort of stopped seeing it. Anyway the catch is only a spring and a hook, they cost next to nothing, and I've sent off for one. I'll put it on when it comes and we can give the washing line a decent burial.

The side, where I met the jetty. I did meet the jetty, we've all agreed on that. It's through the paint in one spot about as big as a saucer. You said it should be filled and touched in before the muster so nobody passes remarks, and I'm happy to.

Her bottom's been done, I know because I've still got blue in my hair.

The cover. I did think about a new one, then I saw what they cost and had to sit down. It'll do another year or three. But the zip's gone at the back and the rain runs in there and makes a pool on the seats, and last week there was a blackbird having a bath in it, I felt mean turning him out. Next door has that great big sewing machine, and she says fetch it round any evening and she'll put a new zip in for a cake. So I'll do that, and I'll do the cake.

Where the boom joins on to the mast it squeaks like a gate. A squirt of something would see to that, two minutes.

I couldn't find the flares, by the way. I'm nearly sure you had them. Could you look in your loft and see what date they've got on them?

I don't touch the trailer, the trailer's yours and always has been, but I can tell you the mudguard on the hedge side is hanging by one bolt, because I walked into it. It'll be off on the road. It wants bolting back on before she's moved.

Is the mast meant to creak? It did it last year as well and it was nothing then.

One of these days I'd love a tiny wood stove in there. I know. Don't say it.

We need a turn button, whipping twine and a little tin of filler. Dog's eaten my pasty. Love to all.`,
    marks: [
      { kind: 'job', at: "A turn button, that's all it wants", parts: { minutes: 15 } },
      { kind: 'reading', at: 'it was 12.4', parts: {} },
      { kind: 'job', at: "and start again, and there's plenty of length. So that, and a whipping", parts: {} },
      { kind: 'jury rig', at: 'I tied that bit of washing line round the outboard', parts: { zone: 'transom' } },
      { kind: 'job', at: "I'll put it on when it comes", parts: {} },
      { kind: 'job', at: 'it should be filled and touched in', parts: { outing: 'muster' } },
      { kind: 'job', at: "fetch it round any evening and she'll put a new zip in", parts: {} },
      { kind: 'job', at: 'it squeaks like a gate. A squirt of something', parts: { zone: 'rig', minutes: 2 } },
      { kind: 'job', at: 'Could you look in your loft', parts: {} },
      { kind: 'job', at: 'It wants bolting back on', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'need a turn button', parts: {} },
      { kind: 'store', at: 'whipping twine', parts: {} },
      { kind: 'store', at: 'a little tin of filler', parts: {} },
    ],
  },
  {
    name: 'by the calendar',
    page: `OK so I've got four days on her before the shakedown and I'm going to spend them properly this time, not like last year when I did all the nice jobs first and was packing bearings by torchlight at eleven the night before.

Saturday the tenth. Mast's down so the top end comes first. The sheave's got a flat worn in it, so that's out with the pin and the new one goes in, 40 minutes. I've got the new one, it's been on the kitchen windowsill since Christmas. While I'm at that end, the masthead light has gone a bit cloudy but you can see it well enough, so leave that alone. The spreader on the starboard side has lost its boot and it'll go straight through the jib. I could tape it. No, hang on, tape is what I did last time and it lasted a fortnight. Proper boot, 10 minutes.

They're giving showers from about two, so after lunch I go below. The hose on the sink drain has perished where it meets the fitting in the hull, I can push my thumbnail into it, and I don't like that one bit, because that's under water when she heels. New hose, two clips each end, three quarters of an hour. The other hoses I did the year before last and they're all supple.

Battery was 12.47 this morning, everything off, so no worries there.

Sunday I've only got till noon since it's Mum's lunch. Small stuff then. The cleat on the port coaming: I shoved a dab of sealant under it in August when it started letting water in and that's held, so it can go on holding for the summer. It's got to come off and be done properly at the end of the season though, with a backing pad. And the cabin door lock's stiff. Bit of graphite, five minutes, even I can manage that.

My brother's fixing the inflatable, that's his, he burst it.

Monday to Friday I'm at work. Except that on Wednesday I go past the chandler's, so pick up a metre of drain hose, four hose clips, a spreader boot and a tin of grey primer. And on the way home the jib gets dropped off at the sailmaker's, because the stitching has gone along the back edge for about a foot.

Saturday the seventeenth is the big one. The board. There's a chip out of the front edge from that rock I said wasn't there and the bare metal is going rusty. She has to be propped for it so that it'll come right down, and I'm not doing that by myself, so next door is giving me an hour at nine. Then wire brush it, fill it, and prime it when the filler's gone hard. Two hours of actual work I reckon, and a lot of tea. I did wonder about antifouling her while she's up there. But she's only afloat a fortnight in the year, so no.

Sunday the eighteenth my lad's over, mast goes up. With it up we find out about the steaming light, which flickers whenever you touch the plug on deck. I had a look and the pins are all green, so I want to clean those up and grease them, 15 minutes.

Anything left over slides into the evenings, which will be the outboard, I know what I'm like. Its gear oil hasn't been changed since I don't know when. The impeller was done last summer and the plugs are new. Say half an hour for the oil.

Trailer's had its service and came back with a clean sheet. First aid box was restocked in January. When I win the lottery I'll have all the halyards led aft, but not with this overdraft.`,
    marks: [
      { kind: 'job', at: 'out with the pin and the new one goes in', parts: { minutes: 40 } },
      { kind: 'job', at: 'Proper boot, 10 minutes', parts: { minutes: 10 } },
      { kind: 'job', at: 'New hose, two clips each end', parts: { minutes: 45 } },
      { kind: 'reading', at: 'Battery was 12.47', parts: {} },
      { kind: 'jury rig', at: 'I shoved a dab of sealant under it', parts: {} },
      { kind: 'job', at: "It's got to come off and be done properly", parts: {} },
      { kind: 'job', at: "the cabin door lock's stiff. Bit of graphite", parts: { zone: 'cabin', minutes: 5 } },
      { kind: 'store', at: 'a metre of drain hose', parts: {} },
      { kind: 'store', at: 'four hose clips', parts: {} },
      { kind: 'store', at: 'a spreader boot', parts: {} },
      { kind: 'store', at: 'a tin of grey primer', parts: {} },
      { kind: 'job', at: "the jib gets dropped off at the sailmaker's", parts: {} },
      { kind: 'job', at: 'Then wire brush it, fill it, and prime it', parts: { minutes: 120 } },
      { kind: 'job', at: 'I want to clean those up and grease them', parts: { minutes: 15 } },
      { kind: 'job', at: "Its gear oil hasn't been changed", parts: { minutes: 30 } },
    ],
  },
];
