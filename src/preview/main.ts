/** npm start: serves the preview of the built files until stopped. */
import { startPreview } from './server';

const preview = await startPreview();
console.log(`Sounder Sheet preview: ${preview.url}`);
console.log(
  'Stop with Ctrl+C. Other sample farm: add ?sample=NAME (a file of sample-sheets/); empty: ?sample=none',
);
