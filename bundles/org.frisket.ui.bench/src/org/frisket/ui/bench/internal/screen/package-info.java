/** How many pixels of a screen make a millimetre, as the user has measured it once with a ruler or a card. */
package org.frisket.ui.bench.internal.screen;
