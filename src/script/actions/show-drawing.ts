import type { Request } from '../../../shared/contract';
import type { SheetPort } from '../port';

/** Most that a window over the sheet takes on a small screen. Judgement. */
const WINDOW = { width: 1040, height: 720 };
const STYLE =
  '<style>body{margin:8px;font:14px sans-serif}svg{display:block;max-width:100%;height:auto}@media print{button{display:none}}</style>';
const PRINT = '<button onclick="print()">Print</button>';

/** The page has made the drawing, with every name in it escaped. */
export function showDrawing(port: SheetPort, { title, svg }: Request<'showDrawing'>): Record<string, never> {
  port.showPage(title, STYLE + PRINT + svg, WINDOW.width, WINDOW.height);
  return {};
}
