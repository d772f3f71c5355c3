import { ORDERS } from '../geometry/piecing/order.ts';
import { WAYS } from '../geometry/piecing/way.ts';
import { LANGUAGES } from '../pattern/house-style.ts';
import { methodsOfKinds } from './methods.ts';

const kinds = methodsOfKinds.map(([kind, methods]) => `  ${kind.padEnd(30)} ${methods.join(', ')}`);

/** What `piecewright --help` prints. */
export const HELP = `piecewright: the sewing pattern of a painted block, proven

  piecewright plan FILE [--json]   print the pattern as text, or as data
  piecewright pattern FILE -o OUT.pdf
                                   write the pattern as pages to print or hand on; as Markdown (OUT.md), or its cutting list (OUT.csv)
  piecewright sizes FILE [--from LENGTH --to LENGTH --step LENGTH] [--json]
                                   print what to cut at other finished widths, and which the ruler has marks for
  piecewright templates FILE -o OUT.pdf [--paper letter|a4]
                                   write every template and foundation at full size, as PDF, or as SVG (OUT.svg)
  piecewright pictures FILE -o OUT.zip
                                   write every diagram alone, as SVG
  piecewright cutter FILE -o OUT.svg [--mat LENGTH]
                                   write the pieces for a cutting machine, a layer for each fabric, to fit a mat so wide; 12 in. or 30 cm
  piecewright check FILE           say whether the file is sound and the proof of its pattern holds

FILE is a block file; - stands for what is piped in.

Choices, each before what the file says and what is usual:
  --method "KIND=METHOD"   how one kind of unit is cut and sewn; may be given several times
  --method LETTER=METHOD   the same for one unit of the pattern, like A=triangles
  --method METHOD          the same for every unit that knows it or something like it; usual
  --trim LENGTH            added to cuts that meet a diagonal seam, to trim off after sewing; 0
  --seam LENGTH            seam allowance; 1/4 in. or 0,75 cm
  --ruler LENGTH           smallest step of the ruler; 1/8 in. or 1 mm
  --way WAY                ${WAYS.join(', ')}
  --assembly ORDER         in which order the units are put together, where they lie so: ${ORDERS.join(', ')}
  --blocks NUMBER          how many blocks to cut for; 1
  --width LENGTH           usable width of the cloth; 42 in. or 107 cm
  --colourway NAME         the block in other cloth, as it is kept in the file under this name

How a pattern looks, each before what the house style says:
  --style FILE             a house style, as the app writes it
  --paper letter|a4, --landscape, --columns 1|2
  --hatches                fabrics as hatches, for printers without colours
  --large                  large print
  --language ${LANGUAGES.join('|')}

  --help, --version

A LENGTH is in the block's unit: 3/8, 1 1/4, 0.5. Kinds and their methods, the usual one first:
${kinds.join('\n')}

Ends with 0; with 1 where the file or the drawing is at fault; with 2 where the command is.
`;
