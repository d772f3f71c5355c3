import type { ReactNode } from 'react';
import { TOOLS, type Tool } from '../canvas/tool.ts';
import { ToolIcon } from './TradeIcons.tsx';

/** What the hand can hold. */
export function ToolRail({ tool, takeUp }: { readonly tool: Tool; readonly takeUp: (tool: Tool) => void }): ReactNode {
  return (
    <div className="tools" role="group" aria-label="Shapes and tools">
      {TOOLS.map((each) => (
        <button
          key={each.tool}
          type="button"
          className="tool"
          aria-pressed={tool === each.tool}
          title={`${each.does} (${each.key} on the table)`}
          onClick={() => takeUp(each.tool)}
        >
          <ToolIcon tool={each.tool} />
          <span className="tool-name">{each.name}</span>
        </button>
      ))}
    </div>
  );
}
