import type { DrillParameter, LengthParameter, StockParameter, ThreadParameter } from '../../parameters.js';
import type { Outcome, RuleTask } from '../rule.js';
import { clearanceRule } from './clearance.js';
import { drillRule } from './drill.js';
import { followedRule } from './followed.js';
import { allowanceRule, edgeRule, shopRule, wallRule } from './kept.js';
import { lengthRule } from './length.js';
import { stockRule } from './stock.js';
import { threadRule } from './thread.js';
import { angleRule, choiceRule, countRule } from './unscaled.js';

/** What becomes of one parameter by itself, by its kind and by what it follows. Pure: it knows of no other parameter. */
export function applyRule(task: RuleTask): Outcome {
  const { parameter } = task;
  switch (parameter.kind) {
    case 'length':
    case 'clearance':
    case 'allowance':
    case 'wall':
      return lengthOf({ ...task, parameter });
    case 'thread':
      return threadRule(task as RuleTask<ThreadParameter>);
    case 'drill':
      return drillRule(task as RuleTask<DrillParameter>);
    case 'stock':
      return stockRule(task as RuleTask<StockParameter>);
    case 'angle':
      return angleRule(task);
    case 'count':
      return countRule(task);
    case 'choice':
      return choiceRule(task);
  }
}

function lengthOf(task: RuleTask<LengthParameter>): Outcome {
  const { kind, follows } = task.parameter;
  if (follows === 'edge') return edgeRule(task);
  if (follows === 'shop') return shopRule(task);
  if (follows !== undefined) return followedRule(task);
  return { length: lengthRule, clearance: clearanceRule, allowance: allowanceRule, wall: wallRule }[kind](task);
}
