import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkMapText, refuseTooBig } from '../../../shared/tasks/map/check-map-text';
import { guessRole } from '../../../shared/tasks/map/guess-role';
import { mapFromGeojson } from '../../../shared/tasks/map/map-from-geojson';
import { mapFromTyped } from '../../../shared/tasks/map/map-from-typed';
import { MapTrouble } from '../../../shared/tasks/map/map-trouble';
import { jsonDepth, xmlDepth } from '../../../shared/tasks/map/nesting-depth';
import { SAMPLE_MAP } from './sample-map';

const box = [
  [0, 0],
  [0.001, 0],
  [0.001, 0.001],
  [0, 0.001],
  [0, 0],
];

describe('checkMapText', () => {
  it('tells GeoJSON from KML, with a byte order mark or without', () => {
    expect(checkMapText(`\uFEFF ${JSON.stringify(SAMPLE_MAP)}`).kind).toBe('geojson');
    expect(checkMapText('<?xml version="1.0"?><kml><Document/></kml>').kind).toBe('kml');
    expect(checkMapText('<k:kml xmlns:k="http://www.opengis.net/kml/2.2"/>').kind).toBe('kml');
  });

  it.each([
    ['a file of 20 MB', 'x'.repeat(20_000_000), /20 MB.*5 MB/],
    ['an empty file', ' \n', /empty/],
    ['a zip', 'PK\u0003\u0004…', /zipped/],
    ['bytes that are not text', 'abc\u0000def', /not a text file/],
    ['a spreadsheet', 'name,lat,lon', /neither GeoJSON.*nor KML/],
    ['broken JSON', '{"type": "FeatureCollection", "features": [', /broken/],
    ['a web page', '<html><body></body></html>', /not KML/],
    ['a DOCTYPE', '<!DOCTYPE kml [<!ENTITY x SYSTEM "file:///etc/passwd">]><kml>&x;</kml>', /DOCTYPE/],
    ['a doctype in small letters', '<?xml version="1.0"?><! doctype a><kml/>', /DOCTYPE/],
    ['a million open brackets', '['.repeat(1_000_000), /1000000 levels deep/],
    ['deep folders', `<kml>${'<Folder>'.repeat(100)}${'</Folder>'.repeat(100)}</kml>`, /101 levels deep/],
  ])('refuses %s and says why', (_, text, why) => {
    expect(() => checkMapText(text)).toThrow(MapTrouble);
    expect(() => checkMapText(text)).toThrow(why);
  });

  it('refuses by size before reading', () => {
    expect(() => refuseTooBig(20_000_000)).toThrow(/20 MB/);
    expect(() => refuseTooBig(4_999_999)).not.toThrow();
  });
});

describe('nesting depth', () => {
  it('does not count brackets in text, comments or CDATA', () => {
    expect(jsonDepth('{"a":"[[[\\"[["}')).toBe(1);
    expect(xmlDepth('<a><!-- <b><c> --><![CDATA[<d><e>]]><f/><g>x</g></a>')).toBe(2);
  });
});

