/** What is painted: the sheet, the elements on it, the outline of the selection, the ghost of a drag, tags. */
package org.frisket.ui.bench.internal.figures;
