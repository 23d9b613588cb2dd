/** Cut-ready SVG: millimetre sizes, a group for each layer, a path for each region and operation. */
package org.frisket.export.svg;
