/** The run of a sheet, animated. */
package org.frisket.ui.sheets.internal.run;
