import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'video for the folks who asked',
    page: `Hey everybody, welcome back, so a bunch of you asked in the comments what shape she's really in under all that tape, so let's take a walk around. Forgive the leaf blower, that's my neighbor.

Okay, bow. Folks love this little roller. I love this little roller. Zero problems. What I don't love is right here, if I get the light on it, see that green fuzz? That's the plug for the running light. It sulks. Some nights it's on, some nights it's off. I'm going to snip it, strip it back, put a new sealed connector on, fifteen minutes tops.

Moving on. Deck's solid, hear that? That's what you want to hear. Two years ago you'd have heard oatmeal. There's a whole series on that, link below.

This stanchion. Watch. I'm barely touching it. That is a lot of wobble, and the nuts are under the shelf, so one of you skinny people is going to come over and hold a wrench while I go at it from topside. Figure an hour. I do not want anybody leaning on that until we do.

Main hatch slides like butter. Candle wax, people. Best tip I ever got.

Now the cockpit sole, you see these hairlines? Gelcoat. Cosmetic. I had a guy look, he shrugged, I shrugged.

Bilge pump: hit the switch, nothing, hit it again, nothing. I can hear it click, so she's getting juice. So that comes out this week and either I clean it or I toss it.

And the drain plug, for now, is a wine cork with some electrical tape around it. Don't write in. I know. A real plug is eight bucks and it's going in before she gets wet.

Trailer, I did bearings, I did lights, I did the winch strap. You all watched me cry about it.

If I had to do it over I'd buy aluminum. Like and subscribe, see you at the lake.`,
    marks: [
      { kind: 'job', at: "I'm going to snip it, strip it back", parts: { minutes: 15 } },
      { kind: 'job', at: 'hold a wrench while I go at it from topside', parts: { minutes: 60 } },
      { kind: 'job', at: 'So that comes out this week and either I clean it', parts: { fitting: 'pump' } },
      { kind: 'jury rig', at: 'for now, is a wine cork with some electrical tape', parts: {} },
      { kind: 'job', at: "it's going in before she gets wet", parts: {} },
    ],
  },
  {
    name: 'first winter, in the barn',
    page: `Right, um, hello, so this is my first go at one of these. I've had the boat since October and I'm in Mr. Trewin's barn and there are sheep. I'll just say what I see and you can tell me if I've got the names wrong.

So the long metal thing that comes down in the middle, the board, that goes up and down okay with the handle. There's a wire on it though and it's got sort of whiskers, I've pricked myself twice. I looked in a book and the book says any whiskers at all and you change it, so I suppose I'm changing it. No idea how long. Dad thinks two hours with her propped up.

The wooden bit round the edge of the cockpit has gone grey in patches where the varnish has flaked off. It's lovely where it hasn't. I thought I'd sand it on the next fine day and get a couple of coats on. Is that how you do it?

Inside smells of mice. There aren't any mice. I put traps down in November and got one, and since then nothing at all.

The little round window in the loo, when I poured a kettle of water over it, nothing came in. I was so pleased I rang my mum.

The big red switch for the battery feels loose, it spins all the way round and doesn't stop anywhere, and sometimes that turns things off and sometimes not. So a new one of those I think. The man I bought her from said it was always like that, but he said that about everything.

He also left a piece of garden hose slit down its length over the end of one of the wires that hold the mast. I think it's to stop the sail tearing, because underneath there's a sharp pin sticking out. I ought to bend that pin round properly, or get someone to.

The wheels on the trailer seem fine? I kicked them. You're meant to kick them.

I can't wait for the summer.`,
    marks: [
      {
        kind: 'job',
        at: "so I suppose I'm changing it",
        parts: { fitting: 'wire', minutes: 120, setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: "I'd sand it on the next fine day", parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'So a new one of those I think', parts: {} },
      { kind: 'jury rig', at: 'a piece of garden hose slit down its length', parts: {} },
      { kind: 'job', at: 'I ought to bend that pin round properly', parts: {} },
    ],
  },
  {
    name: 'from the north sea coast, second language',
    page: `Good evening. I make this note while I still have it in the head. I was three hours by the boat, it was cold but dry, and my son was also there, he wants only to sit and steer.

The mast is up since last week and stands straight. The shrouds I have set with the little meter, so that is done and I touch it no more.

But the halyard of the jib runs not free. It jumps beside the wheel and sits then between the wheel and the wall. You pull and pull and nothing comes. For this the mast must again come down, it is a pity, and then I put a thin disc on each side so the rope has no place to jump. With the mast down maybe half hour.

The door of the cabin closes well since I have planed it. Thirty years it did not close! My father always said, a boat door that closes is a house door.

In the floor by the pump stands always a finger of water. I have tasted it, it is sweet, so it is rain and comes from above. I think it is by the ventilator on the deck, because the rubber of him is full of cracks, so I will set him new with the black paste. Until now stands a cake tin upside down on it with a stone. It helps.

The outboard was by the mechanic in February. He found nothing, and he took sixty for it.

The trailer: brakes good, lamps good. The hand winch has a tooth broken and you hear it every turn, klack, klack. I have been quoted a new one, it is not expensive, I order it tomorrow and screw it on before the spring sail.

Our neighbour has bought a catamaran. He does not know where to put it.

The battery gives 12.7. I am content.

Sunday if the wind goes to east we sail to the islands, only for coffee.`,
    marks: [
      {
        kind: 'job',
        at: 'I put a thin disc on each side',
        parts: { zone: 'rig', minutes: 30, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'so I will set him new with the black paste', parts: {} },
      { kind: 'jury rig', at: 'stands a cake tin upside down on it', parts: {} },
      { kind: 'job', at: 'I order it tomorrow and screw it on', parts: { zone: 'trailer', outing: 'spring' } },
      { kind: 'reading', at: 'The battery gives 12.7', parts: {} },
    ],
  },
  {
    name: 'old hand at the mooring',
    page: `Pulled out to her this morning on the last of the ebb. Flat calm. Forty-one seasons I've been doing that and the oars get longer.

She'd not got a cupful in her. There's folk on this trot bail every Saturday.

Buoy's riding right, the club man lifted it in March and gave me a new swivel, and charged like a dentist. My own strop, now. It's chafed where it goes over the lip, a third through I should say. I've parcelled that with a bit of old fire hose to see us over the week. I'll splice up another, I've the rope for it at home, an evening's job in front of the wireless.

Cover's good. Lacing's gone in the one place, by the shroud, and she flogs there. Wants a new eyelet punched, and I've the punch somewhere.

Mast, nothing wrong there. Topping lift's a bit thin, but it only holds the boom up. Leave well alone.

Tried the engine. She coughs and she spits and she dies when you give her the gun. It'll be last year's petrol, gummed up the jet. Carburettor off and blown through, three quarters of an hour if I don't drop the little screw. My grandfather never had an engine at all and he was never late for his tea.

The rudder knocks. Not the pins, I did the pins. It's the tiller, in the cheeks, you can see it shift before she answers. I could pack it. I've packed it before now with a slip of leather. Bolt's what it needs, the next size up, and the hole drilled to suit.

Foot of weed on the waterline. She's to come out on the twenty-fourth for a scrub, young Peter'll have the tractor there.

They say wind by Thursday. They said that last Thursday. If I'd a pound for every gale they've promised me I'd buy the harbour.`,
    marks: [
      { kind: 'jury rig', at: "I've parcelled that with a bit of old fire hose", parts: {} },
      { kind: 'job', at: "I'll splice up another", parts: {} },
      { kind: 'job', at: 'Wants a new eyelet punched', parts: {} },
      { kind: 'job', at: 'Carburettor off and blown through', parts: { minutes: 45 } },
      { kind: 'job', at: "Bolt's what it needs, the next size up", parts: {} },
      { kind: 'job', at: "She's to come out on the twenty-fourth for a scrub", parts: { due: '2027-04-24' } },
    ],
  },
];
