import { type BodyPlan, type SpeciesBook, findSpecies } from '@/lib/carcass';
import { CUT_IDS, type CutId, TARGET_IDS, type TargetId } from '@/lib/cuts';
import { ALLERGENS, type Allergen, LINE_SIDES, type LineSide, PRODUCT_IDS, type ProductId, usualSide } from '@/lib/instructions';
import type { WeightUnit } from '@/lib/units';
import { type FormEntries, nestEntries, oneOf, rowsAt, textAt } from './form-entries';

/** One line as its inputs hold it. `size` and `pack` are codes of size-choices. */
export type LineValues = {
  id: string;
  target: TargetId;
  side: LineSide;
  cut: CutId;
  size: string;
  pack: string;
  asked: string;
};

/** The hunter's form as its inputs hold it: text as typed, '' where nothing is chosen. Shared by browser and server. */
export type OrderFormValues = {
  /** Made when the form was opened: the same form sent twice is one order. */
  formKey: string;
  animal: {
    speciesId: string;
    sex: string;
    ageClass: string;
    weight: string;
    weightBasis: string;
    girth: string;
    takenWhere: string;
    diseaseZone: string;
    form: string;
    filletsOut: boolean;
  };
  lines: LineValues[];
  rest: string;
  squaredOff: string;
  mince: { addedFat: string; fatPercent: string; pack: string; shape: string };
  stewPack: string;
  /** Own meat that goes into each made thing, as typed. */
  products: Record<ProductId, string>;
  /** Made things in the order they are served, ids with a space between; '' for the order of the menu. */
  served: string;
  mixing: string;
  keep: { heart: boolean; liver: boolean; bones: boolean; antlers: string; cape: boolean; hide: boolean; taxidermist: string };
  noPork: boolean;
  avoid: Record<Allergen, boolean>;
  boneless: boolean;
  /** Always `SHARE_ROWS` of them; empty ones share nothing. */
  shares: { name: string; percent: string; isGiven: boolean }[];
  /** 'YYYY-MM-DD', or ''. */
  wantedBy: string;
  overBorder: boolean;
  /** Keys of findings agreed to, with a space between. */
  agreed: string;
  note: string;
  hunter: { name: string; phone: string; email: string };
};

/** What the form must know of the shop. */
export type FormShop = { readonly unit: WeightUnit; readonly locale: string; readonly species: SpeciesBook };

/** How many can share one animal on the form. */
export const SHARE_ROWS = 4;
const NO_SHARE = { name: '', percent: '', isGiven: false };

/** One value an allergen, every key there. */
export function perAllergen(isAvoided: (id: Allergen) => boolean): Record<Allergen, boolean> {
  // As for products: every key is there.
  return Object.fromEntries(ALLERGENS.map((id) => [id, isAvoided(id)])) as Record<Allergen, boolean>;
}

/** As many rows as the form has, the rest empty. */
export function shareRows(rows: readonly OrderFormValues['shares'][number][]): OrderFormValues['shares'] {
  return Array.from({ length: SHARE_ROWS }, (_, at) => rows[at] ?? { ...NO_SHARE });
}

/** One text a made thing, every key there. */
export function perProduct(textOf: (id: ProductId) => string): Record<ProductId, string> {
  // Object.fromEntries forgets the keys that PRODUCT_IDS guarantees.
  return Object.fromEntries(PRODUCT_IDS.map((id) => [id, textOf(id)])) as Record<ProductId, string>;
}

/** An empty form: nothing chosen for the hunter. */
export function blankOrderForm(formKey: string): OrderFormValues {
  return {
    formKey,
    animal: { speciesId: '', sex: '', ageClass: '', weight: '', weightBasis: '', girth: '', takenWhere: '', diseaseZone: '', form: '', filletsOut: false },
    lines: [],
    rest: '',
    squaredOff: 'stew',
    mince: { addedFat: 'none', fatPercent: '10', pack: '', shape: 'bulk' },
    stewPack: '',
    products: perProduct(() => ''),
    served: '',
    mixing: 'own-meat-only',
    keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
    noPork: false,
    avoid: perAllergen(() => false),
    boneless: false,
    shares: shareRows([]),
    wantedBy: '',
    overBorder: false,
    agreed: '',
    note: '',
    hunter: { name: '', phone: '', email: '' },
  };
}

/** Reads what a browser sent; anything unknown is left out, nothing typed is changed. */
export function readOrderForm(entries: FormEntries): OrderFormValues {
  const tree = nestEntries(entries);
  const text = (path: string): string => textAt(tree, path);
  const ticked = (path: string): boolean => text(path) !== '';
  // A line is known by its id: of two with the same one the first is kept.
  const ids = new Set<string>();
  return {
    formKey: text('formKey').slice(0, 64),
    animal: {
      speciesId: text('animal.speciesId'),
      sex: text('animal.sex'),
      ageClass: text('animal.ageClass'),
      weight: text('animal.weight'),
      weightBasis: text('animal.weightBasis'),
      girth: text('animal.girth'),
      takenWhere: text('animal.takenWhere'),
      diseaseZone: text('animal.diseaseZone'),
      form: text('animal.form'),
      filletsOut: ticked('animal.filletsOut'),
    },
    lines: rowsAt(tree, 'lines').flatMap((row): LineValues[] => {
      const target = oneOf(textAt(row, 'target'), TARGET_IDS);
      const cut = oneOf(textAt(row, 'cut'), CUT_IDS);
      const id = textAt(row, 'id');
      if (!target || !cut || !/^line-\d{1,4}$/.test(id) || ids.has(id)) return [];
      ids.add(id);
      return [
        {
          id,
          target,
          cut,
          side: oneOf(textAt(row, 'side'), LINE_SIDES) ?? usualSide(target),
          size: textAt(row, 'size'),
          pack: textAt(row, 'pack'),
          asked: textAt(row, 'asked'),
        },
      ];
    }),
    rest: text('rest'),
    squaredOff: text('squaredOff'),
    mince: { addedFat: text('mince.addedFat'), fatPercent: text('mince.fatPercent'), pack: text('mince.pack'), shape: text('mince.shape') },
    stewPack: text('stewPack'),
    products: perProduct((id) => text(`products.${id}`)),
    served: text('served'),
    mixing: text('mixing'),
    keep: {
      heart: ticked('keep.heart'),
      liver: ticked('keep.liver'),
      bones: ticked('keep.bones'),
      antlers: text('keep.antlers'),
      cape: ticked('keep.cape'),
      hide: ticked('keep.hide'),
      taxidermist: text('keep.taxidermist'),
    },
    noPork: ticked('noPork'),
    avoid: perAllergen((id) => ticked(`avoid.${id}`)),
    boneless: ticked('boneless'),
    shares: shareRows(
      rowsAt(tree, 'shares').map((row) => ({ name: textAt(row, 'name'), percent: textAt(row, 'percent'), isGiven: textAt(row, 'isGiven') !== '' })),
    ),
    wantedBy: text('wantedBy'),
    overBorder: ticked('overBorder'),
    agreed: text('agreed'),
    note: text('note'),
    hunter: { name: text('hunter.name'), phone: text('hunter.phone'), email: text('hunter.email') },
  };
}

/** How the chosen animal is built; four-legged until one is chosen. */
export function planOf({ animal }: Pick<OrderFormValues, 'animal'>, { species }: FormShop): BodyPlan {
  return findSpecies(species, animal.speciesId)?.plan ?? 'four-legged';
}
