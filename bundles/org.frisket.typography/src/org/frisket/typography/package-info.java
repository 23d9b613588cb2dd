/**
 * Fonts, shaping, setting and joining: from words and a font file to the outlines of letters at their places.
 * <p>
 * A {@link org.frisket.typography.FontFace} is read from a file or from bytes; nothing is installed and no header is
 * trusted that can be measured. {@link org.frisket.typography.TextSetter} sets a text in it and gives a
 * {@link org.frisket.typography.SetText} of letters; {@link org.frisket.typography.Joiner} moves the letters of a
 * word together until they overlap. Fonts come from {@link org.frisket.typography.source.FontSource sources}, which a
 * {@link org.frisket.typography.source.FontLibrary} searches by name.
 * <p>
 * From text to lettering the steps are: set ({@link org.frisket.typography.TextSetter}, or
 * {@link org.frisket.typography.StackSetter} for letters under each other), join
 * ({@link org.frisket.typography.Joiner}, {@link org.frisket.typography.StackJoiner}, or
 * {@link org.frisket.typography.CurveJoiner} for text that will stand on a curve), move by hand
 * ({@link org.frisket.typography.Nudge}), bend ({@code org.frisket.typography.layout}), clean to a region, and tie its
 * pieces ({@code org.frisket.typography.join}).
 * <p>
 * Set text is in millimetres; glyphs of a face are in font units. In both, x points right, y points <em>down</em> and
 * the baseline lies at y = 0. Outlines are as the font has them: contours may overlap and run either way, and the
 * filled part is by the non-zero rule.
 */
package org.frisket.typography;
