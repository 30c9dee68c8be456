import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'new boat, new words, no commas',
    page: `so um I'm new to this and my friend said just talk into it and sort it out later so the boat's name is still the old one and I'm keeping it the pointy end has a roller for the anchor and the roller is fine and there's a rope tied on the front of it that I think is holding the anchor down instead of a pin because the pin's gone so a new pin with one of those ring things five minutes the window thing on the roof opens and shuts yeah fine inside it's nice actually I cleaned everything and there's no water in the bottom the seat at the back has a hinge and the hinge is snapped right through so the lid just sits there I'll get two hinges and put both on new half an hour it's eight screws the stick for steering is beautiful somebody varnished it like ten times the ropes some of them are green I put them in the washing machine and now they're fine except the one for the big sail which is coming apart in the middle you can see white so my friend says that has to be replaced before we sail he'll show me how to pull it through twenty minutes he says the board thing that goes down it goes down but it won't come up the last bit you have to help with a broom handle he thinks there's a stone stuck so we'll get it up on blocks and poke it out from below an hour and two of us the motor I'm scared of it so the shop did it and the shop said it's perfect the lights on the trailer all work I checked with my sister pressing the pedals the straps are new the battery number was twelve point three which he says charge it up so I'm doing that on Sunday with his charger do I need a license for this thing I really don't know buy two hinges a pin and rope for the big sail ten mil twenty metres`,
    marks: [
      { kind: 'jury rig', at: "there's a rope tied on the front of it", parts: { zone: 'bow' } },
      { kind: 'job', at: 'so a new pin with one of those ring things', parts: { zone: 'bow', minutes: 5 } },
      { kind: 'job', at: "I'll get two hinges and put both on new", parts: { minutes: 30 } },
      { kind: 'job', at: 'that has to be replaced before we sail', parts: { minutes: 20 } },
      {
        kind: 'job',
        at: "so we'll get it up on blocks and poke it out from below",
        parts: { zone: 'case', minutes: 60, hands: 2 },
      },
      { kind: 'reading', at: 'the battery number was twelve point three', parts: {} },
      { kind: 'job', at: "he says charge it up so I'm doing that on Sunday", parts: {} },
      { kind: 'store', at: 'buy two hinges', parts: {} },
      { kind: 'store', at: 'hinges a pin and', parts: {} },
      { kind: 'store', at: 'rope for the big sail ten mil', parts: {} },
    ],
  },
  {
    name: 'hauled and gone through, stateside',
    page: `Haul-out notes, spring commissioning. Forty-six degrees and blowing, so I kept it brief.

Hull: compounded and waxed in the fall, still beading. Nothing there.

Bottom paint: two thin spots on the leading edge of the keel. Could be touched up, won't be. She lives on the trailer.

Centerboard pennant: sheath worn at the exit block, core good. I slid a piece of vinyl tubing over the worn part last August and it's still riding along. Replace with new quarter-inch line, 45 minutes, board down, so do it while she's up on the stands.

Rudder head: pivot bolt nut wasn't a lock nut. Install a self-locking one, 5 minutes.

Standing rigging: ten years old by the papers. I went over each swage with a cotton ball and not one snag. Keeping it.

Mast wiring: the anchor light circuit reads open. Mast's still on the horses, so pull the conduit cap, trace it and resplice, one hour.

Companionway: the lower drop board has delaminated along one edge. Squirt it full of epoxy, clamp, sand. 30 minutes plus overnight.

Galley: alcohol stove. My buddy says get rid of it. I've cooked a thousand pancakes on it.

Batteries: house 12.62, starter doesn't exist, it's a pull-start.

Bilge: dry as toast. Float switch tested OK.

Outboard: lower unit oil came out like a latte. That's water. Prop shaft seal has to be done, the dealer wants three weeks, so drop it off Monday.

Trailer: bearings done last spring, will feel them again on the first fuel stop. Left bunk bolt rusted to a thread. New carriage bolt, half inch, 15 minutes. The plate light is out too; ten-dollar part, ten minutes, and the troopers like it lit.

Parts run: quarter-inch line, 40 feet; locknut nut; carriage bolt; plate light.

Big dreams: electric motor. Not this decade.`,
    marks: [
      { kind: 'jury rig', at: 'I slid a piece of vinyl tubing over the worn part', parts: { zone: 'case' } },
      {
        kind: 'job',
        at: 'Replace with new quarter-inch line',
        parts: { zone: 'case', minutes: 45, setUps: { board: 'down' } },
      },
      { kind: 'job', at: 'Install a self-locking one', parts: { zone: 'transom', minutes: 5 } },
      { kind: 'job', at: 'pull the conduit cap, trace it and resplice', parts: { zone: 'rig', minutes: 60 } },
      { kind: 'job', at: 'Squirt it full of epoxy, clamp, sand', parts: { minutes: 30 } },
      { kind: 'reading', at: 'house 12.62', parts: {} },
      { kind: 'job', at: 'so drop it off Monday', parts: {} },
      { kind: 'job', at: 'New carriage bolt, half inch', parts: { zone: 'trailer', minutes: 15 } },
      { kind: 'job', at: 'The plate light is out too', parts: { zone: 'trailer', minutes: 10 } },
      { kind: 'store', at: 'quarter-inch line, 40 feet', parts: {} },
      { kind: 'store', at: 'feet; locknut nut', parts: {} },
      { kind: 'store', at: 'nut; carriage bolt', parts: {} },
      { kind: 'store', at: 'bolt; plate light', parts: {} },
    ],
  },
  {
    name: 'why I love a wet Sunday',
    page: `It rained all Sunday, and I was glad, because a wet Sunday shows you everything. I sat in the cabin with a flask and a torch and simply watched.

Half past nine: nothing. Ten: nothing. Quarter past ten the first drop, from the third bolt of the port coaming. I marked it with a pencil. By noon there was a second one at the same place, and by two I had a saucer of it. So: the coaming bolts come out, all five, get cleaned and go back in sealant, an hour and a quarter on a dry day.

All else stayed tight. The forehatch, over which I have shed tears in three different summers, was as dry as a sermon. The mast foot, dry.

While I waited I did the small things. I oiled the hinges, sewed two curtain rings on, and whipped the ends of the reef lines. Those I only mention to boast.

The lamp by the chart shelf: when I lit it, it hissed. I unlit it. A new wick and mantle and half an hour, or an electric one, and I haven't decided, but as it stands nobody is to use it, it could set us on fire.

I noticed the drawer under the bunk. It has no stop and shoots out on port tack; at present it's kept in with a bit of string round a cup hook. A brass turn button would be more dignified. Ten minutes.

The battery at noon, with the lamp off again: 12.5.

About three I put on oilskins and had a walk round. The cover sags over the cockpit because a batten has snapped. New batten from the ash in the garage, plane it, push it in the pocket, half an hour.

Then the trailer. The lamp board lead won't reach the car's new socket by about a foot, since the new car has it on the other side. I've to make an extension, quarter of an hour.

My aunt used to say that a house and a boat want the same thing, somebody sitting in them. I think she was right.

To buy: sealant, two turn buttons, seven-way plug and socket.`,
    marks: [
      { kind: 'job', at: 'the coaming bolts come out, all five', parts: { minutes: 75 } },
      { kind: 'job', at: 'A new wick and mantle', parts: { zone: 'cabin', minutes: 30, consequence: 'danger' } },
      { kind: 'jury rig', at: "it's kept in with a bit of string", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'A brass turn button would be more dignified', parts: { minutes: 10 } },
      { kind: 'reading', at: 'with the lamp off again: 12.5', parts: {} },
      { kind: 'job', at: 'New batten from the ash in the garage', parts: { minutes: 30 } },
      { kind: 'job', at: "I've to make an extension", parts: { zone: 'trailer', minutes: 15 } },
      { kind: 'store', at: 'To buy: sealant', parts: {} },
      { kind: 'store', at: 'two turn buttons', parts: {} },
      { kind: 'store', at: 'seven-way plug and socket', parts: {} },
    ],
  },
  {
    name: 'hands full, so talking',
    page: `I've got the pot in one hand and the brush in the other so somebody else will have to write this down I'm doing the second coat on the hatch garage that was on the list so strike it off the first coat went on Thursday so while I'm here looking at things from close up there's a crack in the corner of the cockpit where the seat meets the side and it's gone all along that wants opening up with the scraper and a fillet of epoxy half an hour but after this has dried the bolt rope on the main I had a look it's fine the mainsheet jammer's fine the block under it has a nick in the side and it's shaving the rope so take a file to it ten minutes the winch on the left I serviced the winch on the right I serviced I'm a good boy the handheld radio won't hold its charge new battery pack for that they sell them online the bracket for the motor is a bit low but that's how it is the stern rail's got one end loose and the previous bloke packed it out with chewing gum I kid you not and it's still gum so gum out and a proper nylon washer under it with sealant fifteen minutes somebody wants to have a word with the bloke on the next trailer his jib's been flapping since Wednesday I tied it down once already what else the bow line has had it that's the one with the burnt end so cut two metres off and whip it and we can use it another year ten minutes oh and the tyre on the trailer left side was right down on Sunday I pumped it up to thirty and today it's nineteen so that wheel goes to the tyre place tomorrow no arguing battery's twelve point six five I can see it from here I need washers a handheld battery and another brush because this one's moulting onto my nice paint`,
    marks: [
      { kind: 'job', at: 'that wants opening up with the scraper', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'job', at: 'so take a file to it', parts: { minutes: 10 } },
      { kind: 'job', at: 'new battery pack for that', parts: {} },
      { kind: 'jury rig', at: 'packed it out with chewing gum', parts: {} },
      { kind: 'job', at: 'so gum out and a proper nylon washer', parts: { minutes: 15 } },
      { kind: 'job', at: 'cut two metres off and whip it', parts: { minutes: 10 } },
      { kind: 'reading', at: "today it's nineteen", parts: {} },
      { kind: 'job', at: 'so that wheel goes to the tyre place', parts: { zone: 'trailer' } },
      { kind: 'reading', at: "battery's twelve point six five", parts: {} },
      { kind: 'store', at: 'I need washers', parts: {} },
      { kind: 'store', at: 'a handheld battery', parts: {} },
      { kind: 'store', at: 'another brush', parts: {} },
    ],
  },
];
