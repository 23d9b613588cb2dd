package org.frisket.typography.internal.shape;

/** @param language BCP 47 tag, or empty for none in particular */
public record Shaping(boolean kerning, boolean ligatures, String language) {
}
