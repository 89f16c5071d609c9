/** What each room may import beside itself. Arrows run one way only; a file outside its list fails the build. */
const below = {
  geometry: [],
  units: [],
  lettering: ['geometry'],
  trade: ['geometry', 'units'],
  part: ['geometry', 'units', 'trade'],
  solid: ['geometry', 'units', 'trade', 'part'],
  plan: ['geometry', 'units', 'trade', 'part', 'solid'],
  view: ['geometry', 'units', 'trade', 'part', 'solid'],
  sheet: ['geometry', 'units', 'trade', 'part', 'solid', 'plan', 'view', 'lettering', 'templates'],
  export: ['geometry', 'units', 'trade', 'part', 'solid', 'plan', 'view', 'sheet', 'lettering', 'templates'],
  templates: ['geometry', 'units'],
  generators: ['geometry', 'units', 'trade', 'part', 'plan', 'templates'],
};

const pathOf = (room) => (room === 'templates' || room === 'generators' ? `^${room}/` : `^engine/${room}/`);

const rooms = Object.entries(below).map(([room, allowed]) => ({
  name: `${room}-looks-down-only`,
  severity: 'error',
  from: { path: pathOf(room) },
  to: { path: '^(engine|generators|templates|cli|tests)/', pathNot: [room, ...allowed].map(pathOf) },
}));

/** Libraries that belong to one room, so that a change of library is a change of one room. */
const libraries = {
  yargs: '^cli/',
  jiti: '^cli/',
  'manifold-3d': '^engine/solid/',
  '@jscad/modeling': '^engine/solid/',
  fontkit: '^engine/lettering/',
  pdfkit: '^engine/export/',
  svgdom: '^engine/export/',
  '@svgdotjs/svg.js': '^engine/export/',
};

const homes = Object.entries(libraries).map(([library, home]) => ({
  name: `${library.replace(/\W+/g, '-')}-stays-at-home`,
  severity: 'error',
  from: { path: '^(engine|generators|templates|cli)/', pathNot: home },
  to: { path: `^node_modules/${library}/` },
}));

module.exports = {
  forbidden: [
    ...rooms,
    ...homes,
    { name: 'no-cycle', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'every-engine-file-is-in-a-known-room',
      severity: 'error',
      from: { path: '^engine/', pathNot: Object.keys(below).map(pathOf) },
      to: {},
    },
    {
      name: 'program-does-not-import-tests',
      severity: 'error',
      from: { path: '^(engine|generators|templates|cli)/' },
      to: { path: '^tests/' },
    },
    {
      name: 'program-uses-no-development-package',
      severity: 'error',
      from: { path: '^(engine|generators|templates|cli)/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'] },
    },
    { name: 'imports-resolve', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^\\.build/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
  },
};
