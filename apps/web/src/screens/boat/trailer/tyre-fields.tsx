/** The tyres of a trailer, as their walls say. */
import { TickField } from '../../../parts/choice-fields.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import type { TrailerDraft, TrailerFault, WheelDraft } from './trailer-draft.ts';

type Set = <K extends keyof TrailerDraft>(key: K, value: TrailerDraft[K]) => void;

export function TyreFields({
  draft,
  set,
  faults,
}: {
  readonly draft: TrailerDraft;
  readonly set: Set;
  readonly faults: Faults<TrailerFault>;
}) {
  const change = (n: number, wheel: Partial<WheelDraft>) =>
    set(
      'wheels',
      draft.wheels.map((each, i) => (i === n ? { ...each, ...wheel } : each)),
    );
  return (
    <>
      <h3 className="trailer-fields">Tyres</h3>
      <TickField label="I have read their walls" value={draft.tyresKnown} onChange={(on) => set('tyresKnown', on)} />
      {draft.tyresKnown && (
        <>
          <div className="field-grid">
            <TextField label="Size" value={draft.tyreSize} onChange={(text) => set('tyreSize', text)} />
            <NumberField
              label="On the road"
              unit="tyres"
              whole
              value={draft.tyreCount}
              onChange={(text) => set('tyreCount', text)}
              refused={faults.tyreCount}
            />
            <NumberField
              label="Load index"
              unit=""
              note="Of two, the first."
              whole
              value={draft.loadIndex}
              onChange={(text) => set('loadIndex', text)}
              refused={faults.loadIndex}
            />
            <TextField
              label="Speed letter"
              value={draft.speed}
              onChange={(text) => set('speed', text)}
              refused={faults.speed}
            />
            <NumberField
              label="Pressure found, cold"
              unit="kPa"
              value={draft.pressure}
              onChange={(text) => set('pressure', text)}
              refused={faults.pressure}
            />
            <NumberField
              label="Pressure asked for"
              unit="kPa"
              note="100 kPa is 1 bar or 14.5 psi."
              value={draft.asked}
              onChange={(text) => set('asked', text)}
              refused={faults.asked}
            />
          </div>
          {draft.wheels.map((wheel, n) => (
            <fieldset key={wheel.id} className="trailer-each">
              <legend>{wheel.wheel || `Wheel ${n + 1}`}</legend>
              <TextField
                label="Wheel"
                value={wheel.wheel}
                onChange={(text) => change(n, { wheel: text })}
                suggest={['Left', 'Right', 'Spare']}
                refused={faults[`wheel ${n}`]}
              />
              <TickField label="A spare" value={wheel.spare} onChange={(spare) => change(n, { spare })} />
              <div className="field-grid">
                <TextField
                  label="Last figures of its DOT code"
                  note="Week and year, as 3519."
                  value={wheel.code}
                  onChange={(code) => change(n, { code })}
                />
                <NumberField
                  label="Tread"
                  unit="mm"
                  value={wheel.tread}
                  onChange={(tread) => change(n, { tread })}
                  refused={faults[`tread ${n}`]}
                />
              </div>
              <button
                type="button"
                className="words"
                onClick={() =>
                  set(
                    'wheels',
                    draft.wheels.filter((_, i) => i !== n),
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
            onClick={() => {
              const used = draft.wheels.map(({ wheel }) => wheel);
              const next = ['Left', 'Right', 'Spare'].find((name) => !used.includes(name)) ?? '';
              set('wheels', [
                ...draft.wheels,
                { id: `wheel-${Date.now()}`, wheel: next, spare: next === 'Spare', code: '', tread: '' },
              ]);
            }}
          >
            Add a wheel
          </button>
        </>
      )}
      <NumberField
        label="The fastest she is towed"
        unit="km/h"
        value={draft.towed}
        onChange={(text) => set('towed', text)}
        refused={faults.towed}
      />
    </>
  );
}
