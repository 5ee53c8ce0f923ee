import { expect, test } from 'vitest';
import { makeHistory } from '../../renderer/src/state/history.ts';

test('edits of one field in a row are one step; leaving the field ends the run', () => {
  const history = makeHistory<string>();
  history.record('a', 'speed');
  history.record('b', 'speed');
  history.pause();
  history.record('c', 'speed');
  expect(history.undo('d')).toBe('c');
  expect(history.undo('c')).toBe('a');
  expect(history.undo('a')).toBeNull();
});

test('redo returns what undo left, until something new is done', () => {
  const history = makeHistory<string>();
  history.record('a', 'one');
  history.record('b', 'two');
  expect([history.undo('c'), history.undo('b'), history.redo('a'), history.redo('b'), history.redo('c')]).toEqual([
    'b',
    'a',
    'b',
    'c',
    null,
  ]);
  expect(history.undo('c')).toBe('b');
  history.record('b', 'three');
  expect([history.canRedo, history.redo('x')]).toEqual([false, null]);
});

test('another file begins with an empty history', () => {
  const history = makeHistory<string>();
  history.record('a', 'one');
  history.clear();
  expect([history.canUndo, history.undo('b')]).toEqual([false, null]);
});
