import { galleryFiles } from './gallery-files.js';
import { writeFiles } from './write-files.js';

/** Writes the gallery that the README shows. */
for (const path of await writeFiles('out/gallery', await galleryFiles())) console.log(path);
