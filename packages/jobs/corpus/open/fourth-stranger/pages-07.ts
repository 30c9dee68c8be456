import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'pushing the pram',
    page: `shh she's just gone off so I'm whispering I'm pushing the pram round the yard and the boat's here so I'll do the boat um the cover's got a green line down it where the gutter drips on it that's nothing the front end is tidy I pulled up the anchor rope in the autumn and dried it and coiled it the bow eye though there's rust weeping down the stem from it like mascara so that wants undoing and new sealant behind and a stainless washer I've only got the one hand at the minute Dave can do that next week half an hour the portlights are fine we had them all out two years ago never again um I was going to say something the shrouds yes the shrouds are fine but one of the plastic covers has slid down and it's bunched round the bottlescrew like an old stocking I don't mind that the cockpit tent I'd love a cockpit tent with the baby we'd get so much more use out of her but they want eight hundred pounds and we've just bought a cot so no the washboard's lost its handle there's a loop of dog lead through the hole that you pull it by it's actually quite good but Dave wants a turned one he's got a bit of cherry he's going to make one on the lathe and glue it in and that's fine by me what else the lifeline for the baby I mean the jackstay the stitching's going at the front loop and I'm not clipping her to that so it's either restitch or new I say new get a new one oh no she's awake`,
    marks: [
      { kind: 'job', at: 'so that wants undoing and new sealant behind', parts: { zone: 'bow', minutes: 30 } },
      { kind: 'jury rig', at: "there's a loop of dog lead through the hole", parts: {} },
      { kind: 'job', at: "he's going to make one on the lathe and glue it in", parts: {} },
      { kind: 'job', at: 'I say new get a new one', parts: {} },
    ],
  },
  {
    name: 'a winter letter answered late',
    page: `Dear Rosalind,

Forgive the silence. It froze, and then it thawed, and then everyone died, or so it seemed; three funerals since Epiphany, and all of them with ham.

But you ask about the boat. She came through. I'd drained what can be drained, and the one thing I forgot was the hand pump at the sink, so naturally the hand pump at the sink has burst. It's cracked right down the barrel. I've bought another, it's in its box on the stairs, and I pass it every night and think, tomorrow. An hour, and mostly lying on one's side.

The mast I oiled. The blocks I oiled. I oiled the gate while I was at it.

You'd laugh to see the forestay: the pin at the bottom is a six-inch nail, bent over. I lost the pin in the grass at lay-up and the mast had to be held by something. I have a proper clevis pin coming by post and the nail will be pulled the minute it arrives; I shouldn't like you to think I'd sail with it.

Otto thinks the whole boat should go to a museum. Otto has the soul of a filing cabinet.

I looked long at the planking at the turn of the bilge and pressed it with a penknife, and it's hard as bone everywhere save one place by the case, where the blade went in a good quarter inch. That must be cut out and a piece let in, before paint. I've asked young Tobias, who has the touch, for the last week in April.

Come in June. Bring no shoes. We shall sail out to the sandbank and eat the rest of the ham.

Ever,
Ambrose`,
    marks: [
      { kind: 'job', at: "I've bought another, it's in its box", parts: { minutes: 60 } },
      { kind: 'jury rig', at: 'the pin at the bottom is a six-inch nail', parts: { fitting: 'forestay' } },
      { kind: 'job', at: 'I have a proper clevis pin coming by post', parts: { fitting: 'forestay' } },
      { kind: 'job', at: 'That must be cut out and a piece let in', parts: {} },
    ],
  },
  {
    name: 'measurements and mutterings',
    page: `Ruler, calipers, torch. Off we go. I like numbers, they don't argue.

Shroud plate, starboard: bolts 8 mm, all four at the torque. Good.
Shroud plate, port: hole worn oval, 9.4 one way and 10.6 the other. A pin that size should be sat in 9.5 at the most. Plate's to be replaced; I've drawn it for the metalworker. Fitting it, an hour and a half, mast down.

Mast straight to within 4 mm. I've known people less straight.

Board: thickness at the tip 7.9, was 8. Nobody cares. I care. It's fine.

Pump: 18 strokes to the bucket, last year 17. My arm's older.

Sheet winch: drum 0.2 up and down. Within what I'd call life.

Tyre pressures: 34, 35, and the spare 12. Twelve! The valve hisses when you spit on it. So a new valve core, two minutes with the little key.

Propeller: there's a bite out of one blade, eight by five. She vibrates at half throttle, hands go numb. Dress it? I've dressed it before, there's nothing left to dress. Order a propeller and put it on, split pin and all, 15 minutes.

Rudder blade gap: 3 mm a side. I've had a folded beer mat in there since the regatta to stop it knocking. It says 'last orders' on it. Proper cheek pads, when I find some slippery plastic, screwed either side.

Battery: 12.64. Acid 1.26 in all six. Pretty.

Wife's patience: not measured, believed low.

Rainfall in the cockpit since Friday: 22 mm, and it all went out of the drains as it's meant to.

Antifouling thickness: who knows. It was blue, it's still blue.

Time spent: 2 h 10. Biscuits: 5.`,
    marks: [
      {
        kind: 'job',
        at: "Plate's to be replaced",
        parts: { fitting: 'plate-port', minutes: 90, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'So a new valve core', parts: { zone: 'trailer', minutes: 2 } },
      { kind: 'job', at: 'Order a propeller and put it on', parts: { minutes: 15 } },
      { kind: 'jury rig', at: "I've had a folded beer mat in there", parts: { zone: 'transom' } },
      { kind: 'job', at: 'Proper cheek pads', parts: { zone: 'transom' } },
      { kind: 'reading', at: 'Battery: 12.64', parts: {} },
    ],
  },
  {
    name: 'explaining to a stranger',
    page: `You're welcome to look! No, go on, everyone does. She's forty next year. My father drew her on the back of a calendar and his brother built her and they never spoke again, though that was over a hedge.

That? That's a block of polystyrene, it's plugging the ventilator because the cowl blew off in the February gale and floated away like a duck. I've got a new cowl sitting at home. I'll screw it down at the weekend, you need the gun with the white stuff, it's no bother.

Do I take her out far? As far as the point. My wife likes the point. There's a café.

Ah, you spotted the crack. No, don't apologise. It's only in the paint. I had a man grind into it and it's sound as a bell below. I'm leaving it alone.

Yes, that's the original mast. You can see where lightning — well, they say it was lightning.

The rope? That's the main halyard, and no, it oughtn't to be green. Algae. It's stiff as wire too. It'd be kinder to the hands if I put in a new one, and I'm going to, before the shakedown. That's about an hour if you don't lose the end up the mast. I've lost the end up the mast.

Is she for sale? Everything's for sale, and she's not.

Mind your head there. And don't lean on that stanchion, it's bent, I bent it, it'll come out with a length of scaffold pipe and a bit of shouting. I'm saving that for when my son's here, it wants two of us.

You've a boat yourself? Oh, plastic. Well. They float as well.

Would you like a sandwich? It's only egg.`,
    marks: [
      { kind: 'jury rig', at: "That's a block of polystyrene, it's plugging the ventilator", parts: {} },
      { kind: 'job', at: "I'll screw it down at the weekend", parts: {} },
      {
        kind: 'job',
        at: "It'd be kinder to the hands if I put in a new one",
        parts: { minutes: 60, outing: 'spring' },
      },
      { kind: 'job', at: "it'll come out with a length of scaffold pipe", parts: { hands: 2 } },
    ],
  },
];
