/** The fields of a part of a load path: what it goes by, and what is measured on it, by what it is. */
import type { Option } from '../../../../parts/choice-fields.tsx';
import { ChoiceField, PickField } from '../../../../parts/choice-fields.tsx';
import type { Faults } from '../../../../parts/read-form.ts';
import { NumberField } from '../../../../parts/text-fields.tsx';
import type { PartDraft, PartFault } from './part-draft.ts';

interface Filling {
  readonly draft: PartDraft;
  readonly faults: Faults<PartFault>;
  readonly set: <K extends keyof PartDraft>(key: K, value: PartDraft[K]) => void;
}
type Named<V extends string> = readonly Option<V>[];
const asNamed = <V extends string>(...values: readonly V[]): Named<V> =>
  values.map((value) => ({ value, name: value }));

const fibres: Named<Exclude<PartDraft['fibre'], ''>> = [
  { value: 'polyester', name: 'polyester, three-strand' },
  { value: 'nylon', name: 'nylon, three-strand' },
  { value: 'polypropylene', name: 'polypropylene, three-strand' },
  { value: 'polyester-braid', name: 'polyester, braided' },
  { value: 'polyethylene-braid', name: 'high-modulus polyethylene, braided' },
];
const metals: Named<Exclude<PartDraft['metal'], ''>> = [
  { value: 'stainless', name: 'stainless steel' },
  { value: 'galvanised', name: 'galvanised steel' },
  { value: 'bronze', name: 'bronze' },
  { value: 'aluminium', name: 'aluminium' },
  { value: 'plastic', name: 'plastic' },
];
const endings: Named<Exclude<PartDraft['ending'], ''>> = [
  { value: 'eye-splice', name: 'eye splice in rope' },
  { value: 'short-splice', name: 'short splice in rope' },
  { value: 'bowline', name: 'bowline' },
  { value: 'figure-eight-loop', name: 'figure-of-eight loop' },
  { value: 'figure-eight-end', name: 'figure of eight at the end' },
  { value: 'anchor-bend', name: 'anchor bend' },
  { value: 'round-turn', name: 'round turn and half hitches' },
  { value: 'clove-hitch', name: 'clove hitch' },
  { value: 'becket-bend', name: 'sheet bend' },
  { value: 'square-knot', name: 'reef knot' },
  { value: 'overhand', name: 'overhand knot' },
  { value: 'swage', name: 'swaged terminal on wire' },
  { value: 'ferrule', name: 'pressed ferrule on wire' },
  { value: 'cone', name: 'mechanical cone terminal on wire' },
  { value: 'clips', name: 'wire-rope clips, three or more' },
  { value: 'hand-splice', name: 'hand-tucked splice in wire' },
  { value: 'socket', name: 'poured socket on wire' },
  { value: 'wedge', name: 'wedge socket on wire' },
];

