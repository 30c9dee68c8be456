import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'the long way round to the point',
    page: `Now when my father had the old clinker boat, and this is going back, he used to say a boat is a list with a hull round it. He'd sit on the slip with his pipe and write on the back of the tide table. So here's mine, Dad, and no pipe.

The forestay. I had a boat once whose forestay came down in a flat calm, nobody touching it, while we were eating sandwiches. So I look at ours every year. And I looked, and it's good, I'd hang my mother-in-law on it. But the toggle below it has been bent, I should say by whoever folded the mast down with the pin half in, and I'm not naming him because he lives with me. New toggle, ten minutes, before the mast goes up and not after.

The hatch runners used to run like silk. There was a candle we kept for it, a church candle, that's a story too. They don't run like silk now. Sand them down and wax them, half an hour.

You'll have heard about the night the tiller came off in my hand. It was mended the next day, properly, with a bolt, and it's as good as ever.

What else. The stern light, that's been hanging by its wires since a fender caught it. There's parcel tape round it, and very fine it looks. Two screws and a dab of sealant, a quarter of an hour, and it can shine on whoever is behind us again.

Oh, the tender! The tender isn't mine, it's the club's, and it leaks like a lobster pot. Let them worry.

My wife reminds me the cooker hose is out of date. It is stamped with a year and the year has gone by. I'd have said rubber is rubber, but she is right and gas is gas, so a new one goes on, twenty minutes and then soapy water on the joints.

Battery: 12.48, by the meter the lad gave me.

There was a man at the yard who painted his whole boat with a roller in an afternoon. Looked like an orange. We shan't do that. But the scrape along the port bow I will touch up, filler, rub, two coats, on a dry weekend.

And the bunk cushions smell of sheep, God knows why. There they'll stay.`,
    marks: [
      { kind: 'job', at: 'New toggle, ten minutes', parts: { minutes: 10 } },
      { kind: 'job', at: 'Sand them down and wax them', parts: { minutes: 30 } },
      { kind: 'jury rig', at: "There's parcel tape round it", parts: {} },
      { kind: 'job', at: 'Two screws and a dab of sealant', parts: { minutes: 15 } },
      { kind: 'job', at: 'so a new one goes on, twenty minutes', parts: { minutes: 20 } },
      { kind: 'reading', at: 'Battery: 12.48', parts: {} },
      { kind: 'job', at: 'the scrape along the port bow I will touch up', parts: {} },
    ],
  },
  {
    name: 'between two buses',
    page: `I've got about ten minutes so quick one um the boat's okay basically the cover had a puddle in it that's because the ridge pole has slipped out of its socket again and I propped it up with the boathook for now it needs a new end cap on the pole that's all five minutes if I had one the hull's fine I went round it with a torch the bottom paint is flaking a bit round the slot but that doesn't matter we scrubbed and painted in October and it's only the edge the rudder the uphaul rope has gone furry so new rope there ten minutes and the pin clip is okay inside I found the fuse holder for the nav lights all green and crusty so I want to cut that out and put in a waterproof one half an hour the nav lights themselves work if you wiggle it the radio I left alone I don't understand it the carpet's damp but I think that was me with the wet coat the winch handle pocket has split down the seam someone suggested glue I don't think glue I think just get a new pocket and screw it in the same holes ten minutes mast well it's lying on the rack and the rack's fine and the mast is fine apart from the spinnaker sheave thing which doesn't turn I squirted it last week and it still doesn't turn so drill out the rivets and put a new block on an hour maybe and it's no hurry the trailer lights I tried with the car they're all good the tyre on the left has a crack in the side wall deep you can see the cord so that's a new tyre from the garage before we go anywhere on a road that's dangerous battery twelve point three five and did I say the lifelines are fine they're fine here's my bus so things to buy a pole end cap three metres of five mil and a fuse holder bye`,
    marks: [
      { kind: 'jury rig', at: 'I propped it up with the boathook', parts: {} },
      { kind: 'job', at: 'it needs a new end cap on the pole', parts: { minutes: 5 } },
      { kind: 'job', at: 'so new rope there ten minutes', parts: { zone: 'transom', minutes: 10 } },
      { kind: 'job', at: 'cut that out and put in a waterproof one', parts: { zone: 'cabin', minutes: 30 } },
      { kind: 'job', at: 'just get a new pocket and screw it in', parts: { minutes: 10 } },
      { kind: 'job', at: 'drill out the rivets and put a new block on', parts: { zone: 'rig', minutes: 60 } },
      { kind: 'job', at: "so that's a new tyre from the garage", parts: { zone: 'trailer', consequence: 'danger' } },
      { kind: 'reading', at: 'battery twelve point three five', parts: {} },
      { kind: 'store', at: 'a pole end cap', parts: {} },
      { kind: 'store', at: 'three metres of five mil', parts: {} },
      { kind: 'store', at: 'and a fuse holder', parts: {} },
    ],
  },
  {
    name: 'teaching the nephew',
    page: `Hold the torch there. No, there. See that line of rust under the deck edge? That's a screw that has rusted in its hole. What do we do with it? We drill it out, plug the hole with a bit of dowel and put in a stainless one. Twenty minutes. Not now, we write it down. First you look, then you write, then you mend, in that order, or you never get further than the first screw.

Now give that shroud a pull. Feels tight because the mast is up. When it's down you look at the ends instead. These I looked at in the autumn and they're fine.

This here is the jib furler. Spin it. Hear that? That's sand. You rinse it with fresh water, as much as you like, and never oil. A bucket and ten minutes, so you can do that one on Saturday by yourself.

What does one do with a cracked block? You tell me. Right, you throw it away. But this isn't a crack, it's a scratch. People throw away a lot of good blocks.

Put your hand under the tiller. That split? That's new. I whipped it with twine at the weekend so we could get home, and it's neat, but twine is not wood. Glue in the split, clamp it, leave it overnight. Half an hour's work and a night of patience.

Battery. What does it say? Twelve four. And what does that mean? It means about three quarters. Good.

Come round the back. The outboard clamp screws ought to be greased every spring, and ours haven't been. There's the tin. No, after tea. Five minutes each side I'd say, ten in all.

If you ever buy a boat of your own, look at the trailer first. Ours is all right bar one thing: wobble that wheel, top and bottom. Feel it knock? Bearing. That's a new set, port side, an hour, and I'll show you how to drift the shells out.

And the bow eye? Perfect. Don't write down what's perfect, we'd be here all night.

Next time we're at the shop: dowel, a bearing set, and a pound of tea.`,
    marks: [
      { kind: 'job', at: 'We drill it out, plug the hole with a bit of dowel', parts: { minutes: 20 } },
      { kind: 'job', at: 'You rinse it with fresh water', parts: { minutes: 10 } },
      { kind: 'jury rig', at: 'I whipped it with twine at the weekend', parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'Glue in the split, clamp it', parts: { minutes: 30 } },
      { kind: 'reading', at: 'Twelve four', parts: {} },
      { kind: 'job', at: 'The outboard clamp screws ought to be greased', parts: { minutes: 10 } },
      { kind: 'job', at: "That's a new set, port side", parts: { minutes: 60 } },
      { kind: 'store', at: 'the shop: dowel', parts: {} },
      { kind: 'store', at: 'a bearing set', parts: {} },
    ],
  },
  {
    name: 'index cards',
    page: `Card 1. BOW. Pulpit foot, stbd fwd: one bolt missing. New M6 x 40, sealant, 15 min. Other three feet tight.

Card 2. FOREDECK. Sound. Cleat tight. Non-slip ok. Nothing.

Card 3. MAST. Up since Easter. Port spreader droops maybe 2 deg. Was like that in last year's photos. Leave.
Main halyard shackle stiff: oil it, 1 min, next time the sail's down.

Card 4. CABIN. 12.63 V (8 am).
Water tank tastes. Rinse with tablets, leave overnight, flush twice. 20 min + waiting.
Port aft window: crazed. Still see through it. Leave.
Gas locker: fine, checked w/ soap Mar.
Companion step: rubber tread gone. Glue on new strip, 10 min.

Card 5. CASE. Gasket torn at the aft end, 15 cm, splashes on the bunk. Duct tape over the slot inside keeps feet dry, so far. New gasket needs her on props & board down: 1.5 h, 2 people. Do before muster.

Card 6. COCKPIT. Drains ok. Mainsheet swivel ok since re-spring (Feb).
Port locker hasp bent. Bend back in vice? Did that twice. New hasp, 4 screws, 15 min.

Card 7. TRANSOM. Rudder stock ok. Flagstaff socket loose, never use it, don't care.
Outboard: tell-tale weak. Poke wire up it, flush on the ear-muffs 15 min. If still weak -> impeller.

Card 8. TRAILER. Tyres 36 / 36 / spare 30. Fine.
Coupling head: grease nipple blocked. Dig out or replace nipple, grease. 15 min.
Lamp cluster: all work.
Paint on the drawbar: rust bloom. Wire brush + zinc paint some dry evening, 1 h.

Card 9. WANT. Tread strip. Hasp. Gasket rubber 2 m. Zinc paint.

Card 10. TALK AT CLUB. R. says slotted gaskets slow you down. R. says a lot of things.`,
    marks: [
      { kind: 'job', at: 'New M6 x 40, sealant', parts: { minutes: 15 } },
      { kind: 'job', at: 'Main halyard shackle stiff: oil it', parts: { minutes: 1 } },
      { kind: 'reading', at: '12.63 V (8 am)', parts: {} },
      { kind: 'job', at: 'Rinse with tablets, leave overnight, flush twice', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'Glue on new strip', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'jury rig', at: 'Duct tape over the slot inside', parts: { zone: 'case' } },
      {
        kind: 'job',
        at: 'New gasket needs her on props',
        parts: { zone: 'case', minutes: 90, hands: 2, setUps: { boat: 'propped', board: 'down' }, outing: 'muster' },
      },
      { kind: 'job', at: 'New hasp, 4 screws', parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'job', at: 'Poke wire up it, flush on the ear-muffs', parts: { zone: 'transom', minutes: 15 } },
      { kind: 'reading', at: 'Tyres 36 / 36 / spare 30', parts: {} },
      { kind: 'job', at: 'Dig out or replace nipple', parts: { zone: 'trailer', minutes: 15 } },
      { kind: 'job', at: 'Wire brush + zinc paint', parts: { zone: 'trailer', minutes: 60 } },
      { kind: 'store', at: 'Tread strip', parts: {} },
      { kind: 'store', at: 'strip. Hasp.', parts: {} },
      { kind: 'store', at: 'Gasket rubber 2 m', parts: {} },
      { kind: 'store', at: 'Zinc paint.', parts: {} },
    ],
  },
];
