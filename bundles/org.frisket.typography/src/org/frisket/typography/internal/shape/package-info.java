/** From characters to placed glyphs, and from glyphs to outlines: by HarfBuzz, or by the Java runtime without it. */
package org.frisket.typography.internal.shape;
