import type { BasePrice, Tariff } from './tariff';

/** What is wrong with a price list: where, as a dotted path into the tariff, and a sentence. */
export type TariffMessage = { readonly path: string; readonly message: string };

/**
 * Checks what the types cannot: names, figures, references between the parts, and that nothing would be
 * charged twice. Gives an empty list for a sound tariff.
 */
export function checkTariff(tariff: Tariff): TariffMessage[] {
  return [
    ...checkNames(tariff),
    ...checkFigures(tariff),
    ...checkTaxes(tariff),
    ...checkSpecies(tariff),
    ...tariff.base.flatMap((base, index) => checkBase(base, { path: `base.${index}`, tariff })),
    ...checkCuts(tariff),
  ];
}

const lists = ['taxes', 'base', 'perWeight', 'perPiece', 'products'] as const;

function checkNames(tariff: Tariff): TariffMessage[] {
  return lists.flatMap((list) => {
    const rows = tariff[list];
    return rows.flatMap(({ id, name }, index) => {
      const messages: TariffMessage[] = [];
      if (name.trim() === '') messages.push({ path: `${list}.${index}.name`, message: 'Give this price a name.' });
      if (id === '' || rows.findIndex((row) => row.id === id) < index) {
        messages.push({ path: `${list}.${index}.id`, message: `${name} is in the list twice. Take one away.` });
      }
      return messages;
    });
  });
}

function checkFigures(tariff: Tariff): TariffMessage[] {
  const figures: [string, number][] = [
    ...tariff.taxes.map((tax, index): [string, number] => [`taxes.${index}.ratePer100k`, tax.ratePer100k]),
    ...tariff.base.flatMap(({ charge }, index): [string, number][] => {
      const path = `base.${index}.charge`;
      switch (charge.kind) {
        case 'flat':
          return [[`${path}.amountMinor`, charge.amountMinor]];
        case 'per-weight':
          return [[`${path}.ratePer10k`, charge.ratePer10k]];
        case 'steps':
          return [
            ...charge.steps.flatMap((step, at): [string, number][] => [
              [`${path}.steps.${at}.upToHundredths`, step.upToHundredths],
              [`${path}.steps.${at}.amountMinor`, step.amountMinor],
            ]),
            [`${path}.excessRatePer10k`, charge.excessRatePer10k],
          ];
      }
    }),
    ...tariff.perWeight.map((extra, index): [string, number] => [`perWeight.${index}.ratePer10k`, extra.ratePer10k]),
    ...tariff.perPiece.map((extra, index): [string, number] => [`perPiece.${index}.eachMinor`, extra.eachMinor]),
    ...tariff.products.flatMap((product, index): [string, number][] => [
      [`products.${index}.ratePer10k`, product.ratePer10k],
      [`products.${index}.addedRatePer10k`, product.addedRatePer10k],
    ]),
  ];
  return figures
    .filter(([, figure]) => !Number.isSafeInteger(figure) || figure < 0)
    .map(([path]) => ({ path, message: 'Write this figure as a number, zero or more.' }));
}

function checkTaxes(tariff: Tariff): TariffMessage[] {
  const known = new Set(tariff.taxes.map(({ id }) => id));
  const tooHigh = tariff.taxes.flatMap(({ name, ratePer100k }, index) =>
    ratePer100k > 100_000
      ? [{ path: `taxes.${index}.ratePer100k`, message: `${name} is more than 100%. Write 6 for 6%.` }]
      : []);
  const unknown = (['base', 'perWeight', 'perPiece', 'products'] as const).flatMap((list) =>
    tariff[list].flatMap(({ name, taxId }, index) =>
      taxId === null || known.has(taxId)
        ? []
        : [{ path: `${list}.${index}.taxId`, message: `${name} names a tax that is not in the list.` }]));
  return [...tooHigh, ...unknown];
}

function checkSpecies(tariff: Tariff): TariffMessage[] {
  const firstWith = new Map<string, string>();
  return tariff.base.flatMap(({ name, speciesIds }, index) => {
    const path = `base.${index}.speciesIds`;
    if (speciesIds.length === 0) return [{ path, message: `Choose the animals ${name} is for.` }];
    return speciesIds.flatMap((speciesId) => {
      const first = firstWith.get(speciesId);
      firstWith.set(speciesId, first ?? name);
      return first === undefined
        ? []
        : [{ path, message: `The same animal has two base prices, ${first} and ${name}. Leave it in one.` }];
    });
  });
}

function checkBase(
  { name, charge, includes }: BasePrice,
  { path, tariff }: { readonly path: string; readonly tariff: Tariff },
): TariffMessage[] {
  const extraIds = new Set(tariff.perPiece.map(({ id }) => id));
  const messages: TariffMessage[] = includes.some((id) => !extraIds.has(id))
    ? [{ path: `${path}.includes`, message: `${name} includes a service that is not in the list.` }]
    : [];
  if (charge.kind !== 'steps') return messages;
  if (charge.steps.length === 0) {
    messages.push({ path: `${path}.charge.steps`, message: `Give ${name} at least one step.` });
  }
  charge.steps.forEach((step, at) => {
    const before = charge.steps[at - 1];
    if (before === undefined) return;
    if (step.upToHundredths <= before.upToHundredths) {
      messages.push({
        path: `${path}.charge.steps.${at}.upToHundredths`,
        message: `Each step of ${name} goes to a higher weight than the one before.`,
      });
    }
    if (step.amountMinor < before.amountMinor) {
      messages.push({
        path: `${path}.charge.steps.${at}.amountMinor`,
        message: `A heavier animal costs less than a lighter one in ${name}. Raise this step.`,
      });
    }
  });
  return messages;
}

function checkCuts(tariff: Tariff): TariffMessage[] {
  return tariff.perWeight.flatMap(({ name, cutIds }, index) =>
    cutIds.length === 0
      ? [{ path: `perWeight.${index}.cutIds`, message: `Choose the cuts ${name} is for.` }]
      : []);
}
