/** An element of an SVG document that is being written. */
export interface SvgNode {
  /** Adds an element with these attributes, and text if given; returns it. */
  readonly add: (name: string, attributes?: Readonly<Record<string, string>>, text?: string) => SvgNode;
}

/** An empty SVG document, and its text when it is done. */
export interface SvgPage {
  readonly root: SvgNode;
  readonly text: () => string;
}

/** The members of svg.js elements that are used here: its own types need those of a browser. */
interface Dom {
  element(name: string): Dom;
  attr(attributes: Readonly<Record<string, string>>): Dom;
  words(text: string): Dom;
}

const wrap = (dom: Dom): SvgNode => ({
  add: (name, attributes, text) => {
    const child = dom.element(name);
    if (attributes !== undefined) child.attr(attributes);
    if (text !== undefined) child.words(text);
    return wrap(child);
  },
});

/** Opens a document with these attributes on its root. The libraries are loaded only now. */
export async function openSvg(attributes: Readonly<Record<string, string>>): Promise<SvgPage> {
  const [{ createSVGWindow }, { registerWindow, SVG }] = await Promise.all([import('svgdom'), import('@svgdotjs/svg.js')]);
  const window = createSVGWindow();
  const { documentElement } = window.document;
  registerWindow(window as unknown as Parameters<typeof registerWindow>[0], window.document as unknown as Parameters<typeof registerWindow>[1]);
  const root = SVG(documentElement) as unknown as Dom;
  root.attr(attributes);
  return { root: wrap(root), text: () => documentElement.outerHTML };
}
