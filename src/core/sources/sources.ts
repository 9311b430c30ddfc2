/** Everything the product quotes. `kind` says how far to trust it: read in print, worked out from print, practice without a source, or memory. */
interface Source {
  readonly kind: 'published' | 'derived' | 'practice' | 'memory'
  readonly author?: string
  readonly title?: string
  readonly year?: number
  readonly place?: string
}

const published = (author: string, title: string, year?: number, place?: string): Source => ({
  kind: 'published',
  author,
  title,
  ...(year !== undefined && { year }),
  ...(place !== undefined && { place }),
})

export const SOURCES = {
  'common-practice': { kind: 'practice' },
  memory: { kind: 'memory' },
  geometry: { kind: 'derived' },
  'zinsou-wentholt': published(
    'Zinsou & Wentholt',
    'Practical guide to building an improved smoker (FAO/IDAF)',
    undefined,
    'ch. 2',
  ),
  'nis-87-sampling': published('NIS 87 sampling papers', 'Sandcrete blocks: sizes sampled'),
  'ncma-1989': published('NCMA laboratory', 'Masonry Magazine, June', 1989, 'measured voids of hollow units'),
  'published-cells': published('Drawing of a 450 × 225 × 225 block', 'two cells of 150 × 125 mm'),
  'trade-tables': published('Trade tables', 'Units per square metre of wall'),
  'worked-brickwork': published('Worked example', '1 m³ of 190 × 90 × 90 brickwork: 500 bricks'),
  'van-winden': published('van Winden', 'Rural Building course'),
  'nm-ofr-382': published('New Mexico Bureau of Mines', 'Open File Report 382'),
  'nm-14-7-4': published('New Mexico Administrative Code', '14.7.4.11', undefined, 'lap of adobe'),
  'navy-builder': published('US Navy', 'Builder manual', undefined, '14043, 14045'),
  'navfac-p405': published('NAVFAC', 'P-405 planner’s and estimator’s figures', undefined, 'in Builder manual 14045'),
  'army-en5466': published('US Army', 'EN5466, concrete'),
  'dry-volume': published('Worked examples, recomputed', 'Dry-volume method for concrete and mortar'),
  'csr-2010': published('Public works schedule', 'CSR-2010, ch. 27', 2010),
  'settling-test': published('Field test', 'Bulking of sand by settling under water'),
  'nhbc-4-3': published('NHBC Standards', '4.3.8 stepped foundations'),
  'ibc-2012': published('International Building Code', 'table 1806.2', 2012),
  irc: published('International Residential Code', 'R401.3, R322.2'),
  'cte-db-se-ae': published('Código Técnico de la Edificación', 'DB-SE-AE, table C.1'),
  'canada-housing': published('Canadian housing table', 'Allowable bearing of soils'),
  'soil-conversion': published('US Navy and Army', 'Soil conversion table'),
  'farm-concrete': published('Farm-use concrete bulletin', 'Lintels over wall load only'),
  'bia-36a': published('Brick Industry Association', 'Technical Note 36A, in a trade text'),
  'ilo-1982': published('International Labour Office', 'Small-scale processing of fish', 1982, 'ch. II'),
  'fao-tp535': published('FAO', 'Fisheries and Aquaculture Technical Paper 535', undefined, 'tables 9, 15; p. 31, 44'),
  'fao-food-loss': published('FAO', 'Food loss pages: storage of smoked fish'),
  'fao-fish-water': published(
    'FAO',
    'Fisheries and Aquaculture, principal constituents of fish',
    undefined,
    'normal variation of water in the fillet',
  ),
  'fao-cwp': published(
    'FAO Coordinating Working Party',
    'Handbook of Fishery Statistics: factors from product weight to live weight',
    undefined,
    'whole, gutted head on, gutted head off',
  ),
  earle: published('Earle', 'Unit operations in food processing', undefined, 'app. 7'),
  bch: published('Building Construction Handbook', 'U-value of a one-brick wall'),
  'din-4108': published('DIN', 'V 4108-4'),
  ashrae: published('ASHRAE', 'Thermal properties of brick'),
  'concrete-construction': published('Concrete Construction magazine', 'Strength left after heat'),
  'fda-food-code': published('FDA', 'Food Code 4-101.15'),
  'asamoah-2021': published('Asamoah et al.', 'Food Control 121', 2021),
  'weyant-2022': published('Weyant et al.', 'Exposure of fish smokers', 2022),
  'hse-cis37': published('HSE', 'Construction Information Sheet 37'),
  'osha-silica': published('OSHA', 'Respirable silica: 50 µg/m³ over 8 h'),
  ifc: published('International Fire Code', '307, 308: an analogue'),
  'steam-tables': { kind: 'derived', title: 'Latent heat of water, a line through the steam tables' },
  'clay-heat': published('Building physics tables', 'Conductivity, density and specific heat of adobe'),
  'draught-formula': published('Chimney texts', 'Draught of a warm column: 353 · g · h · (1 / To − 1 / Ti)'),
  'brick-labour': published(
    'Estimating texts',
    'Mason and labourer days for a cubic metre of brickwork and of hand-mixed mortar',
  ),
  curing: published('Concrete texts', 'Moist curing for seven days at least'),
  'is-723': published('IS', '723, wire nails per kilogram'),
  'compass-points': { kind: 'derived', title: 'Sixteen points of the compass, 22.5° each' },
  'two-solvers': { kind: 'derived', title: 'Two independent least-squares solvers, outside this project' },
  howell: published('J. Howell', 'The Independent', undefined, 'setting a gauge rod'),
  bricklaying: published('Bricklaying texts', 'Four courses of brick to 300 mm'),
  'block-mortar': published('Structural worked example', 'Mortar of nine-inch hollow blocks, recomputed'),
  'beasley-1985': published('Beasley', 'Journal of the Operational Research Society 36', 1985, 'table 1'),
  'dry-solids': { kind: 'derived', title: 'Dry matter does not change while water leaves' },
  'heat-in-solids': published(
    'Carslaw & Jaeger',
    'Conduction of Heat in Solids',
    undefined,
    'complementary error function',
  ),
  si: { kind: 'derived', title: 'Definition of the unit' },
} as const satisfies Record<string, Source>

export type SourceId = keyof typeof SOURCES
