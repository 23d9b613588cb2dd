/**
 * Charts of bars: one description ({@link org.frisket.page.bars.BarChart}), laid out once
 * ({@link org.frisket.page.bars.BarLayout}) for paper and for the screen. Parts of a bar are told apart by their pattern and
 * by words, not by colour.
 */
package org.frisket.page.bars;
