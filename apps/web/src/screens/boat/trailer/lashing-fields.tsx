/** What holds the boat on her trailer. */
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { type LashingDraft, nextLashing, type TrailerDraft, type TrailerFault } from './trailer-draft.ts';

type Set = <K extends keyof TrailerDraft>(key: K, value: TrailerDraft[K]) => void;

export function LashingFields({
  draft,
  set,
  faults,
}: {
  readonly draft: TrailerDraft;
  readonly set: Set;
  readonly faults: Faults<TrailerFault>;
}) {
  const change = (n: number, lashing: Partial<LashingDraft>) =>
    set(
      'lashings',
      draft.lashings.map((each, i) => (i === n ? { ...each, ...lashing } : each)),
    );
  return (
    <>
      <h3 className="trailer-fields">What holds her on it</h3>
      <PickField
        label="On the road the board"
        value={draft.boardRests}
        onChange={(value) => set('boardRests', value)}
        options={[
          { value: 'rests', name: 'rests on the trailer' },
          { value: 'hangs', name: 'hangs on its wire' },
        ]}
      />
      <div className="field-grid">
        <NumberField
          label="The bow post and its chock bear"
          unit="N"
          note="By its maker; left empty where nobody knows."
          value={draft.post}
          onChange={(text) => set('post', text)}
          refused={faults.post}
        />
        <NumberField
          label="Friction under her, µ"
          unit=""
          note="Left empty on rollers: nothing is counted."
          value={draft.friction}
          onChange={(text) => set('friction', text)}
          refused={faults.friction}
        />
      </div>
      {draft.lashings.map((lashing, n) => (
        <fieldset key={lashing.id} className="trailer-each">
          <legend>{lashing.name || `Lashing ${n + 1}`}</legend>
          <TextField
            label="Name"
            value={lashing.name}
            onChange={(name) => change(n, { name })}
            refused={faults[`lashing ${n}`]}
          />
          <div className="field-grid">
            <ChoiceField
              label="It is"
              value={lashing.kind}
              onChange={(kind) => kind !== '' && change(n, { kind })}
              options={[
                { value: 'strap', name: 'a strap' },
                { value: 'winch line', name: 'the winch line, which does not count' },
              ]}
            />
            <ChoiceField
              label="It holds her from going"
              value={lashing.holds}
              onChange={(holds) => holds !== '' && change(n, { holds })}
              options={[
                { value: 'forward', name: 'forward' },
                { value: 'sideways', name: 'to one side (those of the other are alike)' },
                { value: 'rearward', name: 'backward' },
              ]}
            />
            <NumberField
              label="Lashing capacity, LC on its label"
              unit="N"
              note="1 daN is 10 N; left empty where there is no label."
              value={lashing.capacity}
              onChange={(capacity) => change(n, { capacity })}
              refused={faults[`capacity ${n}`]}
            />
            <NumberField
              label="Its place on the hull may bear"
              unit="N"
              note="By her builder; left empty where nobody knows."
              value={lashing.hull}
              onChange={(hull) => change(n, { hull })}
              refused={faults[`hull ${n}`]}
            />
            <NumberField
              label="Above level"
              unit="°"
              value={lashing.above}
              onChange={(above) => change(n, { above })}
              refused={faults[`above ${n}`]}
            />
            <NumberField
              label="Aside from straight against it"
              unit="°"
              value={lashing.aside}
              onChange={(aside) => change(n, { aside })}
              refused={faults[`aside ${n}`]}
            />
          </div>
          <button
            type="button"
            className="words"
            onClick={() =>
              set(
                'lashings',
                draft.lashings.filter((_, i) => i !== n),
              )
            }
          >
            Leave it out
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="words"
        onClick={() =>
          set('lashings', [
            ...draft.lashings,
            {
              id: nextLashing(draft.lashings),
              name: '',
              kind: 'strap',
              holds: 'rearward',
              capacity: '',
              above: '',
              aside: '',
              hull: '',
            },
          ])
        }
      >
        Add a lashing
      </button>
    </>
  );
}
