import { describe, expect, it } from 'vitest';
import { methodWords } from '../../src/app/past/method-words.ts';

const places = { boxes: [], denominator: 1 };

describe('in the list of what was done', () => {
  it('a method says for which units it was chosen', () => {
    expect(methodWords({ scope: 'unit', method: 'stitch-and-flip', places }, 'B')).toBe('chose “stitch and flip” for unit B');
    expect(methodWords({ scope: 'kind', kind: 'peak', method: 'template', places }, 'B')).toBe('chose “by template” for each peak');
    expect(methodWords({ scope: 'pattern', method: 'triangles' }, 'B')).toBe('chose “cut triangles” for the whole pattern');
  });

  it('and where it was taken back', () => {
    expect(methodWords({ scope: 'unit', method: null, places }, 'B')).toBe('took the method of unit B back');
    expect(methodWords({ scope: 'pattern', method: null }, 'B')).toBe('took the method of the whole pattern back');
  });
});