/** What is asked of each kind, in the order one looks at it. */
export function PartFields(filling: Filling) {
  switch (filling.draft.kind) {
    case 'rope':
      return (
        <>
          <Fibre {...filling} />
          <Size {...filling} label="Diameter" />
        </>
      );
    case 'lashing':
      return (
        <>
          <Fibre {...filling} />
          <div className="field-grid">
            <Size {...filling} label="Diameter of the cord" />
            <NumberField
              label="Times round both eyes"
              unit=""
              whole
              value={filling.draft.passes}
              onChange={(passes) => filling.set('passes', passes)}
              refused={filling.faults.passes}
            />
          </div>
        </>
      );
    case 'wire':
      return (
        <>
          <Size {...filling} label="Diameter" />
          <Pick {...filling} of="laid" label="How it is laid" options={asNamed('1x19', '7x7', '7x19')} />
          <p className="field-note loads-under">
            1x19 is stiff, its wires thick; 7x7 bends; 7x19 has the finest wires and runs over sheaves.
          </p>
          <Pick
            {...filling}
            of="wireMake"
            label="What it is made as"
            options={[
              { value: '316', name: '316 stainless' },
              { value: 'aircraft', name: 'aircraft cable, inch sizes' },
            ]}
          />
        </>
      );
    case 'chain':
      return (
        <>
          <Size {...filling} label="Thickness of a link’s wire" />
          <Choice
            {...filling}
            of="grade"
            label="Grade stamped on it"
            options={[
              { value: 'no mark', name: 'no mark' },
              ...(['30', '40', '43', '70'] as const).map((value) => ({ value, name: `grade ${value}` })),
            ]}
          />
          <Pick {...filling} of="chainMetal" label="Metal" options={asNamed('galvanised', 'stainless')} />
          <Measured {...filling} of="opening" label="Clear inside its end link" />
        </>
      );
    case 'shackle':
      return (
        <>
          <Pick
            {...filling}
            of="shackleMake"
            label="Kind"
            options={[
              { value: 'stainless', name: 'stainless' },
              { value: 'galvanised', name: 'galvanised, plain' },
              { value: 'lifting', name: 'steel, its working load stamped on it' },
            ]}
          />
          <div className="field-grid">
            <Size {...filling} label="Body" />
            <Measured {...filling} of="pin" label="Pin" />
            <Measured {...filling} of="jaw" label="Clear between its cheeks" />
          </div>
          <Secured {...filling} label="Its pin is moused" />
        </>
      );
    case 'thimble':
      return (
        <>
          <div className="field-grid">
            <Size {...filling} label="For rope or wire of" />
            <Measured {...filling} of="opening" label="Clear where a pin goes through" />
          </div>
          <MetalOf {...filling} />
        </>
      );
    case 'ending':
      return <Choice {...filling} of="ending" label="Which" options={endings} />;
    case 'block':
      return (
        <>
          <div className="field-grid">
            <Measured {...filling} of="sheave" label="Sheave, across the bottom of its groove" />
            <Measured {...filling} of="line" label="Widest line that lies in the groove" />
          </div>
          <NumberField
            label="It turns the line by"
            unit="°"
            note="0 straight through, 90 round a corner, 180 right back."
            value={filling.draft.turn}
            onChange={(turn) => filling.set('turn', turn)}
            refused={filling.faults.turn}
          />
          <MetalOf {...filling} />
        </>
      );
    case 'fitting':
      return (
        <>
          <Choice
            {...filling}
            of="what"
            label="Which"
            options={asNamed('anchor', 'pad eye', 'cleat', 'post', 'chain plate', 'ring', 'hook', 'other')}
          />
          <MetalOf {...filling} />
          <div className="field-grid">
            <Measured {...filling} of="opening" label="Clear width of its eye" />
            <Measured {...filling} of="thickness" label="Thickness a jaw goes over" />
          </div>
        </>
      );
    case 'pin':
      return (
        <>
          <Size {...filling} label="Diameter" />
          <MetalOf {...filling} />
          <Secured {...filling} label="Held by a split pin or ring" />
        </>
      );
    case 'rigging screw':
      return (
        <>
          <div className="field-grid">
            <Size {...filling} label="Thread" />
            <Measured {...filling} of="pin" label="Pin" />
            <Measured {...filling} of="jaw" label="Clear between its cheeks" />
          </div>
          <MetalOf {...filling} />
          <Secured {...filling} label="Locked against turning" />
        </>
      );
    case 'fastenings':
      return (
        <>
          <Pick {...filling} of="how" label="They are" options={asNamed('screws', 'bolts')} />
          <div className="field-grid">
            <NumberField
              label="How many"
              unit=""
              whole
              value={filling.draft.count}
              onChange={(count) => filling.set('count', count)}
              refused={filling.faults.count}
            />
            <Size {...filling} label="Diameter" />
          </div>
          <MetalOf {...filling} />
          <Choice
            {...filling}
            of="into"
            label="Into"
            options={asNamed('laminate', 'plywood', 'timber', 'aluminium', 'steel')}
          />
          <Measured {...filling} of="thickness" label="How thick that is" />
          <Pick
            {...filling}
            of="backing"
            label="Behind it"
            options={[
              { value: 'none', name: 'nothing' },
              { value: 'washers', name: 'washers' },
              { value: 'plate', name: 'a plate' },
            ]}
          />
          <Pick
            {...filling}
            of="pulled"
            label="Pulled"
            options={[
              { value: 'out', name: 'straight out' },
              { value: 'across', name: 'across' },
            ]}
          />
        </>
      );
    case 'winch':
      return (
        <NumberField
          label="Force at the drum over force at the hand"
          unit="to 1"
          note="Gear and handle together, friction left out. Left empty where the hand is not in the path."
          value={filling.draft.ratio}
          onChange={(ratio) => filling.set('ratio', ratio)}
          refused={filling.faults.ratio}
        />
      );
    case 'hand':
      return (
        <Pick
          {...filling}
          of="hand"
          label="The hand"
          options={[
            { value: 'pull', name: 'pulls a rope' },
            { value: 'crank', name: 'turns a crank' },
          ]}
        />
      );
    case '':
      return null;
  }
}

/** keys of the draft that are chosen from a list */
type ChoiceKey =
  | 'fibre'
  | 'laid'
  | 'wireMake'
  | 'grade'
  | 'chainMetal'
  | 'shackleMake'
  | 'metal'
  | 'ending'
  | 'what'
  | 'how'
  | 'into'
  | 'backing'
  | 'pulled'
  | 'hand';

function Choice<K extends ChoiceKey>({
  draft,
  faults,
  set,
  of,
  label,
  options,
}: Filling & {
  readonly of: K;
  readonly label: string;
  readonly options: Named<Exclude<PartDraft[K], ''>>;
}) {
  return (
    <ChoiceField<string>
      label={label}
      value={draft[of]}
      onChange={(value) => set(of, value as PartDraft[K])}
      options={options}
      refused={faults[of]}
    />
  );
}

function Pick<K extends ChoiceKey>({
  draft,
  faults,
  set,
  of,
  label,
  options,
}: Filling & {
  readonly of: K;
  readonly label: string;
  readonly options: Named<Exclude<PartDraft[K], ''>>;
}) {
  return (
    <PickField<string>
      label={label}
      value={draft[of]}
      onChange={(value) => set(of, value as PartDraft[K])}
      options={options}
      refused={faults[of]}
    />
  );
}

const Fibre = (filling: Filling) => <Choice {...filling} of="fibre" label="Laid of" options={fibres} />;
const MetalOf = (filling: Filling) => <Choice {...filling} of="metal" label="Metal" options={metals} />;

function Size({ draft, faults, set, label }: Filling & { readonly label: string }) {
  return (
    <NumberField
      label={label}
      unit="mm"
      value={draft.size}
      onChange={(size) => set('size', size)}
      refused={faults.size}
    />
  );
}

/** What is measured with a calliper; left empty it is not known, and whatever must fit it is said to be unknown. */
function Measured({
  draft,
  faults,
  set,
  of,
  label,
}: Filling & {
  readonly of: 'pin' | 'jaw' | 'opening' | 'thickness' | 'sheave' | 'line';
  readonly label: string;
}) {
  return (
    <NumberField label={label} unit="mm" value={draft[of]} onChange={(text) => set(of, text)} refused={faults[of]} />
  );
}

function Secured({ draft, set, label }: Filling & { readonly label: string }) {
  return (
    <PickField
      label={label}
      value={draft.secured}
      onChange={(secured) => set('secured', secured)}
      options={asNamed('yes', 'no', 'not looked at')}
    />
  );
}
