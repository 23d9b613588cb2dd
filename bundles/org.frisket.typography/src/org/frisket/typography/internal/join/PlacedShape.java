package org.frisket.typography.internal.join;

/**
 * A letter's shape and where it stands.
 *
 * @param shape  with the letter's origin at 0
 * @param origin x of the letter in its line, in mm
 */
public record PlacedShape(LetterShape shape, double origin) {
}
