/** The sheet that a printer is measured by, on paper. */
package org.frisket.print.output.measuring;
