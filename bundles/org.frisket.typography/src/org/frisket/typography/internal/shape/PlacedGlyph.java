package org.frisket.typography.internal.shape;

/**
 * A glyph at its place, in font units from the run's left end, y down.
 *
 * @param cluster index of the first character that this glyph, together with its neighbours of the same cluster,
 *                stands for
 * @param x       the glyph's own origin, with offsets such as those of accents applied
 * @param advance by how much the pen moves on, to the right
 */
public record PlacedGlyph(int glyph, int cluster, double x, double y, double advance) {
}
