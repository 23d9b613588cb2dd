/**
 * How large pieces are and how thin their parts.
 * <p>
 * {@link org.frisket.geometry.measure.LocalThickness} says what counts as thin. It works by opening: what a disc of a
 * width cannot reach is thinner than that. The thickness of a thin part is the width at which it begins to be one.
 */
package org.frisket.geometry.measure;
