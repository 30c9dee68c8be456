/** Holes, washers and torque at a glance, a row a screw; a row opens its working. */
import { useState } from 'react';
import { type ScrewTold, screwsTold, type TableFigure } from '#reckoning';
import { Sheet } from '../../../../parts/sheet.tsx';
import { WorkingParts } from '../../../../parts/working-parts.tsx';

export function HolesPart() {
  const [rows] = useState(screwsTold);
  const [open, setOpen] = useState<ScrewTold | null>(null);
  return (
    <section aria-labelledby="fastened-holes">
      <h2 id="fastened-holes">Holes and torque</h2>
      <table className="fastened-holes">
        <thead>
          <tr>
            <th scope="col">screw</th>
            <th scope="col">hole, mm</th>
            <th scope="col">to cut a thread, mm</th>
            <th scope="col">in stainless, mm</th>
            <th scope="col">large washer, mm</th>
            <th scope="col">torque, N·m</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.size}>
              <th scope="row">
                <button
                  type="button"
                  className="words"
                  onClick={() => setOpen(row)}
                  aria-label={`${row.size}: how it is worked out`}
                >
                  {row.size}
                </button>
              </th>
              <Cell figure={row.through} />
              <Cell figure={row.tapped} />
              <Cell figure={row.tappedStainless} />
              <Cell figure={row.largeWasher} />
              <Cell figure={row.torque} />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft small">
        * recalled, not read again. Torque: the most for greased stainless of class 70, metal on metal. Through laminate
        or wood: large washers, snug and a part of a turn. Tap a screw for its working.
      </p>
      {open && (
        <Sheet title={`${open.size}: holes and torque`} onClose={() => setOpen(null)}>
          <WorkingParts working={open.working} />
          <h3>Take care</h3>
          {open.cautions.map((line) => (
            <p key={line} className="loads-caution">
              {line}
            </p>
          ))}
        </Sheet>
      )}
    </section>
  );
}

function Cell({ figure }: { readonly figure: TableFigure | null }) {
  if (figure === null) return <td className="soft">not printed</td>;
  return (
    <td>
      {figure.said}
      {figure.recalled && <span aria-hidden="true">*</span>}
      {figure.recalled && <span className="unseen"> recalled</span>}
    </td>
  );
}
