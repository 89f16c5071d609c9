import { layerNames } from './strokes.js';

/** The members of pdfkit's document that its published types leave out: the catalogue and the resources of a page. */
export interface PdfInnards {
  readonly _root: { readonly data: Record<string, unknown> };
  readonly page: { readonly resources: { readonly data: Record<string, unknown> }; readonly dictionary: unknown };
  ref(data: Record<string, unknown>): { end(): void };
  addContent(text: string): unknown;
}

/** Layers that a reader of the file can show and hide (optional content; ISO 32000-1, 8.11). */
export interface PdfLayers {
  /** Makes the layers known to the page that is being drawn. */
  readonly openPage: () => void;
  /** Puts what `draw` draws on the layer of that name. */
  readonly on: (name: string, draw: () => void) => void;
}

/** Adds the layers of `used` to a document, in the order in which they are drawn. */
export function addLayers(document: PdfInnards, used: ReadonlySet<string>): PdfLayers {
  const layers = layerNames.filter((name) => used.has(name)).map((name) => ({ name, group: document.ref({ Type: 'OCG', Name: new String(name) }) }));
  for (const { group } of layers) group.end();
  const groups = layers.map(({ group }) => group);
  document._root.data['OCProperties'] = { OCGs: groups, D: { Order: groups, ON: groups } };
  const keys = new Map(layers.map(({ name }, index) => [name, `Layer${index}`]));
  return {
    openPage: () => {
      document.page.resources.data['Properties'] = Object.fromEntries(layers.map(({ group }, index) => [`Layer${index}`, group]));
    },
    on: (name, draw) => {
      document.addContent(`/OC /${keys.get(name) ?? ''} BDC`);
      draw();
      document.addContent('EMC');
    },
  };
}
