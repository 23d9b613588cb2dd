/** Work on lines: by their length, in dashes, and lines that help to weed. */
package org.frisket.geometry.lines;
