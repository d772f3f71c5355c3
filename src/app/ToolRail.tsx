import { useId, type ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import type { SymmetryName } from '../block/symmetry.ts';
import { CHANGING_TOOLS, SEWING_TOOLS, SHAPE_TOOLS, type Tool, type ToolLine } from '../canvas/tool.ts';
import { SymmetryChooser } from './SymmetryChooser.tsx';
import { ToolIcon } from './TradeIcons.tsx';

/** What the hand can hold: shapes of cloth, what is done with cloth that lies there, and what is asked of the sewing. */
export function ToolRail({ tool, takeUp, block, symmetry, takeUpSymmetry }: {
  readonly tool: Tool;
  readonly takeUp: (tool: Tool) => void;
  readonly block: Pick<Block, 'grid' | 'finished'>;
  readonly symmetry: SymmetryName;
  readonly takeUpSymmetry: (symmetry: SymmetryName) => void;
}): ReactNode {
  const group = (title: string, tools: readonly ToolLine[]): ReactNode => <ToolGroup title={title} tools={tools} tool={tool} takeUp={takeUp} />;
  return (
    <div className="tools" role="group" aria-label="Shapes and tools">
      {group('Shapes', SHAPE_TOOLS)}
      {group('Cloth', CHANGING_TOOLS)}
      <SymmetryChooser block={block} symmetry={symmetry} take={takeUpSymmetry} />
      {group('Sewing', SEWING_TOOLS)}
    </div>
  );
}

function ToolGroup({ title, tools, tool, takeUp }: {
  readonly title: string;
  readonly tools: readonly ToolLine[];
  readonly tool: Tool;
  readonly takeUp: (tool: Tool) => void;
}): ReactNode {
  const id = useId();
  return (
    <div className="tool-group" role="group" aria-labelledby={id}>
      <p className="tool-title" id={id}>
        {title}
      </p>
      {tools.map((each) => (
        <button
          key={each.tool}
          type="button"
          className="tool"
          aria-pressed={tool === each.tool}
          title={`${each.name}: ${each.does} (${each.key} on the table)`}
          onClick={() => takeUp(each.tool)}
        >
          <ToolIcon tool={each.tool} />
          <span className="tool-name">{each.name}</span>
        </button>
      ))}
    </div>
  );
}
