import { useState } from 'preact/hooks';
import { counted } from '../../../../shared/plan/words';
import { MOST_FILE_BYTES } from '../../../../shared/tasks/map/limits';
import { mapFromTyped } from '../../../../shared/tasks/map/map-from-typed';
import type { FarmMap } from '../../../../shared/tasks/map/map-model';
import { CORNERS_LABEL, CORNERS_OF_TABLE } from '../../../../shared/tasks/map/map-task';
import { usePage } from '../../page';
import { afterPaint } from '../../parts/after-paint';
import { Button } from '../../parts/button';
import { Choices } from '../../parts/choices';
import { Field } from '../../parts/field';
import { Notice } from '../../parts/notice';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';
import { readMapFile, readMapText } from './read-map-text';
import * as words from './words';

interface Props {
  /** A map table stands in the file. */
  readonly stands: boolean;
  /** Undefined for the table that stands. */
  readonly onMap: (map: FarmMap | undefined) => void;
}

const SOURCES = [
  { value: 'file', text: 'A GeoJSON or KML file' },
  { value: 'text', text: 'Pasted GeoJSON or KML' },
  { value: 'typed', text: 'Latitudes and longitudes typed in the sheet' },
];
const STANDING = { value: 'block', text: CORNERS_OF_TABLE };

/** Where the corners come from. The file is read in this page only; nothing is sent anywhere. */
export function CornersSection({ stands, onMap }: Props) {
  const [source, setSource] = useState(stands ? STANDING.value : 'file');
  const [pasted, setPasted] = useState('');
  const work = useWork();
  const { say } = usePage();
  const take = (read: () => FarmMap | Promise<FarmMap>): void =>
    work.start(async () => {
      say('Reading the map…');
      await afterPaint();
      const map = await read();
      onMap(map);
      say(`Read ${counted(map.shapes.length, 'shape')}.`);
    });
  return (
    <>
      <Choices
        legend={CORNERS_LABEL}
        value={source}
        options={stands ? [...SOURCES, STANDING] : SOURCES}
        onChange={(value) => {
          setSource(value);
          work.clear();
          if (value === STANDING.value) onMap(undefined);
        }}
      />
      {source === 'file' && (
        <Field label="Map file" hint={words.drawnInProgram(MOST_FILE_BYTES / 1_000_000)}>
          {(described) => (
            <input
              {...described}
              type="file"
              accept=".geojson,.json,.kml,application/geo+json,application/vnd.google-earth.kml+xml"
              // So that choosing a mended file of the same name is a change.
              onClick={({ currentTarget }) => {
                currentTarget.value = '';
              }}
              onChange={({ currentTarget }) => {
                const chosen = currentTarget.files?.[0];
                if (chosen) take(() => readMapFile(chosen));
              }}
            />
          )}
        </Field>
      )}
      {source === 'text' && (
        <>
          <Field label="GeoJSON or KML text">
            {(described) => (
              <textarea
                {...described}
                rows={5}
                spellcheck={false}
                value={pasted}
                onInput={({ currentTarget }) => setPasted(currentTarget.value)}
              />
            )}
          </Field>
          <Button disabled={work.busy} onPress={() => take(() => readMapText(pasted))}>
            Read the text
          </Button>
        </>
      )}
      {source === 'typed' && (
        <>
          <p class="hint">{words.TWO_COLUMNS}</p>
          <Button
            disabled={work.busy}
            onPress={() => take(async () => mapFromTyped(await ask('readSelection', {})))}
          >
            Use the selected cells
          </Button>
        </>
      )}
      {stands &&
        (source === STANDING.value ? (
          <p class="hint">{words.CORRECTED_TOO}</p>
        ) : (
          <Notice kind="note">{words.CORNERS_REPLACED}</Notice>
        ))}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
