/** Edits of shapes: outlines and pictures, and the mats, combinations and weed lines that follow others. */
package org.frisket.editing.shapes;
