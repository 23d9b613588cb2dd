/**
 * Taking in the files of others. A format is an {@link org.frisket.imports.Importer}, contributed to the extension point
 * {@code org.frisket.imports.importers}; {@link org.frisket.imports.Importers} lists them and
 * {@link org.frisket.imports.ImportTask} reads a file with one of them into {@link org.frisket.imports.ImportedArt}.
 */
package org.frisket.imports;
