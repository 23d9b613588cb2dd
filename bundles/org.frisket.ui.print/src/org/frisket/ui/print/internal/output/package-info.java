/** Files of print and cut, and printing straight to a printer. */
package org.frisket.ui.print.internal.output;
