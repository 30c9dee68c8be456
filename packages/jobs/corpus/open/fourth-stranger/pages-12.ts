import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'waiting for the tow',
    page: `so I'm stood here waiting for Keith and his tractor he said nine it's twenty past so I'll do a walk round for something to do she's on her trailer obviously the straps are on the mast's tied down there's a red rag on the end of it as the law requires the nearside mudguard rattles it's always rattled I hum along to it um the number plate that's wrong that's the old car's plate I haven't got one for this car so it's written on cardboard in marker pen in a freezer bag which I don't suppose the police would admire so get a plate made up at the key shop and screw that on today's only half a mile on the farm track so it'll do jockey wheel's good I put that on last year the winch post's a bit rusty by the bolts I gave it some paint in February the roller under the keel the second one back has split in half and fallen off on one side and there's bare metal wearing into the keel band that has to be a new roller and we've got to lift her a touch to get it in so two people and a jack forty minutes Keith if he ever comes there's a lark up I can hear it can't see it the bung's in my pocket I'm keeping it in my pocket I launched without it in 2019 and I've never lived it down they gave me a cup for it and the rudder pin's got a nappy pin in it instead of the split ring which I think was me so one split ring for the rudder and it's a ten second job here's Keith at last`,
    marks: [
      { kind: 'jury rig', at: "so it's written on cardboard in marker pen", parts: { zone: 'trailer' } },
      {
        kind: 'job',
        at: 'so get a plate made up at the key shop',
        parts: { zone: 'trailer', consequence: 'unlawful' },
      },
      { kind: 'job', at: 'that has to be a new roller', parts: { zone: 'trailer', hands: 2, minutes: 40 } },
      { kind: 'jury rig', at: "the rudder pin's got a nappy pin in it", parts: { zone: 'transom' } },
      { kind: 'job', at: 'so one split ring for the rudder', parts: { zone: 'transom' } },
    ],
  },
  {
    name: 'to a daughter on a ship',
    page: `Dear Nan,

Your last letter took five weeks and smelt of diesel. We read it aloud at breakfast.

Since you say you miss her, I'll walk you round. Begin at the bow, where you used to sit with your legs over. The roller has been renewed, and the varnish on the stem done. The cleat's the same cleat; I could pick it out of a thousand.

On the foredeck your brother has stepped through the plastic of the hatch. It was an accident and he weighs what he weighs. There's a roasting tin upside down on it with a stone on top, and your mother wants the tin back for Sunday. A sheet of clear plastic has been cut for us, and I'm bedding it in as soon as the wind lets me: an hour.

The mast's up, and stays up. I had the rigger to it and he charged me for the compliments.

Below, your bunk. Nobody's slept in it. The curtain rail's come down at one end, and I mean to screw it back before you're home, so that you'll find it as it was.

The stove lights, the kettle sings, the clock's wrong.

In the cockpit the port sheet winch has taken to slipping; there's old grease in it like toffee. It needs taking apart on a bright morning with a tin of paraffin, and somebody to catch the springs. I was always the one who dropped the springs. You caught them.

We've had frost on the blossom, and hardly any plums to come, they say. The bees are cross. Mr Tuck has sold his ketch to a dentist and regrets it hourly.

I should like to sail out and meet you, but I know it's too far.

Your old Dad`,
    marks: [
      { kind: 'jury rig', at: "There's a roasting tin upside down on it", parts: { zone: 'foredeck' } },
      { kind: 'job', at: "I'm bedding it in as soon as the wind lets me", parts: { zone: 'foredeck', minutes: 60 } },
      { kind: 'job', at: 'I mean to screw it back', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'It needs taking apart on a bright morning', parts: { zone: 'cockpit' } },
    ],
  },
  {
    name: 'short of breath',
    page: `Hang on. Steps. That's — forty-one steps. They've put in another one, I swear.

Right. Boat. Morning, boat.

Jib. On the furler, rolled tight. Good. Sun strip's a bit pale, same as me. Leave it.

Furling line. Hm. Bald patch where it goes round the last block. You'd get another season? No, I said that last season. New line. I'll do it Monday; it's a quarter of an hour with the old one sewn on to pull it through.

Deck. Warm. Cat asleep on it. Not our cat.

Winch. Click click click. Good.

Main. Off, it's at home. Was washed. Was ironed, don't tell anyone.

Tiller — now this. See that? Pin's worn. Up, down, up, down, eight, nine millimetres at the end. I've got a bit of leather lapped round it so it's quiet. It's quiet, but it's not right. Bigger pin, and drill out the hole to suit. Ask Mick for the drill. An hour.

Sit down a minute.

My doctor says no lifting. My doctor's never seen an anchor. I told her I'd have a boy do it, there's no boy.

The lake's like a plate. There's two swans at the far end having words.

Down below. Gauge says... glasses... twelve point four. Light, yes. Other light, yes. Pump — brrr — yes, and water out of the side, yes.

Cooker. The left ring's yellow and it sooted my saucepan. Jet wants pricking out, there's a pricker in the drawer. Five minutes. Then it should go blue.

Fire extinguisher, needle's in the green.

So that's not so bad, is it. I've known springs when the list ran on to the second page. My father's list was on a roll of wallpaper.

Forty-one steps back up, though.`,
    marks: [
      { kind: 'job', at: "New line. I'll do it Monday", parts: { minutes: 15, due: '2027-04-12' } },
      { kind: 'jury rig', at: "I've got a bit of leather lapped round it", parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'Bigger pin, and drill out the hole to suit', parts: { fitting: 'tiller', minutes: 60 } },
      { kind: 'reading', at: 'twelve point four', parts: {} },
      { kind: 'job', at: "Jet wants pricking out, there's a pricker", parts: { minutes: 5 } },
    ],
  },
  {
    name: 'two hats',
    page: `* As treasurer: we have £112. As boatman: we've no money.
* Fore end: anchor, chain, roller all checked Sat, nothing to say.
* Pulpit light: worked when I thumped it, that'll be the bulb holder; clean the contacts, 5 min.
* Hatch: tight as a drum since the new seal.
* Mast: someone at the bar told me we should rake it more. Someone at the bar should buy a boat.
* Boom: outhaul block has lost its sheave (where do they GO). Lashed a shackle in its place, the line just runs over that. Get a new block on before the muster.
* Kicker, sheets, cleats: all ok. Mainsheet a bit hairy, like the treasurer.
* Cabin: stanchion leak cured last month, stain remains as a memorial.
* Cabin: switch panel door won't latch & bangs all night. Little magnet catch, glue it, done. Must do.
* Batt 12.5 V this a.m.
* Pump: electric fine. Hand pump handle: fine.
* Board: drops, lifts, no drips.
* Cockpit: seat locker hinge pin creeping out, 20 mm showing. Knock it back & peen the end over.
* Should we buy a spray hood? Vote: 2 for, 2 against, 1 asleep.
* Rudder: no remarks.
* Outboard bracket: one of its four bolts is spinning, so the whole thing nods under power. Could lose the engine off the back. Nut & backing plate inside, 1 h, needs a second pair of hands.
* Topsides: dull. So's the weather.
* Trailer: cracked reflector, l.h. side, has insulating tape over it. New reflector from the car shop, stick on.
* Social: fish supper on the 30th, bring a plate.`,
    marks: [
      { kind: 'job', at: 'clean the contacts, 5 min', parts: { minutes: 5 } },
      { kind: 'jury rig', at: 'Lashed a shackle in its place', parts: { zone: 'rig' } },
      { kind: 'job', at: 'Get a new block on before the muster', parts: { zone: 'rig', outing: 'muster' } },
      { kind: 'job', at: 'Little magnet catch, glue it', parts: { zone: 'cabin' } },
      { kind: 'reading', at: 'Batt 12.5 V', parts: {} },
      { kind: 'job', at: 'Knock it back & peen the end over', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'Nut & backing plate inside', parts: { fitting: 'bracket', minutes: 60, hands: 2 } },
      { kind: 'jury rig', at: 'has insulating tape over it', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'New reflector from the car shop', parts: { zone: 'trailer' } },
    ],
  },
];
