/** Finding font files and reading their names without loading their glyphs. */
package org.frisket.typography.internal.source;
