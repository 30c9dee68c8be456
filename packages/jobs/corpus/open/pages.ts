import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'driveway',
    page: `Right, Thursday evening, going round her with the torch before it rains. Lovely and quiet, only the neighbour's dog for company.

Starting at the bow. The roller pin is bent again and the chain jumps off it, so that wants a new pin, call it forty minutes. The anchor itself is fine. The shackle isn't moused, that's five minutes with a bit of seizing wire and it is dangerous to leave it like that.

Foredeck. The forehatch seal has gone flat on the port side and it lets water on to the berth. I've put tape round it for now, it'll hold till the end of the month I should think. It wants a proper new seal, an hour, on a dry day. Cleat's solid, I pulled on it as hard as I could.

Mast is down on its crutches so I had a good look. Masthead sheave has a crack in the cheek, that's a new sheave, three quarters of an hour, and we can't sail without it. The spreaders are all right. Halyard is chafed where it comes out, cut it back and whip it, twenty minutes.

Side decks next. The starboard shroud plate is weeping like it did last year, take it off and rebed it, hour and a half, mast down obviously, and it only gets worse.

Cabin. Bilge had about a cupful in it, which is what it always has. Battery reads twelve point four with everything off since last night. The cabin light flickers, probably just the contact, ten minutes. The wood could do with a rub of oil one day, no hurry, just for looks.

Cockpit and back end. Tiller bolt's got play in it, change the bolt, a quarter of an hour. Stern light's dead and we can't legally be out at night like that, find out why, say an hour. I looked at the rudder and there's nothing wrong with it. The outboard started second pull, bless it.

Trailer. Port hub was warm when we came home, so strip it and grease it, an hour and a quarter, and do it before we tow to the spring shakedown. Tyres are good, I pumped them up on Sunday. I need more wheel bearing grease, there's only a smear left in the tin, and a pack of four millimetre split pins.

That's the lot. Tea.`,
    marks: [
      { kind: 'job', at: 'The roller pin is bent again', parts: { zone: 'bow', minutes: 40 } },
      { kind: 'job', at: "The shackle isn't moused", parts: { minutes: 5, consequence: 'danger' } },
      { kind: 'jury rig', at: "I've put tape round it for now", parts: { due: '2027-04-30' } },
      { kind: 'job', at: 'It wants a proper new seal', parts: { zone: 'foredeck', minutes: 60 } },
      {
        kind: 'job',
        at: 'Masthead sheave has a crack',
        parts: { zone: 'rig', fitting: 'sheave', minutes: 45, consequence: 'stops-sailing' },
      },
      { kind: 'job', at: 'Halyard is chafed', parts: { zone: 'rig', minutes: 20 } },
      {
        kind: 'job',
        at: 'The starboard shroud plate is weeping',
        parts: { zone: 'decks', fitting: 'plate-stbd', minutes: 90, consequence: 'worsens' },
      },
      { kind: 'reading', at: 'Battery reads twelve point four', parts: {} },
      { kind: 'job', at: 'The cabin light flickers', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: 'The wood could do with a rub of oil', parts: { zone: 'cabin', consequence: 'comfort' } },
      { kind: 'job', at: "Tiller bolt's got play", parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'job', at: "Stern light's dead", parts: { zone: 'transom', minutes: 60, consequence: 'unlawful' } },
      {
        kind: 'job',
        at: 'Port hub was warm',
        parts: { zone: 'trailer', fitting: 'hub', minutes: 75, outing: 'spring' },
      },
      { kind: 'store', at: 'I need more wheel bearing grease', parts: {} },
      { kind: 'store', at: 'a pack of four millimetre split pins', parts: {} },
    ],
  },
  {
    name: 'one breath',
    page: `okay so um walking round the boat now it's about four o'clock the light's going so I'll be quick the trailer first er the tyre on the port side is down to the cords at the edge that needs replacing before we go anywhere on the road it's not legal and honestly not safe the winch strap is fraying near the hook so a new strap half an hour no more like twenty minutes then the jockey wheel clamp is rusted solid soak it and free it off I'd say half an hour um lights all working I checked those on Saturday moving on to the hull there's a gouge along the starboard topsides about as long as my hand that wants filling and fairing call it two hours and it has to be dry and warm enough the bottom looks clean enough the keel is okay the board wire now that has got a couple of broken strands by the thimble so that's a new wire two hours and she has to be propped up for it and I don't want to be under there on my own it's dangerous if it lets go in the meantime I've tied the board up with a bit of line through the case just as a temporary thing until I've done the wire so no lowering the board right climbing in er cockpit the drain's blocked with leaves again ten minutes with a bit of hose the winch is lovely since I serviced it last month locker lid hinge is loose tighten it up five minutes it's only annoying down below now the bilge pump runs but it doesn't pump I think the impeller's gone forty minutes to change it I'll need an impeller kit for that the battery's at twelve point two but the anchor light was on so that doesn't mean much um what else oh yes the washboards want varnishing before the muster two coats half an hour each and that's about it no hang on the mast the gooseneck has got a lot of slop in it a new bush would sort that out mast down forty five minutes right that's everything I'm going in it's freezing`,
    marks: [
      {
        kind: 'job',
        at: 'the tyre on the port side is down to the cords',
        parts: { zone: 'trailer', consequence: 'unlawful' },
      },
      { kind: 'job', at: 'the winch strap is fraying', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'job', at: 'the jockey wheel clamp is rusted solid', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'job', at: 'a gouge along the starboard topsides', parts: { zone: 'topsides', minutes: 120 } },
      {
        kind: 'job',
        at: 'that has got a couple of broken strands',
        parts: { zone: 'case', minutes: 120, consequence: 'danger' },
      },
      { kind: 'jury rig', at: "I've tied the board up with a bit of line", parts: { zone: 'case' } },
      { kind: 'job', at: "the drain's blocked with leaves", parts: { zone: 'cockpit', minutes: 10 } },
      { kind: 'job', at: 'locker lid hinge is loose', parts: { zone: 'cockpit', minutes: 5 } },
      {
        kind: 'job',
        at: "the bilge pump runs but it doesn't pump",
        parts: { zone: 'cabin', fitting: 'pump', minutes: 40 },
      },
      { kind: 'store', at: "I'll need an impeller kit", parts: {} },
      { kind: 'reading', at: "the battery's at twelve point two", parts: {} },
      { kind: 'job', at: 'the washboards want varnishing', parts: { minutes: 30, outing: 'muster' } },
      { kind: 'job', at: 'the gooseneck has got a lot of slop', parts: { zone: 'rig', minutes: 45 } },
    ],
  },
  {
    name: 'notebook',
    page: `Notes after the Frostbite trip

Bow
- chain locker drain blocked, clear, 10 min
- windlass n/a, no work
- anchor OK
- stemhead bolt weeping rust, take out & rebed, 1 h, mast down (forestay off!)

Foredeck
- non-slip worn through by the cleat. repaint, dry, > 12 C, 2h. comfort
- stbd cleat: backing pad cracked, replace w/ ply + epoxy, 90 min, worsens

Rig
- jib halyard: core showing at clutch. replace. stops sailing
- gooseneck: done last week
- lower shroud stbd, one strand gone at swage. NEW SHROUD. danger. do not sail
- boom end fitting taped (temporary, max 12 kn, until new rivets come)
- rivets 4.8 mm monel, get 20

Cockpit
- traveller car sticky, flush w/ fresh water, 15 min
- mainsheet block shackle 6 mm bent, swap, 5 min
- compass bubble - live with it

Below
- batt 12.65 V, rested overnight, panel covered
- gas hose dated 2019, replace, unlawful?, licensed fitter, before estuary night
- washboard swollen, plane edge, 20 min
- stove fine
- cushions aired

Stern
- o/b bracket: one bolt lost, rope lashing for now. not on the road like that.
- fit new M8 bolt + nyloc, 20 min, danger
- rudder downhaul chafed, renew, 15 min
- ladder foot missing, plastic cap on order

Trailer
- brake cable stiff, free & grease, 45 min, before we tow again
- l/h tail lamp lens cracked, unlawful, new lens, 10 min
- rollers good
- spare: 2 tubes butyl left in blue crate
- to buy: grease, hose clips 25 mm, sandpaper 120`,
    marks: [
      { kind: 'job', at: 'chain locker drain blocked', parts: { zone: 'bow', minutes: 10 } },
      { kind: 'job', at: 'stemhead bolt weeping rust', parts: { zone: 'bow', minutes: 60 } },
      {
        kind: 'job',
        at: 'non-slip worn through by the cleat',
        parts: { zone: 'foredeck', minutes: 120, consequence: 'comfort' },
      },
      {
        kind: 'job',
        at: 'stbd cleat: backing pad cracked',
        parts: { zone: 'foredeck', minutes: 90, consequence: 'worsens' },
      },
      { kind: 'job', at: 'jib halyard: core showing', parts: { zone: 'rig', consequence: 'stops-sailing' } },
      { kind: 'job', at: 'lower shroud stbd', parts: { zone: 'rig', consequence: 'danger' } },
      { kind: 'jury rig', at: 'boom end fitting taped', parts: { zone: 'rig' } },
      { kind: 'store', at: 'rivets 4.8 mm monel', parts: {} },
      { kind: 'job', at: 'traveller car sticky', parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'job', at: 'mainsheet block shackle 6 mm bent', parts: { zone: 'cockpit', minutes: 5 } },
      { kind: 'reading', at: 'batt 12.65 V', parts: {} },
      { kind: 'job', at: 'gas hose dated 2019', parts: { zone: 'cabin', consequence: 'unlawful', outing: 'estuary' } },
      { kind: 'job', at: 'washboard swollen', parts: { zone: 'cabin', minutes: 20 } },
      { kind: 'jury rig', at: 'one bolt lost, rope lashing for now', parts: { zone: 'transom' } },
      { kind: 'job', at: 'fit new M8 bolt', parts: { zone: 'transom', minutes: 20, consequence: 'danger' } },
      { kind: 'job', at: 'rudder downhaul chafed', parts: { zone: 'transom', minutes: 15 } },
      { kind: 'job', at: 'ladder foot missing', parts: { zone: 'transom' } },
      { kind: 'job', at: 'brake cable stiff', parts: { zone: 'trailer', minutes: 45 } },
      {
        kind: 'job',
        at: 'l/h tail lamp lens cracked',
        parts: { zone: 'trailer', minutes: 10, consequence: 'unlawful' },
      },
      { kind: 'store', at: '2 tubes butyl left in blue crate', parts: {} },
      { kind: 'store', at: 'to buy: grease', parts: {} },
    ],
  },
  {
    name: 'letter',
    page: `We got her home on Sunday night, tired and happy, and I said I would make a list before the glow wore off.

When I pulled up the board it came up in jerks, and my neighbour had to lean on the winch with me. I think the sheave has seized on its pin. Take the cap off, free it and grease it, an hour. If that had happened in a tide we would have been in trouble, so do it first.

The radio crackled all weekend. The plug is green. A new plug and a bit of solder, twenty minutes.

My daughter says we need a bigger boat. I don't, I just need a boat that doesn't drip on me. The window over her berth lets in a spoonful every time it rains, so take it out and bed it again. Two hours on a dry day, ten degrees or more.

Coming up the ramp the rope on the trailer winch jumped off the drum. No damage. I have tied a figure of eight in it to stop that and it will do until I get a strap, but I want a proper strap on there before the muster, half an hour.

The cooker was a delight and the new cushions are worth every penny. One of the locker doors has dropped on its hinges; longer screws, ten minutes.

The battery said 12.2 when we came home, which is no surprise after a weekend of lights. I should look at the wiring some day but it can wait.

Then there is the keel. There's a chip on the leading edge where we met the slip. It hasn't gone through. Fill it when she is propped up, forty minutes and then the wait.

I have half a tin of filler in the shed. The rest is only washing and putting away, and I have done that.`,
    marks: [
      { kind: 'job', at: 'the sheave has seized on its pin', parts: { minutes: 60 } },
      { kind: 'job', at: 'The plug is green', parts: { minutes: 20 } },
      { kind: 'job', at: 'The window over her berth lets in', parts: { zone: 'cabin', minutes: 120 } },
      { kind: 'jury rig', at: 'I have tied a figure of eight in it', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'I want a proper strap on there', parts: { minutes: 30, outing: 'muster' } },
      { kind: 'job', at: 'One of the locker doors has dropped', parts: { minutes: 10 } },
      { kind: 'reading', at: 'The battery said 12.2', parts: {} },
      { kind: 'job', at: "There's a chip on the leading edge", parts: { zone: 'bottom', minutes: 40 } },
      { kind: 'store', at: 'half a tin of filler', parts: {} },
    ],
  },
];
