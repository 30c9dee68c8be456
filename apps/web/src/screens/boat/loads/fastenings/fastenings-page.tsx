/** Bolts and screws: whether a fitting holds, holes and torque, holes in a cored deck. */
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import './fastenings.css';
import { FilledPart } from './filled-part.tsx';
import { FittingPart } from './fitting-part.tsx';
import { HolesPart } from './holes-part.tsx';

export default function FasteningsPage() {
  const book = useOpenBook();
  return (
    <>
      <h1>Fastenings</h1>
      <BelowHeading>
        <FittingPart book={book} />
        <HolesPart />
        <FilledPart />
      </BelowHeading>
    </>
  );
}
