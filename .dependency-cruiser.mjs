/** The direction of imports (CONTRIBUTING.md says why). Packages never import apps; each may import only what stands here. */
const may = {
  units: [],
  working: ['units'],
  sky: ['units', 'working'],
  materials: ['units', 'working', 'sky'],
  // what goes with what, and how a hole is filled, is said once: in materials
  loads: ['units', 'working', 'materials'],
  battery: ['units', 'working', 'sky'],
  solar: ['units', 'working', 'sky'],
  wiring: ['units', 'working'],
  trailer: ['units', 'working'],
  calendar: ['units'],
  forecast: [],
  'fit-to-go': [],
  power: ['units', 'working', 'sky', 'battery', 'solar', 'wiring'],
  workplan: ['units', 'working', 'sky', 'materials'],
  // a wait of a keeper's own recipe holds a cure law (a type)
  jobs: ['units', 'working', 'materials'],
  dues: ['units', 'working'],
  readings: ['units'],
  // boat-book takes the part shapes (types) that these define
  'boat-book': ['units', 'sky', 'materials', 'loads', 'battery', 'solar', 'wiring', 'workplan', 'jobs', 'dues', 'forecast'],
  log: ['units', 'boat-book'],
  reckoning: [
    ...[
      'units',
      'working',
      'sky',
      'materials',
      'loads',
      'battery',
      'solar',
      'wiring',
      'power',
      'workplan',
      'jobs',
      'dues',
      'readings',
      'calendar',
      'forecast',
      'fit-to-go',
      'boat-book',
    ],
  ],
};
const arrows = Object.entries(may).map(([from, to]) => ({
  name: `${from}-may-import-only-${to.join('-') || 'nothing'}`,
  comment: `packages/${from} may import only: ${to.join(', ') || 'nothing of ours'}. Put what needs more in reckoning, or in an app.`,
  severity: 'error',
  from: { path: `^packages/${from}/` },
  to: { path: '^(packages|apps|checks|bench)/', pathNot: `^packages/(${[from, ...to].join('|')})/` },
}));
export default {
  forbidden: [
    ...arrows,
    {
      name: 'packages-are-pure',
      comment: 'Packages know no files, network, processes or screens; those come in as arguments. Tests may.',
      severity: 'error',
      from: { path: '^packages/', pathNot: '\\.test\\.tsx?$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'react-only-in-the-web-app',
      severity: 'error',
      from: { pathNot: '^apps/web/' },
      to: { path: 'node_modules/(react|react-dom|react-aria-components)/' },
    },
    {
      name: 'one-door-a-package',
      comment: 'Import a package by its door (#name), not a file inside it.',
      severity: 'error',
      from: { path: '^(apps|checks|bench)/' },
      to: { path: '^packages/[^/]+/src/(?!index\\.ts$)' },
    },
    {
      name: 'one-door-between-packages',
      severity: 'error',
      from: { path: '^packages/([^/]+)/' },
      to: { path: '^packages/[^/]+/src/(?!index\\.ts$)', pathNot: '^packages/$1/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    exclude: { path: '(^|/)dist/' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.mjs'],
    },
  },
};
