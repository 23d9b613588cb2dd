/** The surface with the sheets side by side: parts by their true shape, to be selected, dragged and turned. */
package org.frisket.ui.sheets.internal.sheets.surface;
