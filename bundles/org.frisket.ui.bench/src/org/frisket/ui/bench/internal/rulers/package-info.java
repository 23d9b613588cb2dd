/** Rulers along the bench, guides that are pulled out of them, and the grid on the sheet. */
package org.frisket.ui.bench.internal.rulers;
