/**
 * What the measured marks of one sheet say: typed or found in a scan, fitted, told for every part; and the sheet that a printer is
 * measured by.
 */
package org.frisket.print.measure;
