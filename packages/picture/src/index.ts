export { boatDrawing, type Drawing, type Stance, type View } from './drawing.ts';
export { type Landmarks, landmarks } from './landmarks.ts';
export { type Line, type LineWeight, type Point, pathOf } from './line.ts';
export { isAloft, type PlaceOnBoat, placeAt, placesIn } from './places.ts';
export {
  type BoatSizes,
  type BowKind,
  type CompleteSizes,
  completeSizes,
  type KeelKind,
  type KnownSizes,
  lengthRange_m,
  type RigKind,
  type SizeName,
  type SternKind,
} from './sizes.ts';