describe('mapFromGeojson', () => {
  it('reads areas, holes, lines and points', () => {
    const { shapes, problems } = mapFromGeojson(SAMPLE_MAP);
    expect(problems).toEqual([]);
    expect(shapes.map(({ name, form }) => `${name}: ${form}`)).toEqual([
      'North: area',
      'Middle: area',
      'Pond field: area',
      'Far: area',
      'Marrow creek: line',
      'House well: point',
    ]);
    expect(shapes[3]?.holes[0]).toHaveLength(4);
    expect(shapes[0]?.corners).toHaveLength(4);
  });

  it('parts a MultiPolygon, numbers repeated names and counts the nameless', () => {
    const multi = { type: 'MultiPolygon', coordinates: [[box], [box]] };
    const features = [
      { type: 'Feature', properties: { name: 'A' }, geometry: multi },
      {
        type: 'Feature',
        properties: { name: 'a, part 1' },
        geometry: { type: 'Polygon', coordinates: [box] },
      },
      { type: 'Feature', properties: null, geometry: { type: 'Polygon', coordinates: [box] } },
    ];
    const names = mapFromGeojson({ type: 'FeatureCollection', features }).shapes.map(({ name }) => name);
    expect(names).toEqual(['A, part 1', 'A, part 2', 'a, part 1 (2)', 'Shape 1']);
  });

  it('leaves out what cannot be a paddock and names it, and reads the rest', () => {
    const polygon = (name: string, coordinates: unknown) => ({
      type: 'Feature',
      properties: { name },
      geometry: { type: 'Polygon', coordinates },
    });
    const bowTie = [
      [0, 0],
      [0.001, 0.001],
      [0.001, 0],
      [0, 0.001],
      [0, 0],
    ];
    const { shapes, problems } = mapFromGeojson({
      type: 'FeatureCollection',
      features: [
        polygon('good', [box]),
        polygon('bow tie', [bowTie]),
        polygon('two corners', [
          [
            [0, 0],
            [1, 1],
            [0, 0],
          ],
        ]),
        polygon('swapped', [
          [
            [44, -93],
            [44.001, -93],
            [44.001, -93.001],
          ],
        ]),
        polygon('text', [
          [
            ['0', 0],
            [0, 1],
            [1, 1],
          ],
        ]),
        polygon('empty', []),
        polygon('<img src=x onerror=alert(1)>', 'no'),
        { type: 'Feature', properties: { name: 'lost' }, geometry: null },
        { type: 'Feature', properties: {}, geometry: { type: '__proto__', coordinates: [] } },
        7,
      ],
    });
    expect(shapes.map(({ name }) => name)).toEqual(['good']);
    expect(problems).toHaveLength(9);
    expect(problems.join('\n')).toMatch(/"bow tie".*crossing/);
    expect(problems.join('\n')).toMatch(/"two corners".*at least 3/);
    expect(problems.join('\n')).toMatch(/"swapped".*swapped/);
  });

  it('refuses other coordinate systems, too many corners and maps of nothing', () => {
    const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::3857' } };
    expect(() => mapFromGeojson({ type: 'FeatureCollection', crs, features: [] })).toThrow(
      /EPSG::3857.*WGS84/,
    );
    const track = Array.from({ length: 5001 }, (_, i) => [i * 1e-5, Math.abs(i - 2500) * 1e-5]);
    expect(() => mapFromGeojson({ type: 'Polygon', coordinates: [track] })).toThrow(/more than 5000 corners/);
    const long = { type: 'Polygon', coordinates: [track.slice(0, 1500)] };
    expect(() => mapFromGeojson(long)).toThrow(/1500 corners, more than 1000/);
    expect(() => mapFromGeojson({ type: 'FeatureCollection', features: [] })).toThrow(/Nothing in this map/);
    expect(() => mapFromGeojson(null)).toThrow(MapTrouble);
  });

  it('never fails in any other way, whatever JSON comes (1,000 cases)', () => {
    const types = [
      'Feature',
      'FeatureCollection',
      'GeometryCollection',
      'Polygon',
      'MultiPolygon',
      'Point',
      'LineString',
    ];
    const node = fc.letrec((tie) => ({
      json: fc.oneof(
        { depthSize: 'small' },
        fc.jsonValue(),
        fc.record({ type: fc.constantFrom(...types), coordinates: tie('coords') }),
        fc.record({
          type: fc.constantFrom(...types),
          features: fc.array(tie('json')),
          geometry: tie('json'),
        }),
      ),
      coords: fc.oneof(
        { depthSize: 'small' },
        fc.double(),
        fc.array(tie('coords')),
        fc.constant(box),
        fc.constant(null),
      ),
    })).json;
    fc.assert(
      fc.property(node, (value) => {
        try {
          return mapFromGeojson(value).shapes.length > 0;
        } catch (error) {
          return error instanceof MapTrouble;
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('mapFromTyped', () => {
  const cells = (values: (string | number)[][]) => ({ tab: 'Corners', row: 3, column: 2, values });

  it('takes two columns with blank rows between paddocks', () => {
    const { shapes } = mapFromTyped(
      cells([
        ['Lat', 'Long'],
        [44, -92],
        [44.001, -92],
        [44.001, -92.001],
        ['', ''],
        [45, -92],
        [45.001, -92],
        [45, -92.001],
      ]),
    );
    expect(shapes.map(({ name, corners }) => [name, corners.length])).toEqual([
      ['Paddock 1', 3],
      ['Paddock 2', 3],
    ]);
  });

  it('takes a name column, filled on each row or only on the first', () => {
    const { shapes } = mapFromTyped(
      cells([
        ['East', 44, -92],
        ['', 44.001, -92],
        ['', 44.001, -92.001],
        ['West', 45, -92],
        ['West', 45.001, -92],
        ['West', 45, -92.001],
      ]),
    );
    expect(shapes.map(({ name }) => name)).toEqual(['East', 'West']);
  });

  it('names every cell that is not a degree', () => {
    const typed = cells([
      [44, '92° 30′ W'],
      [444, -92],
      [44, ''],
      [44.001, -92.001],
    ]);
    expect(() => mapFromTyped(typed)).toThrow(
      /C3 must be decimal degrees.*got "92° 30′ W".*Row 4 has latitude 444.*C5/,
    );
    expect(() => mapFromTyped(cells([[1]]))).toThrow(/Select two columns/);
    expect(() => mapFromTyped(cells([['', '']]))).toThrow(/blank/);
    expect(() =>
      mapFromTyped(
        cells([
          [44, -92],
          [44.001, -92],
        ]),
      ),
    ).toThrow(/at least 3/);
  });
});

describe('guessRole', () => {
  it.each([
    ['point', 'House well', 'well'],
    ['point', 'Spring box', 'well'],
    ['line', 'Mill creek', 'water'],
    ['line', 'Old hedge', 'other'],
    ['area', 'Creek field', 'paddock'],
    ['area', 'Duck pond 2', 'water'],
    ['area', 'Wellington', 'paddock'],
    ['line', 'Water line to Far', 'other'],
    ['line', 'waterline', 'other'],
    ['line', 'Water pipe 1"', 'other'],
    ['line', 'Pipe from the well', 'other'],
    ['point', 'Creek trough', 'other'],
    ['point', 'Water tank', 'other'],
    ['line', 'Water', 'water'],
    ['line', 'Spring Creek', 'water'],
    ['line', 'Tank Creek', 'water'],
    ['area', 'Duck water', 'water'],
  ] as const)('%s "%s" is %s', (form, name, role) => expect(guessRole({ form, name })).toBe(role));
});
