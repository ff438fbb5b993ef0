import { type ComponentChild, render } from 'preact';
import { ask } from '../server';
import { Button } from './button';
import { downloadText } from './download-text';
import { Notice } from './notice';
import { useWork } from './use-work';

interface Props {
  readonly title: string;
  /** As it is shown large, printed and saved. */
  readonly drawing: ComponentChild;
  readonly fileName: string;
}

/** A drawing in a window of its own, to look at and to print, or as a file. */
export function DrawingButtons({ title, drawing, fileName }: Props) {
  const work = useWork();
  const show = (): void =>
    work.start(async () => {
      await ask('showDrawing', { title, svg: textOf(drawing) });
    });
  return (
    <>
      <div class="pair">
        <Button disabled={work.busy} onPress={show}>
          Open it large, to print
        </Button>
        <Button onPress={() => downloadText(fileName, 'image/svg+xml', textOf(drawing))}>
          Save as a file (SVG)
        </Button>
      </div>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}

function textOf(drawing: ComponentChild): string {
  const box = document.createElement('div');
  render(drawing, box);
  return box.firstElementChild ? new XMLSerializer().serializeToString(box.firstElementChild) : '';
}
