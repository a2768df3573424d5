import { type Allergen, type ProductId, allergenName } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined, sentence } from '../wording';

/** A made thing that holds what the household avoids, or of which nobody has said what it holds. */
type Held = { readonly productId: ProductId; readonly avoided: readonly Allergen[]; readonly isKnown: boolean };

function held({ instructions: { avoid, products }, circumstances: { shop } }: RuledOrder): readonly Held[] {
  if (avoid.length === 0) return [];
  return products.flatMap(({ productId }) => {
    const told = shop.allergens[productId];
    const avoided = told ? avoid.filter((id) => told.includes(id)) : avoid;
    return avoided.length > 0 ? [{ productId, avoided, isKnown: told !== undefined }] : [];
  });
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const allergenInAProductReason: RuleReason = {
  topic: 'health',
  why: 'Made things hold more than meat: milk powder or soy to bind, mustard and celery in the spice, gluten in a filler. Spices and small additions count as well. Where the shop has not written down what is in a product, it cannot promise that something is not. If an allergy is severe, ask as well what else runs over the same machines; the label and the maker’s word decide.',
  source: 'nine allergens: 21 USC 321(qq); fourteen in the UK and the EU: Regulation (EU) No 1169/2011, Annex II (its number from memory)',
};

export const allergenInAProduct = defineRule<Held>({
  id: 'allergen-in-a-product',
  severity: 'stop',
  title: 'Something your household avoids',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: held,
  keyOf: ({ productId }) => productId,
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  cause: ({ productId }) => `product ${productId}`,
  message: ({ productId, avoided, isKnown }) => {
    const [names, them] = [joined(avoided.map(allergenName)), avoided.length > 1 ? 'them' : 'it'];
    const { name } = PRODUCTS[productId];
    return isKnown
      ? `${sentence(names)} ${avoided.length > 1 ? 'go' : 'goes'} into the ${name}, and your household is to avoid ${them}.`
      : `What goes into the ${name} is not written down here, and your household is to avoid ${names}.`;
  },
  suggestions: ({ productId, isKnown }, order) => {
    const { name } = PRODUCTS[productId];
    return mend(order, {
      label: `Leave out the ${name}`,
      consequence: isKnown ? 'That meat stays plain.' : 'That meat stays plain; the shop can tell you what it puts in.',
      edits: [{ kind: 'set-product', productId, gameGrams: 0 }],
    });
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const allergenInAProductExamples = (): RuleExamples => {
  const told = { shop: { ...PLAIN_TERMS, allergens: { 'snack-sticks': ['milk', 'mustard'], jerky: [] } } } as const;
  const sticks = [{ productId: 'snack-sticks', gameGrams: 4_000 }] as const;
  return {
    valid: [
      exampleOrder({ instructions: { products: sticks }, circumstances: told }),
      exampleOrder({ instructions: { products: sticks, avoid: ['egg'] }, circumstances: told }),
      exampleOrder({ instructions: { avoid: ['milk'] } }),
    ],
    invalid: [
      {
        order: exampleOrder({ instructions: { products: sticks, avoid: ['milk', 'mustard', 'egg'] }, circumstances: told }),
        messages: ['Milk and mustard go into the snack sticks, and your household is to avoid them.'],
      },
      {
        order: exampleOrder({ instructions: { products: [{ productId: 'summer-sausage', gameGrams: 4_000 }], avoid: ['soy'] }, circumstances: told }),
        messages: ['What goes into the summer sausage is not written down here, and your household is to avoid soy.'],
      },
    ],
  };
};
