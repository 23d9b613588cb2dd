/**
 * Sheets with parts of jobs on them: {@link org.frisket.sheets.JobParts} says what parts a job has,
 * {@link org.frisket.sheets.LaidSheets} what the sheets of a job come to, {@link org.frisket.sheets.SheetSpace} what parts
 * would lie on elsewhere, {@link org.frisket.sheets.Offcuts} what is left of a sheet,
 * {@link org.frisket.sheets.GuestFiles} which other jobs share it. Everything here runs without a screen.
 */
package org.frisket.sheets;
