import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'no full stops on the ladder',
    page: `testing testing okay I'm up the step ladder beside the masthead because she's lying on the trestles with the top end over the hedge, and I can see into all of it, the sheave turns and it's got grease in it from when I did it in march so that is that, the crane is straight the aerial's straight the wind arrow has lost its tail feather but it points anyway more or less, more than I do, now the main halyard, I was going to leave it but I've run it through my hand and there's a stiff bit where the core has broken I think because the cover is whole, so no you can't see it, it's got to be renewed, fourteen metres and I'll sew the new to the old and pull it through before we step the mast otherwise you're feeding it down from up here with a bicycle chain like poor Tobias who was at it for a week, thirty minutes. The forestay I changed last autumn, it's shiny. The lower spreader bracket rattles on its bolt and there's a folded beer can, yes I know, there's a strip of beer can shoved in as a shim which has been up there two seasons and I'd quite forgotten it. That ought to be sleeved, I'll ask the man at the forge if he's got a bit of tube the right size, say an hour. It didn't hurt anything. Well, and then I was thinking should I put in a second halyard for a spinnaker, my son wants a spinnaker, and I said to him when you can put the jib away without standing on it then we'll talk. The mast foot's fine. The wedge is fine. It's blossoming, the hedge, there are bees all round my head, I'm coming down now before`,
    marks: [
      { kind: 'job', at: "it's got to be renewed, fourteen metres", parts: { minutes: 30, setUps: { mast: 'down' } } },
      { kind: 'jury rig', at: "there's a strip of beer can shoved in as a shim", parts: { zone: 'rig' } },
      { kind: 'job', at: 'That ought to be sleeved', parts: { minutes: 60 } },
    ],
  },
  {
    name: 'posts to the club board',
    page: `**Thursday update, for those who asked**

Thank you for all the advice about the board, some of which was printable.

* It does come up. It comes up with two people and a boat hook.
* The lifting wire isn't broken, as Ffion guessed. It had jumped off its sheave and wound round the axle. That's been put right since Tuesday.
* But the cheek of that sheave is chipped, so it'll jump again. I'm having a new one made in acetal, and fitting it takes an hour and a quarter with the boat propped up. Anyone own a bottle jack?
* In between I've a spare line from the board's tip over the stern to the winch, and I can pull it up with that. It's worked once. It was not elegant.
* No, I'm not going to take the whole board out and galvanise it. Nice thought, Gethin.

Other bits:

* The paint on the port topside where the dinghy rubbed: I polished it and it's vanished. I was ready with the filler.
* The fender sock has gone green. All things pass.
* Lifelines: the starboard one has a broken strand by the pelican hook. I'll cut it off and run 6 mm rope instead, twenty minutes. Until then don't lean on it, that means you, Big Col.
* The forehatch lid: somebody at the social sat on it. It has a crack the length of a pencil. A strip of clear tape is keeping the rain out. A patch of glass on the inside, when it stops being so damp: 45 minutes.
* Whose is the blue bucket?
* Batteries: 12.4 V. I know, I know, I'll put it on charge tonight.

I hope to be on the line for the Tuesday races by May. Last season I was, and came ninth of nine, and had the best time of anyone.`,
    marks: [
      {
        kind: 'job',
        at: "I'm having a new one made in acetal",
        parts: { minutes: 75, setUps: { boat: 'propped' } },
      },
      { kind: 'jury rig', at: "I've a spare line from the board's tip", parts: {} },
      { kind: 'job', at: "I'll cut it off and run 6 mm rope instead", parts: { minutes: 20 } },
      { kind: 'jury rig', at: 'A strip of clear tape is keeping the rain out', parts: { zone: 'foredeck' } },
      { kind: 'job', at: 'A patch of glass on the inside', parts: { minutes: 45 } },
      { kind: 'reading', at: '12.4 V', parts: {} },
      { kind: 'job', at: "I'll put it on charge tonight", parts: {} },
    ],
  },
  {
    name: 'the fastidious one',
    page: `One should never start a season with string. I mean that as a principle. String is what one uses in an emergency, out there, when one is wet; it has no place on a boat that has stood five months in a barn.

Nevertheless. The pin that keeps the outboard bracket up went missing in October, and on inspection today I found the bracket held up by string. My own string, with my own knot. I was ashamed. A new drop-nose pin, 8 by 60, is already in the drawer at home, and I need only remember to bring it on Saturday.

The rest gave me pleasure. The coamings, stripped and varnished over the winter by my daughter, look like toffee. The cleats have been rebedded. The compass has been away and come home without its bubble. I sat for quite ten minutes doing nothing at all.

In the cabin one berth front has warped, and it can't be pushed home. It is purely a matter of planing two millimetres from the top edge, and sealing it, since bare wood is what warped in the first place. Half an hour.

My wife considers that we should replace the headlining. I consider that we should not, and since neither of us has spoken of it since February I think I have won.

The sink's waste pipe had been leaking; I fitted a new hose and clips in March and tested it with a kettle of hot water. Dry.

Starboard jib car: two of its balls have come out and the third is going to. The car could be rebuilt, they sell the balls in little bags. I'll do that at the bench with a tray under it, 25 minutes. A friend runs his without any balls and says he can't tell the difference. One can.`,
    marks: [
      { kind: 'jury rig', at: 'I found the bracket held up by string', parts: { fitting: 'bracket' } },
      { kind: 'job', at: 'A new drop-nose pin', parts: {} },
      { kind: 'job', at: 'It is purely a matter of planing two millimetres', parts: { zone: 'cabin', minutes: 30 } },
      { kind: 'job', at: "I'll do that at the bench with a tray under it", parts: { minutes: 25 } },
    ],
  },
  {
    name: 'after the bad trip',
    page: `That was the worst crossing we've had in her, and she brought us home, so I won't hear a word said against her. But I promised Bea I'd write down what gave out while it was fresh.

The first thing to go was the jib sheet lead. The block exploded. I don't know another word. We lashed a shackle to the toe rail with a sail tie and led the sheet through it, and it's led like that still. We need a proper block there, with a bigger pin, the same both sides, and I'd fit them in half an hour.

Then the hatch flew open and we took a green one down the cabin. That was nobody's fault but mine; I hadn't turned the catch. The catch works.

Everything below was soaked. Bea's dried the cushions, and the charts are pegged along the landing like washing. The radio survived. The stove was upside down but it lights.

Then the rudder began to knock. I had a look today and it's the lower pintle: two of its three rivets have sheared. That isn't a thing one argues with. Drill out the lot and through-bolt it, two hours, and she doesn't float again before that's done, because if the third goes we've no steering.

I thought the mast had taken a bend. I've laid a straight edge along it this afternoon, and it was only my nerves.

The reefing line's chafed, but at the end, and there's a metre to spare; cut and whip it, five minutes. The reef points themselves held like iron. I sewed those in the winter of my divorce and I evidently meant it.

Bea says she'll come again. In July. If it's flat.`,
    marks: [
      { kind: 'jury rig', at: 'We lashed a shackle to the toe rail with a sail tie', parts: {} },
      { kind: 'job', at: 'We need a proper block there', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: 'Drill out the lot and through-bolt it',
        parts: { zone: 'transom', minutes: 120, consequence: 'danger' },
      },
      { kind: 'job', at: 'cut and whip it, five minutes', parts: { minutes: 5 } },
    ],
  },
];
