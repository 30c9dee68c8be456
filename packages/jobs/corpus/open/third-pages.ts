import type { MarkedPage } from '../marked.ts';

/** Four voices more, marked before the reader was tried on them: a nervous buyer, an Irish hand, a tidy mind, a drive home. */
export const thirdPages: readonly MarkedPage[] = [
  {
    name: 'new to it',
    page: `I bought her in the autumn so I'm still finding things. I'm not sure what half of it is called so bear with me.

The rope that holds the front sail up has a furry bit about two metres from the end. Is that bad? I think I'd rather have a new one before we go on the Spring shakedown sail. The man in the shop said half an hour if you tape the new one to the old one and pull it through.

The little wheels the boat sits on at the back of the trailer, one of them doesn't turn any more and it's left a black mark on the hull. I suppose I could take it off and put some grease in, twenty minutes maybe?

There's a crack in the floor of the cockpit next to the drain. When I stand there it moves. My friend Ellie who used to build dinghies says it wants cutting out and glassing, a whole day she said, eight hours, and it has to be warm, over fifteen degrees. She also said it'll get worse every time somebody stands on it.

I was told to change the anchor, but I looked it up and it's the right size.

The red light on the bow works and the green one doesn't. Apparently that's illegal? I've ordered a bulb. Five minutes once it comes.

What else... the thing you steer with has lost its rubber grip so it's slippery when wet, I've wrapped some tennis racket tape on it for now which is actually rather nice. A proper grip is ten minutes, but no rush, it's only comfort.

I cleaned the inside with vinegar and the mould hasn't come back. I also learnt to splice, badly.

The battery said 12.3 this morning but I'd left the fridge on. Do I need a bigger one? The previous owner never had any trouble.

I need to buy: a fid, some whipping twine, and one of those little bottles of thread lock.`,
    marks: [
      { kind: 'job', at: 'The rope that holds the front sail up', parts: { outing: 'spring' } },
      { kind: 'job', at: "one of them doesn't turn any more", parts: { zone: 'trailer', minutes: 20 } },
      {
        kind: 'job',
        at: "There's a crack in the floor of the cockpit",
        parts: { zone: 'cockpit', minutes: 480, consequence: 'worsens' },
      },
      { kind: 'job', at: "the green one doesn't", parts: { zone: 'bow', minutes: 5 } },
      { kind: 'jury rig', at: "I've wrapped some tennis racket tape on it for now", parts: {} },
      { kind: 'job', at: 'A proper grip is ten minutes', parts: { minutes: 10, consequence: 'comfort' } },
      { kind: 'reading', at: 'The battery said 12.3 this morning', parts: {} },
      { kind: 'store', at: 'a fid', parts: {} },
      { kind: 'store', at: 'some whipping twine', parts: {} },
      { kind: 'store', at: 'little bottles of thread lock', parts: {} },
    ],
  },
  {
    name: 'the far side',
    page: `Ah sure where do I start. We had the boat out Saturday for the first time and she went grand altogether, not a bother on her, but I made a note of a few things coming home.

The jib sheets are banjaxed, the both of them, they're gone fierce hard and they won't go round the winch at all. New ones, ten minutes, I have the rope above in the shed.

The yoke that locks the board up, the pin, it's after bending. I straightened it with the hammer but it won't stay straight, so I'm to make a new one out of ten mil stainless, an hour with the hacksaw. I wouldn't go out again without it.

Himself dropped the bucket on the echo sounder and cracked the face but it's reading away.

There's water getting in somewhere up forward. I've a notion it's the bow fitting. Take it off and look at it, that's the forestay off so mast down, two hours the pair of us, and it'll only rot the deck if it's let go.

The gas ring was lighting with a yellow flame so I cleaned the jet there last night and it's blue now.

The outboard is after dropping its bracket bolt again, that's the third one. I have a bit of rope around it for the minute so it doesn't go to the bottom. Drill it and put a bigger bolt in with a locking nut, forty minutes, and that's a safety matter.

I must get more cable ties. And a tin of the blue antifouling.

The cover, she's ripped at the port corner. My mother has the machine, she says she'll do it Tuesday.

The wheel nuts want torquing, five minutes, don't let me forget that now before we tow to the Club muster. The tyres I did. The lights I did. The brake I didn't look at, and I'd want to: check the brake, quarter of an hour.`,
    marks: [
      { kind: 'job', at: 'The jib sheets are banjaxed', parts: { minutes: 10 } },
      { kind: 'job', at: "the pin, it's after bending", parts: { minutes: 60 } },
      {
        kind: 'job',
        at: "There's water getting in somewhere up forward",
        parts: { minutes: 120, hands: 2, setUps: { mast: 'down' }, consequence: 'worsens' },
      },
      { kind: 'job', at: 'Drill it and put a bigger bolt in', parts: { minutes: 40, consequence: 'danger' } },
      { kind: 'jury rig', at: 'I have a bit of rope around it for the minute', parts: { zone: 'transom' } },
      { kind: 'store', at: 'I have the rope above in the shed', parts: {} },
      { kind: 'store', at: 'I must get more cable ties', parts: {} },
      { kind: 'store', at: 'a tin of the blue antifouling', parts: {} },
      { kind: 'job', at: 'The wheel nuts want torquing', parts: { zone: 'trailer', minutes: 5, outing: 'muster' } },
      { kind: 'job', at: 'check the brake', parts: { zone: 'trailer', minutes: 15 } },
    ],
  },
  {
    name: 'a tidy mind',
    page: `Boat inspection — Wednesday

FOREDECK / BOW
a) Anchor locker: hinge pin missing, using a nail (temporary). New pin 3 mm, 5 min.
b) Pulpit: OK
c) Navigation light: OK, lens cleaned
d) Deck: crazing round cleat, no softness. Watch.

MAST
a) Spreader tips: tape perished, re-tape, 15 min, mast down
b) Halyards: end-for-end the main halyard (20 min)
c) VHF aerial: connector corroded → cut back, new plug, 30 min
d) Sheave: fine

COCKPIT
a) Sole: drains slowly; rod through; 10 min
b) Winch P: pawls sticking. Strip, clean, oil. 40 min. DANGER (handle kicks back)
c) Winch S: done in March
d) Mainsheet: worn but serviceable, renew next season

CABIN
a) Window stbd fwd: weeps in heavy rain; rebed; 2 h; dry day; >10 °C
b) Bilge: dry
c) Wiring behind panel: untidy but safe — no action
d) Fire extinguisher: expires May; replace before Night on the estuary; 5 min; unlawful otherwise

STERN
a) Rudder: lower pintle bolt loose. Tightened today. Recheck after first sail.
b) Outboard: fuel line cracked at bulb. DO NOT RUN. New line and bulb, 20 min, danger.
c) Ensign socket: glue has failed, cosmetic, 10 min

TRAILER
a) Nearside light: earth fault; clean earth; 15 min; unlawful
b) Hubs: greased 2 April
c) Winch strap: frayed last 100 mm. Cut and re-hook 15 min. Knot in it for the present.
d) Ply pads on supports: soft, make new from 18 mm ply, 1.5 h

PURCHASE
18 mm ply offcut
fuel line kit 8 mm
tape, self-amalgamating`,
    marks: [
      { kind: 'jury rig', at: 'using a nail (temporary)', parts: { zone: 'bow' } },
      { kind: 'job', at: 'New pin 3 mm', parts: { minutes: 5 } },
      { kind: 'job', at: 'tape perished', parts: { zone: 'rig', minutes: 15, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'end-for-end the main halyard', parts: { zone: 'rig', minutes: 20 } },
      { kind: 'job', at: 'connector corroded', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'job', at: 'drains slowly', parts: { zone: 'cockpit', minutes: 10 } },
      { kind: 'job', at: 'pawls sticking', parts: { zone: 'cockpit', minutes: 40, consequence: 'danger' } },
      { kind: 'job', at: 'weeps in heavy rain', parts: { zone: 'cabin', minutes: 120 } },
      {
        kind: 'job',
        at: 'expires May',
        parts: { zone: 'cabin', minutes: 5, outing: 'estuary', consequence: 'unlawful' },
      },
      { kind: 'job', at: 'Recheck after first sail', parts: {} },
      { kind: 'job', at: 'fuel line cracked at bulb', parts: { zone: 'transom', minutes: 20, consequence: 'danger' } },
      { kind: 'job', at: 'glue has failed', parts: { minutes: 10, consequence: 'comfort' } },
      { kind: 'job', at: 'earth fault', parts: { zone: 'trailer', minutes: 15, consequence: 'unlawful' } },
      { kind: 'job', at: 'frayed last 100 mm', parts: { zone: 'trailer', minutes: 15 } },
      { kind: 'jury rig', at: 'Knot in it for the present', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Ply pads on supports', parts: { zone: 'trailer', minutes: 90 } },
      { kind: 'store', at: '18 mm ply offcut', parts: {} },
      { kind: 'store', at: 'fuel line kit 8 mm', parts: {} },
      { kind: 'store', at: 'tape, self-amalgamating', parts: {} },
    ],
  },
  {
    name: 'driving home',
    page: `okay note to self driving home from the boat um it was a good day in the end we got the mast up in about twenty minutes which is a record and nobody shouted so the first thing is the forestay the little wire that stops the pin falling out it's gone so I've put a bit of seizing wire through for the drive but it needs a proper split pin two minutes but do it before we sail because if that comes out the mast comes down on somebody's head then what was the other thing oh yeah the starboard no the port bunk cushion is soaking and I couldn't work out why because the window's dry I think it's the chainplate so the port shroud plate wants taking off and rebedding I'd allow two hours for that and it's mast down again unfortunately so maybe do it at the same time as the masthead wiring which I still haven't done the wire's there it just needs connecting both ends that's three quarters of an hour the solar panel is working the charger thing says it's full the depth sounder reads zero all the time but I turned it off and on again and it came right the rudder's stiff I sprayed it and it's a bit better but really it wants lifting off and the bushes easing with some wet and dry an hour or so ask Tom to give me a hand with that because it's heavy oh and the new fenders are great what else the outboard we started it and it ran for ten minutes and then stopped and then it started again I think it's water in the fuel so drain the tank and put fresh in half an hour I don't trust it otherwise um the trailer the winch handle slipped and nearly broke my wrist so the ratchet needs looking at urgently dangerous that is fifteen minutes I hope and the jockey wheel has a slow puncture I pumped it up twice today new inner tube ten minutes right there's my turning`,
    marks: [
      { kind: 'jury rig', at: "I've put a bit of seizing wire through for the drive", parts: {} },
      { kind: 'job', at: 'it needs a proper split pin', parts: { minutes: 2, consequence: 'danger' } },
      { kind: 'job', at: 'the port shroud plate wants taking off', parts: { fitting: 'plate-port', minutes: 120 } },
      { kind: 'job', at: 'the masthead wiring which I still', parts: { minutes: 45 } },
      { kind: 'job', at: "the rudder's stiff", parts: { zone: 'transom', minutes: 60, hands: 2 } },
      { kind: 'job', at: 'drain the tank and put fresh in', parts: { minutes: 30 } },
      { kind: 'job', at: 'the winch handle slipped', parts: { zone: 'trailer', minutes: 15, consequence: 'danger' } },
      { kind: 'job', at: 'the jockey wheel has a slow puncture', parts: { zone: 'trailer', minutes: 10 } },
    ],
  },
  {
    name: 'line upon line',
    page: `Jobs for the Easter week
Bow: roller squeals, grease it, 5 min. Pulpit foot loose, tighten, 10 min. Anchor good.
Deck: port stanchion bent, straighten or replace, 1h. Toe rail seam open near the gate, bed again, 2h dry.
Mast: spreader boots gone hard, new ones 20 min. Burgee halyard chafed. Kicker block cracked - replace before sailing.
Cockpit: tiller varnish flaking, sand and two coats, comfort. Mainsheet fine. Winch handle pocket broken.
Cabin: bilge pump hose split, 15 min. Light switch dead. Window ok.
Trailer: tyre pressures low, pump up 5 min. Nearside bearing noisy, repack, 90 min, before the muster. Straps ok.
Buy 2 m of 20 mm hose and some grease.`,
    marks: [
      { kind: 'job', at: 'roller squeals', parts: { zone: 'bow', minutes: 5 } },
      { kind: 'job', at: 'Pulpit foot loose', parts: { zone: 'bow', minutes: 10 } },
      { kind: 'job', at: 'port stanchion bent', parts: { zone: 'decks', minutes: 60 } },
      { kind: 'job', at: 'Toe rail seam open', parts: { zone: 'decks', minutes: 120 } },
      { kind: 'job', at: 'spreader boots gone hard', parts: { zone: 'rig', minutes: 20 } },
      { kind: 'job', at: 'Burgee halyard chafed', parts: { zone: 'rig' } },
      { kind: 'job', at: 'Kicker block cracked', parts: {} },
      { kind: 'job', at: 'tiller varnish flaking', parts: { zone: 'cockpit', consequence: 'comfort' } },
      { kind: 'job', at: 'Winch handle pocket broken', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'bilge pump hose split', parts: { zone: 'cabin', minutes: 15 } },
      { kind: 'job', at: 'Light switch dead', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'tyre pressures low', parts: { zone: 'trailer', minutes: 5 } },
      { kind: 'job', at: 'Nearside bearing noisy', parts: { zone: 'trailer', minutes: 90, outing: 'muster' } },
      { kind: 'store', at: '2 m of 20 mm hose', parts: {} },
      { kind: 'store', at: 'some grease', parts: {} },
    ],
  },
  {
    name: 'plain prose',
    page: `The winter has been kind to her but there is a fair bit to see to. The stem fitting weeps after rain and the bolts should be drawn and bedded again, which is an hour and a half with the mast down. The pulpit is sound. One fairlead has a sharp edge that is cutting the mooring line, so file it smooth, ten minutes, and turn the line end for end while you are there.

On deck the starboard cleat has pulled up a little and the deck round it is soft. That must be opened up and dried, and I would not put it off, because it spreads. Three hours and then the filler. The port cleat is as firm as a rock. The genoa car jams, the hatch slides stick, and the ventilator cowl has perished.

Aloft there is nothing amiss that I can see from the ground except the wind arrow, which is bent.

The cabin lamp over the chart table has a loose wire. Ten minutes. The stove wants a new washer on the filler cap, five minutes, and it is not safe until it has one. I have hung the fire blanket where one can reach it.

The rudder blade has a split along the trailing edge about a foot long. It can be opened out, filled with epoxy and clamped: forty minutes and a night to cure, above ten degrees. The tiller is good. The outboard has been serviced by the man at the yard and wants nothing.

Of the trailer, the less said. The brake linings are worn out and the law will not like it: two hours, and I should be glad of another pair of hands. The light on the off side is out. The jockey wheel is bent where somebody drove over it, and I have wired it up so that it clears the road until a new one comes.`,
    marks: [
      { kind: 'job', at: 'The stem fitting weeps after rain', parts: { zone: 'bow', minutes: 90 } },
      { kind: 'job', at: 'One fairlead has a sharp edge', parts: { minutes: 10 } },
      {
        kind: 'job',
        at: 'the starboard cleat has pulled up a little',
        parts: { minutes: 180, consequence: 'worsens' },
      },
      { kind: 'job', at: 'The genoa car jams', parts: {} },
      { kind: 'job', at: 'the hatch slides stick', parts: {} },
      { kind: 'job', at: 'the ventilator cowl has perished', parts: {} },
      { kind: 'job', at: 'the wind arrow, which is bent', parts: {} },
      { kind: 'job', at: 'The cabin lamp over the chart table', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: 'The stove wants a new washer', parts: { zone: 'cabin', minutes: 5, consequence: 'danger' } },
      { kind: 'job', at: 'The rudder blade has a split', parts: { zone: 'transom', minutes: 40 } },
      { kind: 'job', at: 'The brake linings are worn out', parts: { zone: 'trailer', minutes: 120, hands: 2 } },
      { kind: 'job', at: 'The light on the off side is out', parts: { zone: 'trailer' } },
      { kind: 'jury rig', at: 'I have wired it up so that it clears the road', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'short of breath',
    page: `Er, testing. Right. Foredeck first. Forehatch catch is broken. I'll glue it, ten minutes. The cleat's loose. Needs a bigger washer underneath I think, twenty minutes, somebody inside to hold the nut. Okay. Mast. The gooseneck pin's worn. Get a new one. Half an hour. Can't sail without it. Main halyard, that's all right. Topping lift, frayed at the end. Whip it. Five minutes. Side decks. Starboard plate. Weeping again. I did that one last year. Do it properly this time, two hours, mast down. Port plate's dry. Cockpit. Floor's slippery. Non-slip wants redoing, no hurry, it's just a nuisance. Oh, the drain. It's slow. Poke a wire down it. Rudder. Bottom pintle, bolt missing. Dangerous that. New bolt, ten minutes. I've put a cable tie through it. Not that I'd sail on it. Inside. Smells of diesel, don't know why, we haven't got any diesel. Must be my coat. Light by the bunk doesn't work. Bulb I expect. Five minutes. Bilge dry. Battery, twelve point six. Trailer. Off side tyre's bald. That's the law, that is. New tyre. Half an hour. Handbrake cable's seized. Soak it, work it loose, an hour. And done. No, hang on. The cover. Torn by the mast. Stitch it. Forty minutes. That's it. Finished.`,
    marks: [
      { kind: 'job', at: 'Forehatch catch is broken', parts: { zone: 'foredeck', minutes: 10 } },
      { kind: 'job', at: "The cleat's loose", parts: { minutes: 20 } },
      {
        kind: 'job',
        at: "The gooseneck pin's worn",
        parts: { zone: 'rig', minutes: 30, consequence: 'stops-sailing' },
      },
      { kind: 'job', at: 'Topping lift, frayed at the end', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'job', at: 'Starboard plate. Weeping again', parts: { zone: 'decks', minutes: 120 } },
      { kind: 'job', at: 'Non-slip wants redoing', parts: { zone: 'cockpit', consequence: 'comfort' } },
      { kind: 'job', at: "It's slow. Poke a wire down it", parts: {} },
      {
        kind: 'job',
        at: 'Bottom pintle, bolt missing',
        parts: { zone: 'transom', minutes: 10, consequence: 'danger' },
      },
      { kind: 'jury rig', at: "I've put a cable tie through it", parts: {} },
      { kind: 'job', at: "Light by the bunk doesn't work", parts: { zone: 'cabin', minutes: 5 } },
      { kind: 'reading', at: 'Battery, twelve point six', parts: {} },
      { kind: 'job', at: "Off side tyre's bald", parts: { zone: 'trailer', minutes: 30, consequence: 'unlawful' } },
      { kind: 'job', at: "Handbrake cable's seized", parts: { zone: 'trailer', minutes: 60 } },
      { kind: 'job', at: 'Torn by the mast. Stitch it', parts: { minutes: 40 } },
    ],
  },
];
