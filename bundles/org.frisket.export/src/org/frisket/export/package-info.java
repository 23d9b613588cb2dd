/**
 * Handing a prepared job out as a file. A format is an {@link org.frisket.export.Exporter}, contributed to the extension
 * point {@code org.frisket.export.exporters}; {@link org.frisket.export.Exporters} lists them and
 * {@link org.frisket.export.ExportTask} writes a file whole or not at all.
 */
package org.frisket.export;
