import { useEffect, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { BlockPicture } from '../BlockPicture.tsx';
import { demoBlocks, type DemoBlock } from '../demo-blocks.ts';

/** The blocks of the Kittiwake Point sampler, each to be laid on the table as a drawing of its own. */
export function Sampler({ take, failed }: {
  readonly take: (block: Block) => void;
  readonly failed: (sentence: string) => void;
}): ReactNode {
  return (
    <ul className="gallery">
      {demoBlocks.map((demo) => (
        <DemoCard key={demo.title} demo={demo} take={take} failed={failed} />
      ))}
    </ul>
  );
}

function DemoCard({ demo, take, failed }: { readonly demo: DemoBlock } & Parameters<typeof Sampler>[0]): ReactNode {
  const [block, setBlock] = useState<Block | 'unreachable' | null>(null);
  useEffect(() => {
    demo.open().then(setBlock, () => setBlock('unreachable'));
  }, [demo]);
  const drawn = block === 'unreachable' ? null : block;
  return (
    <li>
      <button
        type="button"
        className="card"
        onClick={() => {
          if (drawn) take(drawn);
          else if (block === 'unreachable') {
            failed(`The block "${demo.title}" could not be fetched; check that the app is still being served and open the shelf again.`);
          }
        }}
      >
        <span className="card-picture">{drawn && <BlockPicture block={drawn} />}</span>
        <span>{drawn?.name ?? demo.title}</span>
      </button>
    </li>
  );
}
