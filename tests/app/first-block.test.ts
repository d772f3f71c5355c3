import { expect, it } from 'vitest';
import { firstBlock } from '../../src/app/first-block.ts';
import { checkBlock } from '../../src/block/whole-check.ts';

it('the block that lies on the table where there is no other obeys what every block obeys', () => {
  expect(checkBlock(firstBlock())).toBeNull();
});
