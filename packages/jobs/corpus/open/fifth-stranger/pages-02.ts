import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'into the wind',
    page: `Can you hear me it's blowing a hooligan up here right the cover first, the cover has lost three of its eyelets along the left and I've laced it down with spare line round the wheels so it cannot go anywhere, it went somewhere in November, it went into the allotments, Mrs Pell had it over her beans. I've got an eyelet kit now so when the wind drops I'll punch new ones in, twenty minutes, hammer and a block. The bow roller's good. The bow cleat is good. The anchor I had regalvanised, expensive, I won't say how much because she listens to these. Um, the forehatch, now, the catch inside is bent so it rattles and you could lift the thing from outside with one finger so I want that straightened in the vice and put back before we leave her anywhere overnight. Say half an hour. You know the chap with the blue boat had his whole stove pinched. Through the hatch. Kettle as well, with the water in it. The mast support on the trailer, I made that new last year out of an old bed and it is the best thing I ever made. Jockey wheel winds up and down. The winch handle though it comes off in your hand, the nut's gone, and there's a peg through it, a clothes peg, half a clothes peg, which stops it walking off the shaft if you keep an eye on it. Locking nut, M10, from the shed, five minutes and why I haven't I do not know. The tyres look like tyres. My cousin says fill them with foam, my cousin has never towed a thing in his life, no. And that's it I'm going in my hat's gone`,
    marks: [
      { kind: 'jury rig', at: "I've laced it down with spare line round the wheels", parts: {} },
      { kind: 'job', at: "I'll punch new ones in", parts: { minutes: 20 } },
      {
        kind: 'job',
        at: 'I want that straightened in the vice and put back',
        parts: { zone: 'foredeck', minutes: 30 },
      },
      { kind: 'jury rig', at: "there's a peg through it, a clothes peg", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Locking nut, M10, from the shed', parts: { minutes: 5 } },
    ],
  },
  {
    name: 'by bullets',
    page: `Notes, Wednesday evening, written up from the back of an envelope.

- Bow: nothing to report. Shackle wired, roller greased at the start of March.
- Foredeck: non-slip worn smooth by the mast step. Two people have skated on it. Mask off, roll on two coats, dry day, 90 min.
- Foredeck vent: stuffed with a rag against the drips. Rag does very well. Reseat the vent on fresh mastic after the mast goes up, 20 min.
- Mast: straight. Had a long squint along it. Dent at knee height is from the previous owner and his van.
- Boom end: outhaul block replaced in autumn. Works a treat.
- Kicker: was seized. Penetrating oil and bad language, now free.
- Side decks: hollow sound when tapped port side, but the same hollow sound as in every year since I have tapped. There is simply nothing under it there.
- Board case: slight weep at the after bolt when afloat. A turn with a spanner cured it. Watch.
- Board pendant: new in 2026.
- Cabin: 12.52 on the meter, everything off.
- Cabin: drawer front has come unstuck. White glue, clamp overnight, 10 min.
- Cabin: curtains. Margery wants curtains. Under discussion. No.
- Cockpit: tiller extension fine. Ditto its joint.
- Cockpit: mainsheet cleat spring broken, one jaw stays open. Fit the spring kit (have it), 15 min.
- Transom: ladder's lower rung split; must not be trusted with a swimmer on it. New ash rung, shape and varnish. Danger until then.
- Transom: outboard starts second pull.
- Trailer: light cable tied up along the frame with bits of twine where the clips have rusted off. It has done three trips so. Ten new clips, half an hour.
- Trailer: hubs cool, no play.

To get: cable clips, one tube mastic, non-slip paint.

Observation: one always writes more than one does.`,
    marks: [
      { kind: 'job', at: 'Mask off, roll on two coats', parts: { zone: 'foredeck', minutes: 90 } },
      { kind: 'jury rig', at: 'stuffed with a rag against the drips', parts: { zone: 'foredeck' } },
      { kind: 'job', at: 'Reseat the vent on fresh mastic', parts: { minutes: 20 } },
      { kind: 'reading', at: '12.52 on the meter', parts: {} },
      { kind: 'job', at: 'White glue, clamp overnight', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: 'Fit the spring kit', parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'job', at: 'New ash rung, shape and varnish', parts: { zone: 'transom', consequence: 'danger' } },
      { kind: 'jury rig', at: 'tied up along the frame with bits of twine', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Ten new clips, half an hour', parts: { minutes: 30 } },
      { kind: 'store', at: 'To get: cable clips', parts: {} },
      { kind: 'store', at: 'one tube mastic', parts: {} },
      { kind: 'store', at: 'non-slip paint', parts: {} },
    ],
  },
  {
    name: 'the old rudder',
    page: `The rudder she came with was oak and weighed as much as a dog. I sold it to a man who wanted a coffee table. The one we have now I built from two sheets of ply, and I have never regretted it, though I did sheathe it badly the first time, with the cloth all bubbles, and had to grind the lot away.

So I know what I am looking at this morning. There is a blister at the trailing edge, about a thumb long, and if you press it a tear of brown water comes out. That means the ply is drinking. First it has to dry: a fortnight in the airing cupboard, and my husband can put his shirts elsewhere. After that I cut the blister away and lay two patches of cloth in epoxy, and fair it. Two hours of work in all, the fortnight aside.

Meanwhile the holding-down clip for the rudder has lost its spring. At present it's a wedge of broom handle that stops the blade jumping off the pintles, and the wedge does no harm and makes the children laugh. Do I want to buy a whole new clip? They are only sold as a set with the gudgeons, which is wicked. I'll bend a spring from that strip of phosphor bronze instead and rivet it on, half an hour.

I had the same trouble on my uncle's dinghy, and we lost the rudder in the middle of a race and came home steering with a bread board.

The tiller is sound. Someone at the club thought it looked thin, but someone at the club thinks a good deal looks thin. The uphaul line is new. The transom itself, now that the old bolt holes are plugged, is as dry as a biscuit.

If it's fine on Sunday we shall take the flask and just sit in her.`,
    marks: [
      {
        kind: 'job',
        at: 'I cut the blister away and lay two patches of cloth',
        parts: { zone: 'transom', minutes: 120 },
      },
      { kind: 'jury rig', at: "it's a wedge of broom handle that stops the blade", parts: { zone: 'transom' } },
      { kind: 'job', at: "I'll bend a spring from that strip", parts: { minutes: 30 } },
    ],
  },
  {
    name: 'grandad in the cabin',
    page: `Eh, now then. Is it going? It's got a little red dot on. Right.

I've sat meself down below out of the draught and I'm looking round, and I'll say what I see. Lamp over the chart shelf, grand. That were flickering all last back end and I cleaned the holder and it's not flickered since. Battery box, lid's cracked across but it's only a lid. Then there's the strap what holds the battery down. That's rotted through, and I've a length of old halyard round it with a trucker's knot, so it'll not tip over. But if she went on her ear you'd have acid all ower. So I'm having a proper webbing strap with a buckle, and two new screw eyes, and it wants doing before young 'un takes her out for that first sail. Quarter of an hour.

Your grandmother never came down here, you know. Not once. She said it smelt of men.

Bilge. There's a cupful. There's allus a cupful. I've had every plank up and I've never found where it comes in, and it's never been two cupfuls, so I let it alone.

That seacock for the sink, now. It's stiff. You can shift it with both hands and a curse. That's no good in a hurry. I'll have it apart when she's on the trailer, lap it in with a bit of grinding paste and grease it. Hour, I'd say. Me mate Walt never touched his and it sheared clean off, and he stood there with his thumb in it like the lad in the story.

Bunk boards is sound. Fire blanket's there. Kettle's furred up, but that's for your mother.

Handrail inside: one screw loose. I've nipped that up while I've been talking. There.

What else is there? Nowt. It's a good little boat.`,
    marks: [
      { kind: 'jury rig', at: "I've a length of old halyard round it with a trucker's knot", parts: { zone: 'cabin' } },
      {
        kind: 'job',
        at: "So I'm having a proper webbing strap with a buckle",
        parts: { minutes: 15, outing: 'spring' },
      },
      {
        kind: 'job',
        at: "I'll have it apart when she's on the trailer",
        parts: { zone: 'cabin', minutes: 60, setUps: { boat: 'trailer' } },
      },
    ],
  },
];
