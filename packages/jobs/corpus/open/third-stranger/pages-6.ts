import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'messages in borrowed english',
    page: `Tomek: hi, I was by the boat today after work
Tomek: you ask what is to do, so I write
Ola: 👍 wait I sit down
Tomek: 1. the hatch in front. handle turns and turns and catches nothing. inside is small square hole from plastic, and it is now round
Ola: so we buy handle?
Tomek: only the middle part, I found it in one shop, 6 euro. I put it in on Sunday
Ola: ok
Tomek: 2. rudder. super. I was afraid for nothing
Ola: I told you
Tomek: 3. on the sail the little window is like milk. You see nothing through it
Ola: I see nothing anyway, you stand in front
Tomek: yes so I leave it
Tomek: 4. rope for the jib, the furling one. It has flat place and the cover moves on the core like sock. I want to change it before the night on the estuary
Ola: good, which colour
Tomek: the cheap colour
Tomek: 5. socket for the telephone, green round it and it's warm when something charges. WARM Ola
Ola: this I don't like
Tomek: me also no. I pulled the fuse. Nobody puts it back. I will make new socket and new cable from the panel, two hours
Ola: can Marek help, he is electrician
Tomek: Marek is electrician for lifts
Tomek: 6. water under the floor, one glass. After the rain. I wiped and now I wait if it comes back
Ola: it was also last spring and then no more
Tomek: 7. fender step, I made it new in winter, you saw
Tomek: 8. trailer wheel on the right is more hot than left. I could not hold hand on it. I think brake stays closed. I take off the drum in the weekend and look
Ola: do we go in July to the big lake?
Tomek: if the boss gives
Ola: then buy also 12 m rope 6 mm and sun cream
Tomek: battery was 12,3. I connect charger when home`,
    marks: [
      {
        kind: 'job',
        at: 'only the middle part, I found it in one shop, 6 euro. I put it in',
        parts: { zone: 'foredeck' },
      },
      { kind: 'job', at: 'I want to change it before the night on the estuary', parts: { outing: 'estuary' } },
      { kind: 'jury rig', at: 'I pulled the fuse. Nobody puts it back', parts: {} },
      { kind: 'job', at: 'I will make new socket and new cable', parts: { minutes: 120 } },
      { kind: 'job', at: 'I take off the drum in the weekend', parts: { zone: 'trailer' } },
      { kind: 'store', at: '12 m rope 6 mm', parts: {} },
      { kind: 'reading', at: 'battery was 12,3', parts: {} },
      { kind: 'job', at: 'I connect charger', parts: {} },
    ],
  },
  {
    name: 'with three children and a hose',
    page: `Testing. Right. I've got until the fish fingers are done, so this is the boat, on the drive, quickly. Freddie, put the hose down. Down. Thank you.

We tested for leaks with the hose, hence the hose. The big window's fine. The small window's fine. The vent over the bunk is not fine, it dribbles, and it dribbles onto Martha's pillow end, so there'll be a mutiny. It's the bead round it that's cracked. I'll rake it out and run a new one round, half an hour, and it has to be when it's dry, so not while anyone's got a hose. FREDDIE.

For tonight I've put a freezer bag over it with a rubber band.

The netting on the guardrails, that's there so I don't lose one. It's come adrift along the bottom on the left, and Wilf's put his whole leg through the gap. That gets laced back up tomorrow, I've got miles of cord. I'm not taking them out without it.

Their dad was going to put in a step. Their dad is going to be in the north.

The cockpit tent zip, I did that, candle stub, runs a treat.

The bung's on its string. The paddle's there. The pump, Martha pumped it forty times and she counted and the bucket filled up, so well done Martha.

Oars: one leather has gone all loose, it slides up and down the shaft and squawks. Wants tacking, or stitching, I'd have to look that up.

The name on the back has lost its R, which the children think is the funniest thing that's ever happened. I might leave it.

And the bow rope on the trailer is just knotted on to the post because the hook thing snapped. It's held up to now. But I'm not going up the dual carriageway on a knot, so a new hook, from the caravan place, this week.

We could do with a tube of sealant. And fish fingers, these are burnt.`,
    marks: [
      { kind: 'job', at: "I'll rake it out and run a new one round", parts: { minutes: 30 } },
      { kind: 'jury rig', at: "For tonight I've put a freezer bag over it", parts: {} },
      { kind: 'job', at: 'That gets laced back up tomorrow', parts: { due: '2027-04-09' } },
      { kind: 'job', at: 'Wants tacking, or stitching', parts: {} },
      {
        kind: 'jury rig',
        at: 'just knotted on to the post because the hook thing snapped',
        parts: { zone: 'trailer' },
      },
      { kind: 'job', at: 'so a new hook, from the caravan place', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'a tube of sealant', parts: {} },
    ],
  },
  {
    name: 'awake at two in the morning',
    page: `Can't sleep, so I may as well say it to the ceiling.

Did I shut the hatch? I shut the hatch.

That noise when the mast goes up. I know what it is, I've known since last year. The hinge pin at the foot is worn like an apple core, and one of these days it'll shear with me underneath. Stop being brave about it. Get one turned up in stainless and knock it in, mast down, half an hour, and don't raise it again until you have. That one's properly dangerous.

The paint on the topsides is dull. So am I.

The port running backstay. Its tackle is twisted up like a telephone flex and won't render. Just unreeve it and lead it fair, you lazy man, ten minutes.

Money. The insurance is paid. The mooring's paid until October. The sail loft says eleven hundred for a main, and I laughed, and the lady didn't. The old one's baggy but I've set it flatter and it goes well enough.

What was the other thing. The galley tap, no, did that on Sunday. The toilet, no. The pin in the rudder stock! The split pin's a bent nail. I put it in at the regatta because I couldn't find a split pin for love nor money, and it's done forty miles. Put a real one in. There's a whole tin of them by the kettle.

The lazarette locker, on the other hand, is the driest place in the county.

And the cabin lamp, it flickers when you walk about, and I bet it's only the plug. No, it's the wire, it goes through a hole with no grommet and it's rubbed down to copper. New length of twin, with a grommet, and soon, since that's how fires begin.

Judith says buy a caravan. If Judith ever came sailing on a good day she'd stop saying it.

What's the forecast. Northwest three. Lovely. Go to sleep.`,
    marks: [
      {
        kind: 'job',
        at: 'Get one turned up in stainless and knock it in',
        parts: { zone: 'rig', minutes: 30, setUps: { mast: 'down' }, consequence: 'danger' },
      },
      { kind: 'job', at: 'Just unreeve it and lead it fair', parts: { zone: 'rig', minutes: 10 } },
      { kind: 'jury rig', at: "The split pin's a bent nail. I put it in at the regatta", parts: { zone: 'transom' } },
      { kind: 'job', at: 'Put a real one in', parts: { zone: 'transom' } },
      { kind: 'job', at: 'New length of twin, with a grommet', parts: { zone: 'cabin' } },
    ],
  },
  {
    name: 'a letter for whoever has her next week',
    page: `To whoever takes her out next week: welcome, and please read to the end.

She is a forgiving boat. She was built in a garage by two brothers who weren't speaking by the time she was finished, and you can tell which side each of them did. Treat her kindly and she'll look after you.

The mainsail goes up easily. The jib goes up easily if you look first: the third hank doesn't snap shut any more, it gapes, and I've closed it with a twist of electrical tape. Don't undo it. I shall sew on a fresh hank when you bring the sail back.

The engine starts on half choke. Its clamp screws need a good turn each morning. That isn't a fault, they all do it.

You'll find the starboard cushion damp. It was left against an open window by me, and nothing leaks.

The centreboard rope has lost its stripe, so you can't see how far down you are. Would you mind, when you've a moment at low water, whipping a bit of red thread on at the half-way point? It's five minutes and I'd be so grateful.

The kettle has no whistle. I like it so.

The bow light is out altogether. You shan't need it in daylight, but don't be late, because it isn't legal after dark. I've tried two bulbs, so the wire has broken somewhere in the pulpit, and Saturday week I'll draw a new one through.

I scrubbed the decks, filled both water cans, changed the gas and checked the shrouds.

The trailer stays here. Its spare wheel carrier has rusted through at the bend and the wheel hangs at an angle, so there's no towing her anywhere till our blacksmith has had it for an afternoon. I'm dropping the carrier off with him on Monday.

If it blows, reef early. If it doesn't, there's a book of crosswords under the chart.`,
    marks: [
      { kind: 'jury rig', at: "I've closed it with a twist of electrical tape", parts: {} },
      { kind: 'job', at: 'I shall sew on a fresh hank', parts: {} },
      { kind: 'job', at: 'whipping a bit of red thread on', parts: { minutes: 5 } },
      { kind: 'job', at: "I'll draw a new one through", parts: { zone: 'bow', consequence: 'unlawful' } },
      { kind: 'job', at: 'till our blacksmith has had it for an afternoon', parts: { zone: 'trailer' } },
    ],
  },
];
