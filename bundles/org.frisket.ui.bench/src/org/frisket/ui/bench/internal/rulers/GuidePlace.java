package org.frisket.ui.bench.internal.rulers;

import org.frisket.model.Guide;

/**
 * Where a guide is dragged to.
 *
 * @param guide  the guide; null for one that is new
 * @param across whether it runs from left to right
 * @param at     its y in mm if it runs across, otherwise its x
 */
record GuidePlace(Guide guide, boolean across, double at) {
}
