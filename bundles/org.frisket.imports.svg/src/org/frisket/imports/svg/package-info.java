/**
 * Reads SVG 1.1 and the static part of SVG 2. {@code TreeReader} makes a tree of {@code Node}s, {@code Cascade} tells
 * each its style, and {@code Walk} goes through it: {@code ShapeOutlines}, {@code StrokeOutline}, {@code TextOutlines}
 * and {@code PictureReader} make something of single elements, {@code Clipping} cuts it.
 */
package org.frisket.imports.svg;
