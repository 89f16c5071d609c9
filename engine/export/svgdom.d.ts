/** The part of svgdom that this project uses; the package brings no types of its own. */
declare module 'svgdom' {
  export interface SvgElement {
    readonly outerHTML: string;
  }

  export interface SvgWindow {
    readonly document: { readonly documentElement: SvgElement };
  }

  /** A window that holds an empty svg document. */
  export function createSVGWindow(): SvgWindow;
}
