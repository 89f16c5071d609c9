import type { StockParameter } from './parameters.js';

export const readStock = (_name: string, _form: StockParameter['form'], size: number, _text: string): number => size;
