/** npm start: serves the preview of the built files, with the samples in the folder that is named, until stopped. */
import { startPreview } from './server';

const [, , samples] = process.argv;
const preview = await startPreview(samples ? { samples } : {});
console.log(`Sounder Sheet preview: ${preview.url}`);
console.log(
  'Stop with Ctrl+C. Other sample farm: add ?sample=NAME (feet-marrow-creek, metric-larch-vale); empty: ?sample=none',
);
