/** The mode in which single letters of a wording are moved, turned and scaled by hand. */
package org.frisket.ui.bench.internal.letters;
