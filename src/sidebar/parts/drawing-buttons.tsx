import type { RefObject } from 'preact';
import { Button } from './button';
import { downloadText } from './download-text';

/** Print a drawing alone on the page, or save it as a file. */
export function DrawingButtons(props: { svg: RefObject<SVGSVGElement | null>; fileName: string }) {
  const save = (): void => {
    if (props.svg.current) saveSvg(props.svg.current, props.fileName);
  };
  return (
    <div class="pair">
      <Button onPress={() => window.print()}>Print the drawing</Button>
      <Button onPress={save}>Save the drawing (SVG)</Button>
    </div>
  );
}

function saveSvg(svg: SVGSVGElement, fileName: string): void {
  const text = new XMLSerializer().serializeToString(svg);
  downloadText(fileName, 'image/svg+xml', text);
}
