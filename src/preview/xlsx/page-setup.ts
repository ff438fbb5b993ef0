/** Whether a tab of an .xlsx file is set up for printing otherwise than programs do by themselves. */
import { attribute, elements } from './xml-elements';

/** Left, right, top and bottom in inches that Excel (now and before 2007) and LibreOffice write unasked, from their files. */
const USUAL_MARGINS = [
  '0.70 0.70 0.75 0.75',
  '0.75 0.75 1.00 1.00',
  '0.79 0.79 1.05 1.05',
  '0.79 0.79 0.79 0.79',
];

export function hasPageSetup(xml: string): boolean {
  const setup = elements(xml, 'pageSetup')[0]?.attributes ?? '';
  const fit = attribute(elements(xml, 'pageSetUpPr')[0]?.attributes ?? '', 'fitToPage');
  return (
    attribute(setup, 'orientation') === 'landscape' ||
    !['', '100'].includes(attribute(setup, 'scale')) ||
    !['', '0', 'false'].includes(fit) ||
    hasOwnMargins(xml)
  );
}

function hasOwnMargins(xml: string): boolean {
  const margins = elements(xml, 'pageMargins')[0]?.attributes;
  if (margins === undefined) return false;
  const inches = ['left', 'right', 'top', 'bottom'].map((side) =>
    Number(attribute(margins, side)).toFixed(2),
  );
  return !USUAL_MARGINS.includes(inches.join(' '));
}
