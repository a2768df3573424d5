/** The invented shop: every name, number and place in it is made up. */
export const demoShop = {
  shopName: 'Hollow Ash Game Cutting',
  unit: 'lb',
  currency: 'USD',
  paper: 'letter',
  nameCountry: 'us',
  timeZone: 'America/Detroit',
} as const;

export const demoShopDetails = {
  address: '14 Old Tannery Road\nHollow Ash',
  phone: '555 0140',
  storageCaution: 'Keep frozen at 0 F or colder. Thaw in the refrigerator.',
  collectWithinDays: 7,
  questionsContact: 'Ilse at the counter, 555 0140, 8 to 6',
  diseaseZones: ['Osmer County'],
  hangDays: 6,
  plainDays: 14,
  madeDays: 28,
  mixedOnly: [],
  allergens: {
    'fresh-sausage': ['mustard'],
    'snack-sticks': ['milk', 'soy'],
    'summer-sausage': ['milk', 'mustard'],
    jerky: ['gluten', 'soy'],
  },
  mostFatPercent: 25,
} as const;

export const demoStaff = {
  owner: { name: 'Ruth Abernethy', userName: 'ruth' },
  counter: { name: 'Ilse Grünwald', userName: 'ilse' },
  cutter: { name: 'Tomasz Wójcik', userName: 'tomasz' },
} as const;

/** Counties of the invented country round the shop. */
export const counties = ['Varley County', 'Pellan County', 'Thornby County', 'Quillan County', 'Hask Lake unit 12'] as const;
/** The one of them from which animals are tested. */
export const zoneCounty = 'Osmer County';

/** What the invented shop takes in: deer of two continents, so that every kind of price is seen, and a few others. */
export const demoMenu: readonly string[] = ['white-tailed-deer', 'mule-deer', 'roe-deer', 'red-deer', 'fallow-deer', 'elk', 'pronghorn', 'wild-boar', 'black-bear', 'pheasant', 'wild-turkey'];
