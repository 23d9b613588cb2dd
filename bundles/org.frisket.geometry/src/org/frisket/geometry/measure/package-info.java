/**
 * How large pieces are and how thin their parts; {@link org.frisket.geometry.measure.RegionMeasures} is all of it at once.
 * <p>
 * {@link org.frisket.geometry.measure.StrokeWidths} says what counts as thin: what a disc of a width cannot reach is
 * thinner than that. The thickness of a thin part is the width at which it begins to be one.
 */
package org.frisket.geometry.measure;
