/** The chart of a font's glyphs on pages: one layout, whatever the pages become. */
package org.frisket.page.chart;
