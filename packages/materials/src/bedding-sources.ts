/** What the questions about bedding and sealants share: where things are from, and the choice of a material. */
import { choice, type Source } from '#working';
import { type JointMaterial, jointMaterialNames, materialSaid } from './joint.ts';

export const sealantHandbook: Source = {
  title: 'Construction Waterproofing Handbook, table 5.3: kinds of sealant side by side',
  seen: 'read second-hand',
};
export const articlesOnSealants: Source = {
  title: 'articles on marine sealants by boat writers and a boat association',
  seen: 'read second-hand',
};
export const sealantTrade: Source = { title: 'what boatbuilders say of them', seen: 'common practice' };
export const sealantSheets: Source = { title: 'data sheets of several makers', seen: 'recalled' };
export const sealantClasses: Source = { title: 'ISO 11600: classes of sealant by movement', seen: 'recalled' };
export const tinWins = 'The tin and its maker know their product: what they say wins over its kind.';

export const materialField = (meaning: string) =>
  choice<JointMaterial>(
    jointMaterialNames.map((id) => ({ id, title: materialSaid(id) })),
    meaning,
  );
