import type { Form } from '../part/form.js';

/** A form and the cut that it belongs to; the stock is the cut `stock`, a section plane the cut `section`. */
export interface TaggedForm {
  readonly cut: string;
  readonly form: Form;
}
