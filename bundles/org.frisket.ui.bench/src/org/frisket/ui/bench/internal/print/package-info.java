/** A job on paper: pages, what is written at their foot, the preview of them and the printing. */
package org.frisket.ui.bench.internal.print;
