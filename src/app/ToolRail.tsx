import { useId, type ReactNode } from 'react';
import { CLOTH_TOOLS, SEWING_TOOLS, type Tool, type ToolLine } from '../canvas/tool.ts';
import { ToolIcon } from './TradeIcons.tsx';

/** What the hand can hold: shapes of cloth, and what is asked of the sewing. */
export function ToolRail({ tool, takeUp }: { readonly tool: Tool; readonly takeUp: (tool: Tool) => void }): ReactNode {
  const title = useId();
  const button = (each: ToolLine): ReactNode => (
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
  );
  return (
    <div className="tools">
      <div className="tool-group" role="group" aria-label="Shapes and tools">
        {CLOTH_TOOLS.map(button)}
      </div>
      <div className="tool-group" role="group" aria-labelledby={title}>
        <p className="tool-title" id={title}>
          Sewing
        </p>
        {SEWING_TOOLS.map(button)}
      </div>
    </div>
  );
}
